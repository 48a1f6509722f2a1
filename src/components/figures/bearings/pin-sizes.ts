import { numberOf } from '../read.ts';
import type { FigureSet } from '../types.ts';

/** A crankpin in its rod bearing: sizes in m and m², speeds in m/s, load in N and its mean over the area in Pa. */
export interface SizedPin {
  readonly diameter: number;
  readonly width: number;
  readonly area: number;
  readonly load: number;
  readonly unitLoad: number;
  /** Of its surface, at the set's own highest speed. */
  readonly ownSpeed: number;
  /** The same at the speed that both sets share. */
  readonly commonSpeed: number;
}

/** The crankpin of one set; `undefined` while a number is missing. */
export function sizedPin({ input, output }: FigureSet): SizedPin | undefined {
  const found = {
    diameter: numberOf(input, 'crankpinDiameter'),
    width: numberOf(input, 'rodShellWidth'),
    area: numberOf(output, 'projectedArea'),
    load: numberOf(input, 'bearingLoad'),
    unitLoad: numberOf(output, 'unitLoad'),
    ownSpeed: numberOf(output, 'pinSpeed'),
    commonSpeed: numberOf(output, 'pinSpeedCommon'),
  };
  return Object.values(found).includes(undefined) ? undefined : (found as SizedPin);
}

/** Drawing units: what stands round both views of a pin, and the longest arrow of each kind. */
export const frame = { web: 9, gap: 16, top: 68, bottom: 35, push: 26, speed: 46 } as const;

/** What both sets are drawn with, so that they can be compared by eye. */
export interface PinScale {
  /** Drawing units to a metre. */
  readonly length: number;
  /** To a pascal, and to a metre per second. */
  readonly push: number;
  readonly speed: number;
  /** Of the middle of an end view, from the left of its column. */
  readonly middle: number;
  /** Of the axis of both pins, from the top, and of the whole drawing. */
  readonly axis: number;
  readonly height: number;
}

/** The scales with which every pin has room in a column that is `column` drawing units wide. */
export function pinScale(pins: readonly SizedPin[], column: number): PinScale {
  const most = (of: (pin: SizedPin) => number, least: number): number =>
    Math.max(least, ...pins.map(of));
  const diameter = most((own) => own.diameter, 1e-3);
  const room = column - 2 * frame.web - frame.gap - 8;
  const width = most((own) => own.width, 1e-3);
  const length = Math.min(room / (diameter + width), 104 / diameter);
  const half = (diameter / 2) * length;
  const axis = frame.top + half;
  const middle = half + 8;
  // The arrow of a speed ends before the web of its side view begins.
  const clear = column - middle - 2 * frame.web - 4 - width * length;
  return {
    length,
    push: frame.push / most((own) => own.unitLoad, 1),
    speed: Math.min(frame.speed, clear) / most((own) => own.commonSpeed, 1e-9),
    middle,
    axis,
    height: axis + half + frame.bottom,
  };
}

/** One pin in drawing units about its own axis: the end view about x = 0, the side view from `from` to `to`. */
export interface PinViews {
  readonly radius: number;
  readonly from: number;
  readonly to: number;
  readonly push: number;
  readonly speed: number;
  /** Where the arrows of the load stand along the pin. */
  readonly pushes: readonly number[];
}

/** Both views of a pin in a column that is `column` drawing units wide. */
export function pinViews(own: SizedPin, scale: PinScale, column: number): PinViews {
  const to = column - scale.middle - frame.web;
  const width = own.width * scale.length;
  const from = to - width;
  const count = Math.min(7, Math.max(1, Math.round(width / 9)));
  return {
    radius: (own.diameter / 2) * scale.length,
    from,
    to,
    push: own.unitLoad * scale.push,
    speed: own.commonSpeed * scale.speed,
    pushes: Array.from({ length: count }, (_, i) => from + (width * (i + 0.5)) / count),
  };
}

import { pinBend } from '../../../core/pins/pin-bend.ts';
import { numberOf } from '../read.ts';
import type { FigureSet } from '../types.ts';

/** A pin and its seat as the drawing needs them [m]. */
export interface DrawnPin {
  readonly diameter: number;
  readonly bore: number;
  readonly mouth: number;
  readonly taper: number;
  readonly length: number;
  readonly eye: number;
  readonly gap: number;
  /** Widening of the pin across the load; negative when it is pulled. */
  readonly oval: number;
  /** How far it bends away from its middle [m] at a place [m] from there. */
  readonly bend: (place: number) => number;
}

/** The pin of a set, or `undefined` while it has none. */
export function drawnPin(set: FigureSet): DrawnPin | undefined {
  const named = {
    diameter: numberOf(set.input, 'pinDiameter'),
    bore: numberOf(set.input, 'pinBore'),
    mouth: numberOf(set.input, 'pinTaperBore'),
    taper: numberOf(set.input, 'pinTaperLength'),
    length: numberOf(set.input, 'pinLength'),
    eye: numberOf(set.input, 'smallEndWidth'),
    gap: numberOf(set.input, 'bossGap'),
    oval: numberOf(set.output, 'ovalClose'),
    load: numberOf(set.output, 'pushLoad'),
    modulus: numberOf(set.input, 'pinModulus'),
  };
  const { diameter, bore, mouth, taper, length, eye, gap, oval, load, modulus } = named;
  if (
    diameter === undefined ||
    bore === undefined ||
    mouth === undefined ||
    taper === undefined ||
    length === undefined ||
    eye === undefined ||
    gap === undefined ||
    oval === undefined ||
    load === undefined ||
    modulus === undefined
  )
    return undefined;
  const pin = {
    pinDiameter: diameter,
    pinBore: bore,
    pinTaperBore: mouth,
    pinTaperLength: taper,
    pinLength: length,
    pinModulus: modulus,
  };
  const seat = { smallEndWidth: eye, bossGap: gap };
  const bend = (place: number): number => pinBend(pin, seat, load, place);
  return { diameter, bore, mouth: taper > 0 ? mouth : bore, taper, length, eye, gap, oval, bend };
}

/** The cut walls of a pin, upper and lower, about the pin's middle; drawing units. */
export function wallPath(
  { diameter, bore, mouth, taper, length }: DrawnPin,
  scale: number,
): string {
  const [d, di, dm, t, l] = [diameter, bore, mouth, taper, length].map(
    (size) => (size * scale) / 2,
  ) as [number, number, number, number, number];
  return [-1, 1]
    .map(
      (to) =>
        `M${-l} ${to * d}H${l}V${to * dm}L${l - 2 * t} ${to * di}H${2 * t - l}L${-l} ${to * dm}z`,
    )
    .join('');
}

/** Rectangles above and below the pin from `from` to `to` along it, `thick` deep; drawing units. */
export function seatPath(from: number, to: number, radius: number, thick: number): string {
  return [-1, 1].map((side) => `M${from} ${side * radius}H${to}v${side * thick}H${from}z`).join('');
}

/** A circle of radius r that has become wider by `wider` across the (upright) load and as much lower along it. */
export function ovalPath(r: number, wider: number): string {
  const points = Array.from({ length: 72 }, (_, i) => {
    const angle = (i * Math.PI) / 36;
    const radius = r + (wider / 2) * Math.cos(2 * angle);
    return `${(radius * Math.cos(angle)).toFixed(2)} ${(radius * Math.sin(angle)).toFixed(2)}`;
  });
  return `M${points.join('L')}z`;
}

/** The outline of a bent pin, its middle at 0: the middle goes down by the bend, drawn `times` too large; drawing units. */
export function bentPath(
  { diameter, length, bend }: Pick<DrawnPin, 'diameter' | 'length' | 'bend'>,
  scale: number,
  times: number,
): string {
  const n = (value: number): string => value.toFixed(1);
  const line = (side: 1 | -1): string[] =>
    Array.from({ length: 21 }, (_, i) => {
      const x = side * (i / 10 - 1) * (length / 2);
      const y = (side * diameter) / 2 - bend(x) * times;
      return `${n(x * scale)} ${n(y * scale)}`;
    });
  return `M${[...line(-1), ...line(1)].join('L')}z`;
}

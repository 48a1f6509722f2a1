/** What the drawing on the first page is drawn with: its sheet, its scale, its lines. Places are in [mm] as in `assembly.ts` unless said otherwise. */
import { type Point } from './assembly.ts';
import type { DrawnTopic } from './assembly-topics.ts';

/** The sheet in drawing units; between the two elbows stands the drawing, outside them the labels. */
export const sheet = { width: 1180, height: 1154, left: 288, right: 892 } as const;

/** Drawing units for one millimetre, and where the crank's axis stands. */
export const scale = 2.4;
export const axis = { x: 500, y: 548 } as const;
/** The crankpin stands to the left, so that the rod leans. */
export const crankAngle = (-50 * Math.PI) / 180;

/** What one topic has of the drawing: the shape that is filled, as path data, and the place its line leads to. */
export interface Target {
  readonly shape: string;
  readonly at: Point;
}

/** A part as it is drawn, and what of it leads to topics. */
export interface Drawn {
  readonly picture: string;
  readonly targets: Readonly<Partial<Record<DrawnTopic, Target>>>;
}

export const round = (value: number): string => String(Math.round(value * 100) / 100);
/** A place of the assembly [mm] in drawing units. */
export const place = ({ x, y }: Point): Point => ({ x: axis.x + x * scale, y: axis.y - y * scale });
export const write = ({ x, y }: Point): string => `${round(x)} ${round(y)}`;
export const polygon = (points: readonly Point[]): string =>
  `M${points.map((point) => write(place(point))).join('L')}z`;
export const box = (x: number, y: number, width: number, height: number): string =>
  `M${round(x)} ${round(y)}h${round(width)}v${round(height)}h${round(-width)}z`;
/** A rectangle [mm] from its lower left corner. */
export function plate(x: number, y: number, width: number, height: number): readonly Point[] {
  return [
    { x, y },
    { x: x + width, y },
    { x: x + width, y: y + height },
    { x, y: y + height },
  ];
}
/** A circle about a place of the assembly, radius in [mm]. */
export function circle(centre: Point, radius: number): string {
  const { x, y } = place(centre);
  const r = round(radius * scale);
  return `M${round(x - radius * scale)} ${round(y)}a${r} ${r} 0 1 0 ${round(2 * radius * scale)} 0a${r} ${r} 0 1 0 ${round(-2 * radius * scale)} 0z`;
}
export const path = (kind: string, data: string): string => `<path class="${kind}" d="${data}"/>`;
export const line = (kind: string, from: Point, to: Point): string =>
  path(kind, `M${write(from)}L${write(to)}`);

/** An arrowhead at `tip` (drawing units) that points along the unit vector `to`. */
export function head(tip: Point, to: Point): string {
  const [long, half] = [13, 3.6];
  const foot = { x: tip.x - long * to.x, y: tip.y - long * to.y };
  const corner = (side: number): Point => ({
    x: foot.x - side * half * to.y,
    y: foot.y + side * half * to.x,
  });
  return path('solid', `M${write(tip)}L${write(corner(1))}L${write(corner(-1))}z`);
}

/** A line that shows where something is broken off, as ISO 128 draws it by hand: from one place to another, upright or level. */
export function broken(from: Point, to: Point): string {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const at = (along: number, off: number): string =>
    `${round(from.x + along * dx - off * dy)} ${round(from.y + along * dy + off * dx)}`;
  return `M${at(0, 0)}C${at(0.25, 0.08)} ${at(0.3, 0.08)} ${at(0.5, 0)}S${at(0.8, -0.08)} ${at(1, 0)}`;
}

/** Two short chain lines through a centre. */
export function cross({ x, y }: Point, reach: number): string {
  return path(
    'chain',
    `M${round(x - reach)} ${round(y)}H${round(x + reach)}M${round(x)} ${round(y - reach)}V${round(y + reach)}`,
  );
}

import { usual } from '../../../calculators/rings/gas-port.engine.ts';
import { numberOf } from '../read.ts';
import type { FigureSet } from '../types.ts';
import type { Moment } from './groove-section.ts';

/** Sizes [mm] that the section is drawn from; `undefined` while a number is missing. */
export interface Section {
  readonly height: number;
  readonly radial: number;
  readonly side: number;
  readonly back: number;
  /** Radial clearance of the lands. */
  readonly topGap: number;
  readonly secondGap: number;
  readonly topLand: number;
  readonly secondLand: number;
  readonly ports: number;
  readonly hole: number;
  readonly lateral: boolean;
  readonly face: number;
}

/** The section of one set; `undefined` while a number is missing. */
export function sectionOf(set: FigureSet): Section | undefined {
  const mm = (name: string, otherwise = Number.NaN): number =>
    1000 * (numberOf(set.input, name) ?? otherwise);
  const section = {
    height: mm('ring1Height'),
    radial: mm('ring1Radial'),
    side: mm('ringSideClearance'),
    back: mm('ringBackClearance'),
    topGap: mm('topLandClearance', usual.topLandClearance) / 2,
    secondGap: mm('secondLandClearance') / 2,
    topLand: mm('topLandHeight', usual.topLandHeight),
    secondLand: mm('secondLandHeight'),
    hole: mm('portDiameter'),
  };
  if (Object.values(section).some(Number.isNaN)) return undefined;
  return {
    ...section,
    ports: numberOf(set.input, 'portCount') ?? 0,
    lateral: set.input?.['portKind'] === 'lateral',
    face: numberOf(set.input, 'faceFactor') ?? usual.faceFactor,
  };
}

/** How much higher than the rest the side clearance and the ring's lift are drawn. */
export const magnified = 10;

/** Where the edges of groove and ring stand in a field [drawing units], y downward. */
export interface Groove {
  /** The bore's wall, the piston's edges above and below the groove, the groove's root. */
  readonly wall: number;
  readonly mouth: number;
  readonly mouthLow: number;
  readonly root: number;
  readonly top: number;
  readonly bottom: number;
  /** The ring. */
  readonly left: number;
  readonly right: number;
  readonly ringTop: number;
  readonly ringLow: number;
  /** Outline of the piston with groove and hole. */
  readonly piston: string;
}

/**
 * Lays the groove into a field: to scale but for the side clearance. A ring that does not hold lies back in its
 * groove, off the wall.
 */
export function grooveOf(
  section: Section,
  moment: Moment,
  field: {
    readonly shut: boolean;
    /** Share of the holes that is open; 0 draws none. */
    readonly open: number;
    readonly width: number;
    readonly height: number;
  },
): Groove {
  const { width, height } = field;
  const depth = section.back + section.radial;
  const side = magnified * section.side;
  const scale = Math.min(
    (width - wallWidth - 10) / (depth + 2),
    (height * 0.36) / (section.height + side),
  );
  const wall = width - wallWidth;
  const mouth = wall - section.topGap * scale;
  const mouthLow = wall - section.secondGap * scale;
  const root = wall - depth * scale;
  const top = height * 0.5 - ((side + section.height) * scale) / 2;
  const bottom = top + (section.height + side) * scale;
  const right = moment.holds ? wall : wall - 0.75 * section.back * scale;
  const ringLow = bottom - magnified * 1000 * moment.lift * scale;
  const hole = section.hole * scale;
  const from = Math.max(6, root);
  const slot = top - (hole / 2) * Math.sqrt(field.open);
  const opening =
    section.ports === 0 || field.open === 0
      ? ''
      : section.lateral
        ? `M${root} ${slot}V${top}H${mouth}V${slot}Z`
        : `M${from} 0V${top}H${from + hole * Math.sqrt(field.open)}V0Z`;
  return {
    wall,
    mouth,
    mouthLow,
    root,
    top,
    bottom,
    left: right - section.radial * scale,
    right,
    ringLow,
    ringTop: ringLow - section.height * scale,
    piston: `M0 0H${mouth}V${top}H${root}V${bottom}H${mouthLow}V${height}H0Z${opening}`,
  };
}

/** The longest arrow [drawing units]; those on the face stand in the wall. */
const longest = 40;
const wallWidth = longest + 2;

/** Arrows of the pressures round the ring; along both flanks they run from the outer edge's to the inner edge's. */
export function arrowsOn(
  { left, right, ringTop, ringLow }: Groove,
  { face }: Section,
  { cylinder, behind, land }: Moment,
  greatest: number,
): readonly string[] {
  const tall = ringLow - ringTop;
  const along = (share: number): number => left + share * (right - left);
  return [
    ...[0.1, 0.37, 0.63, 0.9].flatMap((share) => [
      arrow(along(share), ringTop, 0, 1, behind + share * (cylinder - behind), greatest),
      arrow(along(share), ringLow, 0, -1, behind + share * (land - behind), greatest),
    ]),
    ...[0.2, 0.5, 0.8].map((share) => arrow(left, ringTop + share * tall, 1, 0, behind, greatest)),
    ...[0.15, 0.4, 0.62, 0.88].map((share) =>
      arrow(right, ringTop + share * tall, -1, 0, share < 1 - face ? cylinder : land, greatest),
    ),
  ].filter((d) => d !== '');
}

/** One arrow with its head at x, y, pointing along dx, dy; empty where it would hardly be seen. */
function arrow(x: number, y: number, dx: number, dy: number, p: number, greatest: number): string {
  const long = (longest * Math.max(0, p)) / greatest;
  if (!(long >= 1)) return '';
  const head = Math.min(6, long);
  const n = (value: number): string => String(Math.round(value * 10) / 10);
  const [bx, by] = [x - dx * head, y - dy * head];
  return (
    `M${n(x - dx * long)} ${n(y - dy * long)}L${n(x)} ${n(y)}` +
    `M${n(bx - dy * head * 0.5)} ${n(by - dx * head * 0.5)}L${n(x)} ${n(y)}L${n(bx + dy * head * 0.5)} ${n(by + dx * head * 0.5)}`
  );
}

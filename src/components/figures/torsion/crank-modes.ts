import { nodesOf } from '../../../core/torsion/natural-modes.ts';
import { formatQuantity } from '../../../units/format.ts';
import { numberOf } from '../read.ts';
import type { FigureSet } from '../types.ts';

/** The modes that are drawn. */
export const modes = [
  { id: 'first', label: 'first mode', shape: 'firstShape', frequency: 'firstFrequency' },
  { id: 'second', label: 'second mode', shape: 'secondShape', frequency: 'secondFrequency' },
] as const;
export type Mode = (typeof modes)[number];
export type ModeId = Mode['id'];

/** The mode of that name. */
export function modeOf(id: ModeId): Mode {
  return modes.find((mode) => mode.id === id) ?? modes[0];
}

/** One point of a shape: its place in throws from the nose (the hub at 0), and its swing. */
export interface Swing {
  readonly place: number;
  readonly swing: number;
}

/** A mode as it is drawn: swings beside the greatest of the crank itself, from hub to flywheel. */
export interface DrawnMode {
  /** [Hz] */
  readonly frequency: number;
  readonly crank: readonly Swing[];
  /** Swing of the damper’s ring in the same measure; undefined where it is held fast. */
  readonly ring: number | undefined;
  /** Places where the crank stands still. */
  readonly nodes: readonly number[];
}

/** A mode of one set; undefined while it has no result. */
export function drawnMode({ output }: FigureSet, id: ModeId): DrawnMode | undefined {
  const mode = modeOf(id);
  const frequency = numberOf(output, mode.frequency);
  const shape = output?.[mode.shape];
  if (frequency === undefined || typeof shape !== 'object' || !('x' in shape)) return undefined;
  const all = Array.from(shape.x, (place, i) => ({ place, swing: shape.y[i] ?? 0 }));
  const crank = all.filter(({ place }) => place >= 0);
  // The side to which the nose swings is drawn upwards.
  const most =
    Math.max(...crank.map(({ swing }) => Math.abs(swing))) * (Math.sign(crank[0]?.swing ?? 1) || 1);
  const scaled = crank.map(({ place, swing }) => ({ place, swing: swing / most }));
  const ring = all.find(({ place }) => place < 0);
  return {
    frequency,
    crank: scaled,
    ring: ring && ring.swing / most,
    nodes: nodesOf(scaled.map(({ swing }) => swing)),
  };
}

/** A frequency [Hz] as the figure says it. */
export function hertz(frequency: number): string {
  return formatQuantity(frequency, 'Hz', { significant: 4 });
}

/** What stands at a place of the crank: the hub at 0, throws, and the flywheel at the end. */
export function placeName(place: number, last: number): string {
  if (place === 0) return 'hub';
  return place === last ? 'flywheel' : `throw ${place}`;
}

/** Where a node lies, in words. */
export function nodeWords(node: number, last: number): string {
  const before = Math.floor(node);
  if (node === before) return `at ${placeName(before, last)}`;
  return `between ${placeName(before, last)} and ${placeName(before + 1, last)}`;
}

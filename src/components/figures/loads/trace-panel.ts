import { cylinderVolume } from '../../../core/stack/cylinder-volume.ts';
import { traceResults, type TraceResults } from '../../../core/loads/pressure-trace.ts';
import { numberOf } from '../read.ts';
import type { FigureSet, FigureWork } from '../types.ts';

/** A measured cycle as the figure draws it: crank angle [rad] from firing TDC, pressure [Pa]. */
export interface DrawnTrace {
  readonly angle: Float64Array;
  readonly pressure: Float64Array;
}

export type TracePanelProps = {
  work: FigureWork;
  /** Is given each cycle that could be read, and nothing when it is put away. */
  ontrace: (trace: DrawnTrace | undefined) => void;
};

/** The trace stands under a key of its own: it is no quantity of the notebook, and no link carries it. */
const key = 'throwbook/1/trace';
/** Longer texts are used but not kept: the numbers of the notebook need the room more. */
const longestKept = 1_000_000;

/** The text of the trace that was read last in this browser; empty when there is none. */
export function storedTrace(): string {
  try {
    return localStorage.getItem(key) ?? '';
  } catch {
    return '';
  }
}

/** Keeps the text for the next visit, or forgets it when it is empty; false when it could not be kept. */
export function keepTrace(text: string): boolean {
  try {
    localStorage.removeItem(key);
    if (text.length > longestKept) return false;
    if (text !== '') localStorage.setItem(key, text);
    return true;
  } catch {
    return false;
  }
}

/** What the trace amounts to in the cylinder of one set; undefined while that set has no dimensions. */
export function resultsIn(set: FigureSet, trace: DrawnTrace): TraceResults | undefined {
  const read = (name: string): number => numberOf(set.input, name) ?? Number.NaN;
  const geometry = {
    bore: read('bore'),
    stroke: read('stroke'),
    rodLength: read('rodLength'),
    compressionRatio: read('compressionRatio'),
  };
  if (Object.values(geometry).some(Number.isNaN)) return undefined;
  try {
    return traceResults(trace, cylinderVolume(geometry));
  } catch {
    return undefined;
  }
}

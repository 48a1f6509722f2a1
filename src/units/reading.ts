import type { Kind } from './kinds.ts';
import type { Refusal, Suggestion } from './say.ts';

/** What the parser knows about the field. Ranges in SI, both ends included. */
export interface ReadContext {
  readonly label: string;
  readonly kind: Kind;
  /** The unit id assumed for a bare number. */
  readonly unit: string;
  readonly usual?: readonly [number, number];
  readonly hard?: readonly [number, number];
  /** The units of the field itself, metric first; a bare number may have been meant in any of them. */
  readonly own?: readonly string[];
  /** What a reader may type here, each with its unit or in the first of `own`: for the end of a refusal. */
  readonly samples?: readonly string[];
}

/** A quantity understood. */
export interface Read {
  readonly ok: true;
  readonly si: number;
  /** The number in `unit`; BTDC is negative, `si` follows from the two. */
  readonly value: number;
  /** The unit id typed, or the one assumed. */
  readonly unit: string;
  readonly typedUnit: boolean;
  /**
   * One unit of the last digit typed, in `unit`: 3.480 → 0.001, 1 7/8 → 1/16, 6400 → 1 (trailing zeros
   * count as typed, since nothing tells a rounded 6400 from a counted one, and 1 claims least movement).
   */
  readonly step: number;
  /** How anything unusual was read: "1 7/8 in = 47.625 mm". */
  readonly echo?: string;
  /** What may have been meant instead; the value stands until the reader answers. */
  readonly question?: string;
  readonly suggestions: readonly Suggestion[];
}
export type Reading = Read | Refusal;

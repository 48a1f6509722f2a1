import { withinTurn } from '../../core/balance/unbalance-reading.ts';
import { direction, length, type Vector } from '../../core/balance/vectors.ts';
import type { Absent } from '../define.ts';

/** The angle [rad] of an arrow from 0 to less than a whole turn, or why there is none. */
export function angleOf(arrow: Vector, none: string): number | Absent {
  return length(arrow) > 0 ? withinTurn(direction(arrow)) : { absent: none };
}

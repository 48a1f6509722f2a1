// One door to all reading of what was typed.
export { readQuantity } from './quantity.ts';
export type { Read, ReadContext, Reading } from './reading.ts';
export type { Problem, Refusal, Suggestion } from './say.ts';
export { readList } from './list.ts';
export type { ReadMany, RefusedMany } from './list.ts';
export { readPlusMinus } from './plus-minus.ts';

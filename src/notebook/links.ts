/**
 * All that links, visits and files need of the notebook, and what puts one notebook in another's place: one module,
 * so that the browser fetches it as one when numbers come from outside or go there. Most readers of a page never
 * need it.
 */
export { admit } from './admit.ts';
export { replaceOnShelf } from './replace.ts';
export { share, shareJob } from './sharing.ts';
export { writeThen } from './then.ts';
export { arrive, countReplaced, overlaid, parseVisit, writeVisit } from './visit.ts';

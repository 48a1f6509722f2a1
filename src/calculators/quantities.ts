/**
 * The dictionary of quantities: one name for each, everywhere. A file a subject, or a few, so that a page
 * sends what it uses and little else; how each is measured stands in `notes.ts` beside it, which only the build reads.
 *
 * Ranges and shop uncertainties are a practitioner's judgement for road, performance and race petrol
 * engines from one to twelve cylinders: common practice, no source. Demo values are invented.
 */
export * from './motion/quantities.ts';
export * from './balance/quantities.ts';
export * from './balance/drilling.quantities.ts';
export * from './balance/planes.quantities.ts';
export * from './loads/quantities.ts';
export * from './rods/quantities.ts';
export * from './pins/quantities.ts';
export * from './rings/quantities.ts';
export * from './bearings/quantities.ts';
export * from './inertia/quantities.ts';
export * from './stack/quantities.ts';
export * from './torsion/quantities.ts';

/**
 * The dictionary of quantities: one name for each, everywhere. A file a subject, so that a page sends what
 * it uses and little else; how each is measured stands in `quantity-notes.ts`, which only the build reads.
 *
 * Ranges and shop uncertainties are a practitioner's judgement for road, performance and race petrol
 * engines from one to twelve cylinders: common practice, no source. Demo values are invented.
 */
export * from './quantities/cylinder.ts';
export * from './quantities/masses.ts';
export * from './quantities/weighing.ts';
export * from './quantities/speed.ts';
export * from './quantities/crank.ts';
export * from './quantities/inertia.ts';
export * from './quantities/readings.ts';
export * from './quantities/rings.ts';
export * from './quantities/pin.ts';
export * from './quantities/rod.ts';
export * from './quantities/bearing.ts';
export * from './quantities/burning.ts';
export * from './quantities/ring-gas.ts';
export * from './quantities/orifice.ts';

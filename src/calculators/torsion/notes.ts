import type { NotesOf } from '../quantity-notes.ts';
import type * as quantities from './quantities.ts';

/** How the quantities of this subject are measured. */
export const notes: NotesOf<typeof quantities> = {
  throwInertia: {
    measure:
      'From the page on rotating inertia: bare crank on the swing, with big ends and half of what goes up and down, shared among the throws. Of a split pin, each half.',
  },
  throwStiffness: {
    measure:
      'From a test in which one end is held and the other twisted, from the maker, or worked from the dimensions of a throw below.',
    note: 'A formula may be off by 10 to 30 per cent, and the frequency by half of that.',
  },
  hubInertia: { measure: 'Swing the hub without its ring, or take the maker’s figure.' },
  ringStiffness: {
    measure:
      'From the maker of the damper: as a stiffness, or from the frequency that the ring is tuned to. Rubber is stiffer cold and at high frequency, and ages.',
    note: 'On the first sheet it may be left empty: ring and hub turn as one then, as with a solid hub.',
  },
  noseStiffness: {
    measure:
      'As the stiffness of a throw: nose, half a main journal and one web. Keyways soften it.',
  },
  flangeStiffness: {
    measure: 'As the stiffness of a throw: one web, the rear main journal, the flange.',
  },
  firingOrder: {
    measure:
      'Off the camshaft card, all cylinders once: 1-3-4-2. Left empty, an order usual for the layout is taken.',
    note: 'Which bank is counted first is found from the order itself.',
  },
  cylinderNumbering: {
    measure: 'From the maker’s handbook. On an engine with one bank both are the same.',
  },
  mainLength: { measure: 'Caliper, from web to web.' },
  crankpinLength: { measure: 'Caliper, from web to web, both rods’ places together.' },
  mainBore: { measure: 'Caliper. 0 where the journal is solid; thin oil drillings do not count.' },
  crankpinBore: { measure: 'Caliper. 0 where the pin is solid.' },
  crankWebThickness: { measure: 'Caliper, beside the pin; the mean where it tapers.' },
  crankWebWidth: {
    measure:
      'Caliper, across the web halfway between pin and main journal, without the counterweight.',
  },
  crankShearModulus: {
    measure: 'From a data sheet: steel 79 to 82 GPa, nodular iron 62 to 68 GPa.',
  },
  mainInertia: { measure: 'From the first calculator of this page: what is felt at the hub.' },
  mainFrequency: {
    measure: 'From the first calculator of this page, or measured with the ring off.',
  },
  ringInertia: { measure: 'Whole damper less its hub, both swung; or the maker’s figure.' },
  lineInertias: {
    measure: 'From the nose to the flywheel, two to ten, with semicolons between them.',
  },
  lineStiffnesses: { measure: 'One fewer than inertias: the first joins the first two.' },
  trialFrequency: { measure: 'Chosen. At a natural frequency no torque is left.' },
};

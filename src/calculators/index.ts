import { benchSwing } from './bench-swing.ts';
import { bearingClearance } from './bearing-clearance.ts';
import { bearingCrush } from './bearing-crush.ts';
import { bobweightError } from './bobweight-error.ts';
import { bobweightImplied } from './bobweight-implied.ts';
import { bobweight } from './bobweight.ts';
import { columnBuckling } from './column-buckling.ts';
import { crankOverlap } from './crank-overlap.ts';
import { cylinderPressure } from './cylinder-pressure.ts';
import { gasPort } from './gas-port.ts';
import { inertiaThroughGears } from './inertia-through-gears.ts';
import { isoFit } from './iso-fit.ts';
import { journalSizes } from './journal-sizes.ts';
import { orificeFlow } from './orifice-flow.ts';
import { partialBalance } from './partial-balance.ts';
import { pistonMotion } from './piston-motion.ts';
import { reversalLoad } from './reversal-load.ts';
import { rodSwing } from './rod-swing.ts';
import { ringPack } from './ring-pack.ts';
import { ringSecond } from './ring-second.ts';
import { ringTension } from './ring-tension.ts';
import { rodMaterials } from './rod-materials.ts';
import { rodShank } from './rod-shank.ts';
import { rodWeighing } from './rod-weighing.ts';
import { rotatingInertia } from './rotating-inertia.ts';
import { speedRipple } from './speed-ripple.ts';
import { wristPin } from './wrist-pin.ts';

/** Every calculator of the site by its id. For the build, tests and plain Node; pages fetch only their own. */
export const calculators = {
  'piston-motion': pistonMotion,
  'rod-weighing': rodWeighing,
  bobweight,
  'partial-balance': partialBalance,
  'bobweight-implied': bobweightImplied,
  'bobweight-error': bobweightError,
  'reversal-load': reversalLoad,
  'crank-overlap': crankOverlap,
  'cylinder-pressure': cylinderPressure,
  'journal-sizes': journalSizes,
  'iso-fit': isoFit,
  'bearing-clearance': bearingClearance,
  'bearing-crush': bearingCrush,
  'rotating-inertia': rotatingInertia,
  'inertia-through-gears': inertiaThroughGears,
  'speed-ripple': speedRipple,
  'bench-swing': benchSwing,
  'rod-swing': rodSwing,
  'ring-tension': ringTension,
  'ring-second': ringSecond,
  'ring-pack': ringPack,
  'wrist-pin': wristPin,
  'rod-shank': rodShank,
  'column-buckling': columnBuckling,
  'rod-materials': rodMaterials,
  'gas-port': gasPort,
  'orifice-flow': orificeFlow,
} as const;

import { benchSwing } from './inertia/bench-swing.ts';
import { bearingClearance } from './bearings/bearing-clearance.ts';
import { bearingCrush } from './bearings/bearing-crush.ts';
import { bobweightChange } from './balance/bobweight-change.ts';
import { bobweightError } from './balance/bobweight-error.ts';
import { bobweightImplied } from './balance/bobweight-implied.ts';
import { bobweight } from './balance/bobweight.ts';
import { columnBuckling } from './rods/column-buckling.ts';
import { crankLayout } from './balance/crank-layout.ts';
import { counterweightDrilling } from './balance/counterweight-drilling.ts';
import { crankOverlap } from './bearings/crank-overlap.ts';
import { crankTorsion } from './torsion/crank-torsion.ts';
import { damperTuning } from './torsion/damper-tuning.ts';
import { shaftLine } from './torsion/shaft-line.ts';
import { throwStiffness } from './torsion/throw-stiffness.ts';
import { cylinderPressure } from './loads/cylinder-pressure.ts';
import { factorLeft } from './balance/factor-left.ts';
import { gasPort } from './rings/gas-port.ts';
import { heavyMetal } from './balance/heavy-metal.ts';
import { inertiaThroughGears } from './inertia/inertia-through-gears.ts';
import { isoFit } from './bearings/iso-fit.ts';
import { journalSizes } from './bearings/journal-sizes.ts';
import { orificeFlow } from './rings/orifice-flow.ts';
import { outsideMasses } from './balance/outside-masses.ts';
import { partMatching } from './balance/part-matching.ts';
import { partialBalance } from './balance/partial-balance.ts';
import { pistonMotion } from './motion/piston-motion.ts';
import { planeTransfer } from './balance/plane-transfer.ts';
import { reversalLoad } from './loads/reversal-load.ts';
import { rodSwing } from './inertia/rod-swing.ts';
import { residualUnbalance } from './balance/residual-unbalance.ts';
import { ringPack } from './rings/ring-pack.ts';
import { ringSecond } from './rings/ring-second.ts';
import { ringTension } from './rings/ring-tension.ts';
import { rodMaterials } from './rods/rod-materials.ts';
import { rodShank } from './rods/rod-shank.ts';
import { rodWeighing } from './rods/rod-weighing.ts';
import { rotatingInertia } from './inertia/rotating-inertia.ts';
import { shakingForces } from './balance/shaking-forces.ts';
import { secondSpin } from './balance/second-spin.ts';
import { speedRipple } from './inertia/speed-ripple.ts';
import { unbalanceFloor } from './balance/unbalance-floor.ts';
import { unbalanceReading } from './balance/unbalance-reading.ts';
import { wristPin } from './pins/wrist-pin.ts';
import { rodAngularity } from './motion/rod-angularity.ts';

/** Every calculator of the site by its id. For the build, tests and plain Node; pages fetch only their own. */
export const calculators = {
  'crank-layout': crankLayout,
  'piston-motion': pistonMotion,
  'rod-weighing': rodWeighing,
  bobweight,
  'part-matching': partMatching,
  'partial-balance': partialBalance,
  'shaking-forces': shakingForces,
  'bobweight-implied': bobweightImplied,
  'residual-unbalance': residualUnbalance,
  'unbalance-floor': unbalanceFloor,
  'bobweight-error': bobweightError,
  'plane-transfer': planeTransfer,
  'bobweight-change': bobweightChange,
  'outside-masses': outsideMasses,
  'unbalance-reading': unbalanceReading,
  'counterweight-drilling': counterweightDrilling,
  'second-spin': secondSpin,
  'heavy-metal': heavyMetal,
  'crank-torsion': crankTorsion,
  'throw-stiffness': throwStiffness,
  'damper-tuning': damperTuning,
  'shaft-line': shaftLine,
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
  'factor-left': factorLeft,
  'gas-port': gasPort,
  'orifice-flow': orificeFlow,
  'rod-angularity': rodAngularity,
} as const;

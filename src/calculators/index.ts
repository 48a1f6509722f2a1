import { bobweightError } from './bobweight-error.ts';
import { bobweightImplied } from './bobweight-implied.ts';
import { bobweight } from './bobweight.ts';
import { crankOverlap } from './crank-overlap.ts';
import { partialBalance } from './partial-balance.ts';
import { pistonMotion } from './piston-motion.ts';
import { reversalLoad } from './reversal-load.ts';
import { rodWeighing } from './rod-weighing.ts';

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
} as const;

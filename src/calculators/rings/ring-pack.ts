import { packLoad } from '../../core/rings/ring-tension.ts';
import { above } from '../../core/refuse.ts';
import { defineCalculator, optional } from '../define.ts';
import {
  benchFriction,
  oilRingTension,
  packDrag,
  ring1Tension,
  ring2Tension,
} from '../quantities.ts';
import { force, maybe, percent, ratio } from '../output.ts';
import { is } from '../step.ts';

/** What a whole ring pack presses and drags on the bench, from measured tensions. */
export const ringPack = defineCalculator({
  id: 'ring-pack',
  title: 'Ring pack: tension and ring drag',
  purpose: 'The sum of the measured tensions, and the pull it takes to move the ringed piston.',
  asks: ['ring1Tension', 'ring2Tension', 'oilRingTension', 'benchFriction', 'packDrag'],
  answers: ['pull', 'tensionSum', 'wallForce', 'oilShare', 'impliedFriction'],
  inputs: {
    ring1Tension,
    ring2Tension,
    oilRingTension,
    benchFriction,
    packDrag: optional(packDrag),
  },
  outputs: {
    pull: force('F_pull', 'Ring drag expected on the bench', {
      phrase: 'The ring drag expected on the bench',
      main: true,
    }),
    tensionSum: force('ΣF_t', 'Sum of the tangential forces', {
      phrase: 'The sum of the tangential forces',
      main: true,
    }),
    wallForce: force('F_w', 'Force on the bore, added up all round'),
    oilShare: percent('q_3', 'Share of the oil ring', { phrase: 'The oil ring’s share' }),
    impliedFriction: maybe(ratio('μ_i', 'Friction coefficient that the measured pull implies')),
  },
  compute: ({ ring1Tension, ring2Tension, oilRingTension, benchFriction, packDrag }) => {
    const load = packLoad({ ring1Tension, ring2Tension, oilRingTension }, benchFriction);
    return {
      ...load,
      impliedFriction:
        packDrag === undefined
          ? { absent: 'enter the measured pull' }
          : above({ packDrag }, 'packDrag') / load.wallForce,
    };
  },
  steps: {
    tensionSum: is(
      'ring1Tension + ring2Tension + oilRingTension',
      'All measured, the oil ring complete with its expander.',
    ),
    wallForce: is(
      '2 * pi * tensionSum',
      'Each ring presses 2F_t/(d h) on the area π d h: diameter and width cancel.',
    ),
    pull: is('benchFriction * wallForce', 'Friction takes its share of that force.'),
    oilShare: is('oilRingTension / tensionSum', 'Of all tension, the oil ring’s.'),
    impliedFriction: is(
      'packDrag / wallForce',
      'Read backwards: the coefficient that the spring scale found.',
    ),
  },
  limits: [
    {
      id: 'boundary',
      holds: (_, { impliedFriction }) =>
        typeof impliedFriction !== 'number' || (impliedFriction >= 0.08 && impliedFriction <= 0.2),
      say: 'The measured pull implies a friction coefficient outside 0.08 to 0.20, which is unusual in an oiled bore. Look for a dry bore, a skirt that binds, a pull out of line, or the piston’s weight counted in.',
    },
  ],
  validity: [],
  assumptions: [
    'The piston’s weight and the drag of its skirt are not in the pull. Pull level, or take the weight off the reading.',
    'The coefficient of a slow pull by hand is that of a film squeezed to nothing. In a running engine the mean over the cycle is a fraction of it and changes with speed, oil and finish, so a bench pull compares packs and does not give kilowatts.',
    'No gas: on the compression and power strokes gas presses the top ring far harder than its spring.',
  ],
  cautions: ['rings'],
  sources: ['piston-ring-manual-2008', 'khurmi-gupta-machine-design-2005'],
  sweep: { input: 'oilRingTension', output: 'pull' },
  solve: { input: 'oilRingTension', output: 'pull' },
  exercise: {
    ask: 'pull',
    tolerance: 0.02,
    given: { ring1Tension: 0.2, ring2Tension: 0.2, oilRingTension: 0.2 },
  },
});

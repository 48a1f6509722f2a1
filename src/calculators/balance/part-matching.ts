import { spreadOf } from '../../core/balance/matching-search.ts';
import { depthOfCut, takeOff } from '../../core/balance/take-off.ts';
import { defineCalculator, optional, type Series } from '../define.ts';
import { axis, curve, length, mass, maybe } from '../output.ts';
import {
  bigEndMasses,
  cutArea,
  cutDensity,
  partBanks,
  pinMasses,
  pistonMasses,
  ringMasses,
  rodsPerPin,
  scaleResolution,
  smallEndMasses,
  targetSpread,
} from '../quantities.ts';
import { matchingOf, pinsOf } from './matched.ts';
import { steps } from './part-matching.steps.ts';

const bySet = axis('count', 'i', 'Set, by its piston');

/** A number of each set, over the sets counted from 1; none of a kind that was not weighed. */
function placed(numbers: readonly number[] = [], from = 0): Series {
  return { x: numbers.map((_, set) => set + 1), y: numbers.map((number) => number + from) };
}

/** Which piston, pin, rings and rod go together, what is left to take off, and how deep a cut that is. */
export const partMatching = defineCalculator({
  id: 'part-matching',
  title: 'Matching the parts',
  purpose: 'Which piston, pin and rod go together so that all sets weigh alike, and what is left.',
  pace: 'idle',
  asks: ['pistonMasses', 'pinMasses', 'smallEndMasses', 'bigEndMasses', 'targetSpread'],
  answers: ['spread', 'listedSpread', 'unproved', 'mostOff', 'cutDepth', 'pinSpread'],
  inputs: {
    pistonMasses,
    pinMasses: optional(pinMasses),
    smallEndMasses: optional(smallEndMasses),
    ringMasses: optional(ringMasses),
    bigEndMasses: optional(bigEndMasses),
    targetSpread,
    scaleResolution,
    cutArea,
    cutDensity,
    rodsPerPin,
    partBanks,
  },
  outputs: {
    spread: mass('Δm_set', 'Spread of the sets, matched', {
      phrase: 'The spread of the matched sets',
      main: true,
    }),
    listedSpread: mass('Δm_list', 'Spread of the sets as listed'),
    leastSpread: mass('Δm_least', 'No way of putting them together is below'),
    unproved: mass('Δm_open', 'The spread may be above the least possible by'),
    heaviest: mass('m_max', 'Heaviest set'),
    lightest: mass('m_min', 'Lightest set'),
    mostOff: mass('m_off', 'Most to take off one set', {
      phrase: 'The most that must come off one set',
      main: true,
    }),
    cutDepth: length('h_cut', 'Depth of that cut'),
    pinSpread: maybe(mass('Δm_pin', 'Big ends: spread from pin to pin')),
    totals: curve(bySet, axis('mass', 'm_i', 'Mass of the set, matched')),
    pinOfSet: curve(bySet, axis('count', 'j', 'Its wrist pin, by place')),
    rodOfSet: curve(bySet, axis('count', 'k', 'Its rod, by place')),
    ringsOfSet: curve(bySet, axis('count', 'l', 'Its rings and locks, by place')),
  },
  compute(input) {
    const matching = matchingOf(input);
    const { totals, spread, listed, bound, orders } = matching;
    const pins = pinsOf(input, matching);
    const mostOff = Math.max(...takeOff(totals, input));
    return {
      spread,
      listedSpread: spreadOf(listed),
      leastSpread: bound,
      unproved: spread - bound,
      heaviest: Math.max(...totals),
      lightest: Math.min(...totals),
      mostOff,
      cutDepth: depthOfCut(mostOff, input),
      pinSpread: 'absent' in pins ? pins : spreadOf(pins.map(({ total }) => total)),
      totals: placed(totals),
      pinOfSet: placed(orders.pinMasses, 1),
      rodOfSet: placed(orders.smallEndMasses, 1),
      ringsOfSet: placed(orders.ringMasses, 1),
    };
  },
  steps,
  limits: [
    {
      id: 'proved',
      holds: (_input, { unproved }) => unproved === 0,
      say: 'The best found, and not proved least: there are too many ways to put these parts together for all to be tried. The results say by how much it may be above the least possible.',
    },
    {
      id: 'finer-than-the-scale',
      holds: (input) => input.targetSpread >= input.scaleResolution,
      say: 'The spread wanted is less than one division of the scale. What is taken off for it cannot be weighed.',
    },
    {
      id: 'finer-than-a-set',
      holds: (_input, { mostOff, lightest }) => mostOff <= lightest / 50,
      say: 'One set is heavier than the lightest by more than a fiftieth. Look for a part of another kind, or a number typed wrong, before metal is taken off.',
    },
  ],
  validity: [
    {
      id: 'sets',
      label: 'Sets',
      symbol: 'n',
      kind: 'count',
      of: (input) => input.pistonMasses.length,
      possible: [1, 16],
    },
  ],
  assumptions: [
    'One part of each list goes to each cylinder, and any part fits any cylinder unless it is said that pistons and rods keep to their bank. A cap stays with its rod, so both ends of a rod go together.',
    'What is matched is what goes up and down in the bore. Big ends turn with the crank; they are matched for themselves, by choosing the two rods of a pin.',
    'Two lists are solved by sorting, which is exact. With three and more a search is made; then all ways to a smaller spread are tried as long as they are few enough. Eight of each in three lists are always settled.',
    'Every mass is taken as read. A set of three parts that were each read to a tenth of a gram is known to about a tenth itself, and small ends repeat less well than that.',
    'Metal is taken off by a cut with straight walls. A rounded pad is cut deeper for the same mass.',
    'The sets are matched to the lightest, since mass is taken off and not put on. Whether and where a part may be lightened is for its maker to say.',
  ],
  cautions: ['weighing'],
  sources: [],
  sweep: { input: 'targetSpread', output: 'cutDepth' },
  solve: { input: 'cutArea', output: 'cutDepth' },
  exercise: {
    ask: 'listedSpread',
    tolerance: 0.01,
    given: { pistonMasses: 0.05, pinMasses: 0.05, smallEndMasses: 0.05 },
  },
});

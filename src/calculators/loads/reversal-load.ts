import {
  deadCentreAcceleration,
  equalPullSpeed,
  pullFactors,
  suctionForce,
  type PullFactors,
} from '../../core/loads/reversal-load.ts';
import { atLeast } from '../../core/refuse.ts';
import { defineCalculator, type Absent } from '../define.ts';
import {
  bigEndMass,
  bore,
  capMass,
  commonSpeed,
  crankcasePressure,
  lockMass,
  maxSpeed,
  missedShiftSpeed,
  overrunPressure,
  pinMass,
  pistonMass,
  ringMass,
  rodLength,
  rodMassAbove,
  shankSection,
  shellMass,
  smallEndMass,
  stroke,
} from '../quantities.ts';
import { reversalSteps } from './reversal-load.steps.ts';
import { acceleration, axis, crankSpeed, curve, load, mass, maybe, percent } from '../output.ts';
import { throwRatio } from '../motion/throw-ratio.shared.ts';

/** Points of the curve, and how far past the greater of the two speeds it runs. */
const curvePoints = 61;
const beyond = 1.15;
/** [rad/s] The curve's length where both speeds are zero: about 1000 turns a minute. */
const shortest = 105;

/** The candidate's speed of equal load at one section, from both sets' inputs. */
function equalSpeed(
  baseline: { readonly factor: number; readonly speed: number },
  own: number,
): number | Absent {
  return (
    equalPullSpeed(baseline.factor, baseline.speed, own) ?? {
      absent: 'nothing hangs on this section in the candidate set',
    }
  );
}

export const reversalLoad = defineCalculator({
  id: 'reversal-load',
  title: 'Reversal load',
  purpose:
    'How hard the moving parts pull on each section when the piston turns at overlap TDC with no gas pressing back.',
  asks: ['maxSpeed', 'stroke', 'rodLength', 'pistonMass', 'pinMass', 'smallEndMass'],
  answers: [
    'partingPull',
    'commonPull',
    'missedShiftPull',
    'bossPull',
    'shankPull',
    'crankpinPull',
  ],
  inputs: {
    maxSpeed,
    missedShiftSpeed,
    commonSpeed,
    stroke,
    rodLength,
    bore,
    pistonMass,
    ringMass,
    lockMass,
    pinMass,
    smallEndMass,
    bigEndMass,
    shellMass,
    capMass,
    shankSection,
    rodMassAbove,
    crankcasePressure,
    overrunPressure,
  },
  outputs: {
    partingPull: load(
      'F_part',
      'Joint load: pull across the parting line (rod-bolt load, both bolts)',
      {
        phrase: 'At each set’s own highest speed the pull across the parting line',
        main: true,
      },
    ),
    commonPull: load('F_com', 'Joint load at the common speed', {
      phrase: 'With both sets at the common speed it',
    }),
    missedShiftPull: load('F_miss', 'The same at the over-rev speed', {
      phrase: 'At the over-rev speed it',
    }),
    missedShiftExcess: maybe(percent('e_miss', 'What the over-rev adds')),
    bossPull: load('F_boss', 'Pull on the piston bosses'),
    eyePull: load('F_eye', 'Pull on the small-end eye', {
      phrase: 'The pull on the small-end eye, each set at its own highest speed,',
    }),
    shankPull: load('F_beam', 'Pull through the beam section'),
    reciprocatingPull: load('F_rec', 'Pull of the reciprocating mass'),
    crankpinPull: load('F_pin', 'Pull on the crankpin', { carries: 'bearingLoad' }),
    suction: load('F_suc', 'What the overrun vacuum adds'),
    suctionShare: maybe(percent('s_suc', 'The same as a share of the eye pull')),
    eyePullClosed: load('F_eye,cl', 'Eye pull on the overrun'),
    partingPullClosed: load('F_part,cl', 'Joint load on the overrun'),
    bottomPush: load('F_BDC', 'Push of the reciprocating mass at BDC'),
    reciprocating: mass('m_rec', 'Reciprocating mass', { phrase: 'The reciprocating mass' }),
    accelerationTop: acceleration('a_TDC', 'Piston acceleration at TDC', {
      alsoGravity: true,
    }),
    accelerationBottom: acceleration('a_BDC', 'Piston acceleration at BDC, upward', {
      alsoGravity: true,
    }),
    pullCurve: curve(
      axis('angularSpeed', 'n', 'Crank speed'),
      axis('force', 'F_part', 'Pull across the parting line'),
      'Parting-line pull against speed',
    ),
  },
  compute: (input) => {
    const perSquare = pullFactors(input, input);
    const acceleration = deadCentreAcceleration(input);
    const square = atLeast(input, 'maxSpeed') ** 2;
    const missed = atLeast(input, 'missedShiftSpeed');
    const common = atLeast(input, 'commonSpeed');
    const suction = suctionForce(input);
    const reciprocating =
      input.pistonMass + input.ringMass + input.lockMass + input.pinMass + input.smallEndMass;
    const eyePull = perSquare.eye * square;
    const partingPull = perSquare.parting * square;
    const longest = beyond * Math.max(input.maxSpeed, missed) || shortest;
    const speeds = Array.from({ length: curvePoints }, (_, i) => (longest * i) / (curvePoints - 1));
    return {
      partingPull,
      commonPull: perSquare.parting * common ** 2,
      missedShiftPull: perSquare.parting * missed ** 2,
      missedShiftExcess:
        input.maxSpeed > 0 ? (missed / input.maxSpeed) ** 2 - 1 : { absent: 'the redline is zero' },
      bossPull: perSquare.boss * square,
      eyePull,
      shankPull: perSquare.shank * square,
      reciprocatingPull: perSquare.reciprocating * square,
      crankpinPull: perSquare.crankpin * square,
      suction,
      suctionShare:
        eyePull > 0 ? suction / eyePull : { absent: 'nothing pulls on the eye to compare with' },
      eyePullClosed: eyePull + suction,
      partingPullClosed: partingPull + suction,
      bottomPush: reciprocating * acceleration.bottom * square,
      reciprocating,
      accelerationTop: acceleration.top * square,
      accelerationBottom: acceleration.bottom * square,
      pullCurve: { x: speeds, y: speeds.map((speed) => perSquare.parting * speed ** 2) },
    };
  },
  comparisons: {
    equalLoadSpeed: maybe(
      crankSpeed('n_part', 'Candidate’s speed at the baseline’s parting-line pull', {
        phrase:
          'The speed at which the candidate’s parting line carries what the baseline’s carries at its highest',
        main: true,
      }),
    ),
    equalEyeSpeed: maybe(crankSpeed('n_eye', 'Candidate’s speed at the baseline’s eye pull')),
    equalReciprocatingSpeed: maybe(
      crankSpeed('n_rec', 'Candidate’s speed at the baseline’s pull of the reciprocating mass'),
    ),
  },
  compare: ({ baseline, candidate }) => {
    const before = pullFactors(baseline.input, baseline.input);
    const after = pullFactors(candidate.input, candidate.input);
    const speed = baseline.input.maxSpeed;
    const at = (section: keyof PullFactors) =>
      equalSpeed({ factor: before[section], speed }, after[section]);
    return {
      equalLoadSpeed: at('parting'),
      equalEyeSpeed: at('eye'),
      equalReciprocatingSpeed: at('reciprocating'),
    };
  },
  steps: reversalSteps,
  limits: [
    {
      id: 'missed-shift-above',
      holds: ({ maxSpeed, missedShiftSpeed }) => missedShiftSpeed >= maxSpeed,
      say: 'The over-rev speed is below the redline, so it is not the worst case.',
    },
    {
      id: 'suction-pulls',
      holds: (_, { suction }) => suction >= 0,
      say: 'The cylinder’s pressure is above the crankcase’s: with these two numbers a closed throttle takes load off.',
    },
    {
      id: 'section-in-upper-half',
      holds: ({ shankSection, rodLength }) => shankSection <= rodLength / 2,
      say: 'The beam section lies in the lower half of the rod, where taking the metal above it at half way is too rough.',
    },
    {
      id: 'rod-metal-fits',
      holds: ({ rodMassAbove, smallEndMass, shankSection, rodLength }) =>
        shankSection > rodLength / 2 || rodMassAbove <= smallEndMass,
      say: 'The rod metal above the section is heavier than the whole small end, although the section lies in the upper half. Weigh or estimate it again.',
    },
  ],
  validity: [throwRatio],
  assumptions: [
    'The pin travels on a line through the crank’s axis. An offset e raises the pull along the rod at TDC by 1/cos² β with sin β = e/(L + r): 0.002 % for 0.8 mm, 0.6 % for 14 mm in the example engines.',
    'Overlap TDC at steady speed, no gas on the piston. A gas force at that moment would press the rod together and lower the pull.',
    'Closed throttle: the whole difference between crankcase and cylinder acts at TDC. While the exhaust valve is still open the cylinder is fuller than that, so the true addition lies between nothing and this.',
    'The rod counts as its two weighed ends. For the force on the crankpin this is exact.',
    'The cap counts as lying at the crankpin’s centre. Its own centre lies beyond, so that the parting line carries about 0.8 % more than shown for 30 mm on a rod of 142 mm.',
    'The rod metal above the beam section counts as lying half way from the pin to it. Anywhere else between the two it changes its own part by at most about 2 %, and the beam pull by less than half a per cent in the example engines.',
    'Stiff parts: no ringing of rod, crank or valve train, no friction of rings and skirt, no weight. The drag of a ring pack is 15 to 140 N (common practice, no source).',
    'The joint load is what pulls the joint apart, shared evenly by both sides here; the rod’s bend at full load does not let them do so exactly. It is not the load in the bolts: while the joint stays closed a tightened bolt gains only a small share of it.',
  ],
  cautions: ['reversal', 'running', 'twisting'],
  sources: ['khurmi-gupta-machine-design-2005', 'kolchin-demidov-1984'],
  sweep: { input: 'maxSpeed', output: 'partingPull' },
  solve: { input: 'pistonMass', output: 'partingPull' },
  exercise: {
    ask: 'partingPull',
    tolerance: 0.01,
    given: { maxSpeed: 0.15, stroke: 0.12, rodLength: 0.12, pistonMass: 0.2, pinMass: 0.2 },
    also: [
      { kind: 'number', ask: 'bossPull' },
      {
        kind: 'number',
        ask: 'suction',
        given: { bore: 0.12, crankcasePressure: 0.03, overrunPressure: 0.2 },
      },
      {
        kind: 'choice',
        ask: 'partingPull',
        given: { maxSpeed: 0.15, pistonMass: 0.25, stroke: 0.12 },
      },
      {
        kind: 'order',
        ask: 'commonPull',
        given: { pistonMass: 0.25, smallEndMass: 0.2, stroke: 0.12 },
      },
      { kind: 'read', ask: 'pullCurve', given: { stroke: 0.12, pistonMass: 0.2 } },
    ],
  },
});

import { greatestLeans, rodLean } from '../../core/motion/rod-angularity.ts';
import { defineCalculator, optional } from '../define.ts';
import { angle, ratio } from '../output.ts';
import { boreOffset, crankAngle, pinOffset, rodLength, stroke } from '../quantities.ts';
import { angle as angleStep, is, length, millimetres } from '../step.ts';
import { throwRatio } from './throw-ratio.shared.ts';

const inDegrees = { units: { ...millimetres, angle: 'deg' } } as const;

/** How far the rod leans, and what share of the force on the piston it turns against the wall. */
export const rodAngularity = defineCalculator({
  id: 'rod-angularity',
  title: 'Rod angularity',
  purpose:
    'How far the rod leans at most, and what share of the force along the bore it presses against the wall.',
  asks: ['stroke', 'rodLength', 'boreOffset', 'pinOffset', 'crankAngle'],
  answers: ['downLean', 'downThrust', 'upLean', 'upThrust', 'rodAngle', 'thrust'],
  inputs: {
    stroke,
    rodLength,
    boreOffset: optional(boreOffset),
    pinOffset: optional(pinOffset),
    crankAngle,
  },
  outputs: {
    downLean: angle('φ_d', 'Greatest rod angle on the downstroke', {
      phrase: 'The greatest rod angle on the downstroke',
      main: true,
    }),
    downThrust: ratio('q_d', 'Side thrust there, over the force along the bore', {
      phrase: 'The side thrust there, over the force along the bore,',
      main: true,
    }),
    upLean: angle('φ_u', 'Greatest rod angle on the upstroke'),
    upThrust: ratio('q_u', 'Side thrust there, over the force along the bore'),
    downAngle: angle('θ_d', 'Crank angle of the greatest lean, downstroke'),
    upAngle: angle('θ_u', 'Crank angle of the greatest lean, upstroke'),
    rodAngle: angle('φ', 'Rod angle at the chosen crank angle'),
    thrust: ratio('q', 'Side thrust at the chosen crank angle, over the force along the bore'),
  },
  compute: (input) => {
    const { down, up } = greatestLeans(input);
    const now = rodLean(input);
    return {
      downLean: down.lean,
      downThrust: down.thrust,
      upLean: up.lean,
      upThrust: up.thrust,
      downAngle: down.crankAngle,
      upAngle: up.crankAngle,
      rodAngle: now.lean,
      thrust: now.thrust,
    };
  },
  steps: {
    crankRadius: length('r', 'stroke / 2', 'The throw is half the stroke.', { units: millimetres }),
    offset: length(
      'e',
      'boreOffset - pinOffset',
      'How far the pin’s line passes to the right of the crank’s axis.',
      { units: millimetres },
    ),
    downLean: is(
      'asin((crankRadius - offset) / rodLength)',
      'The crank stands square to the bore: its throw, less the offset, is the short side of the triangle.',
      inDegrees,
    ),
    downThrust: is('tan(downLean)', 'What lies across over what lies along.', {
      units: { angle: 'deg' },
      source: 'khurmi-gupta-2009',
    }),
    upLean: is(
      'asin((crankRadius + offset) / rodLength)',
      'On the way up the offset adds what it took before.',
      inDegrees,
    ),
    upThrust: is('tan(upLean)', 'The same there.', { units: { angle: 'deg' } }),
    topAngle: angleStep(
      'ψ_TDC',
      'asin(offset / (rodLength + crankRadius))',
      'At TDC rod and crank lie in one line, tilted by the offset; angles count from there.',
      inDegrees,
    ),
    downAngle: is('pi / 2 - topAngle', 'Square to the bore, going down.', {
      units: { angle: 'deg' },
    }),
    upAngle: is('3 * pi / 2 - topAngle', 'Square to the bore, going up.', {
      units: { angle: 'deg' },
    }),
    rodAngle: is(
      'asin((crankRadius * sin(crankAngle + topAngle) - offset) / rodLength)',
      'At any other angle the rod must reach from the crankpin to the pin’s line.',
      inDegrees,
    ),
    thrust: is('tan(rodAngle)', 'And its thrust there.', { units: { angle: 'deg' } }),
  },
  limits: [],
  validity: [throwRatio],
  assumptions: [
    'Rigid parts and no clearances: the pin runs on a straight line.',
    'The force along the bore is gas and inertia together. The greatest side thrust of a running engine stands where their product with this ratio is greatest, which is not where the rod leans most.',
    'Friction at the pin and the rod’s own inertia are left out. The rod’s inertia adds a couple that a heavy rod at high speed makes felt.',
  ],
  cautions: [],
  sources: ['khurmi-gupta-2009', 'slider-crank-worksheet', 'sarkar-2002'],
  sweep: { input: 'rodLength', output: 'downThrust' },
  solve: { input: 'rodLength', output: 'downLean' },
  exercise: {
    ask: 'downLean',
    tolerance: 0.005,
    given: { stroke: 0.12, rodLength: 0.12 },
    also: [
      {
        kind: 'number',
        ask: 'rodAngle',
        given: { stroke: 0.12, rodLength: 0.12, crankAngle: 0.5 },
      },
      { kind: 'number', ask: 'thrust', given: { stroke: 0.12, rodLength: 0.12, crankAngle: 0.5 } },
    ],
  },
});

import {
  checkingLoad,
  compliance,
  crushOpening,
  hoopStress,
  interference,
  interferenceAt,
  looseTemperature,
  shellPressure,
  touchingCrush,
} from '../../core/bearings/bearing-fit.ts';
import { above } from '../../core/refuse.ts';
import { looseOrAbsent } from './bearing-clearance.shared.ts';
import { bearingCrushSteps } from './bearing-crush.steps.ts';
import { defineCalculator } from '../define.ts';
import {
  assemblyTemperature,
  coldStartTemperature,
  crushHeight,
  housingOutside,
  housingPoisson,
  rodExpansion,
  rodHousing,
  rodShellWall,
  rodShellWidth,
  rodTemperature,
  shellExpansion,
  shellModulus,
  youngsModulus,
} from '../quantities.ts';
import { contactPressure, force, length, load, maybe, stress, temperature } from '../output.ts';

/** What the crush of two half shells presses with, cold, in the shop and running, and what it costs. */
export const bearingCrush = defineCalculator({
  id: 'bearing-crush',
  title: 'Bearing crush',
  purpose:
    'How hard two half shells press against the big end, what that costs the joint, and what heat leaves of it.',
  asks: [
    'rodHousing',
    'housingOutside',
    'rodShellWall',
    'crushHeight',
    'youngsModulus',
    'rodTemperature',
  ],
  answers: ['pressureShop', 'pressureHot', 'pressureCold', 'interference', 'touching', 'opening'],
  inputs: {
    rodHousing,
    housingOutside,
    rodShellWall,
    rodShellWidth,
    crushHeight,
    youngsModulus,
    housingPoisson,
    shellModulus,
    rodExpansion,
    shellExpansion,
    assemblyTemperature,
    coldStartTemperature,
    rodTemperature,
  },
  outputs: {
    pressureShop: contactPressure('p_0', 'Pressure behind the shells, in the shop', {
      phrase: 'The pressure behind the shells',
      main: true,
    }),
    pressureHot: contactPressure('p_hot', 'The same, running', {
      phrase: 'With the rod at its running temperature it',
    }),
    pressureCold: contactPressure('p_cold', 'The same, at the coldest start'),
    interference: length('δ_0', 'Interference on the diameter'),
    shellHoop: stress('σ_sh', 'Mean hoop stress in the shell (tension positive)'),
    jointForce: load('F_cr', 'Clamp used up by the crush, each side', {
      phrase: 'The clamping force that the crush uses up at each parting face',
    }),
    touching: length('s_N,0', 'Crush height that just touches, running'),
    loose: maybe(temperature('T_loose', 'Rod temperature at which the shells go loose')),
    opening: length('Δ_cr', 'What the crush opens the bore by'),
    checkLoad: force('W_c', 'Checking load for one half shell'),
    shellBoreHoop: stress('σ_sh,i', 'Hoop stress at the shell’s bore'),
    shellContactHoop: stress('σ_sh,o', 'Hoop stress at the shell’s back'),
    housingHoop: stress('σ_h,i', 'Hoop stress at the housing’s bore'),
    housingOutsideHoop: stress('σ_h,o', 'Hoop stress at the housing’s outside'),
    housingGrowth: length('Δ_h', 'Housing stretched by the shells, on the diameter'),
  },
  compute: (input) => {
    const onDiameter = interference(input);
    const pressureShop = shellPressure(input, onDiameter);
    const hoop = hoopStress(input, pressureShop);
    return {
      pressureShop,
      pressureHot: shellPressure(input, interferenceAt(input, input.rodTemperature)),
      pressureCold: shellPressure(input, interferenceAt(input, input.coldStartTemperature)),
      interference: onDiameter,
      shellHoop: hoop.shell,
      jointForce: (pressureShop * input.rodHousing * above(input, 'rodShellWidth')) / 2,
      touching: touchingCrush(input, input.rodTemperature),
      loose: looseOrAbsent(looseTemperature(input)),
      opening: crushOpening(input),
      checkLoad: checkingLoad(input),
      shellBoreHoop: hoop.shellBore,
      shellContactHoop: hoop.shellContact,
      housingHoop: hoop.housingBore,
      housingOutsideHoop: hoop.housingOutside,
      housingGrowth: pressureShop * input.rodHousing * compliance(input).housing,
    };
  },
  steps: bearingCrushSteps,
  limits: [
    {
      id: 'loose',
      holds: (_, { pressureHot }) => pressureHot > 0,
      say: 'At its running temperature the rod has outgrown the crush: nothing presses the shells, and they can turn or fret.',
    },
    {
      id: 'low-pressure',
      holds: (_, { pressureHot, pressureShop }) => Math.min(pressureHot, pressureShop) >= 8e6,
      say: 'The pressure falls below about 8 MPa (1200 psi), which an article on crush gives as the least for a road engine of middling load. It is one writer’s figure; the shell maker’s word decides.',
    },
    {
      id: 'solid-shell',
      holds: ({ rodHousing, rodShellWall }) => rodShellWall <= rodHousing / 8,
      say: 'The wall is thicker than an eighth of the bore, so this is no thin shell; crush height is not how such a part is fitted.',
    },
  ],
  validity: [
    {
      id: 'ring',
      label: 'Outside over bore of the housing',
      symbol: 'q_h',
      kind: 'ratio',
      of: ({ housingOutside, rodHousing }) => housingOutside / rodHousing,
      possible: [1, 3],
    },
  ],
  assumptions: [
    'A big end counts as a closed, even ring. It has a thin cap, shoulders, bolts and notches, so that the pressure is good to 30 % at best. Between two sets of one shape the comparison is better than that.',
    'The crush is shared evenly all round. Friction between shell and housing keeps more of it near the parting line, unless the bolts are drawn up in steps.',
    'The shell is its steel back alone. A lining of 0.3 mm is a sixth of the wall and far softer, so the true pressure is up to about a tenth lower.',
    'Nothing yields. A shell that was squeezed past its yield keeps less crush when it is fitted again.',
    'Rod and shells have one temperature. A shell 10 K warmer than its rod presses with about 6 µm more on 50 mm.',
    'Poisson’s ratio of the shell’s back is 0.3. The moduli are those of the shop’s temperature; at 150 °C aluminium has lost about 5 %.',
  ],
  cautions: ['bearing'],
  sources: [
    'neale-tribology-handbook',
    'ugural-fenster-1981',
    'shigley-budynas-solutions',
    'kopeliovich-crush-height',
  ],
  sweep: { input: 'rodTemperature', output: 'pressureHot' },
  solve: { input: 'crushHeight', output: 'pressureHot' },
  exercise: {
    ask: 'jointForce',
    tolerance: 0.01,
    given: { crushHeight: 0.2, rodShellWidth: 0.12, housingOutside: 0.04 },
    also: [
      { kind: 'number', ask: 'interference', given: { crushHeight: 0.4 } },
      { kind: 'choice', ask: 'pressureShop', given: { crushHeight: 0.2, housingOutside: 0.05 } },
      { kind: 'order', ask: 'pressureShop', given: { crushHeight: 0.25, housingOutside: 0.05 } },
    ],
  },
});

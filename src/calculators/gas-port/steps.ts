import type { Step } from '../define.ts';

const millimetres = { length: 'mm', area: 'mm2', volume: 'mm3' } as const;

/** The working of the gas port: sizes first, then the balances that are integrated over the cycle. */
export const gasPortSteps: readonly Step[] = [
  {
    of: 'behindVolume',
    formula:
      'pi * (bore - 2 * ring1Radial - ringBackClearance) * ringBackClearance * (ring1Height + ringSideClearance)',
    say: 'Behind the ring lies a thin hollow cylinder: its mean girth, its thickness, its height.',
    units: millimetres,
  },
  {
    of: 'sideDoor',
    formula: 'pi * (bore - ring1Radial) * ringSideClearance',
    say: 'The side clearance runs all the way round, and so even a few hundredths make a big door.',
    units: millimetres,
  },
  {
    of: 'portDoor',
    tex: '\\q{portDoor} = \\q{portCount}\\,\\frac{\\pi}{4}\\,\\q{portDiameter}^2',
    say: 'Holes from the crown as full circles; half of that for half-round slots in the groove’s upper face.',
  },
  {
    of: 'slotFlow',
    symbol: 'q_side',
    kind: 'mass',
    tex: '\\q{slotFlow} = \\frac{\\pi (\\q{bore}-\\q{ring1Radial})\\,\\q{ringSideClearance}^3\\,(p_1^2-p_\\mathrm{b}^2)}{24\\,\\mu\\,l\\,RT}',
    say: 'Through the side clearance gas creeps as a laminar film, with the third power of the clearance; never more than the choked hole of the same area passes.',
    source: 'namazian-heywood-1982',
  },
  {
    of: 'holeFlow',
    symbol: 'q_hole',
    kind: 'mass',
    tex: '\\q{holeFlow} = \\q{dischargeCoefficient} A \\frac{p_1}{\\sqrt{RT}}\\,\\psi\\,(p_\\mathrm{b}/p_1)',
    say: 'Through ports and end gaps gas flows as through a hole. Below about half the pressure before it the hole is choked and passes no more.',
    source: 'heywood-1988',
  },
  {
    of: 'fillRate',
    symbol: 'p_b,t',
    kind: 'pressure',
    tex: '\\q{fillRate} = \\frac{\\mathrm{d}p_\\mathrm{b}}{\\mathrm{d}t} = \\frac{RT}{V_\\mathrm{b}}\\,(q_\\mathrm{side} + q_\\mathrm{po} - q_\\mathrm{below} - q_\\mathrm{gap})',
    say: 'What flows in less what flows out raises the pressure behind the ring; the second land has the same balance. The gas keeps the ring’s temperature.',
    source: 'furuhama-tada-1961',
  },
  {
    of: 'ringBalance',
    symbol: 'a_x',
    kind: 'acceleration',
    tex: 'm_\\mathrm{r}(a_\\mathrm{p} - \\q{ringBalance}) = F_\\mathrm{gas} + F_\\mathrm{fr}',
    say: 'Gas above and below, drag of the bore and inertia decide whether the ring sits on its lower flank, flies, or sits on its upper flank.',
  },
  {
    of: 'shortfall',
    tex: '\\q{shortfall} = \\max\\,(p_1 - p_\\mathrm{b})',
    say: 'Both balances are integrated over the four strokes until the cycle repeats. The greatest gap between the cylinder’s pressure and the pressure behind is the result.',
  },
  {
    of: 'tensionPressure',
    formula: '2 * ring1Tension / (bore * ring1Height)',
    say: 'The ring’s own spring, spread over the face.',
    units: { force: 'N', length: 'mm', pressure: 'MPa' },
    source: 'piston-ring-manual-2008',
  },
  {
    of: 'greatestGas',
    tex: '\\q{greatestGas} = \\max\\,(p_\\mathrm{b} - (1-\\q{faceFactor})\\,p_1 - \\q{faceFactor}\\,p_2)',
    say: 'Gas behind presses the ring out, gas on its face presses it back: the cylinder’s above the line of contact, the second land’s below.',
  },
  {
    of: 'frictionHigh',
    tex: '\\q{frictionHigh} = 0.12 \\oint (2\\pi \\q{ring1Tension} + \\pi \\q{bore} \\q{ring1Height}\\,p_\\mathrm{g})\\,|\\mathrm{d}s|',
    say: 'Radial force times a coefficient along the piston’s way. The coefficient changes along the stroke and is not known, so the work is a band from 0.02 to 0.12.',
  },
];

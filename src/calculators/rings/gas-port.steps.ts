import { acceleration, is, mass, millimetres, pressure, tex } from '../step.ts';

/** The working of the gas port: sizes first, then the balances that are integrated over the cycle. */
export const gasPortSteps = {
  behindVolume: is(
    'pi * (bore - 2 * ring1Radial - ringBackClearance) * ringBackClearance * (ring1Height + ringSideClearance)',
    'Behind the ring lies a thin hollow cylinder: its mean girth, its thickness, its height.',
    { units: millimetres },
  ),
  sideDoor: is(
    'pi * (bore - ring1Radial) * ringSideClearance',
    'The side clearance runs all the way round, and so even a few hundredths make a big door.',
    { units: millimetres },
  ),
  portDoor: is(
    tex('\\q{portDoor} = \\q{portCount}\\,\\frac{\\pi}{4}\\,\\q{portDiameter}^2'),
    'Holes from the crown as full circles; half of that for half-round slots in the groove’s upper face.',
  ),
  slotFlow: mass(
    'q_side',
    tex(
      '\\q{slotFlow} = \\frac{\\pi (\\q{bore}-\\q{ring1Radial})\\,\\q{ringSideClearance}^3\\,(p_1^2-p_\\mathrm{b}^2)}{24\\,\\mu\\,l\\,RT}',
    ),
    'Through the side clearance gas creeps as a laminar film, with the third power of the clearance; never more than the choked hole of the same area passes.',
    { source: 'namazian-heywood-1982' },
  ),
  holeFlow: mass(
    'q_hole',
    tex(
      '\\q{holeFlow} = \\q{dischargeCoefficient} A \\frac{p_1}{\\sqrt{RT}}\\,\\psi\\,(p_\\mathrm{b}/p_1)',
    ),
    'Through ports and end gaps gas flows as through a hole. Below about half the pressure before it the hole is choked and passes no more.',
    { source: 'heywood-1988' },
  ),
  fillRate: pressure(
    'p_b,t',
    tex(
      '\\q{fillRate} = \\frac{\\mathrm{d}p_\\mathrm{b}}{\\mathrm{d}t} = \\frac{RT}{V_\\mathrm{b}}\\,(q_\\mathrm{side} + q_\\mathrm{po} - q_\\mathrm{below} - q_\\mathrm{gap})',
    ),
    'What flows in less what flows out raises the pressure behind the ring; the second land has the same balance. The gas keeps the ring’s temperature.',
    { source: 'furuhama-tada-1961' },
  ),
  ringBalance: acceleration(
    'a_x',
    tex('m_\\mathrm{r}(a_\\mathrm{p} - \\q{ringBalance}) = F_\\mathrm{gas} + F_\\mathrm{fr}'),
    'Gas above and below, drag of the bore and inertia decide whether the ring sits on its lower flank, flies, or sits on its upper flank.',
  ),
  shortfall: is(
    tex('\\q{shortfall} = \\max\\,(p_1 - p_\\mathrm{b})'),
    'Both balances are integrated over the four strokes until the cycle repeats. The greatest gap between the cylinder’s pressure and the pressure behind is the result.',
  ),
  tensionPressure: is(
    '2 * ring1Tension / (bore * ring1Height)',
    'The ring’s own spring, spread over the face.',
    { units: millimetres, source: 'piston-ring-manual-2008' },
  ),
  greatestGas: is(
    tex(
      '\\q{greatestGas} = \\max\\,(p_\\mathrm{b} - (1-\\q{faceFactor})\\,p_1 - \\q{faceFactor}\\,p_2)',
    ),
    'Gas behind presses the ring out, gas on its face presses it back: the cylinder’s above the line of contact, the second land’s below.',
  ),
  frictionHigh: is(
    tex(
      '\\q{frictionHigh} = 0.12 \\oint (2\\pi \\q{ring1Tension} + \\pi \\q{bore} \\q{ring1Height}\\,p_\\mathrm{g})\\,|\\mathrm{d}s|',
    ),
    'Radial force times a coefficient along the piston’s way. The coefficient changes along the stroke and is not known, so the work is a band from 0.02 to 0.12.',
  ),
};

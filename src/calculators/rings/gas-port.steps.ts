import {
  acceleration,
  expansion,
  is,
  mass,
  millimetres,
  pressure,
  temperature,
  tex,
} from '../step.ts';
import { usual } from './gas-port.engine.ts';

/** The working of the gas port: sizes first, then the balances that are integrated over the cycle. */
export const gasPortSteps = {
  behindVolume: is(
    'pi * (bore - 2 * ring1Radial - ringBackClearance) * ringBackClearance * (ring1Height + ringSideClearance)',
    'Behind the ring lies a thin hollow cylinder: its mean girth, its thickness, its height.',
    { units: millimetres },
  ),
  sideDoor: is(
    'pi * (bore - ring1Radial) * ringSideClearance',
    'The side clearance runs all the way round, and so even a few hundredths of a millimetre make a large open area.',
    { units: millimetres },
  ),
  portDoor: is(
    'when(portKind == "crown", portCount * pi / 4 * portDiameter^2, portCount * pi / 8 * portDiameter^2)',
    'Holes from the crown as full circles; half of that for half-round slots in the groove’s upper face.',
    { units: millimetres },
  ),
  ringRate: expansion(
    'α_r,run',
    `when(given(ringExpansion), ringExpansion, ${String(usual.ringExpansion)})`,
    'How the rings grow with warmth: as entered, or as usual for iron and steel.',
  ),
  boreRate: expansion(
    'α_b,run',
    `when(given(boreExpansion), boreExpansion, ${String(usual.boreExpansion)})`,
    'How the bore grows.',
  ),
  wallTemperature: temperature(
    'T_b,run',
    `when(given(boreTemperature), boreTemperature, ${String(usual.boreTemperature)})`,
    'How warm the bore is.',
  ),
  hotGap1: is(
    'max(0, ring1Gap - pi * bore * (ringRate * (ringTemperature - 293.15) - boreRate * (wallTemperature - 293.15)))',
    'From 20 °C on the ring grows along its girth, and so does the bore; the end gap is what is left.',
    { units: { length: 'mm' } },
  ),
  hotGap2: is(
    'max(0, ring2Gap - pi * bore * (ringRate * ((ringTemperature + wallTemperature) / 2 - 293.15) - boreRate * (wallTemperature - 293.15)))',
    'The second ring likewise. It is taken half way between the top ring’s temperature and the bore’s.',
    { units: { length: 'mm' } },
  ),
  slotFlow: mass(
    'q_side',
    tex(
      '\\q{slotFlow} = \\frac{\\pi (\\q{bore}-\\q{ring1Radial})\\,(\\q{ringSideClearance}-x)^3\\,(p_1^2-p_\\mathrm{b}^2)}{24\\,\\mu\\,l\\,RT}',
      'balance',
    ),
    'Through the side clearance gas creeps as a laminar film, with the third power of what the ring, lifted by x, leaves of it; never more than the choked hole of the same area passes.',
    { source: 'namazian-heywood-1982' },
  ),
  holeFlow: mass(
    'q_hole',
    tex(
      '\\q{holeFlow} = \\q{dischargeCoefficient} A \\frac{p_1}{\\sqrt{RT}}\\,\\psi\\,(p_\\mathrm{b}/p_1)',
      'balance',
    ),
    'Through ports and end gaps gas flows as through a hole. Below about half the pressure before it the hole is choked and passes no more.',
    { source: 'heywood-1988' },
  ),
  fillRate: pressure(
    'p_b,t',
    tex(
      '\\q{fillRate} = \\frac{\\mathrm{d}p_\\mathrm{b}}{\\mathrm{d}t} = \\frac{RT}{\\q{behindVolume}}\\,(\\q{slotFlow} + \\q{holeFlow} - q_\\mathrm{below} - q_\\mathrm{gap})',
      'balance',
    ),
    'What flows in less what flows out raises the pressure behind the ring; the second land has the same balance. The gas keeps the ring’s temperature.',
    { source: 'furuhama-tada-1961' },
  ),
  ringBalance: acceleration(
    'a_x',
    tex(
      'm_\\mathrm{r}(a_\\mathrm{p} - \\q{ringBalance}) = F_\\mathrm{gas} + F_\\mathrm{fr}',
      'balance',
    ),
    'Gas above and below, drag of the bore and inertia decide whether the ring sits on its lower flank, flies, or sits on its upper flank.',
  ),
  shortfall: is(
    tex(
      '\\q{shortfall} = \\max\\,(p_1 - p_\\mathrm{b}),\\quad p_\\mathrm{b} = \\int \\q{fillRate}\\,\\mathrm{d}t,\\quad x = \\iint \\q{ringBalance}\\,\\mathrm{d}t^2',
      'balance',
    ),
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
      'balance',
    ),
    'Gas behind presses the ring out, gas on its face presses it back: the cylinder’s above the line of contact, the second land’s below.',
  ),
  gasOverTension: is('greatestGas / tensionPressure', 'The gas beside the ring’s own spring.'),
  frictionCompressionHigh: is(
    tex(
      '\\q{frictionCompressionHigh} = 0.12 \\int (2\\pi \\q{ring1Tension} + \\pi \\q{bore} \\q{ring1Height}\\,p_\\mathrm{g})\\,|\\mathrm{d}s|',
      'integral',
    ),
    'Radial force times a coefficient along the piston’s way over one stroke, and over the other three alike. The coefficient changes along the stroke and is not known, so the work is a band from 0.02 to 0.12.',
  ),
  frictionHigh: is(
    'frictionCompressionHigh + frictionPowerHigh + frictionExhaustHigh + frictionIntakeHigh',
    'All four strokes.',
  ),
  frictionLow: is('0.02 / 0.12 * frictionHigh', 'The other end of that band.'),
};

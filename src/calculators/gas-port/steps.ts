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
    tex: 'A_\\mathrm{po} = n_\\mathrm{po}\\frac{\\pi d_\\mathrm{po}^2}{4}',
    say: 'Holes from the crown as full circles; half of that for half-round slots in the groove’s upper face.',
  },
  {
    of: 'slotFlow',
    symbol: 'ṁ_side',
    kind: 'mass',
    tex: '\\dot m = \\frac{\\pi (B-a)\\,c^3\\,(p_1^2-p_\\mathrm{b}^2)}{24\\,\\mu\\,l\\,RT}',
    say: 'Through the side clearance gas creeps as a laminar film, with the third power of the clearance; never more than the choked hole of the same area passes.',
    source: 'namazian-heywood-1982',
  },
  {
    of: 'holeFlow',
    symbol: 'ṁ_hole',
    kind: 'mass',
    tex: '\\dot m = C_\\mathrm{d} A \\frac{p_1}{\\sqrt{RT}}\\,\\psi\\,(p_\\mathrm{b}/p_1)',
    say: 'Through ports and end gaps gas flows as through a hole. Below about half the pressure before it the hole is choked and passes no more.',
    source: 'heywood-1988',
  },
  {
    of: 'fillRate',
    symbol: 'dp_b/dt',
    kind: 'pressure',
    tex: '\\frac{\\mathrm{d}p_\\mathrm{b}}{\\mathrm{d}t} = \\frac{RT}{V_\\mathrm{b}}\\,(\\dot m_\\mathrm{side} + \\dot m_\\mathrm{po} - \\dot m_\\mathrm{below} - \\dot m_\\mathrm{gap})',
    say: 'What flows in less what flows out raises the pressure behind the ring; the second land has the same balance. The gas keeps the ring’s temperature.',
    source: 'furuhama-tada-1961',
  },
  {
    of: 'ringBalance',
    symbol: 'ẍ',
    kind: 'acceleration',
    tex: 'm_\\mathrm{r}(a_\\mathrm{p} - \\ddot x) = F_\\mathrm{gas} + F_\\mathrm{fr}',
    say: 'Gas above and below, drag of the bore and inertia decide whether the ring sits on its lower flank, flies, or sits on its upper flank.',
  },
  {
    of: 'shortfall',
    tex: '\\Delta p = \\max\\,(p_1 - p_\\mathrm{b})',
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
    tex: 'p_\\mathrm{g} = p_\\mathrm{b} - (1-\\kappa_\\mathrm{f})\\,p_1 - \\kappa_\\mathrm{f}\\,p_2',
    say: 'Gas behind presses the ring out, gas on its face presses it back: the cylinder’s above the line of contact, the second land’s below.',
  },
  {
    of: 'frictionHigh',
    tex: 'W = \\mu \\int 2\\pi F_\\mathrm{t} + \\pi B h\\,p_\\mathrm{g}\\ \\,|\\mathrm{d}s|',
    say: 'Radial force times a coefficient along the piston’s way. The coefficient changes along the stroke and is not known, so the work is a band from 0.02 to 0.12.',
  },
];

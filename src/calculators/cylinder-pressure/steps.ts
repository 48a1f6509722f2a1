import type { Step } from '../define.ts';

const sizes = { pressure: 'kPa', mass: 'mg', volume: 'cm3' } as const;

/** The working of the cylinder pressure, from the bore to the torque. */
export const pressureSteps: readonly Step[] = [
  {
    of: 'swept',
    symbol: 'V_s',
    kind: 'volume',
    formula: 'pi / 4 * bore^2 * stroke',
    say: 'What one piston sweeps.',
  },
  {
    of: 'displacement',
    formula: 'cylinders * swept',
    say: 'All cylinders together.',
    units: { volume: 'cm3' },
  },
  {
    of: 'clearance',
    symbol: 'V_c',
    kind: 'volume',
    formula: 'swept / (compressionRatio - 1)',
    say: 'What is left above the piston at TDC, from the geometric ratio.',
  },
  {
    of: 'closingCrank',
    symbol: 'x_crank',
    kind: 'length',
    formula: 'stroke / 2 * (1 + cos(intakeClose))',
    say: 'How far the crank alone leaves the piston below TDC when the intake closes; the angle counts from BDC.',
  },
  {
    of: 'closingTilt',
    symbol: 'σ',
    kind: 'ratio',
    formula: 'stroke / (2 * rodLength) * sin(intakeClose)',
    say: 'The sine of the angle at which the rod leans then.',
  },
  {
    of: 'closingRod',
    symbol: 'x_rod',
    kind: 'length',
    formula: 'rodLength * (1 - sqrt(1 - closingTilt^2))',
    say: 'What the leaning rod adds.',
  },
  {
    of: 'closingVolume',
    symbol: 'V_IVC',
    kind: 'volume',
    formula: 'clearance + pi / 4 * bore^2 * (closingCrank + closingRod)',
    say: 'The volume in which the charge is shut in.',
  },
  {
    of: 'closingRatio',
    formula: 'closingVolume / clearance',
    say: 'Compression starts here and not at BDC, so this ratio is the one the gas sees.',
  },
  {
    of: 'freshMass',
    symbol: 'm_0',
    kind: 'mass',
    formula: 'volumetricEfficiency * ambientPressure * swept / (287 * ambientTemperature)',
    say: 'The fresh charge: the volumetric efficiency times a swept volume full of air as it is outside. 287 J/(kg·K) is the gas constant of air.',
  },
  {
    of: 'fuelMass',
    formula: 'freshMass / (1 + airFuelLambda * stoichRatio)',
    say: 'The part of the fresh charge that is fuel.',
  },
  {
    of: 'trappedMass',
    formula: 'freshMass / (1 - residualFraction)',
    say: 'With the old gas that stayed.',
  },
  {
    of: 'closingPressure',
    formula: 'trappedMass * 287 * chargeTemperature / closingVolume',
    say: 'The gas law gives the pressure when the intake closes. Manifold pressure has no part in it.',
    source: 'heywood-1988',
  },
  {
    of: 'motoredPressure',
    formula: 'closingPressure * closingRatio^compressionExponent',
    say: 'What compression alone would reach at TDC.',
    units: sizes,
  },
  {
    of: 'burnable',
    symbol: 'm_b',
    kind: 'mass',
    formula: 'fuelMass * min(1, airFuelLambda)',
    say: 'In a rich charge only as much fuel can burn as there is air for.',
  },
  {
    of: 'released',
    tex: '\\q{released} = \\q{combustionEfficiency}\\, \\q{heatingValue}\\, \\q{burnable}\\, (1 - e^{-\\q{wiebeEfficiency}})',
    say: 'The heat set free. By the end of the burn Wiebe’s function has reached 1 less e to the power minus a; the rest does not burn.',
    source: 'heywood-1988',
  },
  {
    of: 'peakPressure',
    tex: '\\q{peakPressure} = \\max_\\theta p,\\quad \\frac{d(p V^\\gamma)}{d\\theta} = (\\gamma - 1)(1 - \\q{heatLoss})\\, V^{\\gamma - 1} \\frac{dQ}{d\\theta},\\quad \\gamma = \\q{burnedGamma}',
    say: 'While the charge burns, the first law of thermodynamics; integrated over the burn, its greatest value searched for.',
    source: 'heywood-1988',
  },
  {
    of: 'worstPeak',
    formula: 'peakPressure * (1 + 3 * peakVariation)',
    say: 'Three standard deviations above the mean: about one cycle in seven hundred goes beyond, if the peaks are spread like errors.',
  },
  {
    of: 'peakForce',
    formula: 'pi / 4 * bore^2 * worstPeak',
    say: 'On the crown, against a vacuum; the crankcase presses back with about one bar.',
  },
  {
    of: 'netMep',
    tex: '\\q{netMep} = \\frac{1}{\\q{swept}} \\oint p \\, dV',
    say: 'The work of all four strokes over the swept volume.',
  },
  {
    of: 'speedNumber',
    symbol: 'N',
    kind: 'ratio',
    formula: 'torqueSpeed * 30 / pi / 1000',
    say: 'The speed in thousands a minute.',
  },
  {
    of: 'topNumber',
    symbol: 'N_max',
    kind: 'ratio',
    formula: 'maxSpeed * 30 / pi / 1000',
    say: 'The highest speed in the same way.',
  },
  {
    of: 'frictionPublished',
    formula: '100000 * (0.97 + 0.15 * speedNumber + 0.05 * speedNumber^2)',
    say: 'A published quadratic for petrol engines of 845 to 2000 cm³ below 6000 a minute, as a second opinion.',
    source: 'heywood-1988',
  },
  {
    of: 'frictionTop',
    symbol: 'p_fr,top',
    kind: 'pressure',
    formula: '100000 * (0.97 + 0.15 * topNumber + 0.05 * topNumber^2)',
    say: 'The same quadratic at the highest speed.',
  },
  {
    of: 'friction',
    formula: 'frictionMep * frictionPublished / frictionTop',
    say: 'Your friction at the highest speed, brought down to this speed by the shape of that quadratic.',
  },
  {
    of: 'brakeMep',
    formula: 'netMep - friction',
    say: 'What is left for the crank.',
    units: sizes,
  },
  {
    of: 'torque',
    formula: 'brakeMep * displacement / (4 * pi)',
    say: 'A four-stroke engine does the work of one cycle in two turns, 4π radians.',
  },
  {
    of: 'indicatedPower',
    formula: 'netMep * displacement * torqueSpeed / (4 * pi)',
    say: 'The work of the gas in a second.',
  },
  { of: 'power', formula: 'torque * torqueSpeed', say: 'Torque times speed.' },
  {
    of: 'efficiency',
    formula: 'netMep * swept / (fuelMass * heatingValue)',
    say: 'Net work over the heat that all of the fuel could give.',
  },
];

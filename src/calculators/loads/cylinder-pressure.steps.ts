import { energy, is, length, mass, pressure, ratio, tex, volume } from '../step.ts';

/** The volume at an angle whose crank leaves the piston `drop` throws below TDC; `angle` from either dead centre. */
function volumeAt(drop: string, angle: string): string {
  const tilt = `stroke / (2 * rodLength) * sin(${angle})`;
  return `clearance + pi / 4 * bore^2 * (stroke / 2 * (${drop}) + rodLength * (1 - sqrt(1 - (${tilt})^2)))`;
}

/** The working of the cylinder pressure, from the bore to the torque. */
export const pressureSteps = {
  swept: volume('V_s', 'pi / 4 * bore^2 * stroke', 'What one piston sweeps.'),
  displacement: is('cylinders * swept', 'All cylinders together.', { units: { volume: 'cm3' } }),
  clearance: volume(
    'V_c',
    'swept / (compressionRatio - 1)',
    'What is left above the piston at TDC, from the geometric ratio.',
  ),
  closingCrank: length(
    'x_crank',
    'stroke / 2 * (1 + cos(intakeClose))',
    'How far the crank alone leaves the piston below TDC when the intake closes; the angle counts from BDC.',
  ),
  closingTilt: ratio(
    'σ',
    'stroke / (2 * rodLength) * sin(intakeClose)',
    'The sine of the angle at which the rod leans then.',
  ),
  closingRod: length(
    'x_rod',
    'rodLength * (1 - sqrt(1 - closingTilt^2))',
    'What the leaning rod adds.',
  ),
  closingVolume: volume(
    'V_IVC',
    'clearance + pi / 4 * bore^2 * (closingCrank + closingRod)',
    'The volume in which the charge is shut in.',
  ),
  closingRatio: is(
    'closingVolume / clearance',
    'Compression starts here and not at BDC, so this ratio is the one the gas sees.',
  ),
  freshMass: mass(
    'm_0',
    'volumetricEfficiency * ambientPressure * swept / (287 * ambientTemperature)',
    'The fresh charge: the volumetric efficiency times a swept volume full of air as it is outside. 287 J/(kg·K) is the gas constant of air.',
  ),
  fuelMass: is(
    'freshMass / (1 + airFuelLambda * stoichRatio)',
    'The part of the fresh charge that is fuel.',
  ),
  trappedMass: is('freshMass / (1 - residualFraction)', 'With the residual gas.'),
  closingPressure: is(
    'trappedMass * 287 * chargeTemperature / closingVolume',
    'The gas law gives the pressure when the intake closes. Manifold pressure has no part in it.',
    { source: 'heywood-1988' },
  ),
  motoredPressure: is(
    'closingPressure * closingRatio^compressionExponent',
    'What compression alone would reach at TDC.',
    { units: { pressure: 'kPa', mass: 'mg', volume: 'cm3' } },
  ),
  startVolume: volume(
    'V_s,b',
    volumeAt('1 - cos(burnStart)', 'burnStart'),
    'The volume when burning starts, by the same geometry; the angle counts from TDC.',
  ),
  startPressure: is(
    'closingPressure * (closingVolume / startVolume)^compressionExponent',
    'So far the charge is only compressed.',
  ),
  startTemperature: is(
    'startPressure * startVolume / (trappedMass * 287)',
    'The gas law gives its temperature.',
  ),
  burnable: mass(
    'm_b',
    'fuelMass * min(1, airFuelLambda)',
    'In a rich charge only as much fuel can burn as there is air for.',
  ),
  released: is(
    'combustionEfficiency * heatingValue * burnable * (1 - exp(-wiebeEfficiency))',
    'The heat set free. By the end of the burn Wiebe’s function has reached 1 less e to the power minus a; the rest does not burn.',
    { source: 'heywood-1988' },
  ),
  halfShare: ratio(
    'x_50',
    '(1 - exp(-wiebeEfficiency)) / 2',
    'Half of the share that has burnt by the end.',
  ),
  halfBurnt: is(
    '(-ln(1 - halfShare) / wiebeEfficiency)^(1 / (wiebeForm + 1)) * burnDuration - burnStart',
    'Wiebe’s function solved for the angle at which it has reached that.',
    { source: 'heywood-1988' },
  ),
  peakPressure: is(
    tex(
      '\\q{peakPressure} = \\max_\\theta p,\\quad \\frac{d(p V^\\gamma)}{d\\theta} = (\\gamma - 1)(1 - \\q{heatLoss})\\, V^{\\gamma - 1} \\frac{dQ}{d\\theta},\\quad \\gamma = \\q{burnedGamma}',
      'integral',
    ),
    'While the charge burns, the first law of thermodynamics; integrated over the burn, its greatest value searched for.',
    { source: 'heywood-1988' },
  ),
  worstPeak: is(
    'peakPressure * (1 + 3 * peakVariation)',
    'Three standard deviations above the mean: about one cycle in seven hundred goes beyond, if the peaks are spread like errors.',
  ),
  peakForce: is(
    'pi / 4 * bore^2 * worstPeak',
    'On the crown, against a vacuum; the crankcase presses back with about one bar.',
  ),
  netMep: is(
    tex('\\q{netMep} = \\frac{1}{\\q{swept}} \\oint p \\, dV', 'integral'),
    'The work of all four strokes over the swept volume.',
  ),
  grossMep: is(
    tex(
      '\\q{grossMep} = \\frac{1}{\\q{swept}} \\int_{-\\pi}^{\\pi} p \\, \\frac{dV}{d\\theta} \\, d\\theta',
      'integral',
    ),
    'The work of the two strokes with the charge shut in, from BDC to BDC.',
  ),
  pumpingMep: is('grossMep - netMep', 'The other two strokes take the difference.', {
    units: { pressure: 'kPa' },
  }),
  speedNumber: ratio('N', '30 * torqueSpeed / (1000 * pi)', 'The speed in thousands a minute.'),
  topNumber: ratio('N_max', '30 * maxSpeed / (1000 * pi)', 'The highest speed in the same way.'),
  frictionPublished: is(
    '100000 * (0.97 + 0.15 * speedNumber + 0.05 * speedNumber^2)',
    'A published quadratic for petrol engines of 845 to 2000 cm³ below 6000 rpm, as a second opinion.',
    { source: 'heywood-1988' },
  ),
  frictionTop: pressure(
    'p_fr,top',
    '100000 * (0.97 + 0.15 * topNumber + 0.05 * topNumber^2)',
    'The same quadratic at the highest speed.',
  ),
  friction: is(
    'frictionMep * frictionPublished / frictionTop',
    'Your friction at the highest speed, brought down to this speed by the shape of that quadratic.',
  ),
  brakeMep: is('netMep - friction', 'What is left for the crank.', {
    units: { pressure: 'kPa', mass: 'mg', volume: 'cm3' },
  }),
  torque: is(
    'brakeMep * displacement / (4 * pi)',
    'A four-stroke engine does the work of one cycle in two turns, 4π radians.',
  ),
  indicatedPower: is(
    'netMep * displacement * torqueSpeed / (4 * pi)',
    'The work of the gas in a second.',
  ),
  power: is('torque * torqueSpeed', 'Torque times speed.'),
  efficiency: is(
    'netMep * swept / (fuelMass * heatingValue)',
    'Net work over the heat that all of the fuel could give.',
  ),
  openingVolume: volume(
    'V_EVO',
    volumeAt('1 + cos(exhaustOpen)', 'exhaustOpen'),
    'The volume when the exhaust opens; the angle counts from BDC.',
  ),
  openingTemperature: is(
    'openingPressure * openingVolume / (trappedMass * 287)',
    'The gas law gives the temperature there.',
  ),
  storedEnergy: is(
    '(openingPressure * openingVolume - closingPressure * closingVolume) / (burnedGamma - 1)',
    'Internal energy is pressure times volume over γ less 1: what the gas holds then, less what it held when it was shut in.',
  ),
  wallBurning: is('heatLoss * released', 'The walls’ share of the heat while it is set free.'),
  endVolume: volume(
    'V_e,b',
    volumeAt('1 - cos(burnDuration - burnStart)', 'burnDuration - burnStart'),
    'The volume when the burn ends.',
  ),
  endPressure: pressure(
    'p_e,b',
    'openingPressure * (openingVolume / endVolume)^expansionExponent',
    'The pressure there, back along the expansion.',
  ),
  compressionWork: energy(
    'W_comp',
    '(closingPressure * closingVolume - startPressure * startVolume) / (compressionExponent - 1)',
    'The work on the piston from intake closing to the start of burning: negative.',
  ),
  expansionWork: energy(
    'W_exp',
    '(endPressure * endVolume - openingPressure * openingVolume) / (expansionExponent - 1)',
    'And from the end of the burn to exhaust opening.',
  ),
  wallPolytropes: is(
    '((compressionExponent - burnedGamma) * compressionWork + (expansionExponent - burnedGamma) * expansionWork) / (burnedGamma - 1)',
    'An exponent other than γ means heat through the walls: to them where this is positive, from them where it is negative.',
  ),
};

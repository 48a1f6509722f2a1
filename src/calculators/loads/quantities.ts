import {
  airPressure,
  angle,
  crankSpeed,
  gasPressure,
  heatOfFuel,
  length,
  mass,
  percent,
  pressure,
  ratio,
  temperature,
} from '../quantity.ts';

/* What fills, burns and pushes, and where a pull is asked for. */

export const torqueSpeed = crankSpeed(
  'torqueSpeed',
  'n_T',
  'Speed of greatest torque',
  [300, 2500, 10000, 25000],
  { origin: 'choice', demo: ['4400 rpm', '6800 rpm'] },
);
export const peakPressure = pressure(
  'peakPressure',
  'p_max',
  'Peak cylinder pressure (absolute)',
  [5, 40, 120, 300],
  { origin: 'thing', demo: ['54 bar', '73 bar'], plusMinus: 5 },
);
export const peakAngle = angle(
  'peakAngle',
  'θ_max',
  'Crank angle of the peak pressure after TDC',
  [-10, 5, 25, 60],
  { origin: 'assumption', demo: ['15.3 deg', '14.5 deg'], plusMinus: 1 },
);
export const crankcasePressure = gasPressure(
  'crankcasePressure',
  'p_cc',
  'Crankcase pressure (absolute)',
  [20, 50, 103, 150],
  { origin: 'assumption', demo: ['101 kPa', '98 kPa'], plusMinus: 1 },
);
export const overrunPressure = gasPressure(
  'overrunPressure',
  'p_ov',
  'Overrun vacuum: closed-throttle pressure above the piston (absolute)',
  [5, 20, 45, 100],
  { origin: 'assumption', demo: ['28 kPa', '25 kPa'], plusMinus: 2 },
);
export const shankSection = length(
  'shankSection',
  'y_s',
  'Beam section, from the pin centre',
  [5, 15, 80, 300],
  { origin: 'part', demo: '28 mm', plusMinus: 0.5 },
);
export const rodMassAbove = mass(
  'rodMassAbove',
  'm_above',
  "Rod mass between that section and the small end's top",
  [3, 40, 250, 1500],
  { origin: 'part', demo: ['134 g', '105 g'], plusMinus: 3 },
);
export const ambientPressure = airPressure(
  'ambientPressure',
  'p_a',
  'Air pressure (absolute)',
  [50, 80, 104, 110],
  { origin: 'thing', demo: '98.0 kPa', plusMinus: 0.1 },
);
export const ambientTemperature = temperature(
  'ambientTemperature',
  'T_a',
  'Air temperature',
  [-40, 5, 38, 55],
  { origin: 'thing', demo: '20 °C', plusMinus: 0.5 },
);
export const volumetricEfficiency = ratio(
  'volumetricEfficiency',
  'η_v',
  'Volumetric efficiency',
  [0.1, 0.75, 1.2, 4],
  { origin: 'part', demo: ['0.92', '1.05'], plusMinus: 0.05 },
);
export const manifoldPressure = airPressure(
  'manifoldPressure',
  'p_in',
  'Intake pressure at full throttle (absolute)',
  [10, 80, 105, 500],
  { origin: 'thing', demo: ['93 kPa', '95 kPa'], plusMinus: 1 },
);
export const exhaustPressure = airPressure(
  'exhaustPressure',
  'p_ex',
  'Exhaust pressure (absolute)',
  [50, 100, 140, 500],
  { origin: 'assumption', demo: '110 kPa', plusMinus: 2 },
);
export const intakeOpen = angle('intakeOpen', 'IVO', 'Intake opens before TDC', [-40, 0, 55, 110], {
  origin: 'part',
  demo: ['22 deg', '40 deg'],
  plusMinus: 1,
});
export const intakeClose = angle(
  'intakeClose',
  'IVC',
  'Intake closes after BDC',
  [-30, 35, 85, 130],
  { origin: 'part', demo: ['62 deg', '76 deg'], plusMinus: 1 },
);
export const exhaustOpen = angle(
  'exhaustOpen',
  'EVO',
  'Exhaust opens before BDC',
  [0, 45, 90, 130],
  { origin: 'part', demo: ['64 deg', '80 deg'], plusMinus: 1 },
);
export const burnStart = angle('burnStart', 'θ_s', 'Burning starts before TDC', [-20, 5, 35, 60], {
  origin: 'assumption',
  demo: ['21 deg', '19 deg'],
  plusMinus: 5,
});
export const burnDuration = angle('burnDuration', 'Δθ_b', 'Whole burn lasts', [0, 40, 75, 150], {
  origin: 'assumption',
  demo: ['54 deg', '52 deg'],
  plusMinus: 8,
});
export const wiebeEfficiency = ratio('wiebeEfficiency', 'a_W', 'Wiebe a', [2, 5, 6.91, 10], {
  origin: 'assumption',
  demo: '5',
});
export const wiebeForm = ratio('wiebeForm', 'm_W', 'Wiebe m', [0.3, 1.5, 3, 6], {
  origin: 'assumption',
  demo: '2',
  plusMinus: 0.5,
});
export const compressionExponent = ratio(
  'compressionExponent',
  'n_c',
  'Compression exponent',
  [1, 1.28, 1.36, 1.4],
  { origin: 'assumption', demo: '1.32', plusMinus: 0.02 },
);
export const expansionExponent = ratio(
  'expansionExponent',
  'n_e',
  'Expansion exponent',
  [1, 1.22, 1.32, 1.45],
  { origin: 'assumption', demo: '1.27', plusMinus: 0.03 },
);
export const burnedGamma = ratio(
  'burnedGamma',
  'γ_b',
  'Ratio of specific heats while burning',
  [1.1, 1.24, 1.32, 1.4],
  { origin: 'assumption', demo: '1.28', plusMinus: 0.02 },
);
export const heatLoss = ratio(
  'heatLoss',
  'q_w',
  'Share of the heat lost to the walls while burning',
  [0, 0.06, 0.25, 0.7],
  { origin: 'assumption', demo: ['0.08', '0.10'], plusMinus: 0.05 },
);
export const airFuelLambda = ratio(
  'airFuelLambda',
  'λ_a',
  'Air-fuel equivalence',
  [0.5, 0.8, 1.02, 2],
  { origin: 'thing', demo: '0.88', plusMinus: 0.02 },
);
export const stoichRatio = ratio(
  'stoichRatio',
  'AFR',
  'Air that the fuel needs, by mass',
  [3, 6.4, 14.7, 35],
  { origin: 'thing', demo: '14.6', plusMinus: 0.1 },
);
export const heatingValue = heatOfFuel(
  'heatingValue',
  'H_u',
  'Lower heating value of the fuel',
  [15, 26.8, 44, 50],
  { origin: 'thing', demo: '43.0 MJ/kg', plusMinus: 0.5 },
);
export const combustionEfficiency = ratio(
  'combustionEfficiency',
  'η_c',
  'Share of the burnable fuel that burns',
  [0.3, 0.92, 0.98, 1],
  { origin: 'assumption', demo: '0.95', plusMinus: 0.02 },
);
export const residualFraction = ratio(
  'residualFraction',
  'x_r',
  'Residual gas in the charge',
  [0, 0.02, 0.1, 0.6],
  { origin: 'assumption', demo: '0.04', plusMinus: 0.02 },
);
export const chargeTemperature = temperature(
  'chargeTemperature',
  'T_IVC',
  'Charge temperature when the intake closes',
  [0, 55, 95, 250],
  { origin: 'assumption', demo: '72 °C', plusMinus: 10 },
);
export const peakVariation = percent(
  'peakVariation',
  'CoV_p',
  'Peak pressure from cycle to cycle: standard deviation',
  [0, 4, 12, 50],
  { origin: 'assumption', demo: ['6 %', '7 %'] },
);
export const frictionMep = pressure(
  'frictionMep',
  'p_fr',
  'Friction mean effective pressure at the highest speed',
  [0.2, 1.2, 3.6, 10],
  { origin: 'part', demo: ['2.2 bar', '2.8 bar'], plusMinus: 0.3 },
);

import {
  area,
  count,
  density,
  expansion,
  force,
  length,
  metalModulus,
  percent,
  pressure,
  ratio,
  temperature,
  volume,
} from '../quantity.ts';

/* Rings, their grooves and lands, and the gas around them; a hole between two spaces. */

export const ring1Height = length(
  'ring1Height',
  'h_1',
  'Top ring width (axial)',
  [0.3, 0.6, 2, 6],
  { origin: 'part', demo: ['1.50 mm', '0.90 mm'], plusMinus: 0.003 },
);
export const ring1Radial = length(
  'ring1Radial',
  'a_1',
  'Top ring radial wall',
  [0.8, 2.2, 4.3, 12],
  { origin: 'part', demo: ['3.50 mm', '2.90 mm'], plusMinus: 0.01 },
);
export const ring1Modulus = metalModulus(
  'ring1Modulus',
  'E_1',
  "Young's modulus of the top ring",
  [70, 100, 210, 230],
  { origin: 'thing', demo: ['160 GPa', '206 GPa'], plusMinus: 8 },
);
export const ring1Tension = force(
  'ring1Tension',
  'F_t1',
  'Tangential force of the top ring, measured',
  [0.5, 3, 22, 120],
  { origin: 'part', demo: ['13.6 N', '5.3 N'], plusMinus: 0.5 },
);
export const ring1FreeGap = length(
  'ring1FreeGap',
  'm_1',
  'Free gap of the top ring',
  [1.5, 6, 15, 70],
  { origin: 'part', demo: ['12.7 mm', '11.6 mm'], plusMinus: 0.2 },
);
export const ring1Gap = length(
  'ring1Gap',
  's_1',
  'End gap of the top ring in the bore, cold',
  [0.03, 0.2, 0.7, 3],
  { origin: 'part', demo: ['0.38 mm', '0.42 mm'], plusMinus: 0.02 },
);
export const ringOpening = length(
  'ringOpening',
  'm_o',
  'Gap as opened to pass over the piston',
  [5, 15, 42, 200],
  { origin: 'assumption', demo: ['30 mm', '25 mm'], plusMinus: 1 },
);
export const ring2Height = length(
  'ring2Height',
  'h_2',
  'Second ring width (axial)',
  [0.3, 0.7, 2.4, 6],
  { origin: 'part', demo: ['1.50 mm', '1.00 mm'], plusMinus: 0.003 },
);
export const ring2Radial = length(
  'ring2Radial',
  'a_2',
  'Second ring radial wall',
  [0.8, 2.4, 4.5, 12],
  { origin: 'part', demo: ['3.80 mm', '3.20 mm'], plusMinus: 0.01 },
);
export const ring2Modulus = metalModulus(
  'ring2Modulus',
  'E_2',
  "Young's modulus of the second ring",
  [70, 95, 210, 230],
  { origin: 'thing', demo: ['105 GPa', '150 GPa'], plusMinus: 6 },
);
export const ring2Tension = force(
  'ring2Tension',
  'F_t2',
  'Tangential force of the second ring, measured',
  [0.5, 3, 20, 120],
  { origin: 'part', demo: ['10.2 N', '5.0 N'], plusMinus: 0.5 },
);
export const ring2FreeGap = length(
  'ring2FreeGap',
  'm_2',
  'Free gap of the second ring',
  [1.5, 6, 15, 70],
  { origin: 'part', demo: ['11.3 mm', '10.1 mm'], plusMinus: 0.2 },
);
export const ring2Gap = length(
  'ring2Gap',
  's_2',
  'End gap of the second ring in the bore, cold',
  [0.03, 0.22, 0.85, 3],
  { origin: 'part', demo: ['0.45 mm', '0.50 mm'], plusMinus: 0.02 },
);
export const oilRingTension = force(
  'oilRingTension',
  'F_t3',
  'Tangential force of the whole oil ring, measured',
  [2, 8, 60, 300],
  { origin: 'part', demo: ['34 N', '19 N'], plusMinus: 2 },
);
export const packDrag = force(
  'packDrag',
  'F_drag',
  'Ring drag: bench pull on the ringed piston, oiled bore',
  [3, 15, 140, 700],
  { origin: 'part', demo: ['47 N', '24 N'], plusMinus: 6 },
);
export const ringFriction = ratio(
  'ringFriction',
  'μ_r',
  'Friction coefficient of ring on bore, running',
  [0.005, 0.02, 0.12, 0.3],
  { origin: 'assumption', demo: '0.06', plusMinus: 0.03 },
);
export const benchFriction = ratio(
  'benchFriction',
  'μ_b',
  'Friction coefficient of ring on bore, pulled by hand',
  [0.03, 0.1, 0.16, 0.4],
  { origin: 'assumption', demo: '0.13', plusMinus: 0.02 },
);
export const ringSideClearance = length(
  'ringSideClearance',
  'c_ax',
  'Side clearance of the top ring (groove less ring)',
  [0.002, 0.015, 0.08, 0.4],
  { origin: 'part', demo: ['0.045 mm', '0.022 mm'], plusMinus: 0.005 },
);
export const ringBackClearance = length(
  'ringBackClearance',
  'c_r',
  'Back clearance of the top ring, radial',
  [0.01, 0.15, 0.8, 3],
  { origin: 'part', demo: ['0.55 mm', '0.35 mm'], plusMinus: 0.05 },
);
export const topLandHeight = length('topLandHeight', 'h_TL', 'Top land height', [1, 2.5, 9, 20], {
  origin: 'part',
  demo: ['6.0 mm', '4.0 mm'],
  plusMinus: 0.05,
});
export const topLandClearance = length(
  'topLandClearance',
  'c_TL',
  'Top land clearance (bore less land)',
  [0.05, 0.3, 0.9, 3],
  { origin: 'part', demo: ['0.56 mm', '0.62 mm'], plusMinus: 0.02 },
);
export const secondLandHeight = length(
  'secondLandHeight',
  'h_L2',
  'Second land height',
  [1, 2.2, 6, 15],
  { origin: 'part', demo: ['4.2 mm', '3.2 mm'], plusMinus: 0.05 },
);
export const secondLandClearance = length(
  'secondLandClearance',
  'c_L2',
  'Second land clearance (bore less land)',
  [0.05, 0.3, 0.9, 3],
  { origin: 'part', demo: ['0.50 mm', '0.52 mm'], plusMinus: 0.02 },
);
export const ringDensity = density(
  'ringDensity',
  'ρ_r',
  'Density of the top ring',
  [6.8, 7.1, 7.9, 8.5],
  { origin: 'thing', demo: ['7.3 g/cm³', '7.85 g/cm³'] },
);
export const portCount = count('portCount', 'n_po', 'Gas ports', [0, 0, 24, 60], {
  origin: 'choice',
  demo: ['0', '10'],
});
export const portDiameter = length(
  'portDiameter',
  'd_po',
  'Gas port diameter',
  [0.1, 0.8, 1.6, 4],
  { origin: 'part', demo: ['1.0 mm', '1.10 mm'], plusMinus: 0.02 },
);
export const portPlugged = percent(
  'portPlugged',
  'q_po',
  'Share of the ports’ area that is plugged',
  [0, 0, 95, 100],
  { origin: 'choice', demo: '50 %' },
);
export const dischargeCoefficient = ratio(
  'dischargeCoefficient',
  'C_d',
  'Discharge coefficient of holes and gaps',
  [0.3, 0.6, 0.9, 1],
  { origin: 'assumption', demo: '0.7', plusMinus: 0.08 },
);
export const faceFactor = ratio(
  'faceFactor',
  'κ_f',
  'Share of the pressure difference that loads the face',
  [0, 0.3, 0.7, 1],
  { origin: 'assumption', demo: '0.5', plusMinus: 0.2 },
);
export const flankFactor = ratio(
  'flankFactor',
  'κ_a',
  'Share of the pressure difference that holds a closed flank',
  [0, 0.5, 1, 1],
  { origin: 'assumption', demo: '0.5', plusMinus: 0.2 },
);
export const ringTemperature = temperature(
  'ringTemperature',
  'T_ring',
  'Top ring temperature',
  [60, 150, 260, 350],
  { origin: 'assumption', demo: ['195 °C', '215 °C'], plusMinus: 20 },
);
export const ringExpansion = expansion(
  'ringExpansion',
  'α_r',
  'Expansion of the rings',
  [8, 10.5, 12.5, 20],
  { origin: 'thing', demo: '11.5 ppm/K' },
);
export const boreExpansion = expansion(
  'boreExpansion',
  'α_b',
  'Expansion of the bore',
  [8, 10.5, 23, 25],
  { origin: 'thing', demo: '12.0 ppm/K' },
);
export const boreTemperature = temperature(
  'boreTemperature',
  'T_wall',
  'Bore temperature at the top ring',
  [40, 105, 170, 280],
  { origin: 'assumption', demo: ['120 °C', '125 °C'], plusMinus: 10 },
);
export const upstreamPressure = pressure(
  'upstreamPressure',
  'p_0',
  'Pressure before the hole (absolute, at rest)',
  [0.01, 1, 100, 500],
  { origin: 'thing', demo: '15 bar' },
);
export const downstreamPressure = pressure(
  'downstreamPressure',
  'p_d',
  'Pressure after the hole (absolute)',
  [0, 0, 100, 500],
  { origin: 'thing', demo: ['14 bar', '5 bar'] },
);
export const gasTemperature = temperature(
  'gasTemperature',
  'T_0',
  'Temperature of the gas at rest',
  [-200, 20, 300, 3000],
  { origin: 'thing', demo: '200 °C' },
);
export const heatRatio = ratio(
  'heatRatio',
  'γ',
  'Ratio of specific heats',
  [1.01, 1.25, 1.4, 1.7],
  { origin: 'thing', demo: '1.35' },
);
export const gasConstant = ratio(
  'gasConstant',
  'R',
  'Gas constant, in J/(kg·K)',
  [50, 180, 300, 5000],
  { origin: 'thing', demo: '287' },
);
export const orificeArea = area('orificeArea', 'A', 'Area of the hole', [0.001, 0.1, 20, 100000], {
  origin: 'part',
  demo: '0.95 mm²',
});
export const vesselVolume = volume(
  'vesselVolume',
  'V',
  'Volume of the vessel that empties',
  [0.1, 50, 500, 1000000000],
  { origin: 'part', demo: '100 mm³' },
);
export const pressureShare = ratio(
  'pressureShare',
  'q_p',
  'Share of the first pressure to empty to',
  [0.001, 0.05, 1, 1],
  { origin: 'choice', demo: '0.5' },
);
export { portKind, ringSeat } from './gas-port.choices.ts';

import type { ListEntry, NumberEntry } from './define.ts';

/**
 * The dictionary of quantities: one name for each, everywhere. Lean on purpose, since it reaches every page;
 * how each is measured stands in `quantity-notes.ts`, which only the build reads.
 *
 * Ranges and shop uncertainties are a practitioner's judgement for road, performance and race petrol
 * engines from one to twelve cylinders: common practice, no source. Demo values are invented.
 */
function quantity<const N extends string>(
  name: N,
  rest: Omit<NumberEntry, 'type' | 'name'>,
): NumberEntry & { readonly name: N } {
  return { type: 'number', name, ...rest };
}

// Cylinder and stack

export const bore = quantity('bore', {
  label: 'Bore',
  symbol: 'B',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [20, 200],
  usual: [46, 118],
  usualPlusMinus: 0.005,
  demo: { baseline: '90.50 mm', candidate: '90.50 mm' },
});

export const stroke = quantity('stroke', {
  label: 'Stroke (twice the throw)',
  symbol: 'S',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [15, 200],
  usual: [38, 115],
  usualPlusMinus: 0.02,
  demo: { baseline: '73.00 mm', candidate: '73.00 mm' },
});

export const rodLength = quantity('rodLength', {
  label: 'Rod length, centre to centre',
  symbol: 'L',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [40, 400],
  usual: [80, 185],
  usualPlusMinus: 0.02,
  demo: { baseline: '142.00 mm', candidate: '146.00 mm' },
});

export const pinOffset = quantity('pinOffset', {
  label: 'Pin offset in the piston',
  symbol: 'e_p',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [-4, 4],
  usual: [0, 1.5],
  usualPlusMinus: 0.05,
  demo: { baseline: '0.80 mm', candidate: '0 mm' },
});

export const boreOffset = quantity('boreOffset', {
  label: 'Bore offset from the crank axis',
  symbol: 'e_c',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [-25, 30],
  usual: [0, 14],
  usualPlusMinus: 0.1,
  demo: { baseline: '0 mm', candidate: '0 mm' },
});

export const cylinderSpacing = quantity('cylinderSpacing', {
  label: 'Cylinder spacing along the crank',
  symbol: 'a_c',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [30, 200],
  usual: [70, 115],
  usualPlusMinus: 0.05,
  demo: { baseline: '100.0 mm', candidate: '100.0 mm' },
});

export const bankAngle = quantity('bankAngle', {
  label: 'Angle between the banks',
  symbol: 'γ',
  kind: 'angle',
  metric: 'deg',
  inch: 'deg',
  rangeUnit: 'deg',
  hard: [0, 180],
  usual: [0, 180],
  usualPlusMinus: 0.1,
  demo: { baseline: '90 deg', candidate: '90 deg' },
});

// Masses

export const pistonMass = quantity('pistonMass', {
  label: 'Piston, bare',
  symbol: 'm_piston',
  kind: 'mass',
  metric: 'g',
  inch: 'g',
  rangeUnit: 'g',
  hard: [15, 3000],
  usual: [90, 650],
  usualPlusMinus: 0.1,
  demo: { baseline: '428.0 g', candidate: '318.0 g' },
});

export const pinMass = quantity('pinMass', {
  label: 'Wrist pin',
  symbol: 'm_pin',
  kind: 'mass',
  metric: 'g',
  inch: 'g',
  rangeUnit: 'g',
  hard: [4, 1000],
  usual: [18, 180],
  usualPlusMinus: 0.1,
  demo: { baseline: '120.2 g', candidate: '77.0 g' },
});

export const ringMass = quantity('ringMass', {
  label: 'Rings of one piston',
  symbol: 'm_rings',
  kind: 'mass',
  metric: 'g',
  inch: 'g',
  rangeUnit: 'g',
  hard: [1, 300],
  usual: [8, 60],
  usualPlusMinus: 0.1,
  demo: { baseline: '38.0 g', candidate: '23.5 g' },
});

export const lockMass = quantity('lockMass', {
  label: 'Both locks of one pin',
  symbol: 'm_locks',
  kind: 'mass',
  metric: 'g',
  inch: 'g',
  rangeUnit: 'g',
  hard: [0, 25],
  usual: [0, 5],
  usualPlusMinus: 0.05,
  demo: { baseline: '0 g', candidate: '1.2 g' },
});

export const rodMass = quantity('rodMass', {
  label: 'Rod with bolts, without shells',
  symbol: 'm_rod',
  kind: 'mass',
  metric: 'g',
  inch: 'g',
  rangeUnit: 'g',
  hard: [25, 5000],
  usual: [160, 900],
  usualPlusMinus: 0.1,
  demo: { baseline: '592.0 g', candidate: '438.0 g' },
});

export const bigEndMass = quantity('bigEndMass', {
  label: 'Big end on the scale',
  symbol: 'm_be',
  kind: 'mass',
  metric: 'g',
  inch: 'g',
  rangeUnit: 'g',
  hard: [15, 4000],
  usual: [105, 660],
  usualPlusMinus: 0.5,
  demo: { baseline: '421.2 g', candidate: '300.1 g' },
});

export const smallEndMass = quantity('smallEndMass', {
  label: 'Small end on the scale',
  symbol: 'm_se',
  kind: 'mass',
  metric: 'g',
  inch: 'g',
  rangeUnit: 'g',
  hard: [8, 1500],
  usual: [50, 250],
  usualPlusMinus: 0.5,
  demo: { baseline: '170.6 g', candidate: '138.2 g' },
});

export const shellMass = quantity('shellMass', {
  label: 'Both shells of one rod',
  symbol: 'm_shell',
  kind: 'mass',
  metric: 'g',
  inch: 'g',
  rangeUnit: 'g',
  hard: [2, 400],
  usual: [10, 85],
  usualPlusMinus: 0.1,
  demo: { baseline: '41.0 g', candidate: '36.0 g' },
});

export const capMass = quantity('capMass', {
  label: 'Cap with its bolts and half shell',
  symbol: 'm_cap',
  kind: 'mass',
  metric: 'g',
  inch: 'g',
  rangeUnit: 'g',
  hard: [10, 1500],
  usual: [45, 300],
  usualPlusMinus: 0.2,
  demo: { baseline: '182 g', candidate: '128 g' },
});

export const oilMass = quantity('oilMass', {
  label: 'Oil allowance of one crankpin',
  symbol: 'm_oil',
  kind: 'mass',
  metric: 'g',
  inch: 'g',
  rangeUnit: 'g',
  hard: [0, 40],
  usual: [1, 8],
  usualPlusMinus: 2,
  demo: { baseline: '4.0 g', candidate: '3.0 g' },
});

export const rodsPerPin = quantity('rodsPerPin', {
  label: 'Rods on one crankpin',
  symbol: 'n_rod',
  kind: 'count',
  metric: 'count',
  inch: 'count',
  rangeUnit: 'count',
  hard: [1, 9],
  usual: [1, 2],
  demo: { baseline: '2', candidate: '2' },
});

export const reciprocatingFraction = quantity('reciprocatingFraction', {
  label: 'Share of the reciprocating mass in the bobweight',
  symbol: 'f',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [0, 1],
  usual: [0.36, 0.55],
  demo: { baseline: '0.50', candidate: '0.50' },
});

export const partnerRotating = quantity('partnerRotating', {
  label: "Second rod's turning parts, heavier by",
  symbol: 'Δm_rot',
  kind: 'mass',
  metric: 'g',
  inch: 'g',
  rangeUnit: 'g',
  hard: [-500, 500],
  usual: [-10, 10],
  usualPlusMinus: 0.5,
  demo: { baseline: '0 g', candidate: '0 g' },
});

export const partnerReciprocating = quantity('partnerReciprocating', {
  label: "Second rod's sliding parts, heavier by",
  symbol: 'Δm_rec',
  kind: 'mass',
  metric: 'g',
  inch: 'g',
  rangeUnit: 'g',
  hard: [-500, 500],
  usual: [-20, 20],
  usualPlusMinus: 0.5,
  demo: { baseline: '0 g', candidate: '0 g' },
});

export const bobweight = quantity('bobweight', {
  label: 'Bobweight of one crankpin',
  symbol: 'm_bob',
  kind: 'mass',
  metric: 'g',
  inch: 'g',
  rangeUnit: 'g',
  hard: [30, 15000],
  usual: [200, 2700],
  usualPlusMinus: 0.5,
  demo: { baseline: '1685.2 g', candidate: '1233.1 g' },
});

export const bobweightError = quantity('bobweightError', {
  label: 'Error or change of every bobweight',
  symbol: 'Δm_bob',
  kind: 'mass',
  metric: 'g',
  inch: 'g',
  rangeUnit: 'g',
  hard: [-5000, 5000],
  usual: [0.1, 500],
  demo: { baseline: '4 g', candidate: '3 g' },
});

export const rotatingMass = quantity('rotatingMass', {
  label: 'Turning mass at one crankpin',
  symbol: 'm_rot',
  kind: 'mass',
  metric: 'g',
  inch: 'g',
  rangeUnit: 'g',
  hard: [0, 500000],
  usual: [100, 1400],
  usualPlusMinus: 0.5,
  demo: { baseline: '928.4 g', candidate: '675.2 g' },
});

export const reciprocatingMass = quantity('reciprocatingMass', {
  label: 'Sliding mass of one cylinder',
  symbol: 'm_rec',
  kind: 'mass',
  metric: 'g',
  inch: 'g',
  rangeUnit: 'g',
  hard: [1, 500000],
  usual: [150, 1000],
  usualPlusMinus: 0.5,
  demo: { baseline: '756.8 g', candidate: '557.9 g' },
});

export const balanceRadius = quantity('balanceRadius', {
  label: 'Radius of the balance mass',
  symbol: 'b',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [5, 1000],
  usual: [30, 95],
  usualPlusMinus: 0.5,
  demo: { baseline: '74.0 mm', candidate: '73.0 mm' },
});

export const planeA = quantity('planeA', {
  label: "Correction plane A from the crank's middle",
  symbol: 'z_A',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [-1000, 0],
  usual: [-260, -60],
  usualPlusMinus: 1,
  demo: { baseline: '-194 mm', candidate: '-194 mm' },
});

export const planeB = quantity('planeB', {
  label: "Correction plane B from the crank's middle",
  symbol: 'z_B',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [0, 1000],
  usual: [60, 260],
  usualPlusMinus: 1,
  demo: { baseline: '194 mm', candidate: '194 mm' },
});

// Weighing

export const scaleResolution = quantity('scaleResolution', {
  label: 'Scale division',
  symbol: 'd_s',
  kind: 'mass',
  metric: 'g',
  inch: 'g',
  rangeUnit: 'g',
  hard: [0.001, 20],
  usual: [0.1, 1],
  demo: { baseline: '0.1 g', candidate: '0.1 g' },
});

export const fixtureRepeat = quantity('fixtureRepeat', {
  label: 'Spread of repeated end weighings (1 s)',
  symbol: 's_rep',
  kind: 'mass',
  metric: 'g',
  inch: 'g',
  rangeUnit: 'g',
  hard: [0, 20],
  usual: [0.1, 1],
  demo: { baseline: '0.3 g', candidate: '0.3 g' },
});

export const supportOffset = quantity('supportOffset', {
  label: "Support off the eye's centre by",
  symbol: 'δ',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [-20, 20],
  usual: [0, 1],
  usualPlusMinus: 0.1,
  demo: { baseline: '0.2 mm', candidate: '0.2 mm' },
});

export const checkMass = quantity('checkMass', {
  label: 'Check mass, as certified',
  symbol: 'm_chk',
  kind: 'mass',
  metric: 'g',
  inch: 'g',
  rangeUnit: 'g',
  hard: [1, 20000],
  usual: [100, 2000],
  usualPlusMinus: 0.025,
  demo: { baseline: '500 g', candidate: '500 g' },
});

export const checkReading = quantity('checkReading', {
  label: 'Check mass, as the scale reads it',
  symbol: 'r_chk',
  kind: 'mass',
  metric: 'g',
  inch: 'g',
  rangeUnit: 'g',
  hard: [0.1, 21000],
  usual: [100, 2000],
  usualPlusMinus: 0.1,
  demo: { baseline: '500.1 g', candidate: '500.1 g' },
});

export const batchMass = quantity('batchMass', {
  label: 'Small parts weighed together',
  symbol: 'M_batch',
  kind: 'mass',
  metric: 'g',
  inch: 'g',
  rangeUnit: 'g',
  hard: [0.01, 20000],
  usual: [1, 400],
  usualPlusMinus: 0.1,
  demo: { baseline: '6.0 g', candidate: '6.1 g' },
});

export const batchCount = quantity('batchCount', {
  label: 'How many were weighed together',
  symbol: 'N_batch',
  kind: 'count',
  metric: 'count',
  inch: 'count',
  rangeUnit: 'count',
  hard: [1, 1000],
  usual: [8, 20],
  demo: { baseline: '10', candidate: '10' },
});

// Speed and pressure

export const maxSpeed = quantity('maxSpeed', {
  label: 'Highest intended speed',
  symbol: 'n_max',
  kind: 'angularSpeed',
  metric: 'rpm',
  inch: 'rpm',
  rangeUnit: 'rpm',
  hard: [500, 25000],
  usual: [5000, 13500],
  usualPlusMinus: 50,
  demo: { baseline: '6400 rpm', candidate: '8400 rpm' },
});

export const missedShiftSpeed = quantity('missedShiftSpeed', {
  label: 'Missed-shift speed',
  symbol: 'n_miss',
  kind: 'angularSpeed',
  metric: 'rpm',
  inch: 'rpm',
  rangeUnit: 'rpm',
  hard: [500, 30000],
  usual: [5000, 15000],
  demo: { baseline: '6900 rpm', candidate: '8900 rpm' },
});

export const commonSpeed = quantity('commonSpeed', {
  label: 'One common speed for both sets',
  symbol: 'n_com',
  kind: 'angularSpeed',
  metric: 'rpm',
  inch: 'rpm',
  rangeUnit: 'rpm',
  hard: [500, 25000],
  usual: [1000, 13500],
  demo: { baseline: '6400 rpm', candidate: '6400 rpm' },
  common: true,
});

export const crankAngle = quantity('crankAngle', {
  label: 'Crank angle after TDC',
  symbol: 'θ',
  kind: 'angle',
  metric: 'deg',
  inch: 'deg',
  rangeUnit: 'deg',
  hard: [-720, 720],
  usual: [-360, 360],
  demo: { baseline: '40 deg', candidate: '40 deg' },
  common: true,
});

export const crankAcceleration = quantity('crankAcceleration', {
  label: 'Crank angular acceleration',
  symbol: 'α',
  kind: 'angularAcceleration',
  metric: 'rad/s2',
  inch: 'rad/s2',
  rangeUnit: 'rad/s2',
  hard: [-100000, 100000],
  usual: [-1000, 1000],
  demo: { baseline: '0 rad/s2', candidate: '0 rad/s2' },
});

export const rodPoint = quantity('rodPoint', {
  label: 'Point on the rod, from the crankpin centre',
  symbol: 'x_X',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [0, 400],
  usual: [0, 185],
  usualPlusMinus: 0.1,
  demo: { baseline: '40.9 mm', candidate: '46.1 mm' },
});

export const crankcasePressure = quantity('crankcasePressure', {
  label: 'Crankcase pressure (absolute)',
  symbol: 'p_cc',
  kind: 'pressure',
  metric: 'kPa',
  inch: 'psi',
  rangeUnit: 'kPa',
  hard: [20, 150],
  usual: [50, 103],
  usualPlusMinus: 1,
  demo: { baseline: '101 kPa', candidate: '98 kPa' },
});

export const overrunPressure = quantity('overrunPressure', {
  label: 'Closed-throttle pressure above the piston (absolute)',
  symbol: 'p_ov',
  kind: 'pressure',
  metric: 'kPa',
  inch: 'psi',
  rangeUnit: 'kPa',
  hard: [5, 100],
  usual: [20, 45],
  usualPlusMinus: 2,
  demo: { baseline: '28 kPa', candidate: '25 kPa' },
});

export const shankSection = quantity('shankSection', {
  label: 'Shank section, from the pin centre',
  symbol: 'y_s',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [5, 300],
  usual: [15, 80],
  usualPlusMinus: 0.5,
  demo: { baseline: '28 mm', candidate: '28 mm' },
});

export const rodMassAbove = quantity('rodMassAbove', {
  label: "Rod mass between that section and the small end's top",
  symbol: 'm_above',
  kind: 'mass',
  metric: 'g',
  inch: 'g',
  rangeUnit: 'g',
  hard: [3, 1500],
  usual: [40, 250],
  usualPlusMinus: 3,
  demo: { baseline: '134 g', candidate: '105 g' },
});

// Crank

export const mainDiameter = quantity('mainDiameter', {
  label: 'Main journal diameter',
  symbol: 'D_m',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [12, 200],
  usual: [38, 72],
  usualPlusMinus: 0.002,
  demo: { baseline: '60.000 mm', candidate: '59.994 mm' },
});

export const crankpinDiameter = quantity('crankpinDiameter', {
  label: 'Crankpin diameter',
  symbol: 'D_p',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [12, 160],
  usual: [30, 58],
  usualPlusMinus: 0.002,
  demo: { baseline: '52.000 mm', candidate: '46.000 mm' },
});

// Inertia, gearing and the swing

export const cylinders = quantity('cylinders', {
  label: 'Cylinders',
  symbol: 'N_cyl',
  kind: 'count',
  metric: 'count',
  inch: 'count',
  rangeUnit: 'count',
  hard: [1, 16],
  usual: [1, 12],
  demo: { baseline: '8', candidate: '8' },
});

export const crankInertia = quantity('crankInertia', {
  label: 'Bare crank, inertia',
  symbol: 'I_crank',
  kind: 'inertia',
  metric: 'kgm2',
  inch: 'lbin2',
  rangeUnit: 'kgm2',
  hard: [0.0003, 2],
  usual: [0.004, 0.09],
  usualPlusMinus: 0.001,
  demo: { baseline: '0.0560 kg·m²', candidate: '0.0462 kg·m²' },
});

export const damperInertia = quantity('damperInertia', {
  label: 'Damper with its hub, inertia',
  symbol: 'I_dmp',
  kind: 'inertia',
  metric: 'kgm2',
  inch: 'lbin2',
  rangeUnit: 'kgm2',
  hard: [0, 0.5],
  usual: [0.001, 0.03],
  usualPlusMinus: 0.0003,
  demo: { baseline: '0.0095 kg·m²', candidate: '0.0068 kg·m²' },
});

export const clutchInertia = quantity('clutchInertia', {
  label: 'Clutch cover and plates, inertia',
  symbol: 'I_cl',
  kind: 'inertia',
  metric: 'kgm2',
  inch: 'lbin2',
  rangeUnit: 'kgm2',
  hard: [0, 2],
  usual: [0.004, 0.12],
  usualPlusMinus: 0.002,
  demo: { baseline: '0.062 kg·m²', candidate: '0.016 kg·m²' },
});

export const flywheelInertia = quantity('flywheelInertia', {
  label: 'Flywheel with its starter ring, inertia',
  symbol: 'I_fw',
  kind: 'inertia',
  metric: 'kgm2',
  inch: 'lbin2',
  rangeUnit: 'kgm2',
  hard: [0.0003, 3],
  usual: [0.008, 0.2],
  usualPlusMinus: 0.003,
  demo: { baseline: '0.118 kg·m²', candidate: '0.049 kg·m²' },
});

export const flywheelDiameter = quantity('flywheelDiameter', {
  label: 'Flywheel, outside diameter',
  symbol: 'd_fw',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [50, 800],
  usual: [140, 340],
  usualPlusMinus: 0.5,
  demo: { baseline: '290 mm', candidate: '235 mm' },
});

export const flywheelInside = quantity('flywheelInside', {
  label: 'Flywheel, inside diameter (0 for a disc)',
  symbol: 'd_fw,i',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [0, 790],
  usual: [0, 200],
  usualPlusMinus: 0.5,
  demo: { baseline: '0 mm', candidate: '0 mm' },
});

export const flywheelThickness = quantity('flywheelThickness', {
  label: 'Flywheel, mean thickness',
  symbol: 't_fw',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [2, 150],
  usual: [6, 40],
  usualPlusMinus: 0.5,
  demo: { baseline: '18 mm', candidate: '12 mm' },
});

export const flywheelDensity = quantity('flywheelDensity', {
  label: 'Flywheel, density of its metal',
  symbol: 'ρ_fw',
  kind: 'density',
  metric: 'g/cm3',
  inch: 'lb/in3',
  rangeUnit: 'g/cm3',
  hard: [1.6, 20],
  usual: [2.6, 7.9],
  usualPlusMinus: 0.05,
  demo: { baseline: '7.85 g/cm3', candidate: '7.85 g/cm3' },
});

export const speedRise = quantity('speedRise', {
  label: 'Rate of rise in speed',
  symbol: 'α_n',
  kind: 'angularAcceleration',
  metric: 'rpm/s',
  inch: 'rpm/s',
  rangeUnit: 'rpm/s',
  hard: [1, 80000],
  usual: [200, 8000],
  usualPlusMinus: 50,
  demo: { baseline: '700 rpm/s', candidate: '1100 rpm/s' },
});

export const speedFrom = quantity('speedFrom', {
  label: 'Speed at the start of the rise',
  symbol: 'n_1',
  kind: 'angularSpeed',
  metric: 'rpm',
  inch: 'rpm',
  rangeUnit: 'rpm',
  hard: [0, 25000],
  usual: [500, 5500],
  usualPlusMinus: 20,
  demo: { baseline: '4000 rpm', candidate: '5200 rpm' },
});

export const speedTo = quantity('speedTo', {
  label: 'Speed at the end of the rise',
  symbol: 'n_2',
  kind: 'angularSpeed',
  metric: 'rpm',
  inch: 'rpm',
  rangeUnit: 'rpm',
  hard: [0, 25000],
  usual: [6000, 13500],
  usualPlusMinus: 20,
  demo: { baseline: '6200 rpm', candidate: '8300 rpm' },
});

export const netTorque = quantity('netTorque', {
  label: 'Net torque at the crank',
  symbol: 'M',
  kind: 'torque',
  metric: 'Nm',
  inch: 'lbft',
  rangeUnit: 'Nm',
  hard: [1, 3000],
  usual: [50, 900],
  usualPlusMinus: 10,
  demo: { baseline: '300 N·m', candidate: '350 N·m' },
});

export const gearRatio = quantity('gearRatio', {
  label: 'Gear ratio, lowest used',
  symbol: 'i_g',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [0.4, 8],
  usual: [0.7, 4],
  demo: { baseline: '2.52', candidate: '2.52' },
});

export const finalDrive = quantity('finalDrive', {
  label: 'Final drive ratio',
  symbol: 'i_f',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [1, 15],
  usual: [2.6, 6],
  demo: { baseline: '4.10', candidate: '4.10' },
});

export const tyreRadius = quantity('tyreRadius', {
  label: 'Rolling radius of the driven tyre',
  symbol: 'r_t',
  kind: 'length',
  metric: 'm',
  inch: 'in',
  rangeUnit: 'm',
  hard: [0.15, 1],
  usual: [0.24, 0.36],
  usualPlusMinus: 0.003,
  demo: { baseline: '0.288 m', candidate: '0.288 m' },
});

export const wheelInertia = quantity('wheelInertia', {
  label: 'One road wheel with tyre and brake, inertia',
  symbol: 'I_w',
  kind: 'inertia',
  metric: 'kgm2',
  inch: 'lbin2',
  rangeUnit: 'kgm2',
  hard: [0.02, 30],
  usual: [0.25, 1.8],
  usualPlusMinus: 0.08,
  demo: { baseline: '0.80 kg·m²', candidate: '0.80 kg·m²' },
});

export const carMass = quantity('carMass', {
  label: 'Car with driver and fuel',
  symbol: 'm_car',
  kind: 'mass',
  metric: 'kg',
  inch: 'lb',
  rangeUnit: 'kg',
  hard: [30, 5000],
  usual: [250, 1900],
  usualPlusMinus: 5,
  demo: { baseline: '940 kg', candidate: '940 kg' },
});

export const drivelineEfficiency = quantity('drivelineEfficiency', {
  label: 'Efficiency of gearbox and axle',
  symbol: 'η_d',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [0.5, 1],
  usual: [0.86, 0.96],
  usualPlusMinus: 0.02,
  demo: { baseline: '0.93', candidate: '0.93' },
});

export const engineInertia = quantity('engineInertia', {
  label: 'All that turns with the crank, inertia',
  symbol: 'I_E',
  kind: 'inertia',
  metric: 'kgm2',
  inch: 'lbin2',
  rangeUnit: 'kgm2',
  hard: [0.002, 10],
  usual: [0.02, 0.5],
  usualPlusMinus: 0.005,
  demo: { baseline: '0.2545 kg·m²', candidate: '0.1246 kg·m²' },
});

export const energySwing = quantity('energySwing', {
  label: 'Swing of energy within a cycle',
  symbol: 'ΔE',
  kind: 'energy',
  metric: 'J',
  inch: 'ftlbf',
  rangeUnit: 'J',
  hard: [1, 100000],
  usual: [10, 1500],
  usualPlusMinus: 10,
  demo: { baseline: '60 J', candidate: '60 J' },
});

export const meanSpeed = quantity('meanSpeed', {
  label: 'Mean speed',
  symbol: 'n_m',
  kind: 'angularSpeed',
  metric: 'rpm',
  inch: 'rpm',
  rangeUnit: 'rpm',
  hard: [100, 25000],
  usual: [600, 9000],
  usualPlusMinus: 10,
  demo: { baseline: '900 rpm', candidate: '900 rpm' },
});

export const swingMass = quantity('swingMass', {
  label: 'Part on the swing',
  symbol: 'm_sw',
  kind: 'mass',
  metric: 'kg',
  inch: 'lb',
  rangeUnit: 'kg',
  hard: [0.05, 500],
  usual: [1, 40],
  usualPlusMinus: 0.02,
  demo: { baseline: '20.4 kg', candidate: '18.1 kg' },
});

export const swingCount = quantity('swingCount', {
  label: 'Swings timed, to and fro',
  symbol: 'N_sw',
  kind: 'count',
  metric: 'count',
  inch: 'count',
  rangeUnit: 'count',
  hard: [1, 1000],
  usual: [10, 100],
  demo: { baseline: '20', candidate: '20' },
});

export const swingTime = quantity('swingTime', {
  label: 'Time of all of them, mean of several tries',
  symbol: 't_sw',
  kind: 'time',
  metric: 's',
  inch: 's',
  rangeUnit: 's',
  hard: [1, 2000],
  usual: [15, 120],
  usualPlusMinus: 0.1,
  demo: { baseline: '21.46 s', candidate: '20.70 s' },
});

export const swingSpacing = quantity('swingSpacing', {
  label: 'Wire (or edge) from the centre',
  symbol: 's_w',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [10, 600],
  usual: [60, 250],
  usualPlusMinus: 0.2,
  demo: { baseline: '120.0 mm', candidate: '120.0 mm' },
});

export const swingWire = quantity('swingWire', {
  label: 'Length of the wires',
  symbol: 'l_w',
  kind: 'length',
  metric: 'm',
  inch: 'in',
  rangeUnit: 'm',
  hard: [0.1, 6],
  usual: [0.6, 2.5],
  usualPlusMinus: 0.002,
  demo: { baseline: '1.500 m', candidate: '1.500 m' },
});

export const platformMass = quantity('platformMass', {
  label: 'Platform of a trifilar swing',
  symbol: 'm_pf',
  kind: 'mass',
  metric: 'kg',
  inch: 'lb',
  rangeUnit: 'kg',
  hard: [0, 100],
  usual: [0.5, 5],
  usualPlusMinus: 0.005,
  demo: { baseline: '1.500 kg', candidate: '1.500 kg' },
});

export const platformTime = quantity('platformTime', {
  label: 'The same swings with the platform empty',
  symbol: 't_pf',
  kind: 'time',
  metric: 's',
  inch: 's',
  rangeUnit: 's',
  hard: [1, 2000],
  usual: [15, 120],
  usualPlusMinus: 0.1,
  demo: { baseline: '38.4 s', candidate: '38.4 s' },
});

export const edgeDistance = quantity('edgeDistance', {
  label: 'Distance of the two knife edges',
  symbol: 'x_e',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [40, 700],
  usual: [100, 260],
  usualPlusMinus: 0.1,
  demo: { baseline: '180.80 mm', candidate: '181.35 mm' },
});

export const smallEndTime = quantity('smallEndTime', {
  label: 'Time hung in the small end',
  symbol: 't_se',
  kind: 'time',
  metric: 's',
  inch: 's',
  rangeUnit: 's',
  hard: [1, 2000],
  usual: [15, 120],
  usualPlusMinus: 0.05,
  demo: { baseline: '37.75 s', candidate: '37.77 s' },
});

export const bigEndTime = quantity('bigEndTime', {
  label: 'Time hung in the big end',
  symbol: 't_be',
  kind: 'time',
  metric: 's',
  inch: 's',
  rangeUnit: 's',
  hard: [1, 2000],
  usual: [15, 120],
  usualPlusMinus: 0.05,
  demo: { baseline: '34.30 s', candidate: '34.69 s' },
});

export const rodSwingCount = quantity('rodSwingCount', {
  label: 'Swings timed from each end',
  symbol: 'N_r',
  kind: 'count',
  metric: 'count',
  inch: 'count',
  rangeUnit: 'count',
  hard: [1, 1000],
  usual: [10, 100],
  demo: { baseline: '50', candidate: '50' },
});

function readings<const N extends string>(
  name: N,
  rest: Omit<ListEntry, 'type' | 'name'>,
): ListEntry & { readonly name: N } {
  return { type: 'list', name, ...rest };
}

// Repeated readings, typed in one field
export const bigEndReadings = readings('bigEndReadings', {
  label: 'Big end on the scale, each lift',
  symbol: 'm_be,i',
  kind: 'mass',
  metric: 'g',
  inch: 'g',
  rangeUnit: 'g',
  hard: [15, 4000],
  usual: [105, 660],
  most: 20,
  demo: {
    baseline: '421.0; 421.5; 421.1; 420.9; 421.5',
    candidate: '300.0; 300.4; 299.8; 300.3; 300.0',
  },
});
export const smallEndReadings = readings('smallEndReadings', {
  label: 'Small end on the scale, each lift',
  symbol: 'm_se,i',
  kind: 'mass',
  metric: 'g',
  inch: 'g',
  rangeUnit: 'g',
  hard: [8, 1500],
  usual: [50, 250],
  most: 20,
  demo: {
    baseline: '170.9; 170.4; 170.3; 170.8; 170.6',
    candidate: '138.0; 138.5; 138.4; 137.9; 138.2',
  },
});

// Rings

export const ring1Height = quantity('ring1Height', {
  label: 'Axial height of the top ring',
  symbol: 'h_1',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [0.3, 6],
  usual: [0.6, 2.0],
  usualPlusMinus: 0.003,
  demo: { baseline: '1.50 mm', candidate: '0.90 mm' },
});

export const ring1Radial = quantity('ring1Radial', {
  label: 'Radial thickness of the top ring',
  symbol: 'a_1',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [0.8, 12],
  usual: [2.2, 4.3],
  usualPlusMinus: 0.01,
  demo: { baseline: '3.50 mm', candidate: '2.90 mm' },
});

export const ring1Modulus = quantity('ring1Modulus', {
  label: "Young's modulus of the top ring",
  symbol: 'E_1',
  kind: 'pressure',
  metric: 'GPa',
  inch: 'GPa',
  rangeUnit: 'GPa',
  hard: [70, 230],
  usual: [100, 210],
  usualPlusMinus: 8,
  demo: { baseline: '160 GPa', candidate: '206 GPa' },
});

export const ring1Tension = quantity('ring1Tension', {
  label: 'Tangential force of the top ring, measured',
  symbol: 'F_t1',
  kind: 'force',
  metric: 'N',
  inch: 'lbf',
  rangeUnit: 'N',
  hard: [0.5, 120],
  usual: [3, 22],
  usualPlusMinus: 0.5,
  demo: { baseline: '13.6 N', candidate: '5.3 N' },
});

export const ring1FreeGap = quantity('ring1FreeGap', {
  label: 'Free gap of the top ring',
  symbol: 'm_1',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [1.5, 70],
  usual: [6, 15],
  usualPlusMinus: 0.2,
  demo: { baseline: '12.7 mm', candidate: '11.6 mm' },
});

export const ring1Gap = quantity('ring1Gap', {
  label: 'End gap of the top ring in the bore, cold',
  symbol: 's_1',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [0.03, 3],
  usual: [0.2, 0.7],
  usualPlusMinus: 0.02,
  demo: { baseline: '0.38 mm', candidate: '0.42 mm' },
});

export const ringOpening = quantity('ringOpening', {
  label: 'Gap as opened to pass over the piston',
  symbol: 'm_o',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [5, 200],
  usual: [15, 42],
  usualPlusMinus: 1,
  demo: { baseline: '30 mm', candidate: '25 mm' },
});

export const ring2Height = quantity('ring2Height', {
  label: 'Axial height of the second ring',
  symbol: 'h_2',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [0.3, 6],
  usual: [0.7, 2.4],
  usualPlusMinus: 0.003,
  demo: { baseline: '1.50 mm', candidate: '1.00 mm' },
});

export const ring2Radial = quantity('ring2Radial', {
  label: 'Radial thickness of the second ring',
  symbol: 'a_2',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [0.8, 12],
  usual: [2.4, 4.5],
  usualPlusMinus: 0.01,
  demo: { baseline: '3.80 mm', candidate: '3.20 mm' },
});

export const ring2Modulus = quantity('ring2Modulus', {
  label: "Young's modulus of the second ring",
  symbol: 'E_2',
  kind: 'pressure',
  metric: 'GPa',
  inch: 'GPa',
  rangeUnit: 'GPa',
  hard: [70, 230],
  usual: [95, 210],
  usualPlusMinus: 6,
  demo: { baseline: '105 GPa', candidate: '150 GPa' },
});

export const ring2Tension = quantity('ring2Tension', {
  label: 'Tangential force of the second ring, measured',
  symbol: 'F_t2',
  kind: 'force',
  metric: 'N',
  inch: 'lbf',
  rangeUnit: 'N',
  hard: [0.5, 120],
  usual: [3, 20],
  usualPlusMinus: 0.5,
  demo: { baseline: '10.2 N', candidate: '5.0 N' },
});

export const ring2FreeGap = quantity('ring2FreeGap', {
  label: 'Free gap of the second ring',
  symbol: 'm_2',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [1.5, 70],
  usual: [6, 15],
  usualPlusMinus: 0.2,
  demo: { baseline: '11.3 mm', candidate: '10.1 mm' },
});

export const ring2Gap = quantity('ring2Gap', {
  label: 'End gap of the second ring in the bore, cold',
  symbol: 's_2',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [0.03, 3],
  usual: [0.22, 0.85],
  usualPlusMinus: 0.02,
  demo: { baseline: '0.45 mm', candidate: '0.50 mm' },
});

export const oilRingTension = quantity('oilRingTension', {
  label: 'Tangential force of the whole oil ring, measured',
  symbol: 'F_t3',
  kind: 'force',
  metric: 'N',
  inch: 'lbf',
  rangeUnit: 'N',
  hard: [2, 300],
  usual: [8, 60],
  usualPlusMinus: 2,
  demo: { baseline: '34 N', candidate: '19 N' },
});

export const packDrag = quantity('packDrag', {
  label: 'Bench pull on the ringed piston in an oiled bore',
  symbol: 'F_drag',
  kind: 'force',
  metric: 'N',
  inch: 'lbf',
  rangeUnit: 'N',
  hard: [3, 700],
  usual: [15, 140],
  usualPlusMinus: 6,
  demo: { baseline: '47 N', candidate: '24 N' },
});

export const ringFriction = quantity('ringFriction', {
  label: 'Friction coefficient of ring on bore, running',
  symbol: 'μ_r',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [0.005, 0.3],
  usual: [0.02, 0.12],
  usualPlusMinus: 0.03,
  demo: { baseline: '0.06', candidate: '0.06' },
});

export const benchFriction = quantity('benchFriction', {
  label: 'Friction coefficient of ring on bore, pulled by hand',
  symbol: 'μ_b',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [0.03, 0.4],
  usual: [0.1, 0.16],
  usualPlusMinus: 0.02,
  demo: { baseline: '0.13', candidate: '0.13' },
});

// Wrist pin

export const pinDiameter = quantity('pinDiameter', {
  label: 'Wrist pin diameter',
  symbol: 'd_p',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [5, 60],
  usual: [12, 27],
  usualPlusMinus: 0.001,
  demo: { baseline: '22.00 mm', candidate: '20.50 mm' },
});

export const pinBore = quantity('pinBore', {
  label: 'Wrist pin bore, straight part',
  symbol: 'd_pi',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [0, 50],
  usual: [7, 16],
  usualPlusMinus: 0.05,
  demo: { baseline: '13.0 mm', candidate: '13.0 mm' },
});

export const pinTaperBore = quantity('pinTaperBore', {
  label: 'Wrist pin bore at its mouth',
  symbol: 'd_pt',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [0, 55],
  usual: [7, 20],
  usualPlusMinus: 0.1,
  demo: { baseline: '13.0 mm', candidate: '13.0 mm' },
});

export const pinTaperLength = quantity('pinTaperLength', {
  label: 'Length of each tapered mouth',
  symbol: 'l_pt',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [0, 50],
  usual: [0, 16],
  usualPlusMinus: 0.2,
  demo: { baseline: '0 mm', candidate: '0 mm' },
});

export const pinLength = quantity('pinLength', {
  label: 'Wrist pin length',
  symbol: 'l_p',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [12, 180],
  usual: [36, 76],
  usualPlusMinus: 0.02,
  demo: { baseline: '62.0 mm', candidate: '50.0 mm' },
});

export const smallEndWidth = quantity('smallEndWidth', {
  label: 'Width of the small end on the pin',
  symbol: 'l_se',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [6, 80],
  usual: [14, 30],
  usualPlusMinus: 0.05,
  demo: { baseline: '26.0 mm', candidate: '21.0 mm' },
});

export const bossGap = quantity('bossGap', {
  label: 'Distance between the piston bosses',
  symbol: 'b_p',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [6, 90],
  usual: [15, 34],
  usualPlusMinus: 0.1,
  demo: { baseline: '27.5 mm', candidate: '22.2 mm' },
});

export const pinDensity = quantity('pinDensity', {
  label: 'Density of the wrist pin',
  symbol: 'ρ_p',
  kind: 'density',
  metric: 'g/cm3',
  inch: 'g/cm3',
  rangeUnit: 'g/cm3',
  hard: [2.5, 9],
  usual: [7.7, 7.9],
  usualPlusMinus: 0.03,
  demo: { baseline: '7.85 g/cm3', candidate: '7.85 g/cm3' },
});

export const pinModulus = quantity('pinModulus', {
  label: "Young's modulus of the wrist pin",
  symbol: 'E_p',
  kind: 'pressure',
  metric: 'GPa',
  inch: 'GPa',
  rangeUnit: 'GPa',
  hard: [60, 300],
  usual: [195, 215],
  usualPlusMinus: 5,
  demo: { baseline: '205 GPa', candidate: '205 GPa' },
});

export const peakPressure = quantity('peakPressure', {
  label: 'Peak cylinder pressure (absolute)',
  symbol: 'p_max',
  kind: 'pressure',
  metric: 'bar',
  inch: 'psi',
  rangeUnit: 'bar',
  hard: [5, 300],
  usual: [40, 120],
  usualPlusMinus: 5,
  demo: { baseline: '54 bar', candidate: '73 bar' },
});

export const torqueSpeed = quantity('torqueSpeed', {
  label: 'Speed of greatest torque',
  symbol: 'n_T',
  kind: 'angularSpeed',
  metric: 'rpm',
  inch: 'rpm',
  rangeUnit: 'rpm',
  hard: [300, 25000],
  usual: [2500, 10000],
  usualPlusMinus: 50,
  demo: { baseline: '4400 rpm', candidate: '6800 rpm' },
});

// The rod and its material

export const shankHeight = quantity('shankHeight', {
  label: 'Shank section, height in the plane of motion',
  symbol: 'H_s',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [5, 90],
  usual: [14, 34],
  usualPlusMinus: 0.1,
  demo: { baseline: '20.0 mm', candidate: '27.0 mm' },
});

export const shankWidth = quantity('shankWidth', {
  label: 'Shank section, width across that plane',
  symbol: 'B_s',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [4, 70],
  usual: [10, 24],
  usualPlusMinus: 0.1,
  demo: { baseline: '15.5 mm', candidate: '19.0 mm' },
});

export const flangeThickness = quantity('flangeThickness', {
  label: 'Flange thickness of the shank',
  symbol: 't_f',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [1, 20],
  usual: [2.4, 7],
  usualPlusMinus: 0.1,
  demo: { baseline: '4.0 mm', candidate: '6.0 mm' },
});

export const webThickness = quantity('webThickness', {
  label: 'Web thickness of the shank',
  symbol: 't_w',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [1, 25],
  usual: [2.2, 8],
  usualPlusMinus: 0.1,
  demo: { baseline: '3.6 mm', candidate: '7.0 mm' },
});

export const shankArea = quantity('shankArea', {
  label: 'Least area of the shank, where it is known',
  symbol: 'A_s',
  kind: 'area',
  metric: 'mm2',
  inch: 'in2',
  rangeUnit: 'mm2',
  hard: [15, 2000],
  usual: [55, 450],
  usualPlusMinus: 5,
  demo: { baseline: '167.2 mm2', candidate: '333.0 mm2' },
});

export const shankLength = quantity('shankLength', {
  label: 'Length of the shank between the two eyes',
  symbol: 'l_s',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [15, 350],
  usual: [60, 140],
  usualPlusMinus: 2,
  demo: { baseline: '100 mm', candidate: '106 mm' },
});

export const stretchFactor = quantity('stretchFactor', {
  label: 'Stretch of the whole rod over that of the shank',
  symbol: 'k_st',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [1, 5],
  usual: [1.3, 2.5],
  usualPlusMinus: 0.4,
  demo: { baseline: '1.6', candidate: '1.6' },
});

export const pistonToHead = quantity('pistonToHead', {
  label: 'Piston to head, set cold',
  symbol: 'c_ph',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [-2, 15],
  usual: [0.75, 2],
  usualPlusMinus: 0.04,
  demo: { baseline: '1.50 mm', candidate: '1.55 mm' },
});

export const peakAngle = quantity('peakAngle', {
  label: 'Crank angle of the peak pressure after TDC',
  symbol: 'θ_max',
  kind: 'angle',
  metric: 'deg',
  inch: 'deg',
  rangeUnit: 'deg',
  hard: [-10, 60],
  usual: [5, 25],
  usualPlusMinus: 1,
  demo: { baseline: '15.3 deg', candidate: '14.5 deg' },
});

export const youngsModulus = quantity('youngsModulus', {
  label: "Young's modulus of the rod",
  symbol: 'E',
  kind: 'pressure',
  metric: 'GPa',
  inch: 'GPa',
  rangeUnit: 'GPa',
  hard: [60, 220],
  usual: [70, 212],
  usualPlusMinus: 3,
  demo: { baseline: '207 GPa', candidate: '71.7 GPa' },
});

export const rodDensity = quantity('rodDensity', {
  label: 'Density of the rod',
  symbol: 'ρ_rod',
  kind: 'density',
  metric: 'g/cm3',
  inch: 'g/cm3',
  rangeUnit: 'g/cm3',
  hard: [2.6, 8.1],
  usual: [2.77, 7.87],
  usualPlusMinus: 0.05,
  demo: { baseline: '7.83 g/cm3', candidate: '2.81 g/cm3' },
});

export const yieldStrength = quantity('yieldStrength', {
  label: 'Yield strength of the rod, at its temperature',
  symbol: 'R_p',
  kind: 'pressure',
  metric: 'MPa',
  inch: 'ksi',
  rangeUnit: 'MPa',
  hard: [100, 2100],
  usual: [350, 1500],
  usualPlusMinus: 30,
  demo: { baseline: '600 MPa', candidate: '440 MPa' },
});

export const rodExpansion = quantity('rodExpansion', {
  label: 'Thermal expansion of the rod',
  symbol: 'α_rod',
  kind: 'expansion',
  metric: 'ppm/K',
  inch: 'ppm/degF',
  rangeUnit: 'ppm/K',
  hard: [7, 26],
  usual: [8.6, 23.6],
  usualPlusMinus: 0.4,
  demo: { baseline: '11.5 ppm/K', candidate: '23.4 ppm/K' },
});

export const rodTemperature = quantity('rodTemperature', {
  label: 'Rod temperature, running',
  symbol: 'T_rod',
  kind: 'temperature',
  metric: 'degC',
  inch: 'degF',
  rangeUnit: 'degC',
  hard: [20, 220],
  usual: [90, 150],
  usualPlusMinus: 15,
  demo: { baseline: '105 degC', candidate: '100 degC' },
});

export const assemblyTemperature = quantity('assemblyTemperature', {
  label: 'Temperature at which it was measured',
  symbol: 'T_0',
  kind: 'temperature',
  metric: 'degC',
  inch: 'degF',
  rangeUnit: 'degC',
  hard: [-10, 40],
  usual: [15, 30],
  usualPlusMinus: 1,
  demo: { baseline: '20 degC', candidate: '20 degC' },
});

export const rodNotchFactor = quantity('rodNotchFactor', {
  label: 'Fatigue notch factor of the shank',
  symbol: 'K_f',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [1, 6],
  usual: [1.1, 2.5],
  usualPlusMinus: 0.2,
  demo: { baseline: '1.3', candidate: '1.2' },
});

export const rodMargin = quantity('rodMargin', {
  label: 'Margin asked for, both sets',
  symbol: 'j',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [1, 10],
  usual: [1.2, 3],
  demo: { baseline: '1.5', candidate: '1.5' },
  common: true,
});

export const stretchWanted = quantity('stretchWanted', {
  label: 'Stretch of the whole rod to be held, both sets',
  symbol: 'δ_0',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [0.005, 2],
  usual: [0.03, 0.2],
  demo: { baseline: '0.080 mm', candidate: '0.080 mm' },
  common: true,
});

export const endFactor = quantity('endFactor', {
  label: 'Free length over length of the bar',
  symbol: 'K_e',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [0.1, 5],
  usual: [0.5, 2],
  usualPlusMinus: 0.05,
  demo: { baseline: '1', candidate: '1' },
});

export const gyrationRadius = quantity('gyrationRadius', {
  label: 'Radius of gyration of the section',
  symbol: 'k',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [0.5, 500],
  usual: [3, 12],
  usualPlusMinus: 0.05,
  demo: { baseline: '7.18 mm', candidate: '9.14 mm' },
});

export const rankineDivisor = quantity('rankineDivisor', {
  label: 'Divisor in Rankine’s formula, as a textbook gives it',
  symbol: 'c_R',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [100, 50000],
  usual: [1000, 10000],
  demo: { baseline: '7500', candidate: '7500' },
});

// Rod bearing

export const rodHousing = quantity('rodHousing', {
  label: 'Rod big-end bore without shells',
  symbol: 'D_h',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [15, 160],
  usual: [32, 62],
  usualPlusMinus: 0.003,
  demo: { baseline: '55.590 mm', candidate: '49.700 mm' },
});

export const housingOutside = quantity('housingOutside', {
  label: 'Outside diameter of the big end, as a ring',
  symbol: 'D_ho',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [20, 230],
  usual: [42, 84],
  usualPlusMinus: 1,
  demo: { baseline: '70.6 mm', candidate: '74.7 mm' },
});

export const rodShellWall = quantity('rodShellWall', {
  label: 'Rod shell wall at the crown',
  symbol: 't_rs',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [0.6, 8],
  usual: [1.2, 2.5],
  usualPlusMinus: 0.0015,
  demo: { baseline: '1.7720 mm', candidate: '1.8170 mm' },
});

export const rodShellWidth = quantity('rodShellWidth', {
  label: 'Rod shell width',
  symbol: 'b_rs',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [4, 90],
  usual: [12, 24],
  usualPlusMinus: 0.05,
  demo: { baseline: '19.6 mm', candidate: '18.8 mm' },
});

export const crushHeight = quantity('crushHeight', {
  label: 'Crush height of one half shell',
  symbol: 's_N',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [0, 0.5],
  usual: [0.02, 0.12],
  usualPlusMinus: 0.008,
  demo: { baseline: '0.068 mm', candidate: '0.110 mm' },
});

export const rodClearance = quantity('rodClearance', {
  label: 'Rod bearing clearance as gauged',
  symbol: 'c_rod',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [0.005, 0.4],
  usual: [0.022, 0.085],
  usualPlusMinus: 0.006,
  demo: { baseline: '', candidate: '' },
});

export const journalOutOfRound = quantity('journalOutOfRound', {
  label: 'Out-of-round of the crankpin',
  symbol: 'ΔD_o',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [0, 0.1],
  usual: [0, 0.008],
  usualPlusMinus: 0.002,
  demo: { baseline: '0.003 mm', candidate: '0.002 mm' },
});

export const journalTaper = quantity('journalTaper', {
  label: 'Taper of the crankpin',
  symbol: 'ΔD_t',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [0, 0.1],
  usual: [0, 0.006],
  usualPlusMinus: 0.002,
  demo: { baseline: '0.003 mm', candidate: '0.002 mm' },
});

export const bearingLoad = quantity('bearingLoad', {
  label: 'Load on the crankpin',
  symbol: 'F_b',
  kind: 'force',
  metric: 'kN',
  inch: 'lbf',
  rangeUnit: 'kN',
  hard: [0.01, 800],
  usual: [1, 60],
  usualPlusMinus: 2,
  demo: { baseline: '23.2 kN', candidate: '29.2 kN' },
});

export const housingPoisson = quantity('housingPoisson', {
  label: 'Poisson’s ratio of the rod',
  symbol: 'ν_rod',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [0, 0.49],
  usual: [0.27, 0.34],
  usualPlusMinus: 0.02,
  demo: { baseline: '0.30', candidate: '0.33' },
});

export const shellModulus = quantity('shellModulus', {
  label: 'Young’s modulus of the shell’s back',
  symbol: 'E_sh',
  kind: 'pressure',
  metric: 'GPa',
  inch: 'ksi',
  rangeUnit: 'GPa',
  hard: [60, 300],
  usual: [195, 212],
  usualPlusMinus: 3,
  demo: { baseline: '205 GPa', candidate: '205 GPa' },
});

export const shellExpansion = quantity('shellExpansion', {
  label: 'Thermal expansion of the shell’s back',
  symbol: 'α_sh',
  kind: 'expansion',
  metric: 'ppm/K',
  inch: 'ppm/degF',
  rangeUnit: 'ppm/K',
  hard: [5, 26],
  usual: [11, 13],
  usualPlusMinus: 0.3,
  demo: { baseline: '11.7 ppm/K', candidate: '11.7 ppm/K' },
});

export const crankExpansion = quantity('crankExpansion', {
  label: 'Thermal expansion of the crank',
  symbol: 'α_cr',
  kind: 'expansion',
  metric: 'ppm/K',
  inch: 'ppm/degF',
  rangeUnit: 'ppm/K',
  hard: [9, 14],
  usual: [10.5, 12.8],
  usualPlusMinus: 0.3,
  demo: { baseline: '12.0 ppm/K', candidate: '12.3 ppm/K' },
});

export const ambientTemperature = quantity('ambientTemperature', {
  label: 'Air temperature',
  symbol: 'T_a',
  kind: 'temperature',
  metric: 'degC',
  inch: 'degF',
  rangeUnit: 'degC',
  hard: [-40, 55],
  usual: [5, 38],
  usualPlusMinus: 0.5,
  demo: { baseline: '20 °C', candidate: '20 °C' },
});

export const coldStartTemperature = quantity('coldStartTemperature', {
  label: 'Coldest start',
  symbol: 'T_cold',
  kind: 'temperature',
  metric: 'degC',
  inch: 'degF',
  rangeUnit: 'degC',
  hard: [-60, 40],
  usual: [-25, 20],
  usualPlusMinus: 2,
  demo: { baseline: '−5 °C', candidate: '−5 °C' },
});

export const crankpinTemperature = quantity('crankpinTemperature', {
  label: 'Crankpin temperature, running',
  symbol: 'T_pin',
  kind: 'temperature',
  metric: 'degC',
  inch: 'degF',
  rangeUnit: 'degC',
  hard: [20, 250],
  usual: [90, 160],
  usualPlusMinus: 10,
  demo: { baseline: '110 °C', candidate: '105 °C' },
});

export const fitDiameter = quantity('fitDiameter', {
  label: 'Nominal diameter of the fit',
  symbol: 'D_n',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [1, 500],
  usual: [20, 100],
  demo: { baseline: '56 mm', candidate: '50 mm' },
});

// Gas exchange and burning

export const ambientPressure = quantity('ambientPressure', {
  label: 'Air pressure (absolute)',
  symbol: 'p_a',
  kind: 'pressure',
  metric: 'kPa',
  inch: 'inHg',
  rangeUnit: 'kPa',
  hard: [50, 110],
  usual: [80, 104],
  usualPlusMinus: 0.1,
  demo: { baseline: '98.0 kPa', candidate: '98.0 kPa' },
});

export const compressionRatio = quantity('compressionRatio', {
  label: 'Compression ratio, geometric',
  symbol: 'ε',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [3, 25],
  usual: [8, 14.5],
  usualPlusMinus: 0.1,
  demo: { baseline: '9.58', candidate: '12.13' },
});

export const volumetricEfficiency = quantity('volumetricEfficiency', {
  label: 'Volumetric efficiency',
  symbol: 'η_v',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [0.1, 4],
  usual: [0.75, 1.2],
  usualPlusMinus: 0.05,
  demo: { baseline: '0.92', candidate: '1.05' },
});

export const manifoldPressure = quantity('manifoldPressure', {
  label: 'Intake pressure at full throttle (absolute)',
  symbol: 'p_in',
  kind: 'pressure',
  metric: 'kPa',
  inch: 'inHg',
  rangeUnit: 'kPa',
  hard: [10, 500],
  usual: [80, 105],
  usualPlusMinus: 1,
  demo: { baseline: '93 kPa', candidate: '95 kPa' },
});

export const exhaustPressure = quantity('exhaustPressure', {
  label: 'Exhaust pressure (absolute)',
  symbol: 'p_ex',
  kind: 'pressure',
  metric: 'kPa',
  inch: 'inHg',
  rangeUnit: 'kPa',
  hard: [50, 500],
  usual: [100, 140],
  usualPlusMinus: 2,
  demo: { baseline: '110 kPa', candidate: '110 kPa' },
});

export const intakeOpen = quantity('intakeOpen', {
  label: 'Intake opens before TDC',
  symbol: 'IVO',
  kind: 'angle',
  metric: 'deg',
  inch: 'deg',
  rangeUnit: 'deg',
  hard: [-40, 110],
  usual: [0, 55],
  usualPlusMinus: 1,
  demo: { baseline: '22 deg', candidate: '40 deg' },
});

export const intakeClose = quantity('intakeClose', {
  label: 'Intake closes after BDC',
  symbol: 'IVC',
  kind: 'angle',
  metric: 'deg',
  inch: 'deg',
  rangeUnit: 'deg',
  hard: [-30, 130],
  usual: [35, 85],
  usualPlusMinus: 1,
  demo: { baseline: '62 deg', candidate: '76 deg' },
});

export const exhaustOpen = quantity('exhaustOpen', {
  label: 'Exhaust opens before BDC',
  symbol: 'EVO',
  kind: 'angle',
  metric: 'deg',
  inch: 'deg',
  rangeUnit: 'deg',
  hard: [0, 130],
  usual: [45, 90],
  usualPlusMinus: 1,
  demo: { baseline: '64 deg', candidate: '80 deg' },
});

export const burnStart = quantity('burnStart', {
  label: 'Burning starts before TDC',
  symbol: 'θ_s',
  kind: 'angle',
  metric: 'deg',
  inch: 'deg',
  rangeUnit: 'deg',
  hard: [-20, 60],
  usual: [5, 35],
  usualPlusMinus: 5,
  demo: { baseline: '21 deg', candidate: '19 deg' },
});

export const burnDuration = quantity('burnDuration', {
  label: 'Whole burn lasts',
  symbol: 'Δθ_b',
  kind: 'angle',
  metric: 'deg',
  inch: 'deg',
  rangeUnit: 'deg',
  hard: [0, 150],
  usual: [40, 75],
  usualPlusMinus: 8,
  demo: { baseline: '54 deg', candidate: '52 deg' },
});

export const wiebeEfficiency = quantity('wiebeEfficiency', {
  label: 'Wiebe a',
  symbol: 'a_W',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [2, 10],
  usual: [5, 6.91],
  demo: { baseline: '5', candidate: '5' },
});

export const wiebeForm = quantity('wiebeForm', {
  label: 'Wiebe m',
  symbol: 'm_W',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [0.3, 6],
  usual: [1.5, 3],
  usualPlusMinus: 0.5,
  demo: { baseline: '2', candidate: '2' },
});

export const compressionExponent = quantity('compressionExponent', {
  label: 'Compression exponent',
  symbol: 'n_c',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [1, 1.4],
  usual: [1.28, 1.36],
  usualPlusMinus: 0.02,
  demo: { baseline: '1.32', candidate: '1.32' },
});

export const expansionExponent = quantity('expansionExponent', {
  label: 'Expansion exponent',
  symbol: 'n_e',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [1, 1.45],
  usual: [1.22, 1.32],
  usualPlusMinus: 0.03,
  demo: { baseline: '1.27', candidate: '1.27' },
});

export const burnedGamma = quantity('burnedGamma', {
  label: 'Ratio of specific heats while burning',
  symbol: 'γ_b',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [1.1, 1.4],
  usual: [1.24, 1.32],
  usualPlusMinus: 0.02,
  demo: { baseline: '1.28', candidate: '1.28' },
});

export const heatLoss = quantity('heatLoss', {
  label: 'Share of the heat lost to the walls while burning',
  symbol: 'q_w',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [0, 0.7],
  usual: [0.06, 0.25],
  usualPlusMinus: 0.05,
  demo: { baseline: '0.08', candidate: '0.10' },
});

export const airFuelLambda = quantity('airFuelLambda', {
  label: 'Air-fuel equivalence',
  symbol: 'λ_a',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [0.5, 2],
  usual: [0.8, 1.02],
  usualPlusMinus: 0.02,
  demo: { baseline: '0.88', candidate: '0.88' },
});

export const stoichRatio = quantity('stoichRatio', {
  label: 'Air that the fuel needs, by mass',
  symbol: 'AFR',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [3, 35],
  usual: [6.4, 14.7],
  usualPlusMinus: 0.1,
  demo: { baseline: '14.6', candidate: '14.6' },
});

export const heatingValue = quantity('heatingValue', {
  label: 'Lower heating value of the fuel',
  symbol: 'H_u',
  kind: 'specificEnergy',
  metric: 'MJ/kg',
  inch: 'Btu/lb',
  rangeUnit: 'MJ/kg',
  hard: [15, 50],
  usual: [26.8, 44],
  usualPlusMinus: 0.5,
  demo: { baseline: '43.0 MJ/kg', candidate: '43.0 MJ/kg' },
});

export const combustionEfficiency = quantity('combustionEfficiency', {
  label: 'Share of the burnable fuel that burns',
  symbol: 'η_c',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [0.3, 1],
  usual: [0.92, 0.98],
  usualPlusMinus: 0.02,
  demo: { baseline: '0.95', candidate: '0.95' },
});

export const residualFraction = quantity('residualFraction', {
  label: 'Old gas in the charge',
  symbol: 'x_r',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [0, 0.6],
  usual: [0.02, 0.1],
  usualPlusMinus: 0.02,
  demo: { baseline: '0.04', candidate: '0.04' },
});

export const chargeTemperature = quantity('chargeTemperature', {
  label: 'Charge temperature when the intake closes',
  symbol: 'T_IVC',
  kind: 'temperature',
  metric: 'degC',
  inch: 'degF',
  rangeUnit: 'degC',
  hard: [0, 250],
  usual: [55, 95],
  usualPlusMinus: 10,
  demo: { baseline: '72 °C', candidate: '72 °C' },
});

export const peakVariation = quantity('peakVariation', {
  label: 'Spread of the peak from cycle to cycle (1 s)',
  symbol: 'CoV_p',
  kind: 'ratio',
  metric: 'pct',
  inch: 'pct',
  rangeUnit: 'pct',
  hard: [0, 50],
  usual: [4, 12],
  demo: { baseline: '6 %', candidate: '7 %' },
});

export const frictionMep = quantity('frictionMep', {
  label: 'Friction mean effective pressure at the highest speed',
  symbol: 'p_fr',
  kind: 'pressure',
  metric: 'bar',
  inch: 'psi',
  rangeUnit: 'bar',
  hard: [0.2, 10],
  usual: [1.2, 3.6],
  usualPlusMinus: 0.3,
  demo: { baseline: '2.2 bar', candidate: '2.8 bar' },
});

// Gas round the top ring

export const ringSideClearance = quantity('ringSideClearance', {
  label: 'Side clearance of the top ring (groove less ring)',
  symbol: 'c_ax',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [0.002, 0.4],
  usual: [0.015, 0.08],
  usualPlusMinus: 0.005,
  demo: { baseline: '0.045 mm', candidate: '0.022 mm' },
});

export const ringBackClearance = quantity('ringBackClearance', {
  label: 'Back clearance of the top ring, radial',
  symbol: 'c_r',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [0.01, 3],
  usual: [0.15, 0.8],
  usualPlusMinus: 0.05,
  demo: { baseline: '0.55 mm', candidate: '0.35 mm' },
});

export const topLandHeight = quantity('topLandHeight', {
  label: 'Top land height',
  symbol: 'h_TL',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [1, 20],
  usual: [2.5, 9],
  usualPlusMinus: 0.05,
  demo: { baseline: '6.0 mm', candidate: '4.0 mm' },
});

export const topLandClearance = quantity('topLandClearance', {
  label: 'Top land clearance (bore less land)',
  symbol: 'c_TL',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [0.05, 3],
  usual: [0.3, 0.9],
  usualPlusMinus: 0.02,
  demo: { baseline: '0.56 mm', candidate: '0.62 mm' },
});

export const secondLandHeight = quantity('secondLandHeight', {
  label: 'Second land height',
  symbol: 'h_L2',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [1, 15],
  usual: [2.2, 6],
  usualPlusMinus: 0.05,
  demo: { baseline: '4.2 mm', candidate: '3.2 mm' },
});

export const secondLandClearance = quantity('secondLandClearance', {
  label: 'Second land clearance (bore less land)',
  symbol: 'c_L2',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [0.05, 3],
  usual: [0.3, 0.9],
  usualPlusMinus: 0.02,
  demo: { baseline: '0.50 mm', candidate: '0.52 mm' },
});

export const ringDensity = quantity('ringDensity', {
  label: 'Density of the top ring',
  symbol: 'ρ_r',
  kind: 'density',
  metric: 'g/cm3',
  inch: 'lb/in3',
  rangeUnit: 'g/cm3',
  hard: [6.8, 8.5],
  usual: [7.1, 7.9],
  demo: { baseline: '7.3 g/cm³', candidate: '7.85 g/cm³' },
});

export const portCount = quantity('portCount', {
  label: 'Gas ports',
  symbol: 'n_po',
  kind: 'count',
  metric: 'count',
  inch: 'count',
  rangeUnit: 'count',
  hard: [0, 60],
  usual: [0, 24],
  demo: { baseline: '0', candidate: '10' },
});

export const portDiameter = quantity('portDiameter', {
  label: 'Gas port diameter',
  symbol: 'd_po',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [0.1, 4],
  usual: [0.8, 1.6],
  usualPlusMinus: 0.02,
  demo: { baseline: '1.0 mm', candidate: '1.10 mm' },
});

export const portPlugged = quantity('portPlugged', {
  label: 'Share of the ports’ area that is plugged',
  symbol: 'q_po',
  kind: 'ratio',
  metric: 'pct',
  inch: 'pct',
  rangeUnit: 'pct',
  hard: [0, 100],
  usual: [0, 95],
  demo: { baseline: '50 %', candidate: '50 %' },
});

export const dischargeCoefficient = quantity('dischargeCoefficient', {
  label: 'Discharge coefficient of holes and gaps',
  symbol: 'C_d',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [0.3, 1],
  usual: [0.6, 0.9],
  usualPlusMinus: 0.08,
  demo: { baseline: '0.7', candidate: '0.7' },
});

export const faceFactor = quantity('faceFactor', {
  label: 'Share of the pressure difference that loads the face',
  symbol: 'κ_f',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [0, 1],
  usual: [0.3, 0.7],
  usualPlusMinus: 0.2,
  demo: { baseline: '0.5', candidate: '0.5' },
});

export const flankFactor = quantity('flankFactor', {
  label: 'Share of the pressure difference that holds a closed flank',
  symbol: 'κ_a',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [0, 1],
  usual: [0.5, 1],
  usualPlusMinus: 0.2,
  demo: { baseline: '0.5', candidate: '0.5' },
});

export const ringTemperature = quantity('ringTemperature', {
  label: 'Top ring temperature',
  symbol: 'T_ring',
  kind: 'temperature',
  metric: 'degC',
  inch: 'degF',
  rangeUnit: 'degC',
  hard: [60, 350],
  usual: [150, 260],
  usualPlusMinus: 20,
  demo: { baseline: '195 °C', candidate: '215 °C' },
});

export const ringExpansion = quantity('ringExpansion', {
  label: 'Expansion of the rings',
  symbol: 'α_r',
  kind: 'expansion',
  metric: 'ppm/K',
  inch: 'ppm/degF',
  rangeUnit: 'ppm/K',
  hard: [8, 20],
  usual: [10.5, 12.5],
  demo: { baseline: '11.5 ppm/K', candidate: '11.5 ppm/K' },
});

export const boreExpansion = quantity('boreExpansion', {
  label: 'Expansion of the bore',
  symbol: 'α_b',
  kind: 'expansion',
  metric: 'ppm/K',
  inch: 'ppm/degF',
  rangeUnit: 'ppm/K',
  hard: [8, 25],
  usual: [10.5, 23],
  demo: { baseline: '12.0 ppm/K', candidate: '12.0 ppm/K' },
});

export const boreTemperature = quantity('boreTemperature', {
  label: 'Bore temperature at the top ring',
  symbol: 'T_wall',
  kind: 'temperature',
  metric: 'degC',
  inch: 'degF',
  rangeUnit: 'degC',
  hard: [40, 280],
  usual: [105, 170],
  usualPlusMinus: 10,
  demo: { baseline: '120 °C', candidate: '125 °C' },
});

// A hole between two spaces

export const upstreamPressure = quantity('upstreamPressure', {
  label: 'Pressure before the hole (absolute, at rest)',
  symbol: 'p_0',
  kind: 'pressure',
  metric: 'bar',
  inch: 'psi',
  rangeUnit: 'bar',
  hard: [0.01, 500],
  usual: [1, 100],
  demo: { baseline: '15 bar', candidate: '15 bar' },
});

export const downstreamPressure = quantity('downstreamPressure', {
  label: 'Pressure after the hole (absolute)',
  symbol: 'p_d',
  kind: 'pressure',
  metric: 'bar',
  inch: 'psi',
  rangeUnit: 'bar',
  hard: [0, 500],
  usual: [0, 100],
  demo: { baseline: '14 bar', candidate: '5 bar' },
});

export const gasTemperature = quantity('gasTemperature', {
  label: 'Temperature of the gas at rest',
  symbol: 'T_0',
  kind: 'temperature',
  metric: 'degC',
  inch: 'degF',
  rangeUnit: 'degC',
  hard: [-200, 3000],
  usual: [20, 300],
  demo: { baseline: '200 °C', candidate: '200 °C' },
});

export const heatRatio = quantity('heatRatio', {
  label: 'Ratio of the gas’s heats',
  symbol: 'γ',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [1.01, 1.7],
  usual: [1.25, 1.4],
  demo: { baseline: '1.35', candidate: '1.35' },
});

export const gasConstant = quantity('gasConstant', {
  label: 'Gas constant, in J/(kg·K)',
  symbol: 'R',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [50, 5000],
  usual: [180, 300],
  demo: { baseline: '287', candidate: '287' },
});

export const orificeArea = quantity('orificeArea', {
  label: 'Area of the hole',
  symbol: 'A',
  kind: 'area',
  metric: 'mm2',
  inch: 'in2',
  rangeUnit: 'mm2',
  hard: [0.001, 100000],
  usual: [0.1, 20],
  demo: { baseline: '0.95 mm²', candidate: '0.95 mm²' },
});

export const vesselVolume = quantity('vesselVolume', {
  label: 'Volume of the vessel that empties',
  symbol: 'V',
  kind: 'volume',
  metric: 'mm3',
  inch: 'in3',
  rangeUnit: 'mm3',
  hard: [0.1, 1000000000.0],
  usual: [50, 500],
  demo: { baseline: '100 mm³', candidate: '100 mm³' },
});

export const targetPressure = quantity('targetPressure', {
  label: 'Share of the first pressure to empty to',
  symbol: 'q_p',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [0.001, 1],
  usual: [0.05, 1],
  demo: { baseline: '0.5', candidate: '0.5' },
});

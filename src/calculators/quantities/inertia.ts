import { quantity } from './entry.ts';

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

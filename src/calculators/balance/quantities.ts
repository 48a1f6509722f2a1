import {
  angle,
  area,
  count,
  expansion,
  gradeSpeed,
  heavyMass,
  length,
  mass,
  metalDensity,
  metalModulus,
  percent,
  temperature,
  unbalance,
  weighings,
} from '../quantity.ts';

/* What hangs on a crankpin, and where a crank is corrected. */

export const pistonMass = mass('pistonMass', 'm_piston', 'Piston, bare', [15, 90, 650, 3000], {
  origin: 'part',
  demo: ['428.0 g', '318.0 g'],
  plusMinus: 0.1,
});
export const pinMass = mass('pinMass', 'm_pin', 'Wrist pin', [4, 18, 180, 1000], {
  origin: 'part',
  demo: ['120.2 g', '77.0 g'],
  plusMinus: 0.1,
});
export const ringMass = mass('ringMass', 'm_rings', 'Rings of one piston', [1, 8, 60, 300], {
  origin: 'part',
  demo: ['38.0 g', '23.5 g'],
  plusMinus: 0.1,
});
export const lockMass = mass('lockMass', 'm_locks', 'Pin locks (pair)', [0, 0, 5, 25], {
  origin: 'part',
  demo: ['0 g', '1.2 g'],
  plusMinus: 0.05,
});
export const shellMass = mass('shellMass', 'm_shell', 'Bearing pair of one rod', [2, 10, 85, 400], {
  origin: 'part',
  demo: ['41.0 g', '36.0 g'],
  plusMinus: 0.1,
});
export const oilMass = mass('oilMass', 'm_oil', 'Oil allowance of one crankpin', [0, 1, 8, 40], {
  origin: 'assumption',
  demo: ['4.0 g', '3.0 g'],
  plusMinus: 2,
});
export const rodsPerPin = count('rodsPerPin', 'n_rod', 'Rods on one crankpin', [1, 1, 2, 9], {
  origin: 'choice',
  demo: '2',
});
export const reciprocatingFraction = percent(
  'reciprocatingFraction',
  'f',
  'Balance factor',
  [0, 36, 55, 100],
  { origin: 'choice', demo: '50 %' },
);
export const partnerRotating = mass(
  'partnerRotating',
  'Δm_rot',
  "Second rod's rotating mass, heavier by",
  [-500, -10, 10, 500],
  { origin: 'part', demo: '0 g', plusMinus: 0.5 },
);
export const partnerReciprocating = mass(
  'partnerReciprocating',
  'Δm_rec',
  "Second rod's reciprocating mass, heavier by",
  [-500, -20, 20, 500],
  { origin: 'part', demo: '0 g', plusMinus: 0.5 },
);
export const bobweight = mass(
  'bobweight',
  'm_bob',
  'Bobweight of one crankpin',
  [30, 200, 2700, 15000],
  { origin: 'part', demo: ['1685.2 g', '1233.1 g'], plusMinus: 0.5 },
);
export const bobweightError = mass(
  'bobweightError',
  'Δm_bob',
  'Error or change of every bobweight',
  [-5000, 0.1, 500, 5000],
  { origin: 'part', demo: ['4 g', '3 g'] },
);
export const rotatingMass = mass(
  'rotatingMass',
  'm_rot',
  'Rotating mass at one crankpin',
  [0, 100, 1400, 500000],
  { origin: 'part', demo: ['928.4 g', '675.2 g'], plusMinus: 0.5 },
);
export const reciprocatingMass = mass(
  'reciprocatingMass',
  'm_rec',
  'Reciprocating mass of one cylinder',
  [1, 150, 1000, 500000],
  { origin: 'part', demo: ['756.8 g', '557.9 g'], plusMinus: 0.5 },
);
export const balanceRadius = length(
  'balanceRadius',
  'b',
  'Radius of the balance mass',
  [5, 30, 95, 1000],
  { origin: 'part', demo: ['74.0 mm', '73.0 mm'], plusMinus: 0.5 },
);
export const planeA = length(
  'planeA',
  'z_A',
  "Correction plane A from the crank's middle",
  [-1000, -260, -60, 0],
  { origin: 'thing', demo: '-194 mm', plusMinus: 1 },
);
export const planeB = length(
  'planeB',
  'z_B',
  "Correction plane B from the crank's middle",
  [0, 60, 260, 1000],
  { origin: 'thing', demo: '194 mm', plusMinus: 1 },
);
export const cylinderSpacing = length(
  'cylinderSpacing',
  'a_c',
  'Cylinder spacing along the crank',
  [30, 70, 115, 200],
  { origin: 'thing', demo: '100.0 mm', plusMinus: 0.05 },
);
export const balanceGrade = gradeSpeed(
  'balanceGrade',
  'G',
  'Balance quality grade',
  [0.1, 2.5, 40, 4000],
  { origin: 'choice', demo: ['16 mm/s', '6.3 mm/s'] },
);
export const crankMass = heavyMass('crankMass', 'm_crank', 'Crank, bare', [0.4, 2.5, 38, 2000], {
  origin: 'part',
  demo: ['20.4 kg', '18.1 kg'],
  plusMinus: 0.05,
});
export const bobweightsMass = heavyMass(
  'bobweightsMass',
  'm_bobs',
  'All bobweights together',
  [0, 0, 15, 200],
  { origin: 'part', demo: ['6.741 kg', '4.932 kg'], plusMinus: 0.005 },
);
export const bearingSpan = length(
  'bearingSpan',
  'l_b',
  'Bearing A to bearing B',
  [20, 90, 560, 5000],
  { origin: 'thing', demo: '400 mm', plusMinus: 1 },
);
export const cgToBearingA = length(
  'cgToBearingA',
  'l_A',
  'Bearing A to the centre of mass',
  [-1500, 25, 300, 6500],
  { origin: 'part', demo: ['203 mm', '201 mm'], plusMinus: 2 },
);
export const residualA = unbalance(
  'residualA',
  'U_res,A',
  'Residual read in plane A',
  [0, 0, 300, 200000],
  { origin: 'part', demo: ['240 g·mm', '60 g·mm'], plusMinus: 20 },
);
export const residualB = unbalance(
  'residualB',
  'U_res,B',
  'Residual read in plane B',
  [0, 0, 300, 200000],
  { origin: 'part', demo: ['190 g·mm', '70 g·mm'], plusMinus: 20 },
);
export const unbalanceFloor = unbalance(
  'unbalanceFloor',
  'U_floor',
  'Floor at the flywheel’s end',
  [0, 10, 500, 200000],
  { origin: 'part', demo: ['279.8 g·mm', '192.8 g·mm'] },
);
export const mountingOffset = length(
  'mountingOffset',
  'e_m',
  'Crank’s axis off the axis it turns about on the machine',
  [0, 0.002, 0.03, 0.5],
  { origin: 'assumption', demo: '0.0125 mm', plusMinus: 0.005 },
);
export const flywheelMass = heavyMass(
  'flywheelMass',
  'm_fw',
  'Flywheel with its starter ring',
  [0, 1.5, 14, 200],
  { origin: 'part', demo: ['9.4 kg', '4.6 kg'], plusMinus: 0.02 },
);
export const flywheelClearance = length(
  'flywheelClearance',
  'c_reg',
  'Clearance of the flywheel on its register',
  [0, 0.005, 0.08, 1],
  { origin: 'part', demo: '0.040 mm', plusMinus: 0.005 },
);
export const bobweightUnbalance = unbalance(
  'bobweightUnbalance',
  'U_bob',
  'From the bobweights’ error, in the worse end plane',
  [0, 0, 300, 200000],
  { origin: 'part', demo: ['119.0 g·mm', '89.2 g·mm'] },
);
export const bankAngle = angle('bankAngle', 'γ', 'Angle between the banks', [0, 0, 180, 180], {
  origin: 'thing',
  demo: '90 deg',
  plusMinus: 0.1,
});
export const pistonMasses = weighings(
  'pistonMasses',
  'm_piston,i',
  'Pistons, each',
  [15, 90, 650, 3000],
  {
    origin: 'part',
    demo: [
      '428.0; 427.1; 429.2; 428.6; 426.8; 428.3; 427.7; 429.0',
      '318.0; 317.2; 318.7; 318.3; 317.6; 318.4; 317.8; 318.6',
    ],
    most: 16,
  },
);
export const pinMasses = weighings('pinMasses', 'm_pin,i', 'Wrist pins, each', [4, 18, 180, 1000], {
  origin: 'part',
  demo: [
    '120.2; 120.6; 119.9; 120.4; 120.1; 120.0; 120.5; 120.3',
    '77.0; 76.8; 77.2; 77.1; 76.9; 77.1; 76.8; 77.0',
  ],
  most: 16,
});
export const smallEndMasses = weighings(
  'smallEndMasses',
  'm_se,k',
  'Small ends, each',
  [8, 50, 250, 1500],
  {
    origin: 'part',
    demo: [
      '170.6; 171.4; 169.9; 170.2; 171.0; 170.8; 170.1; 171.2',
      '138.2; 137.8; 138.6; 138.4; 137.9; 138.5; 138.0; 138.3',
    ],
    most: 16,
  },
);
export const ringMasses = weighings(
  'ringMasses',
  'm_rings,i',
  'Rings and locks, those of each piston',
  [1, 8, 60, 300],
  { origin: 'part', demo: '', most: 16 },
);
export const bigEndMasses = weighings(
  'bigEndMasses',
  'm_be,k',
  'Big ends, each',
  [15, 105, 660, 4000],
  {
    origin: 'part',
    demo: [
      '421.2; 422.9; 420.1; 421.8; 420.6; 422.3; 421.0; 421.6',
      '300.1; 299.5; 300.8; 300.4; 299.7; 300.6; 299.9; 300.3',
    ],
    most: 16,
  },
);
export const targetSpread = mass(
  'targetSpread',
  'Δm_t',
  'Spread wanted of the sets',
  [0, 0.2, 2, 50],
  { origin: 'choice', demo: ['0.5 g', '0.2 g'] },
);
export const cutArea = area('cutArea', 'A_cut', 'Area that is cut', [1, 50, 2000, 10000], {
  origin: 'choice',
  demo: ['180 mm²', '120 mm²'],
});
export const cutDensity = metalDensity(
  'cutDensity',
  'ρ_cut',
  'Density of the metal cut',
  [1.5, 2.6, 7.9, 20],
  { origin: 'thing', demo: ['2.70', '2.76'], plusMinus: 0.02 },
);
export { balanceShafts } from './balance-shafts.choices.ts';
export { partBanks } from './part-banks.choices.ts';
export { crankLayout } from './crank-layout.choices.ts';

/* One plane's reading, and the holes that answer it. */

export const unbalanceRead = unbalance(
  'unbalanceRead',
  'U',
  'Unbalance read',
  [0, 10, 15000, 200000],
  { origin: 'part', demo: '4200 g·mm', plusMinus: 20 },
);
export const unbalanceAngle = angle('unbalanceAngle', 'α_U', 'Angle read', [-360, 0, 360, 360], {
  origin: 'part',
  demo: '172 deg',
  plusMinus: 2,
});
export const angleOrigin = angle(
  'angleOrigin',
  'α_0',
  'Machine’s zero from throw 1, clockwise seen from the nose',
  [-360, 0, 360, 360],
  { origin: 'choice', demo: '0 deg' },
);
export const heavyAngle = angle(
  'heavyAngle',
  'α_H',
  'Heavy spot from throw 1, clockwise seen from the nose',
  [-360, 0, 360, 720],
  { origin: 'part', demo: '188 deg', plusMinus: 2 },
);
export const secondUnbalance = unbalance(
  'secondUnbalance',
  'U_2',
  'Unbalance read after drilling',
  [0, 0, 3000, 200000],
  { origin: 'part', demo: ['310 g·mm', '640 g·mm'], plusMinus: 20 },
);
export const secondAngle = angle(
  'secondAngle',
  'α_2',
  'Angle read after drilling',
  [-360, 0, 360, 360],
  { origin: 'part', demo: ['131 deg', '355 deg'], plusMinus: 2 },
);
export const askedUnbalance = unbalance(
  'askedUnbalance',
  'U_ask',
  'What the holes were to take, if not all of the first reading',
  [0.01, 10, 15000, 200000],
  { origin: 'part', demo: '', optional: true },
);
export const askedAngle = angle(
  'askedAngle',
  'α_ask',
  'Middle of those holes from throw 1, clockwise seen from the nose',
  [-360, 0, 360, 720],
  { origin: 'part', demo: '', optional: true },
);
export const counterweightRadius = length(
  'counterweightRadius',
  'R_cw',
  'Rim radius of the counterweight',
  [15, 45, 95, 250],
  { origin: 'part', demo: ['74.0 mm', '73.0 mm'], plusMinus: 0.5 },
);
export const counterweightWidth = length(
  'counterweightWidth',
  'w_cw',
  'Width of the counterweight along the shaft',
  [4, 13, 30, 90],
  { origin: 'part', demo: ['19.0 mm', '17.0 mm'], plusMinus: 0.1 },
);
export const counterweightAngle = angle(
  'counterweightAngle',
  'β_cw',
  'Middle of the counterweight from throw 1, clockwise seen from the nose',
  [-360, 0, 360, 720],
  { origin: 'part', demo: '180 deg', plusMinus: 2 },
);
export const holeDiameter = length('holeDiameter', 'd_h', 'Drill', [2, 8, 25, 60], {
  origin: 'choice',
  demo: ['14 mm', '12 mm'],
});
export const holeCount = count('holeCount', 'n_h', 'Holes', [1, 1, 4, 12], {
  origin: 'choice',
  demo: ['3', '4'],
});
export const holeSpacing = angle(
  'holeSpacing',
  'β_h',
  'Angle between neighbouring holes',
  [1, 18, 40, 180],
  { origin: 'choice', demo: '24 deg' },
);
export const holeAngleLimit = angle(
  'holeAngleLimit',
  'β_lim',
  'Holes allowed to either side of the counterweight’s middle',
  [0, 25, 60, 110],
  { origin: 'choice', demo: '50 deg' },
);
export const depthLimit = length(
  'depthLimit',
  'h_lim',
  'Deepest hole allowed, to the full diameter',
  [0.5, 12, 30, 150],
  { origin: 'choice', demo: '25 mm' },
);
export const keepOutRadius = length(
  'keepOutRadius',
  'R_keep',
  'Radius that no hole may reach',
  [0, 22, 40, 200],
  { origin: 'choice', demo: '36 mm' },
);
export const holeWall = length(
  'holeWall',
  't_h',
  'Metal to be left between holes and towards the faces',
  [0, 1, 4, 30],
  { origin: 'choice', demo: '2 mm' },
);
export const pointAngle = angle(
  'pointAngle',
  'κ_h',
  'Angle of the drill’s point (180° is flat)',
  [60, 118, 140, 180],
  { origin: 'choice', demo: '118 deg' },
);
export const axialHoleRadius = length(
  'axialHoleRadius',
  'R_ax',
  'Radius of a hole parallel to the shaft',
  [5, 40, 80, 220],
  { origin: 'choice', demo: '62 mm' },
);
export const steelDensity = metalDensity(
  'steelDensity',
  'ρ_cw',
  'Density of the counterweight’s metal',
  [6.8, 7.1, 7.87, 8.2],
  { origin: 'thing', demo: '7.85', plusMinus: 0.02 },
);
export { angleSense, crankTurns, readingNames } from './unbalance-reading.choices.ts';
export { drillList } from './drill-sizes.choices.ts';
export { holeKind } from './counterweight-drilling.choices.ts';

/* Slugs of heavy metal in a counterweight. */

export const addedUnbalance = unbalance(
  'addedUnbalance',
  'U_add',
  'Unbalance to add',
  [0.01, 100, 20000, 200000],
  { origin: 'part', demo: '5600 g·mm', plusMinus: 20 },
);
export const slugDensity = metalDensity(
  'slugDensity',
  'ρ_cert',
  'Density of the alloy by its certificate, if there is one',
  [15, 16.85, 18.85, 19.3],
  { origin: 'part', demo: '', optional: true },
);
export const slugDiameter = length('slugDiameter', 'd_W', 'Slug diameter', [4, 12, 32, 60], {
  origin: 'choice',
  demo: '19.000 mm',
});
export const slugLength = length('slugLength', 'l_W', 'Slug length', [3, 10, 30, 150], {
  origin: 'choice',
  demo: ['18.0 mm', '16.0 mm'],
});
export const slugRadius = length(
  'slugRadius',
  'R_W',
  'Radius of the slug’s centre',
  [5, 45, 82, 230],
  { origin: 'choice', demo: '60.0 mm' },
);
export const slugCount = count('slugCount', 'n_W', 'Slugs', [1, 1, 4, 12], {
  origin: 'choice',
  demo: '2',
});
export const slugSpacing = angle(
  'slugSpacing',
  'β_W',
  'Angle between neighbouring slugs',
  [1, 20, 40, 180],
  { origin: 'choice', demo: '24 deg' },
);
export const slugInterference = length(
  'slugInterference',
  'δ_W',
  'Interference of slug and hole, on the diameter',
  [0, 0.03, 0.1, 0.3],
  { origin: 'part', demo: ['0.045 mm', '0.050 mm'], plusMinus: 0.003 },
);
export const slugModulus = metalModulus(
  'slugModulus',
  'E_W',
  'Young’s modulus of the alloy',
  [150, 270, 370, 420],
  { origin: 'thing', demo: ['280 GPa', '340 GPa'], plusMinus: 30 },
);
export const slugExpansion = expansion(
  'slugExpansion',
  'α_W',
  'Thermal expansion of the alloy',
  [3, 4.5, 5.6, 14],
  { origin: 'thing', demo: '5.0 ppm/K', plusMinus: 0.4 },
);
export const counterweightModulus = metalModulus(
  'counterweightModulus',
  'E_cw',
  'Young’s modulus of the counterweight’s metal',
  [80, 165, 212, 250],
  { origin: 'thing', demo: '207 GPa', plusMinus: 3 },
);
export const counterweightTemperature = temperature(
  'counterweightTemperature',
  'T_cw',
  'Counterweight and slug, running',
  [-50, 80, 140, 250],
  { origin: 'assumption', demo: '110 °C', plusMinus: 15 },
);
export { slugClass } from './heavy-metal.choices.ts';

/* Unbalance in two planes, and moved to two others. */

export const planeUnbalanceA = unbalance(
  'planeUnbalanceA',
  'U_A',
  'Unbalance in plane A',
  [0, 10, 20000, 500000],
  { origin: 'part', demo: ['4200 g·mm', '2600 g·mm'], plusMinus: 20 },
);
export const planeAngleA = angle(
  'planeAngleA',
  'α_A',
  'Heavy spot in plane A, clockwise from throw 1',
  [-360, 0, 360, 360],
  { origin: 'part', demo: ['188 deg', '160 deg'], plusMinus: 2 },
);
export const planeUnbalanceB = unbalance(
  'planeUnbalanceB',
  'U_B',
  'Unbalance in plane B',
  [0, 10, 20000, 500000],
  { origin: 'part', demo: ['3100 g·mm', '3400 g·mm'], plusMinus: 20 },
);
export const planeAngleB = angle(
  'planeAngleB',
  'α_B',
  'Heavy spot in plane B, clockwise from throw 1',
  [-360, 0, 360, 360],
  { origin: 'part', demo: ['32 deg', '64 deg'], plusMinus: 2 },
);
export const newPlaneA = length(
  'newPlaneA',
  'z_A*',
  'New plane A from the crank’s middle',
  [-3000, -400, 100, 3000],
  { origin: 'choice', demo: '-120 mm' },
);
export const newPlaneB = length(
  'newPlaneB',
  'z_B*',
  'New plane B from the crank’s middle',
  [-3000, -100, 400, 3000],
  { origin: 'choice', demo: '232 mm' },
);
export const thirdUnbalance = unbalance(
  'thirdUnbalance',
  'U_3',
  'A third unbalance, of a flywheel or of one pin',
  [0, 10, 20000, 500000],
  { origin: 'thing', demo: '', optional: true },
);
export const thirdAngle = angle(
  'thirdAngle',
  'α_3',
  'Its heavy spot, clockwise from throw 1',
  [-360, 0, 360, 360],
  { origin: 'thing', demo: '', optional: true },
);
export const thirdPlace = length(
  'thirdPlace',
  'z_3',
  'Its place from the crank’s middle',
  [-3000, -400, 400, 3000],
  { origin: 'thing', demo: '', optional: true },
);
export const fourthUnbalance = unbalance(
  'fourthUnbalance',
  'U_4',
  'A fourth unbalance',
  [0, 10, 20000, 500000],
  { origin: 'thing', demo: '', optional: true },
);
export const fourthAngle = angle(
  'fourthAngle',
  'α_4',
  'Heavy spot of the fourth, clockwise from throw 1',
  [-360, 0, 360, 360],
  { origin: 'thing', demo: '', optional: true },
);
export const fourthPlace = length(
  'fourthPlace',
  'z_4',
  'Place of the fourth from the crank’s middle',
  [-3000, -400, 400, 3000],
  { origin: 'thing', demo: '', optional: true },
);
export const newBobweight = mass(
  'newBobweight',
  'm_new',
  'Bobweight of one crankpin from now on',
  [0, 200, 2700, 15000],
  { origin: 'part', demo: ['1685.2 g', '1233.1 g'], plusMinus: 0.5 },
);
export const balancedBobweight = mass(
  'balancedBobweight',
  'm_was',
  'Bobweight that the crank is balanced for',
  [0, 200, 2700, 15000],
  { origin: 'part', demo: '1850 g', plusMinus: 1 },
);
export { takenAt } from './bobweight-change.choices.ts';

/* Weights outside the end mains. */

export { balancedWith, swappedPart } from './outside-masses.choices.ts';
export const damperUnbalance = unbalance(
  'damperUnbalance',
  'U_dmp',
  'Unbalance of the weighted damper',
  [0, 500, 20000, 200000],
  { origin: 'thing', demo: ['8600 g·mm', '5400 g·mm'], plusMinus: 100 },
);
export const damperAngle = angle(
  'damperAngle',
  'α_dmp',
  'Where the damper is heavy, clockwise from throw 1',
  [-360, 0, 360, 360],
  { origin: 'thing', demo: '198 deg', plusMinus: 2 },
);
export const damperPlace = length(
  'damperPlace',
  'z_dmp',
  'Damper’s weight from the crank’s middle',
  [-3000, -420, -80, 3000],
  { origin: 'thing', demo: '-246 mm', plusMinus: 1 },
);
export const flywheelUnbalance = unbalance(
  'flywheelUnbalance',
  'U_fw',
  'Unbalance of the weighted flywheel',
  [0, 500, 20000, 200000],
  { origin: 'thing', demo: ['11200 g·mm', '7000 g·mm'], plusMinus: 100 },
);
export const flywheelAngle = angle(
  'flywheelAngle',
  'α_fw',
  'Where the flywheel is heavy, clockwise from throw 1',
  [-360, 0, 360, 360],
  { origin: 'thing', demo: '18 deg', plusMinus: 2 },
);
export const flywheelPlace = length(
  'flywheelPlace',
  'z_fw',
  'Flywheel’s weight from the crank’s middle',
  [-3000, 80, 420, 3000],
  { origin: 'thing', demo: '232 mm', plusMinus: 1 },
);

import {
  angle,
  area,
  is,
  length,
  mass,
  millimetres,
  tex,
  unbalance,
  type Working,
} from '../step.ts';

/** Densities are written in g/cm³, so what is worked with them is in centimetres. */
const centimetres = {
  length: 'cm',
  area: 'cm2',
  mass: 'g',
  density: 'g/cm3',
  unbalance: 'gcm',
} as const;

/** The working of equal holes in a counterweight. */
export const drillingSteps = {
  drill: is(
    tex('\\q{drill} \\approx \\q{holeDiameter}', 'table'),
    'The drill of the list that is nearest.',
    { units: millimetres },
  ),
  point: length(
    'h_p',
    'drill / (2 * tan(pointAngle / 2))',
    'The point of the drill, from its tip to the full diameter.',
    { units: millimetres },
  ),
  turned: angle(
    'β_H',
    'atan(tan(heavyAngle - counterweightAngle))',
    'How far the heavy spot stands from the middle of the counterweight, at most a quarter turn.',
  ),
  room: angle(
    'β_room',
    'holeAngleLimit - (holeCount - 1) * holeSpacing / 2',
    'How far the middle of the holes may stand from there, so that the outermost hole is still allowed.',
  ),
  middle: is(
    'counterweightAngle + max(-room, min(room, turned))',
    'The holes stand about the heavy spot, or as near to it as the allowed angle lets them.',
  ),
  aside: angle(
    'β_off',
    'middle - counterweightAngle - turned',
    'How far aside of the heavy spot that is.',
  ),
  spread: is(
    'when(holeCount <= 1, 1, sin(holeCount * holeSpacing / 2) / (holeCount * sin(holeSpacing / 2)))',
    'Arrows that fan out add up to less than as many in one direction.',
  ),
  wanted: unbalance(
    'U_w',
    'unbalanceRead * cos(aside) / (holeCount * spread)',
    'What each hole has to take, in its own direction.',
    { units: { unbalance: 'gmm' } },
  ),
  hole: area('A', 'pi / 4 * drill^2', 'The cross-section of a hole.', { units: millimetres }),
  rimLoss: is(
    'when(holeKind == "radial", steelDensity * hole * drill^2 / 32, 0)',
    'The rim is lower at the sides of a hole than at its middle. The cap that is missing there turns out the same for every rim and depth.',
    { units: centimetres },
  ),
  third: length('h_3', 'point / 3', 'A cone holds a third of the cylinder about it.', {
    units: millimetres,
  }),
  reach: length(
    'R_3',
    'counterweightRadius - third',
    'At this depth one more millimetre would take nothing more, the shaft’s axis being so near.',
    { units: millimetres },
  ),
  solved: length(
    'h_w',
    'when(holeKind == "radial", reach - sqrt(max(0, reach^2 + 2 * third * (counterweightRadius - 0.75 * point / 3) - 2 * (wanted + rimLoss) / (steelDensity * hole))), wanted / (steelDensity * hole * axialHoleRadius) - third)',
    'The depth that takes so much: a quadratic for a hole from the rim, a plain division for one parallel to the shaft.',
    { units: centimetres },
  ),
  deepest: length(
    'h_max',
    'when(holeKind == "radial", depthLimit, min(depthLimit, counterweightWidth - point))',
    'No deeper than the limit; parallel to the shaft the tip stays inside, too.',
    { units: millimetres },
  ),
  depth: is('min(solved, deepest)', 'The depth to drill to, measured to the full diameter.', {
    units: millimetres,
  }),
  tipDepth: is('depth + point', 'The tip is deeper by the point.', { units: millimetres }),
  perHole: is(
    'when(holeKind == "radial", steelDensity * hole * (depth * (counterweightRadius - depth / 2) + third * (counterweightRadius - depth - point / 4)) - rimLoss, steelDensity * hole * (depth + third) * axialHoleRadius)',
    'Cylinder and cone, each at the radius of its own middle, less what the curved rim never had.',
    { units: millimetres },
  ),
  taken: is('holeCount * spread * perHole', 'All holes, added as arrows.', { units: centimetres }),
  left: is(
    'sqrt((unbalanceRead * cos(aside) - taken)^2 + (unbalanceRead * sin(aside))^2)',
    'What stays in the direction of the holes, and across it.',
    { units: centimetres },
  ),
  most: is(
    'when(holeKind == "radial", holeCount * spread * (steelDensity * hole * (deepest * (counterweightRadius - deepest / 2) + third * (counterweightRadius - deepest - point / 4)) - rimLoss), holeCount * spread * steelDensity * hole * (deepest + third) * axialHoleRadius)',
    'The same holes as deep as they may be.',
    { units: centimetres },
  ),
  pointShare: is(
    'when(holeKind == "radial", steelDensity * hole * third * (counterweightRadius - depth - point / 4) / perHole, third / (depth + third))',
    'The cone’s part of one hole.',
    { units: centimetres },
  ),
  capMass: mass(
    'm_cap',
    'rimLoss / counterweightRadius',
    'The missing cap as a mass: it stands at the rim.',
    { units: centimetres },
  ),
  holeMass: is(
    'steelDensity * hole * (depth + third) - capMass',
    'Cylinder and cone, less that cap.',
    {
      units: centimetres,
    },
  ),
  allMass: is('holeCount * holeMass', 'As many as there are holes. Weigh the chips.', {
    units: centimetres,
  }),
  firstHole: is('middle - (holeCount - 1) * holeSpacing / 2', 'Half the fan to one side.'),
  lastHole: is('middle + (holeCount - 1) * holeSpacing / 2', 'Half the fan to the other.'),
  rimMass: is('unbalanceRead / counterweightRadius', 'The reading over the radius of the rim.', {
    units: centimetres,
  }),
  wall: is(
    'when(holeKind == "radial", 2 * min((counterweightRadius - depth) * sin(holeSpacing / 2) - drill / 2 * cos(holeSpacing / 2), (counterweightRadius - depth - point) * sin(holeSpacing / 2)), 2 * axialHoleRadius * sin(holeSpacing / 2) - drill)',
    'Holes from the rim run towards one another; the nearer of shoulder and tip counts.',
    { units: millimetres },
  ),
} as const satisfies Readonly<Record<string, Working>>;

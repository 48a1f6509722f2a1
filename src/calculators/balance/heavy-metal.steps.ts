import { is, length, millimetres, ratio, tex, unbalance, type Working } from '../step.ts';

/** Densities are written in g/cm³, so what is worked with them is in centimetres. */
const centimetres = {
  length: 'cm',
  area: 'cm2',
  mass: 'g',
  density: 'g/cm3',
  unbalance: 'gcm',
} as const;
const lame = { units: millimetres, source: 'shigley-budynas-solutions' } as const;

/** The working of slugs in a counterweight. */
export const heavyMetalSteps = {
  classLeast: is(
    tex('\\q{classLeast} = \\rho(\\q{slugClass})', 'table'),
    'The least density that the standard allows this class.',
    { units: centimetres, source: 'astm-b777' },
  ),
  classMost: is(tex('\\q{classMost} = \\rho(\\q{slugClass})', 'table'), 'And the greatest.', {
    units: centimetres,
    source: 'astm-b777',
  }),
  density: is(
    'when(given(slugDensity), slugDensity, (classLeast + classMost) / 2)',
    'By the certificate; without one, the middle of the class’s range.',
    { units: centimetres },
  ),
  slugMass: is('density * pi / 4 * slugDiameter^2 * slugLength', 'Density times volume.', {
    units: centimetres,
  }),
  massGain: is(
    'slugMass - steelDensity * pi / 4 * slugDiameter^2 * slugLength',
    'Less the steel that stood in its place.',
    { units: centimetres },
  ),
  perSlug: is('massGain * slugRadius', 'At the radius of the slug’s own centre.', {
    units: centimetres,
  }),
  classSwing: is(
    '(classMost - classLeast) / 2 / (density - steelDensity)',
    'Half the range of the class, against what the density gains over steel.',
    { units: centimetres },
  ),
  spread: is(
    'when(slugCount <= 1, 1, sin(slugCount * slugSpacing / 2) / (slugCount * sin(slugSpacing / 2)))',
    'Arrows that fan out add up to less than as many in one direction.',
  ),
  together: is('slugCount * spread * perSlug', 'All slugs, added as arrows.', {
    units: centimetres,
  }),
  left: is('addedUnbalance - together', 'What is wanted less what they bring.', {
    units: centimetres,
  }),
  lengthNeeded: is(
    'slugLength * addedUnbalance / together',
    'The gain grows with the length alone.',
    { units: centimetres },
  ),
  times: ratio(
    's_W',
    'addedUnbalance / perSlug * sin(slugSpacing / 2)',
    'So many times one slug is wanted. Of n slugs sin(n β/2) over sin(β/2) is left.',
    { units: centimetres },
  ),
  slugsNeeded: is(
    '-floor(-2 / slugSpacing * asin(times))',
    'That solved for n, rounded up to a whole slug.',
  ),
  hole: unbalance(
    'U_st',
    'steelDensity * pi / 4 * slugDiameter^2 * slugLength * slugRadius',
    'The steel of the slug’s own hole, at the same radius.',
    { units: centimetres },
  ),
  oppositeHole: is(
    'hole',
    'A flat hole of that size on the other side of the shaft does as much.',
    {
      units: centimetres,
    },
  ),
  pull: is(
    'slugMass * slugRadius * maxSpeed^2',
    'The whole slug pulls, not only what it gains: its hole is empty of steel, and it is not held by that.',
  ),
  overPull: is('slugMass * slugRadius * missedShiftSpeed^2', 'And at the speed of an over-rev.'),
  rimWall: is(
    'counterweightRadius - slugRadius - slugDiameter / 2',
    'The least metal outside the slug, on the radius through its middle.',
    { units: millimetres },
  ),
  besideWall: is(
    '2 * slugRadius * sin(slugSpacing / 2) - slugDiameter',
    'The distance of two centres less two half slugs.',
    { units: millimetres },
  ),
  rimStress: is(
    'overPull / (2 * rimWall * slugLength)',
    'The pull over two ligaments of that thickness, one to either side: a measure to compare seats with.',
    { units: millimetres },
  ),
  besideStress: is(
    'overPull / (besideWall * slugLength)',
    'Each wall between slugs serves two of them, so one wall carries one pull.',
    { units: millimetres },
  ),
  outside: length(
    'D_r',
    'when(slugCount <= 1, slugDiameter + 2 * rimWall, slugDiameter + 2 * min(rimWall, 2 * slugRadius * sin(slugSpacing / 2) - slugDiameter))',
    'For the fit the metal around is taken for a ring, as thick as the thinnest of it.',
    { units: millimetres },
  ),
  ring: ratio(
    'q_r',
    '(outside^2 + slugDiameter^2) / (outside^2 - slugDiameter^2)',
    'Lamé’s thick ring: hoop stress at its bore over the pressure in it.',
    lame,
  ),
  pressure: is(
    'slugInterference / (slugDiameter * ((ring + 0.29) / counterweightModulus + (1 - 0.29) / slugModulus))',
    'The hole opens and the slug is squeezed until both together are the interference. 0.29 is Poisson’s ratio.',
    lame,
  ),
  boreHoop: is('ring * pressure', 'The ring’s hoop stress where it touches the slug.', lame),
  lost: is(
    'slugDiameter * (crankExpansion - slugExpansion) * (counterweightTemperature - assemblyTemperature)',
    'The hole grows more than the slug.',
  ),
  warmInterference: is('slugInterference - lost', 'What stays of the interference.', {
    units: millimetres,
  }),
  warmPressure: is(
    'max(0, warmInterference) / (slugDiameter * ((ring + 0.29) / counterweightModulus + (1 - 0.29) / slugModulus))',
    'And of the pressure.',
    { units: millimetres },
  ),
  looseTemperature: is(
    'assemblyTemperature + slugInterference / (slugDiameter * (crankExpansion - slugExpansion))',
    'At this temperature the growth has used up the interference.',
  ),
} as const satisfies Readonly<Record<string, Working>>;

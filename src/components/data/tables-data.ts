import layouts from '../../../content/tables/crank-layouts.json' with { type: 'json' };
import drills from '../../../content/tables/drill-sizes.json' with { type: 'json' };
import fits from '../../../content/tables/iso-286.json' with { type: 'json' };
import journals from '../../../content/tables/journal-sizes.json' with { type: 'json' };
import ringWidths from '../../../content/tables/ring-sizes.json' with { type: 'json' };
import tungsten from '../../../content/tables/tungsten-classes.json' with { type: 'json' };
import {
  materialOf,
  properties,
  rodMaterials,
  type Property,
} from '../../calculators/rods/rod-materials.choices.ts';
import type { Column, DataSet, Row } from './data-set.ts';

const id: Column = { name: 'id', type: 'text', means: 'Its name in links and files.' };
const source: Column = {
  name: 'source',
  type: 'text',
  means:
    'The id of its source, as in sources; practice, memory or own derivation where there is none.',
};
const evidence: Column = {
  name: 'evidence',
  type: 'text',
  oneOf: ['read', 'quoted', 'memory', 'rule'],
  means: 'How well it is known; rule: worked out by the rule for steels.',
};
const material: Column = { name: 'material', type: 'text', means: 'The metal, as in rod-metals.' };

/** A record of rows by id as rows that hold their id. */
function withId(table: Readonly<Record<string, Row>>): readonly Row[] {
  return Object.entries(table).map(([key, row]) => ({ id: key, ...row }));
}

const journalSizes: DataSet = {
  path: 'tables/journal-sizes',
  title: 'Journal diameters',
  means: 'Crankpins and main journals in common use, called by size alone.',
  columns: [
    id,
    { name: 'journal', type: 'text', oneOf: ['crankpin', 'main'], means: 'Which journal it is.' },
    { name: 'size', type: 'text', means: 'The diameter, digit for digit as it is called.' },
    { name: 'unit', type: 'text', oneOf: ['in', 'mm'], means: 'The unit that it is called in.' },
    source,
  ],
  rows: withId(journals),
};

const ringSizes: DataSet = {
  path: 'tables/ring-widths',
  title: 'Ring widths',
  means: 'Axial widths of rings in mm that are usual for three kinds of engine.',
  columns: [
    id,
    { name: 'use', type: 'text', means: 'The kind of engine.' },
    { name: 'top', type: 'text', means: 'Width of the top ring in mm, or from and to.' },
    { name: 'second', type: 'text', means: 'Width of the second ring in mm, or from and to.' },
    { name: 'oil', type: 'text', means: 'Width of the oil ring in mm, or from and to.' },
    source,
  ],
  rows: withId(ringWidths),
};

const drillSizes: DataSet = {
  path: 'tables/drill-sizes',
  title: 'Drills by number and letter',
  means: 'Diameters of twist drills that are called by a number or a letter.',
  columns: [
    id,
    { name: 'called', type: 'text', means: 'What it is called.' },
    { name: 'size', type: 'text', means: 'Its diameter in inches, as the list has it.' },
    source,
  ],
  rows: withId(drills),
};

const tungstenClasses: DataSet = {
  path: 'tables/tungsten-classes',
  title: 'Classes of tungsten heavy alloy',
  means: 'Tungsten and density of the four classes of ASTM B777.',
  columns: [
    id,
    { name: 'class', type: 'text', means: 'What the standard calls it.' },
    { name: 'tungsten', type: 'text', means: 'Nominal tungsten in per cent of the weight.' },
    { name: 'least', type: 'text', means: 'Least density in g/cm³.' },
    { name: 'most', type: 'text', means: 'Greatest density in g/cm³.' },
    source,
  ],
  rows: withId(tungsten),
};

const tolerances: DataSet = {
  path: 'tables/tolerances',
  title: 'Tolerances',
  means: 'Widths of the tolerance zone in µm by the step of nominal diameter in mm.',
  columns: [
    id,
    { name: 'above', type: 'number', means: 'The step begins above this diameter in mm.' },
    { name: 'upTo', type: 'number', means: 'It goes up to and with this diameter in mm.' },
    { name: 'IT5', type: 'number', means: 'Width of the zone of grade 5 in µm.' },
    { name: 'IT6', type: 'number', means: 'Width of the zone of grade 6 in µm.' },
    { name: 'IT7', type: 'number', means: 'Width of the zone of grade 7 in µm.' },
    source,
  ],
  rows: withId(fits),
};

const crankThrows: DataSet = {
  path: 'tables/crank-layouts',
  title: 'Crank layouts',
  means: 'The throws of the ready crank layouts, a throw a row.',
  columns: [
    { name: 'layout', type: 'text', means: 'The id of the layout; its throws share it.' },
    { name: 'label', type: 'text', means: 'What the layout is called.' },
    { name: 'throw', type: 'number', means: 'The number of the throw along the crank.' },
    {
      name: 'angle',
      type: 'number',
      means:
        'Angle in degrees from the first throw, or from the middle of the first pair of split pins.',
    },
    {
      name: 'position',
      type: 'number',
      means: 'Place along the crank in pin spacings, from its middle.',
    },
    {
      name: 'banks',
      type: 'texts',
      means: 'Angle of the bank of each cylinder on the throw, in degrees.',
    },
    {
      name: 'tradeFactor',
      type: 'text',
      optional: true,
      means: 'A balance factor other than one half that is usual for it.',
    },
    source,
  ],
  rows: Object.entries(layouts).flatMap(([layout, { label, throws, source: from, ...more }]) =>
    throws.map(({ angle, position, banks }, place) => ({
      layout,
      label,
      throw: place + 1,
      angle,
      position,
      banks: banks.map(String),
      ...more,
      source: from,
    })),
  ),
};

const propertyUnits: Readonly<Record<Property, string>> = {
  density: 'g/cm³',
  youngsModulus: 'GPa',
  expansion: '10⁻⁶/K',
  yieldStrength: 'MPa',
  tensileStrength: 'MPa',
  fatigueStrength: 'MPa',
  fatigueLife: 'reversals',
};

const rodMetals: DataSet = {
  path: 'tables/rod-metals',
  title: 'Rod metals',
  means: 'Properties of metals for connecting rods, a property a row, each with its own source.',
  columns: [
    { name: 'material', type: 'text', means: 'The id of the metal; its properties share it.' },
    { name: 'label', type: 'text', means: 'Its standard designation, and its state.' },
    { name: 'family', type: 'text', oneOf: ['steel', 'aluminium', 'titanium'], means: 'Its base.' },
    {
      name: 'kind',
      type: 'text',
      means: 'Whether the values are typical, a minimum, or the highest of a study.',
    },
    { name: 'temperature', type: 'number', means: 'The temperature they hold at, in °C.' },
    { name: 'property', type: 'text', oneOf: properties, means: 'The property.' },
    { name: 'value', type: 'number', means: 'Its value.' },
    { name: 'unit', type: 'text', means: 'The unit of the value.' },
    source,
    evidence,
    {
      name: 'fatigueTest',
      type: 'text',
      optional: true,
      means: 'How the fatigue strength was measured, beside it.',
    },
    { name: 'note', type: 'text', optional: true, means: 'A remark on the metal.' },
  ],
  rows: rodMaterials.flatMap((key) => {
    const { label, family, kind, temperature, fatigueTest, note, ...row } = materialOf(key);
    return properties.map((property) => ({
      material: key,
      label,
      family,
      kind,
      temperature,
      property,
      value: row[property],
      unit: propertyUnits[property],
      source: row.sources[property] ?? row.source,
      evidence: row.evidence[property],
      fatigueTest: property === 'fatigueStrength' ? fatigueTest : undefined,
      note,
    }));
  }),
};

const hotYield: DataSet = {
  path: 'tables/rod-metals-hot',
  title: 'Rod metals when hot',
  means: 'Share of the yield strength that is left after 10 000 hours at a temperature.',
  columns: [
    material,
    { name: 'temperature', type: 'number', means: 'The temperature in °C, and measured there.' },
    { name: 'share', type: 'number', means: 'What is left, as a share of that at 20 °C.' },
    source,
    evidence,
  ],
  rows: rodMaterials.flatMap((key) => {
    const hot = materialOf(key).hotYield;
    return (hot?.points ?? []).map(([temperature, share]) => ({
      material: key,
      temperature,
      share,
      source: hot?.source,
      evidence: hot?.evidence,
    }));
  }),
};

/** The tables that the calculators use. */
export const tablesData: readonly DataSet[] = [
  journalSizes,
  ringSizes,
  rodMetals,
  hotYield,
  tolerances,
  crankThrows,
  drillSizes,
  tungstenClasses,
];

import type { Kind } from './kinds.ts';

/**
 * A unit of measure.
 *
 * SI value = value × `factor` + `offset`; only temperatures have an offset. `symbol` is what the page
 * prints, empty for plain numbers. `spellings` are what a reader may type, besides the id and the symbol,
 * in the form {@link spellingKey} gives: case, spaces, dots, hyphens and multiplication signs do not count,
 * and words may stand in the plural.
 */
export interface Unit {
  readonly id: string;
  readonly symbol: string;
  readonly kind: Kind;
  readonly factor: number;
  readonly offset?: number;
  readonly system: 'metric' | 'inch' | 'both';
  readonly spellings: readonly string[];
}

// The definitions from which every other factor is a product or quotient, so that none carries the
// rounding of a printed table. Where each comes from stands in `table.ts`.
const inch = 0.0254;
const foot = 12 * inch;
const mile = 5280 * foot;
const pound = 0.45359237;
const ounce = pound / 16;
const gravity = 9.80665;
const poundForce = pound * gravity;
const mercuryDensity = 13595.1;

const all: Unit[] = [];
type Row = readonly [
  id: string,
  symbol: string,
  factor: number,
  spellings?: string,
  offset?: number,
];

function group(kind: Kind, system: Unit['system'], rows: readonly Row[]): void {
  for (const [id, symbol, factor, spellings, offset] of rows)
    all.push({
      id,
      symbol,
      kind,
      factor,
      ...(offset === undefined ? {} : { offset }),
      system,
      spellings: spellings?.split(' ') ?? [],
    });
}

group('length', 'metric', [
  ['m', 'm', 1, 'metre'],
  ['mm', 'mm', 1e-3, 'millimetre'],
  ['cm', 'cm', 1e-2, 'centimetre'],
  ['um', 'µm', 1e-6, 'micron micrometre'],
  ['hundredth', 'hundredths', 1e-5],
]);
group('length', 'inch', [
  ['in', 'in', inch, '" inch inches ins'],
  ['thou', 'thou', inch / 1000, 'thousandth mil mils'],
  ['tenth', 'tenths', inch / 10000],
  ['ft', 'ft', foot, "' foot feet"],
]);
group('area', 'metric', [
  ['m2', 'm²', 1, 'sqm'],
  ['mm2', 'mm²', 1e-6, 'sqmm'],
  ['cm2', 'cm²', 1e-4, 'sqcm'],
]);
group('area', 'inch', [['in2', 'in²', inch * inch, 'sqin squareinch squareinches']]);
group('volume', 'metric', [
  ['m3', 'm³', 1],
  ['mm3', 'mm³', 1e-9],
  ['cm3', 'cm³', 1e-6, 'cc ccm ml millilitre'],
  ['L', 'L', 1e-3, 'litre ltr'],
]);
group('volume', 'inch', [['in3', 'in³', inch * inch * inch, 'cuin cid cubicinch cubicinches']]);
group('secondMoment', 'metric', [
  ['m4', 'm⁴', 1],
  ['mm4', 'mm⁴', 1e-12],
  ['cm4', 'cm⁴', 1e-8],
]);
group('secondMoment', 'inch', [['in4', 'in⁴', inch ** 4]]);
group('mass', 'metric', [
  ['kg', 'kg', 1, 'kgs kilo kilogram'],
  ['g', 'g', 1e-3, 'gm gms gram gramme'],
  ['mg', 'mg', 1e-6, 'milligram'],
]);
group('mass', 'inch', [
  ['oz', 'oz', ounce, 'ounce'],
  ['lb', 'lb', pound, 'lbs lbm pound'],
  ['gr', 'grain', pound / 7000, 'grain'],
]);
group('density', 'metric', [
  ['kg/m3', 'kg/m³', 1],
  ['g/cm3', 'g/cm³', 1000, 'g/cc g/ml'],
]);
group('density', 'inch', [['lb/in3', 'lb/in³', pound / (inch * inch * inch), 'lb/cuin lbs/in3']]);
group('unbalance', 'metric', [
  ['kgm', 'kg·m', 1],
  ['gmm', 'g·mm', 1e-6],
  ['gcm', 'g·cm', 1e-5],
  ['kgmm', 'kg·mm', 1e-3],
]);
group('unbalance', 'inch', [
  ['gin', 'g·in', 1e-3 * inch, 'graminch graminches'],
  ['ozin', 'oz·in', ounce * inch, 'inoz ounceinch ounceinches'],
]);
group('inertia', 'metric', [
  ['kgm2', 'kg·m²', 1],
  ['kgmm2', 'kg·mm²', 1e-6],
]);
group('inertia', 'inch', [
  ['lbin2', 'lb·in²', pound * inch * inch],
  ['lbft2', 'lb·ft²', pound * foot * foot],
]);
group('angle', 'both', [
  ['rad', 'rad', 1, 'radian'],
  ['deg', '°', Math.PI / 180, 'degs degree'],
]);
group('angularSpeed', 'both', [
  ['rad/s', 'rad/s', 1, 'rad/sec'],
  ['rpm', 'rpm', Math.PI / 30, '1/min /min r/min u/min upm rev/min revs/min min1'],
]);
group('angularAcceleration', 'both', [
  ['rad/s2', 'rad/s²', 1, 'rad/s/s'],
  ['rpm/s', 'rpm/s', Math.PI / 30, '1/min/s rpmpersecond 1/minpers /min/s min1/s'],
]);
group('speed', 'metric', [
  ['m/s', 'm/s', 1, 'm/sec'],
  ['mm/s', 'mm/s', 1e-3, 'mm/sec'],
  ['km/h', 'km/h', 1 / 3.6, 'kmh kph kmph'],
]);
group('speed', 'inch', [
  ['ft/min', 'ft/min', foot / 60, 'fpm feet/min'],
  ['ft/s', 'ft/s', foot, 'fps ft/sec feet/s'],
  ['in/s', 'in/s', inch, 'ips in/sec "/s'],
  ['mph', 'mph', mile / 3600, 'mi/h miles/h'],
]);
group('acceleration', 'metric', [['m/s2', 'm/s²', 1, 'm/s/s']]);
group('acceleration', 'both', [['gravity', '× gravity', gravity, 'g gs gn']]);
group('acceleration', 'inch', [
  ['ft/s2', 'ft/s²', foot, 'ft/s/s'],
  ['in/s2', 'in/s²', inch, 'in/s/s'],
]);
group('force', 'metric', [
  ['N', 'N', 1, 'newton'],
  ['kN', 'kN', 1000, 'kilonewton'],
]);
group('force', 'inch', [['lbf', 'lbf', poundForce, 'lb lbs pound']]);
group('torque', 'metric', [['Nm', 'N·m', 1, 'newtonmetre']]);
group('torque', 'inch', [
  ['lbft', 'ft·lb', poundForce * foot, 'lbsft ftlbs lbfft ftlbf poundfoot poundfeet footpounds'],
  ['lbin', 'in·lb', poundForce * inch, 'lbsin inlbs lbfin inlbf poundinch inchpounds'],
]);
group('torsionalStiffness', 'metric', [
  ['Nm/rad', 'N·m/rad', 1, 'nmperrad newtonmetreperradian'],
  ['kNm/rad', 'kN·m/rad', 1e3, 'knmperrad'],
  ['MNm/rad', 'MN·m/rad', 1e6, 'mnmperrad'],
  ['Nm/deg', 'N·m/°', 180 / Math.PI, 'nm/degree nmperdegree'],
]);
group('torsionalStiffness', 'inch', [
  ['lbft/deg', 'ft·lb/°', (poundForce * foot * 180) / Math.PI, 'lbft/degree ftlb/deg ftlb/degree'],
  ['lbin/rad', 'in·lb/rad', poundForce * inch, 'lbfin/rad inlb/rad'],
]);
group('energy', 'metric', [
  ['J', 'J', 1, 'joule wattsecond'],
  ['kJ', 'kJ', 1e3, 'kilojoule'],
]);
group('energy', 'inch', [['ftlbf', 'ft·lbf', poundForce * foot, 'ftlb footpound footpounds']]);
group('power', 'metric', [
  ['W', 'W', 1, 'watt'],
  ['kW', 'kW', 1e3, 'kilowatt'],
]);
group('power', 'inch', [['hp', 'hp', 550 * poundForce * foot, 'bhp horsepower']]);
group('specificEnergy', 'metric', [
  ['J/kg', 'J/kg', 1],
  ['kJ/kg', 'kJ/kg', 1e3],
  ['MJ/kg', 'MJ/kg', 1e6],
]);
group('specificEnergy', 'inch', [['Btu/lb', 'Btu/lb', 2326, 'btu/lbm']]);
group('pressure', 'metric', [
  ['Pa', 'Pa', 1, 'pascal n/m2'],
  ['kPa', 'kPa', 1e3],
  ['hPa', 'hPa', 1e2, 'mbar millibar'],
  ['bar', 'bar', 1e5, 'bars'],
  ['MPa', 'MPa', 1e6, 'n/mm2'],
  ['GPa', 'GPa', 1e9, 'kn/mm2'],
]);
group('pressure', 'inch', [
  ['psi', 'psi', poundForce / (inch * inch), 'psia lb/in2 lbs/in2 lbf/in2'],
  ['ksi', 'ksi', (1000 * poundForce) / (inch * inch), 'kpsi'],
  ['Mpsi', 'Mpsi', (1e6 * poundForce) / (inch * inch), 'msi'],
  ['inHg', 'inHg', mercuryDensity * gravity * inch, '"hg inchhg inchesofmercury'],
]);
group('viscosity', 'metric', [
  ['m2/s', 'm²/s', 1],
  ['cSt', 'cSt', 1e-6, 'mm2/s centistoke'],
]);
group('temperature', 'metric', [
  ['K', 'K', 1, 'kelvin'],
  ['degC', '°C', 1, 'c celsius', 273.15],
]);
group('temperature', 'inch', [['degF', '°F', 5 / 9, 'f fahrenheit', 459.67 / 1.8]]);
group('expansion', 'both', [['perK', '/K', 1, '1/k']]);
group('expansion', 'metric', [['ppm/K', 'ppm/K', 1e-6, 'um/m/k um/mk ppm/c ppm/°c']]);
group('expansion', 'inch', [['ppm/degF', 'ppm/°F', 1.8e-6, 'ppm/f uin/in/f uin/in/°f']]);
group('frequency', 'both', [
  ['Hz', 'Hz', 1, 'hertz cps c/s 1/s cycle/s'],
  ['cpm', 'cycles/min', 1 / 60, 'cycle/min vib/min 1/min /min'],
  ['radps', 'rad/s', 1 / (2 * Math.PI), 'rad/sec'],
]);
group('time', 'both', [
  ['s', 's', 1, 'sec secs second'],
  ['ms', 'ms', 1e-3, 'millisecond'],
  ['min', 'min', 60, 'mins minute'],
  ['h', 'h', 3600, 'hr hrs hour'],
]);
group('ratio', 'both', [
  ['ratio', '', 1, ':1'],
  ['pct', '%', 0.01, 'percent'],
]);
group('ratio', 'metric', [['um/mm', 'µm/mm', 1e-3, '‰ permille']]);
group('ratio', 'inch', [['thou/in', 'thou/in', 1e-3, 'thouperinch']]);
group('count', 'both', [['count', '', 1, 'off pcs piece']]);

/** Every unit by its id, in the order of the kinds; the SI unit of a kind stands first of its kind. */
export const units: Readonly<Record<string, Unit>> = Object.fromEntries(all.map((u) => [u.id, u]));

/** The unit with that id. Throws RangeError naming the id when there is none. Case counts. */
export function unitOf(id: string): Unit {
  const found = Object.hasOwn(units, id) ? units[id] : undefined;
  if (found === undefined) throw new RangeError(`no unit has the id "${id}"`);
  return found;
}

/** All units of one kind, SI unit first. */
export function unitsOfKind(of: Kind): readonly Unit[] {
  return all.filter((u) => u.kind === of);
}

/** A size in SI in the unit given, without its offset. */
function sizeIn(si: number, { factor }: Unit): number {
  const inverse = 1 / factor;
  return Number.isInteger(inverse) ? si * inverse : si / factor;
}

/** A size in SI as a difference, so without the offset of a temperature: 5 °F apart is 2.78 K apart. */
export function differenceToSI(value: number, unitId: string): number {
  const { factor } = unitOf(unitId);
  // Dividing by 1000 is correctly rounded where multiplying by the nearest double to 0.001 is not:
  // 47.96 mm must become the same double as 0.04796.
  const inverse = 1 / factor;
  return Number.isInteger(inverse) ? value / inverse : value * factor;
}

/** A difference in SI, in the given unit; the inverse of {@link differenceToSI}. */
export function differenceFromSI(si: number, unitId: string): number {
  return sizeIn(si, unitOf(unitId));
}

/** A value in SI. Throws RangeError for an unknown unit. */
export function toSI(value: number, unitId: string): number {
  return differenceToSI(value, unitId) + (unitOf(unitId).offset ?? 0);
}

/** An SI value in the given unit; the inverse of {@link toSI} to the last bit or two. */
export function fromSI(si: number, unitId: string): number {
  // Curves ask for every one of their points.
  const unit = unitOf(unitId);
  return sizeIn(si - (unit.offset ?? 0), unit);
}

/**
 * A typed unit without what does not count: case, spaces, dots, hyphens, multiplication signs, `^`; -meter and
 * -liter spelled -metre and -litre.
 */
export function spellingKey(typed: string): string {
  return typed
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[\s.·⋅•∙*×^_-]/g, '')
    .replace(/μ/g, 'u')
    .replace(/(met|lit)er/, '$1re');
}

const bySpelling = new Map<string, Unit[]>();
for (const u of all)
  for (const key of new Set([spellingKey(u.id), spellingKey(u.symbol), ...u.spellings]))
    if (key !== '') bySpelling.set(key, [...(bySpelling.get(key) ?? []), u]);

/**
 * The unit a reader means by what was typed after the number: one of `of` where possible ("lb" is a force
 * in a force, a mass elsewhere), otherwise the first unit of any kind, so that a wrong kind can be named.
 */
export function findUnit(typed: string, of: Kind): Unit | undefined {
  const key = spellingKey(typed);
  // A plural only of a whole word: "mPa·s" is no plural of MPa, nor "N·s" of N.
  const found = bySpelling.get(key) ?? bySpelling.get(key.replace(/([a-z]{4})s$/, '$1')) ?? [];
  return found.find((u) => u.kind === of) ?? found[0];
}

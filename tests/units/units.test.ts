import { describe, expect, test } from 'vitest';
import { kindWords, type Kind } from '../../src/units/kinds.ts';
import { unitTable } from '../../src/units/table.ts';
import {
  differenceToSI,
  findUnit,
  fromSI,
  spellingKey,
  toSI,
  unitOf,
  units,
  unitsOfKind,
} from '../../src/units/units.ts';

// NIST SP 811 (2008), Appendix B.8, digits as quoted by others or from memory; the definitions decide.
// A printed factor has seven figures, so half a unit of the last is at most 5e-7 of it.
const printed: readonly (readonly [id: string, factor: string])[] = [
  ['in', '2.54e-2'],
  ['ft', '3.048e-1'],
  ['thou', '2.54e-5'],
  ['in2', '6.4516e-4'],
  ['in3', '1.638706e-5'],
  ['lb', '4.535924e-1'],
  ['oz', '2.834952e-2'],
  ['gr', '6.479891e-5'],
  ['lb/in3', '2.767990e4'],
  ['lbin2', '2.926397e-4'],
  ['lbft2', '4.214011e-2'],
  ['deg', '1.745329e-2'],
  ['rpm', '1.047198e-1'],
  ['ft/min', '5.08e-3'],
  ['km/h', '2.777778e-1'],
  ['mph', '4.4704e-1'],
  ['gravity', '9.80665'],
  ['lbf', '4.448222'],
  ['lbft', '1.355818'],
  ['lbin', '1.129848e-1'],
  ['ftlbf', '1.355818'],
  ['hp', '7.456999e2'],
  ['psi', '6.894757e3'],
  ['inHg', '3.386389e3'],
  ['cSt', '1e-6'],
];

describe('factors against the printed digits of NIST SP 811 B.8', () => {
  test.each(printed)('%s = %s', (id, digits) => {
    const figures = (digits.split('e')[0] ?? '').replace('.', '').length;
    const { factor } = unitOf(id);
    // Short printed factors are exact, so they must agree to double precision.
    const tolerance = figures >= 7 ? 5e-7 * 10 ** Math.floor(Math.log10(factor)) : 4e-16 * factor;
    expect(Math.abs(factor - Number(digits))).toBeLessThanOrEqual(tolerance);
  });
});

describe('factors against their exact digits', () => {
  // Products of the defined numbers, worked by hand or cross-checked with another library's constants.
  test.each([
    ['lb', 0.45359237],
    ['oz', 0.028349523125],
    ['gr', 6.479891e-5],
    ['in3', 1.6387064e-5],
    ['lbf', 4.4482216152605],
    ['psi', 6894.757293168361],
    ['lbft', 1.3558179483314004],
    ['lbin', 0.1129848290276167],
    ['inHg', 3386.388640341],
    ['lb/in3', 27679.904710203125],
    ['lbin2', 2.926396534292e-4],
    ['lbft2', 0.0421401100938048],
    ['lbft/deg', 77.68264622747556],
    ['lbin/rad', 0.1129848290276167],
    ['gin', 2.54e-5],
    ['ozin', 7.20077887375e-4],
  ])('%s', (id, factor) => {
    // A product of five rounded doubles is within a few units of the last place.
    expect(Math.abs(unitOf(id).factor / factor - 1)).toBeLessThan(1e-15 * 4);
  });

  test('trade conversions: g·in, oz·in and ft/min', () => {
    expect(fromSI(toSI(1, 'gin'), 'gmm')).toBeCloseTo(25.4, 10);
    expect(fromSI(toSI(1, 'ozin'), 'gmm')).toBeCloseTo(720.0779, 4);
    expect(fromSI(toSI(20.44, 'm/s'), 'ft/min')).toBeCloseTo(4023.6, 1);
    expect(fromSI(toSI(1, 'lbft'), 'lbin')).toBeCloseTo(12, 12);
  });

  test('a temperature has its offset, a difference of temperatures has not', () => {
    expect(toSI(0, 'degC')).toBe(273.15);
    expect(toSI(212, 'degF')).toBeCloseTo(373.15, 10);
    expect(toSI(-459.67, 'degF')).toBeCloseTo(0, 10);
    expect(fromSI(310.15, 'degC')).toBeCloseTo(37, 10);
    expect(fromSI(233.15, 'degF')).toBeCloseTo(-40, 10);
    expect(differenceToSI(9, 'degF')).toBeCloseTo(5, 12);
  });

  test('dividing keeps decimal millimetres the same double as decimal metres', () => {
    expect(toSI(47.96, 'mm')).toBe(0.04796);
    expect(toSI(88.4, 'mm')).toBe(0.0884);
  });
});

describe('the set of units', () => {
  test.each(Object.keys(kindWords) as Kind[])('%s has an SI unit, first, with factor 1', (kind) => {
    expect(unitsOfKind(kind)[0]).toMatchObject({ factor: 1, kind });
  });

  test('every unit of the brief is there', () => {
    const wanted =
      'm mm cm um in thou tenth ft m2 mm2 cm2 in2 m3 cm3 mm3 L in3 kg g mg oz lb gr kg/m3 g/cm3 lb/in3 ' +
      'kgm gmm gcm kgmm gin ozin kgm2 kgmm2 lbin2 lbft2 rad deg rad/s rpm rad/s2 m/s ft/min ft/s in/s km/h ' +
      'mph m/s2 gravity ft/s2 in/s2 N kN lbf Nm lbft lbin Pa kPa bar MPa psi inHg m2/s cSt K degC degF ' +
      's ms min h ratio pct count';
    for (const id of wanted.split(' ')) expect(unitOf(id).id).toBe(id);
  });

  test('an unknown id is named, and inherited names are no units', () => {
    expect(() => unitOf('furlong')).toThrow(/furlong/);
    expect(() => unitOf('constructor')).toThrow(RangeError);
    expect(() => toSI(1, '')).toThrow(RangeError);
  });

  test('id, symbol and every spelling lead to their own unit within its kind', () => {
    const seen = new Set<string>();
    for (const unit of Object.values(units)) {
      const keys = new Set([unit.id, unit.symbol, ...unit.spellings].map(spellingKey));
      for (const key of keys) {
        if (key === '') continue;
        expect(findUnit(key, unit.kind)?.id, `${key} in ${unit.kind}`).toBe(unit.id);
        expect(seen.has(`${unit.kind} ${key}`), `${key} twice in ${unit.kind}`).toBe(false);
        seen.add(`${unit.kind} ${key}`);
      }
      // Spellings are looked up as they stand, so they must already be in their key's form.
      for (const spelling of unit.spellings) expect(spellingKey(spelling)).toBe(spelling);
    }
  });

  test.each([
    ['length', 'MM', 'mm'],
    ['length', 'in.', 'in'],
    ['length', 'Inches', 'in'],
    ['length', 'µm', 'um'],
    ['length', 'μm', 'um'],
    ['length', 'microns', 'um'],
    ['length', 'Millimeters', 'mm'],
    ['length', 'metres', 'm'],
    ['length', 'tenth', 'tenth'],
    ['torque', 'newton meters', 'Nm'],
    ['mass', 'ounces', 'oz'],
    ['viscosity', 'centistokes', 'cSt'],
    ['length', "'", 'ft'],
    ['volume', 'cc', 'cm3'],
    ['volume', 'ml', 'cm3'],
    ['volume', 'cm³', 'cm3'],
    ['volume', 'cu. in.', 'in3'],
    ['unbalance', 'g·mm', 'gmm'],
    ['unbalance', 'g*mm', 'gmm'],
    ['unbalance', 'g-mm', 'gmm'],
    ['unbalance', 'g mm', 'gmm'],
    ['unbalance', 'g⋅in', 'gin'],
    ['unbalance', 'oz-in', 'ozin'],
    ['torque', 'N·m', 'Nm'],
    ['torque', 'N.m', 'Nm'],
    ['torque', 'ft·lb', 'lbft'],
    ['torque', 'lb-ft', 'lbft'],
    ['torque', 'in lb', 'lbin'],
    ['inertia', 'kg·m²', 'kgm2'],
    ['inertia', 'lb·in²', 'lbin2'],
    ['inertia', 'lb.ft^2', 'lbft2'],
    ['torsionalStiffness', 'N·m/rad', 'Nm/rad'],
    ['torsionalStiffness', 'kN m/rad', 'kNm/rad'],
    ['torsionalStiffness', 'ft-lb/deg', 'lbft/deg'],
    ['frequency', 'hertz', 'Hz'],
    ['frequency', 'cycles/min', 'cpm'],
    ['frequency', 'rad/s', 'radps'],
    ['angularSpeed', 'r/min', 'rpm'],
    ['angularSpeed', '1/min', 'rpm'],
    ['angularSpeed', 'min-1', 'rpm'],
    ['angularSpeed', 'min⁻¹', 'rpm'],
    ['angularSpeed', 'RPM', 'rpm'],
    ['pressure', 'in Hg', 'inHg'],
    ['pressure', '"Hg', 'inHg'],
    ['pressure', 'PSI', 'psi'],
    ['pressure', 'lb/in²', 'psi'],
    ['viscosity', 'mm²/s', 'cSt'],
    ['density', 'g/cc', 'g/cm3'],
    ['angle', 'degrees', 'deg'],
    ['angle', '°', 'deg'],
    ['force', 'lb', 'lbf'],
    ['mass', 'lb', 'lb'],
    ['ratio', '%', 'pct'],
    ['acceleration', 'g', 'gravity'],
    ['mass', 'g', 'g'],
    ['temperature', '° C', 'degC'],
  ] as const)('in %s, %s is %s', (kind, typed, id) => {
    expect(findUnit(typed.replace('⁻', '-'), kind)?.id).toBe(id);
  });
});

test.each([
  ['pressure', 'mPa·s'],
  ['force', 'N·s'],
  ['length', 'furlongs'],
  ['mass', ''],
  ['mass', '-'],
] as const)('in %s, "%s" is no unit', (kind, typed) => {
  expect(findUnit(typed, kind)).toBeUndefined();
});

describe('the table for the Units page', () => {
  test('has every unit, each with its source, and its factor works out to the one used', () => {
    expect(unitTable.map((r) => r.id)).toEqual(Object.keys(units));
    for (const row of unitTable) {
      expect(row.from).not.toBe('');
      if (row.id === 'degC' || row.id === 'degF') continue;
      const expression = row.factor
        .replace(/(\d) (?=\d)/g, '$1')
        .replace(
          /(\d)?π/g,
          (_all, n: string | undefined) => `${n === undefined ? '' : `${n} × `}${Math.PI}`,
        );
      expect(work(expression) / unitOf(row.id).factor, row.id).toBeCloseTo(1, 14);
    }
  });
});

/** Products and quotients from left to right, with squares, cubes and one level of brackets. */
function work(expression: string): number {
  const flat = expression.replace(/\(([^()]*)\)/g, (_all, inner: string) => String(work(inner)));
  const parts = flat.split(/\s*([×/])\s*/);
  let result = power(parts[0] ?? '');
  for (let i = 1; i < parts.length; i += 2) {
    const next = power(parts[i + 1] ?? '');
    result = parts[i] === '/' ? result / next : result * next;
  }
  return result;
}
function power(text: string): number {
  const [, base = '', raised = ''] = /^([\d.e-]+)([²³]?)$/.exec(text) ?? [];
  return Number(base) ** (raised === '²' ? 2 : raised === '³' ? 3 : 1);
}

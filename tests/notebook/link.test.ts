import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as quantities from '../../src/calculators/quantities.ts';
import { optional, type Entry } from '../../src/calculators/define.ts';
import { escapeText, unescapeText } from '../../src/notebook/escape.ts';
import { decodeLink, encodeLink, longestLink, type LinkValue } from '../../src/notebook/link.ts';
import { decodeValue, encodeValue } from '../../src/notebook/link-value.ts';
import { exampleOf } from '../../src/notebook/example.ts';
import { isName, letterNames, type StoredValue } from '../../src/notebook/values.ts';
import { readAs } from '../../src/units/field.ts';
import { units } from '../../src/units/units.ts';

const address = 'https://shop.example/bobweight/';
const { bore, pinOffset, crankpinDiameter, pistonMass, bigEndReadings } = quantities;

function read(hash: string) {
  const link = decodeLink(hash);
  if (link?.ok !== true) throw new Error(`not a link: ${hash}`);
  return link;
}
function inLink(text: string, unit: string, entry?: Entry, plusMinus?: string): string {
  return encodeValue({ text, unit, ...(plusMinus === undefined ? {} : { plusMinus }) }, entry);
}

describe('the words of a link', () => {
  const letter = {
    job: 'Hill V8',
    by: 'The workshop',
    on: '2026-11-30',
    note: 'New pistons & rods:\n"lighter" <b>by</b> a quarter = 26 %',
    say: 'pull.balance',
    sets: 'Road/old\nHill',
    was: '1/bobweight.bobweight/1.6852/1.2331',
  };
  test('come back as they were written, and name no quantity', () => {
    const link = encodeLink({ address, letter, version: 1, values: [{ name: 'bore' }] });
    expect(link.slice(address.length)).toMatch(/^#[\w.$/&=-]+$/);
    expect(read(link.slice(address.length)).letter).toEqual(letter);
    for (const name of [...letterNames, 'v', 'view']) {
      expect(isName(name), name).toBe(false);
      expect(Object.keys(quantities)).not.toContain(name);
    }
  });

  test('damaged are said to be, and lose no number', () => {
    const { problems, letter: found, numbers } = read('#note=$zz&by=%ff&stroke=80mm&v=1');
    expect(found).toEqual({});
    expect(numbers).toBe(1);
    expect(problems).toEqual([
      'The message of this link is damaged: “$zz”.',
      'The sender of this link is damaged: “%ff”.',
    ]);
  });
});

describe('a value in a link', () => {
  test.each([
    ['2.100', 'in', '2.100in'],
    ['1 7/8"', 'in', '1-7/8in'],
    ['1-7/8 in', 'mm', '1-7/8in'],
    ['1⅞', 'in', '1-7/8in'],
    ['⅞', 'in', '7/8in'],
    ['47,96mm', 'mm', '47.96mm'],
    ['1.234,5 mm', 'mm', '1234.5mm'],
    ['1\u202f685.2', 'g', '1685.2g'],
    ['−0,80', 'mm', '-0.80mm'],
    ['-1 7/8', 'in', '-1-7/8in'],
    ['.5', 'in', '0.5in'],
    ['0.50', 'ratio', '0.50'],
    ['50 %', 'ratio', '50pct'],
    ['2', 'count', '2'],
    ['6400', 'rpm', '6400rpm'],
    ['1e3', 'g', '1e3g'],
    ['10.4 g·in', 'gmm', '10.4gin'],
    ['421.0; 421.5 ;421,1', 'g', '421.0;421.5;421.1g'],
    ['421.0 g; 0.9 lb', 'g', '421.0g;0.9lb'],
    ['four', '', 'four'],
    ['', 'mm', ''],
    ['abc', 'mm', '!abc@mm'],
    ['1,875', 'in', '!1$2c.875@in'],
    ['5/0', 'in', '!5/0@in'],
  ])('%j in %s is written %s', (text, unit, expected) => {
    expect(inLink(text, unit)).toBe(expected);
  });

  test('the entry settles a comma that the digits leave open', () => {
    expect(inLink('1,875', 'in', crankpinDiameter)).toBe('1.875in');
  });

  test.each([
    ['0.1', '495.2g:0.1'],
    ['0,1 g', '495.2g:0.1g'],
    ['±0.5 %', '495.2g:0.5pct'],
    ['a bit', '495.2g:!a-bit'],
  ])('± %s', (plusMinus, expected) => {
    expect(inLink('495.2', 'g', pistonMass, plusMinus)).toBe(expected);
  });

  test.each([
    ['1-7/8in', { text: '1 7/8', unit: 'in' }],
    ['-1-7/8in', { text: '-1 7/8', unit: 'in' }],
    ['495.2g:0.1', { text: '495.2', unit: 'g', plusMinus: '0.1' }],
    ['495.2g:0.5pct', { text: '495.2', unit: 'g', plusMinus: '0.5 %' }],
    ['421.0;421.5g', { text: '421.0; 421.5', unit: 'g' }],
    ['421.0g;0.9lb', { text: '421.0 g; 0.9 lb', unit: 'lb' }],
    ['0.50', { text: '0.50', unit: '' }],
    ['four', { text: 'four', unit: '' }],
    ['!a$2c.-b$-c@mm', { text: 'a, b-c', unit: 'mm' }],
  ])('%s is read', (text, expected) => {
    expect(decodeValue(text)).toEqual(expected);
  });

  test.each(['495.2cubit', '1:2:3', '4..5g', '1-7/g', '!$zz', '1;2;', '<b>', '1e999e2g'])(
    '%s is refused with its own words',
    (text) => {
      expect(() => decodeValue(text)).toThrow(RangeError);
    },
  );
});

describe('escaped text', () => {
  test('stays readable', () => {
    expect(escapeText('No.17')).toBe('No.17');
    expect(escapeText('No. 17 V8-hill')).toBe('No.-17-V8$-hill');
    expect(escapeText('Süd $4')).toBe('S$fc.d-$$4');
  });
  test('comes back from any text, in characters that every mail program leaves in a link', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 60 }), (text) => {
        const escaped = escapeText(text);
        expect(escaped).toMatch(/^[A-Za-z0-9./$-]*$/);
        expect(unescapeText(escaped)).toBe(text);
      }),
    );
  });
  test.each(['%41', '$zz.', '$110000.', 'a b', '$'])('%j is damaged', (text) => {
    expect(unescapeText(text)).toBeUndefined();
  });
});

describe('a whole link', () => {
  const shopNumbers: readonly (readonly [string, StoredValue, StoredValue])[] = [
    [
      'bigEndMass',
      { text: '421.2', unit: 'g', plusMinus: '0.3' },
      { text: '300.1', unit: 'g', plusMinus: '0.3' },
    ],
    [
      'shellMass',
      { text: '41.0', unit: 'g', plusMinus: '0.1' },
      { text: '36.0', unit: 'g', plusMinus: '0.1' },
    ],
    [
      'oilMass',
      { text: '4.0', unit: 'g', plusMinus: '2' },
      { text: '3.0', unit: 'g', plusMinus: '2' },
    ],
    [
      'smallEndMass',
      { text: '170.6', unit: 'g', plusMinus: '0.3' },
      { text: '138.2', unit: 'g', plusMinus: '0.3' },
    ],
    [
      'pinMass',
      { text: '120.2', unit: 'g', plusMinus: '0.1' },
      { text: '77.0', unit: 'g', plusMinus: '0.1' },
    ],
    ['lockMass', { text: '0', unit: 'g' }, { text: '1.2', unit: 'g', plusMinus: '0.05' }],
    [
      'pistonMass',
      { text: '428.0', unit: 'g', plusMinus: '0.1' },
      { text: '318.0', unit: 'g', plusMinus: '0.1' },
    ],
    [
      'ringMass',
      { text: '38.0', unit: 'g', plusMinus: '0.1' },
      { text: '23.5', unit: 'g', plusMinus: '0.1' },
    ],
    ['rodsPerPin', { text: '2', unit: '' }, { text: '2', unit: '' }],
    ['reciprocatingFraction', { text: '50', unit: 'pct' }, { text: '50', unit: 'pct' }],
  ];
  const values: readonly LinkValue[] = shopNumbers.map(([name, baseline, candidate]) => ({
    name,
    baseline,
    candidate,
  }));
  const link = encodeLink({ address, letter: { job: 'No.17' }, version: 1, values });

  test('ten quantities of the bobweight page, two sets, with ±: about 300 characters, readable', () => {
    expect(link).toBe(
      'https://shop.example/bobweight/#job=No.17&bigEndMass=421.2g:0.3,300.1g:0.3&shellMass=41.0g:0.1,36.0g:0.1' +
        '&oilMass=4.0g:2,3.0g:2&smallEndMass=170.6g:0.3,138.2g:0.3&pinMass=120.2g:0.1,77.0g:0.1&lockMass=0g,1.2g:0.05' +
        '&pistonMass=428.0g:0.1,318.0g:0.1&ringMass=38.0g:0.1,23.5g:0.1&rodsPerPin=2,2&reciprocatingFraction=50pct,50pct&v=1',
    );
    expect(link.length).toBeLessThan(340);
  });

  test('comes back unchanged', () => {
    expect(read(link.slice(address.length))).toEqual({
      ok: true,
      letter: { job: 'No.17' },
      view: '',
      values,
      problems: [],
      numbers: 20,
    });
  });

  test('survives what mail and chat do to it', () => {
    const hash = link.slice(address.length);
    const broken = hash.replace(/(.{76})/g, '$1\r\n ');
    expect(read(broken)).toEqual(read(hash));
    expect(read(hash.replaceAll('&', '&amp;'))).toEqual(read(hash));
    expect(read(hash.replaceAll(',', '%2C').replaceAll(':', '%3A'))).toEqual(read(hash));
    expect(read(`${hash}.`)).toEqual(read(hash));
  });

  test('cut anywhere, it says so and never gives a number that was not sent', () => {
    const hash = link.slice(address.length);
    const sent = new Map(values.map((value) => [value.name, value]));
    for (let length = hash.indexOf('&') + 1; length < hash.length; length += 1) {
      const cut = read(hash.slice(0, length));
      expect(cut.problems[0]).toMatch(
        /^The end of this link is missing; \d+ numbers? could be read/,
      );
      for (const value of cut.values) expect(value).toEqual(sent.get(value.name));
    }
  });

  test('a number is left out when it may be cut, and counted', () => {
    const cut = read('#bore=90.50mm,90.50mm&stroke=73.0');
    expect(cut.values.map(({ name }) => name)).toEqual(['bore']);
    expect(cut.problems).toEqual([
      'The end of this link is missing; 2 numbers could be read, and the last may be cut: it is not used.',
    ]);
  });

  test('a later version is named and used as far as it goes', () => {
    const later = read('#bore=90.50mm&v=7');
    expect(later.problems[0]).toContain('later version');
    expect(later.values).toHaveLength(1);
  });

  test.each([
    ['#bore=90.50cubit,1mm&v=1', 'Bore (baseline): “cubit” is no unit known here; it is not used.'],
    [
      '#bore=1mm,2mm,3mm&v=1',
      'Bore has more than two sets in this link: “1mm,2mm,3mm”; it is not used.',
    ],
    ['#bore=%E0%A4%A&v=1', 'Bore (baseline): “%E0%A4%A” is no number; it is not used.'],
    ['#<script>=1&v=1', '“<script>” in this link is no name of a quantity; it is not used.'],
    ['#__proto__=1g&v=1', '“__proto__” in this link is no name of a quantity; it is not used.'],
    ['#constructor=1g&v=1', '“constructor” in this link is no name of a quantity; it is not used.'],
    ['#bore=1mm&stroke&v=1', '“stroke” in this link has no value; it is not used.'],
    ['#job=%ff&bore=1mm&v=1', 'The job label of this link is damaged: “%ff”.'],
    ['#bore=1mm&bore=2mm&v=1', 'Bore stands twice in this link; the last one is used.'],
  ])('%s: the damage is named', (hash, sentence) => {
    const link = decodeLink(hash, (name) => (name === 'bore' ? 'Bore' : name));
    expect(link).toMatchObject({ ok: true });
    expect(read(hash).problems).toHaveLength(1);
    expect(link?.ok === true && link.problems).toEqual([sentence]);
  });

  test('damage to one value leaves the others', () => {
    const link = read('#bore=90.50cubit,91mm&stroke=73.00mm,73.00mm&v=1');
    expect(link.values).toEqual([
      { name: 'bore', candidate: { text: '91', unit: 'mm' } },
      {
        name: 'stroke',
        baseline: { text: '73.00', unit: 'mm' },
        candidate: { text: '73.00', unit: 'mm' },
      },
    ]);
  });

  test('an in-page anchor is no link', () => {
    expect(decodeLink('')).toBeUndefined();
    expect(decodeLink('#working')).toBeUndefined();
  });

  test('100 kB get a sentence', () => {
    const link = decodeLink(`#bore=${'9'.repeat(100_000)}`);
    expect(link).toMatchObject({ ok: false });
    expect(link?.ok === false && link.say).toContain(String(longestLink));
  });

  test('a long value inside the limit is named, not shown whole', () => {
    const [problem = ''] = read(`#bore=${'9'.repeat(5000)}mm&v=1`).problems;
    expect(problem).toContain('too long');
    expect(problem.length).toBeLessThan(120);
  });

  test('never throws, whatever the fragment', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 200 }), (text) => {
        decodeLink(`#bore=${text}`);
        decodeLink(text);
      }),
    );
  });

  test('an optional quantity without a number is left out; a needed one is carried as empty', () => {
    const empty = { text: '', unit: 'mm' };
    const both = { baseline: empty, candidate: empty };
    const link = encodeLink({
      address,
      version: 1,
      values: [
        { name: 'pinOffset', entry: optional(pinOffset), ...both },
        { name: 'bore', entry: bore, ...both },
      ],
    });
    expect(link).toBe(`${address}#bore=,&v=1`);
    expect(read('#bore=,&v=1').values).toEqual([
      { name: 'bore', baseline: { text: '', unit: '' }, candidate: { text: '', unit: '' } },
    ]);
  });
});

describe('a link that a program has encoded', () => {
  const plain = read('#job=No.17&bore=90mm,92mm&pistonMass=428.0g:0.1&v=1');
  test.each([
    [
      'the sign between name and value',
      '#job%3DNo.17&bore%3D90mm%2C92mm&pistonMass%3d428.0g%3A0.1&v%3D1',
    ],
    ['all of it', '#job%3DNo.17%26bore%3D90mm%2C92mm%26pistonMass%3D428.0g%3A0.1%26v%3D1'],
    ['its beginning', '#%23job=No.17&bore=90mm,92mm&pistonMass=428.0g:0.1&v=1'],
    [
      'its beginning and all of it',
      '#%23job%3DNo.17%26bore%3D90mm%2C92mm%26pistonMass%3D428.0g%3A0.1%26v%3D1',
    ],
    ['some of it', '#job=No.17&bore%3D90mm,92mm&pistonMass=428.0g:0.1&v%3D1'],
  ])('%s is the same link', (_what, hash) => {
    expect(read(hash)).toEqual(plain);
  });

  test('may have such signs in the name of its job', () => {
    expect(read('#job=No%2317%3DA&bore=90mm&v=1')).toMatchObject({
      letter: { job: 'No#17=A' },
      problems: [],
    });
    expect(read('#job=No#17&bore=90mm&v=1').problems).toHaveLength(1);
  });

  test('with such a sign inside a value names that value', () => {
    const link = read('#bore=%3D90mm&stroke=73mm&v=1');
    expect(link.values.map(({ name }) => name)).toEqual(['stroke']);
    expect(link.problems).toEqual(['bore (baseline): “=90mm” is no number; it is not used.']);
  });

  test('is told from an anchor of the page', () => {
    for (const hash of ['', '#calculator-bobweight', '#%23', '#3D'])
      expect(decodeLink(hash)).toBeUndefined();
  });

  test('lists the first faults and counts the others', () => {
    const link = read(
      `#${Array.from({ length: 500 }, (_, i) => `n${String(i)}=x!`).join('&')}&v=1`,
    );
    expect(link.problems).toHaveLength(9);
    expect(link.problems.at(-1)).toBe('And 492 more of this kind.');
  });
});

describe('round trip', () => {
  test('a unit that had to be typed to be believed is believed again', () => {
    const text = encodeValue({ text: '428 kg', unit: 'kg' }, pistonMass);
    const back = decodeValue(text);
    expect(readAs(pistonMass, back.text, back.unit)).toMatchObject({ ok: true, si: 428 });
    expect(encodeValue({ text: '0.428 kg', unit: 'kg' }, pistonMass)).toBe('0.428kg');
  });

  const digits = fc
    .tuple(
      fc.boolean(),
      fc.nat(99_999),
      fc.option(fc.stringMatching(/^\d{1,5}$/), { nil: undefined }),
    )
    .map(
      ([minus, whole, part]) =>
        `${minus ? '-' : ''}${String(whole)}${part === undefined ? '' : `.${part}`}`,
    );
  const fraction = fc
    .tuple(
      fc.option(fc.integer({ min: 1, max: 99 }), { nil: undefined }),
      fc.integer({ min: 1, max: 63 }),
    )
    .map(
      ([whole, above]) => `${whole === undefined ? '' : `${String(whole)} `}${String(above)}/64`,
    );
  const number = fc.oneof(digits, fraction);
  const unit = fc.constantFrom(
    ...Object.keys(units).filter((id) => id !== 'ratio' && id !== 'count'),
  );
  const value: fc.Arbitrary<StoredValue> = fc.oneof(
    fc.record({ text: number, unit: fc.oneof(unit, fc.constant('')) }),
    fc.record({ text: number, unit, plusMinus: number.filter((text) => !text.startsWith('-')) }),
    fc.record({
      text: fc.array(number, { minLength: 2, maxLength: 5 }).map((items) => items.join('; ')),
      unit,
    }),
    fc.record({ text: fc.stringMatching(/^[A-Za-z][A-Za-z0-9]{0,12}$/), unit: fc.constant('') }),
    // Anything else that a reader may leave in a field: carried word for word.
    fc.record({
      text: fc.string({ unit: 'binary', maxLength: 20 }).map((text) => `?${text}`),
      unit,
    }),
  );
  const safe = /^[A-Za-z0-9!#$&',\-./:;=?@]*[A-Za-z0-9]$/;

  test('any values come back from a link, and it is written in safe characters only', () => {
    const name = fc.stringMatching(/^[a-z][A-Za-z]{0,12}$/).filter(isName);
    const list = fc.uniqueArray(fc.record({ name, baseline: value, candidate: value }), {
      maxLength: 8,
      selector: (one) => one.name,
    });
    const label = fc.string({ unit: 'grapheme', maxLength: 30 }).map((text) => text.trim());
    fc.assert(
      fc.property(list, label, (values, job) => {
        const hash = encodeLink({ address: '', letter: { job }, version: 1, values });
        expect(hash).toMatch(safe);
        const letter = job === '' ? {} : { job };
        expect(read(hash)).toMatchObject({ letter, values, problems: [] });
      }),
      { numRuns: 500 },
    );
  });

  test('the text of every example of the dictionary survives', () => {
    for (const entry of Object.values(quantities)) {
      for (const set of ['baseline', 'candidate'] as const) {
        const example = exampleOf(set, entry);
        const back = decodeValue(encodeValue(example, entry));
        expect(back.text, entry.name).toBe(example.text);
        expect(['', example.unit]).toContain(back.unit);
        // What a calculator can do without may have no example; nothing needs no unit.
        if (back.unit === '' && example.text !== '' && entry.type !== 'choice')
          expect(['ratio', 'count']).toContain(example.unit);
      }
    }
  });

  test('readings keep their order and digits', () => {
    const example = exampleOf('baseline', bigEndReadings);
    expect(encodeValue(example, bigEndReadings)).toBe('421.0;421.5;421.1;420.9;421.5g');
  });
});

describe('names in a link', () => {
  // Without its semicolon, an unescaped `&` before one of these names becomes another character in HTML text.
  const entities =
    /^(?:not|cent|deg|sect|para|reg|times|micro|eth|yen|gt|lt|amp|shy|pound|uml|macr|divide|sup[123]|thorn|frac(?:12|14|34)|copy|curren|nbsp|iexcl|iquest|brvbar|cedil|laquo|raquo|ordf|ordm|plusmn|acute|middot|quot|szlig|aelig|ccedil|oslash|ntilde|[aeiouy]acute|[aeiou]grave|[aeiou]circ|[aeiouy]uml|[ano]tilde|aring)/i;
  test.each(Object.values(quantities).map(({ name }) => name))(
    '%s begins with no HTML entity',
    (name) => {
      expect(name).not.toMatch(entities);
    },
  );
  test('the rule catches the names it is made for', () => {
    for (const name of [
      'notchRadius',
      'centreOfGravity',
      'degreesOff',
      'sectionArea',
      'timesRun',
    ]) {
      expect(name).toMatch(entities);
    }
  });
  test('every entry is exported under its own name', () => {
    for (const [name, entry] of Object.entries(quantities)) expect(entry.name).toBe(name);
  });
});

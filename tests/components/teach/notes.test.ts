import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it, test } from 'vitest';
import { parse } from 'yaml';
import type { AnyCalculator } from '../../../src/calculators/define.ts';
import { calculators } from '../../../src/calculators/index.ts';
import { demoWork } from '../../../src/components/calculator/demo-work.ts';
import { slotContent } from '../../../src/components/slots/content.ts';
import { minutesOf, noteSchema } from '../../../src/components/teach/note.ts';
import { withNumbers } from '../../../src/components/teach/numbers.ts';

const all: Readonly<Record<string, AnyCalculator>> = calculators;
const topics = readdirSync('content/topics');

function read(topic: string): string {
  return readFileSync(`content/topics/${topic}/teach.yaml`, 'utf8');
}

interface Front {
  readonly calculators: readonly string[];
  /** An aim, or one with the exercise that shows it. */
  readonly teaches: readonly (string | { readonly aim: string })[];
}
function front(topic: string): Front {
  const page = readFileSync(`content/topics/${topic}/index.mdx`, 'utf8');
  return parse(/^---\n([\s\S]*?)\n---/u.exec(page)?.[1] ?? '') as Front;
}

/** One space for every kind of space. */
function spaced(text: string): string {
  return text.replace(/\s+/gu, ' ');
}

/** The example's numbers of a calculator as its page shows them, but for short ones that anything might say. */
function numbersOf(id: string): readonly string[] {
  const calculator = all[id];
  if (calculator === undefined) throw new Error(`There is no calculator “${id}”.`);
  const { sets } = demoWork(calculator);
  const names = [
    ...Object.values(calculator.inputs).flatMap(({ type, name }) =>
      type === 'number' ? name : [],
    ),
    ...Object.keys(calculator.outputs),
  ];
  return Object.values(sets).flatMap(({ input, output, uncertainty }) =>
    names
      .map((name) =>
        slotContent({}, name, calculator, { ...input, ...output }, 'metric', uncertainty),
      )
      .map(spaced)
      .filter((text) => (text.match(/[1-9]/gu) ?? []).length > 2),
  );
}

describe.each(topics)('the notes of %s', (topic) => {
  const note = noteSchema.parse(parse(read(topic)));

  it('aim at what the topic teaches', () => {
    const aims = note.aims.map(({ teaches }) => teaches);
    const teaches = front(topic).teaches.map((one) => (typeof one === 'string' ? one : one.aim));
    expect(teaches).toEqual(expect.arrayContaining(aims));
    expect(new Set(aims).size).toBe(aims.length);
  });

  it('have the numbers of the example in every place, and none typed', () => {
    const text = spaced(read(topic));
    expect(withNumbers(text)).not.toMatch(/[{}—]/u);
    const shown = front(topic).calculators.flatMap(numbersOf);
    expect(shown.length).toBeGreaterThan(0);
    expect(shown.filter((number) => text.includes(number))).toEqual([]);
  });

  it('promise nothing, and are whole sentences where they explain', () => {
    const { seen, shows, wrong, caution = 'None.' } = note.demonstration;
    const told = [seen, shows, wrong, caution, ...note.questions.flatMap(({ why }) => why)];
    for (const one of [...told, ...note.demonstration.do, ...note.homework])
      expect(one).toMatch(/^[\p{Lu}\d“].*[.?]$/su);
    for (const { ask } of note.questions) expect(ask).toMatch(/\?$/u);
    expect(read(topic)).not.toMatch(/\b(?:guarantee|proven|will last forever)\b/iu);
  });
});

describe('the schema', () => {
  const note = parse(read('bobweight')) as Record<string, unknown>;

  test.each([
    [
      'a lesson that is too short',
      {
        plans: {
          '10': [
            [9, 'Talk'],
            [0, 'x'],
          ],
        },
      },
    ],
    ['a third question', { questions: [1, 2, 3] }],
    ['a field that it does not know', { extra: 'text' }],
    ['no homework', { homework: [] }],
  ])('refuses %s', (_, change) => {
    expect(noteSchema.safeParse(note).success).toBe(true);
    expect(noteSchema.safeParse({ ...note, ...change }).success).toBe(false);
  });

  test('says how long the steps of a lesson take where they do not fill it', () => {
    const plans = note['plans'] as Record<string, [number, string][]>;
    const longer = { ...plans, '20': [...(plans['20'] ?? []), [1, 'One minute more']] };
    const said = noteSchema.safeParse({ ...note, plans: longer }).error?.issues[0]?.message;
    expect(said).toBe('The steps of the lesson of 20 minutes take 21.');
    expect(
      minutesOf([
        [4, 'a'],
        [6, 'b'],
      ]),
    ).toBe(10);
  });
});

describe('numbers in a text', () => {
  test('are those of the page, of either set', () => {
    const work = demoWork(calculators.bobweight);
    const grams = (set: 'baseline' | 'candidate'): string => {
      const { output, uncertainty } = work.sets[set];
      return slotContent(
        {},
        'bobweight',
        calculators.bobweight,
        { ...output },
        'metric',
        uncertainty,
      );
    };
    expect(withNumbers('{bobweight.bobweight} and {bobweight.bobweight@candidate}')).toBe(
      `${grams('baseline')} and ${grams('candidate')}`,
    );
    expect(grams('baseline')).toMatch(/^\d+\.\d.g$/u);
  });

  test.each([
    ['{bobweight}', 'write {calculator.name}'],
    ['{no-such.bobweight}', 'write {calculator.name}'],
    ['{bobweight.noSuch}', 'has no such number'],
    ['{bobweight.bobweight@other}', 'write {calculator.name}'],
    ['{wrist-pin.equalModulusBore}', 'the example has no number'],
  ])('%s is refused', (text, why) => {
    expect(() => withNumbers(text)).toThrow(why);
  });
});

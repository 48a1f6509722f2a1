import { fromSI, toSI, unitOf, unitsOfKind } from '../../units/units.ts';
import { formatNumber, withUnit } from '../../units/format.ts';
import type { AnyCalculator, Entry } from '../define.ts';
import { numberIn, outputsOrNone } from '../evaluate.ts';
import type { Stated } from './draw.ts';
import type { Plan } from './plan.ts';
import type { Answer } from './read-answer.ts';

/** What a question that asks for a number shows to whoever looks for slips. */
export interface Asking {
  readonly plan: Pick<Plan, 'ask' | 'given' | 'fixed' | 'tolerance'>;
  readonly case: {
    readonly stated: Readonly<Record<string, Stated>>;
    readonly input: Readonly<Record<string, Stated['value']>>;
    readonly output: Readonly<Record<string, unknown>>;
  };
  readonly fixed: Readonly<Record<string, Stated>>;
  readonly answer: number;
  readonly unit: string;
}

/** A slip and the answer that comes of it. */
export interface Slip {
  readonly id: string;
  /** What it looks like, as a sentence. */
  readonly say: string;
  /** [SI] */
  readonly value: number;
}

/** Units that one is taken for on the way from a drawing, a gauge or a scale to the paper. */
const takenFor: Readonly<Record<string, readonly string[]>> = {
  in: ['mm'],
  mm: ['in'],
  thou: ['um', 'mm'],
  um: ['mm', 'thou'],
  m: ['mm'],
  oz: ['g'],
  g: ['oz', 'kg'],
  kg: ['g'],
  deg: ['rad'],
  rpm: ['rad/s'],
  psi: ['bar', 'kPa'],
  kPa: ['bar', 'psi'],
  bar: ['psi', 'kPa'],
  lbf: ['N'],
  N: ['lbf'],
  kN: ['N'],
  lbft: ['Nm'],
  Nm: ['lbft'],
  degC: ['K'],
  degF: ['degC'],
  pct: ['ratio'],
};

interface Changed {
  readonly id: string;
  readonly say: string;
  readonly input: Readonly<Record<string, number>>;
}

function shown(value: number, unit: string): string {
  return withUnit(formatNumber(value, { significant: 4 }), unit);
}

/** True for a size that a formula halves or doubles: a diameter, a bore, a stroke. */
function isAcross({ name, kind }: Exclude<Entry, { type: 'choice' }>): boolean {
  return kind === 'length' && /diameter|^bore$|stroke|housing/iu.test(name);
}

/** The inputs as they would be with one slip at one quantity. */
function slipsAt(
  entry: Exclude<Entry, { type: 'choice' }>,
  { text, value, unit }: Stated,
): readonly Changed[] {
  if (typeof value !== 'number') return [];
  const { name, label } = entry;
  const changes: Changed[] = [];
  const add = (id: string, say: string, si: number): void => {
    changes.push({ id: `${id}:${name}`, say, input: { [name]: si } });
  };
  for (const other of takenFor[unit] ?? []) {
    const number = fromSI(value, unit);
    add(
      `${unit} for ${other}`,
      `It looks like “${label}” was taken as ${shown(number, other)}. It is ${text}.`,
      toSI(number, other),
    );
  }
  if (isAcross(entry)) {
    add(
      'diameter',
      `It looks like the whole of “${label}” was taken where its half belongs, as a diameter for a radius.`,
      2 * value,
    );
    add(
      'radius',
      `It looks like half of “${label}” was taken where the whole belongs, as a radius for a diameter.`,
      value / 2,
    );
  }
  if (entry.kind === 'count' && value > 1)
    add('one', `It looks like “${label}” was taken as 1. It is ${text}.`, 1);
  if (entry.kind === 'ratio' && value > 0 && value < 1 && entry.metric === 'pct')
    add(
      'whole',
      `It looks like the whole was counted where only ${text} of it counts (“${label}”).`,
      1,
    );
  if (value !== 0 && (entry.kind === 'mass' || entry.origin === 'assumption'))
    add('left out', `It looks like “${label}”, ${text}, was left out.`, 0);
  return changes;
}

/** All inches taken for millimetres at once. */
function allInches(stated: Readonly<Record<string, Stated>>): readonly Changed[] {
  const inches = Object.entries(stated).filter(([, { unit }]) => unit === 'in');
  if (inches.length < 2) return [];
  const input = Object.fromEntries(
    inches.map(([name, { value }]) => [name, toSI(fromSI(Number(value), 'in'), 'mm')]),
  );
  return [
    {
      id: 'all inches',
      say: 'It looks like the sizes in inches were taken as millimetres.',
      input,
    },
  ];
}

/** Slips at what went in, found by working the calculator again with each of them. */
function recomputed(calculator: AnyCalculator, question: Asking): readonly Slip[] {
  const { plan, case: drawn, fixed } = question;
  const stated = { ...fixed, ...drawn.stated };
  const single = Object.entries(stated).flatMap(([name, each]) => {
    const entry = calculator.inputs[name];
    return entry === undefined || entry.type === 'choice' ? [] : slipsAt(entry, each);
  });
  return [...allInches(stated), ...single].flatMap(({ id, say, input }) => {
    const value = numberIn(outputsOrNone(calculator, { ...drawn.input, ...input })?.[plan.ask]);
    return value === undefined ? [] : [{ id, say, value }];
  });
}

/** The other results of the same calculator that are of the same kind. */
function others(calculator: AnyCalculator, { plan, case: drawn }: Asking): readonly Slip[] {
  const asked = calculator.outputs[plan.ask];
  if (asked === undefined || asked.type === 'series') return [];
  return Object.entries(calculator.outputs).flatMap(([name, entry]) => {
    const value = drawn.output[name];
    if (name === plan.ask || entry.type === 'series' || entry.kind !== asked.kind) return [];
    if (typeof value !== 'number' || value === 0) return [];
    return [
      {
        id: `another:${name}`,
        say: `It looks like another quantity: that is “${entry.label}”. Asked is “${asked.label}”.`,
        value,
      },
    ];
  });
}

/** The right number with another unit written behind it. */
function unitsWritten({ answer }: Asking, { unit }: Answer): readonly Slip[] {
  const written = unitOf(unit);
  return unitsOfKind(written.kind)
    .filter(({ id }) => id !== unit)
    .map(({ id, symbol }) => ({
      id: `written:${id}`,
      say: `It looks like the right number, but in ${symbol === '' ? 'a plain number' : symbol}; you wrote it in ${written.symbol === '' ? 'plain numbers' : written.symbol}.`,
      value: toSI(fromSI(answer, id), unit),
    }));
}

const powers = [1, 2, 3, 6, -1, -2, -3, -6] as const;

/** What a wrong sign, a power of ten, a factor of two leave behind. */
function factors({ answer }: Asking): readonly Slip[] {
  return [
    {
      id: 'sign',
      say: 'The size is right; it looks like the sign is the other way round.',
      value: -answer,
    },
    ...powers.map((power) => ({
      id: `power:${String(power)}`,
      say: `It looks like a power of ten: ${power > 0 ? 'too large' : 'too small'} by ${formatNumber(10 ** Math.abs(power))}. Look at the prefixes of the units, and at the decimal point.`,
      value: answer * 10 ** power,
    })),
    {
      id: 'twice',
      say: 'It looks like a factor of two: this is twice the right size.',
      value: 2 * answer,
    },
    {
      id: 'half',
      say: 'It looks like a factor of two: this is half of the right size.',
      value: answer / 2,
    },
  ];
}

/**
 * The slips that would give other answers than the right one, in the order in which they are believed. None of them
 * lies where the right answer would be taken.
 */
export function slipsOf(
  calculator: AnyCalculator,
  question: Asking,
  given: Answer,
): readonly Slip[] {
  const { answer, plan } = question;
  const isOther = ({ value }: Slip): boolean =>
    Math.abs(value - answer) > 2 * plan.tolerance * Math.abs(answer);
  const worked = recomputed(calculator, question);
  const isLeftOut = ({ id }: Slip): boolean => id.startsWith('left out');
  return [
    ...factors(question).slice(0, 1),
    ...unitsWritten(question, given),
    ...worked.filter((slip) => !isLeftOut(slip)),
    // Where leaving something out gives another result of the sheet, that says more.
    ...others(calculator, question),
    ...worked.filter(isLeftOut),
    ...factors(question).slice(1),
  ].filter(isOther);
}

import type { Entry } from '../calculators/define.ts';
import { escapeText, unescapeText } from './escape.ts';
import { few } from './few.ts';
import { isLink } from './is-link.ts';
import { decodeValue, encodeValue, shown } from './link-value.ts';
import { nameToday, unitOfBare } from './renamed.ts';
import { isName, letterNames, type Letter, type StoredValue } from './values.ts';

/** The version of the grammar that {@link encodeLink} writes. */
export const linkVersion = 1;
/** A longer fragment is not taken apart; the longest link of a page is a tenth of it. */
export const longestLink = 16_000;
const longestValue = 1_000;

/** One quantity of a link: its name and what stands in each set. */
export interface LinkValue {
  readonly name: string;
  readonly baseline?: StoredValue;
  readonly candidate?: StoredValue;
  /** The dictionary entry, where known: it settles what typed digits alone leave open. */
  readonly entry?: Entry;
}

export interface LinkParts {
  /** The address of the page, without fragment. */
  readonly address: string;
  readonly letter?: Letter;
  /** What the page's figures are set to, as `encodeViews` writes it. */
  readonly view?: string;
  readonly version: typeof linkVersion;
  readonly values: readonly LinkValue[];
}

export type DecodedLink =
  | { readonly ok: false; readonly say: string }
  | {
      readonly ok: true;
      /** Its words; those that it does not have are left out. */
      readonly letter: Letter;
      /** What the figures are set to; empty when the link does not say. */
      readonly view: string;
      readonly values: readonly LinkValue[];
      /** What could not be used or is doubtful, one sentence each. */
      readonly problems: readonly string[];
      /** How many values were read. */
      readonly numbers: number;
    };

/**
 * Writes a link: `#job=No.17&pistonMass=495.2g:0.1,398.6g:0.1&crankpinDiameter=2.100in,1-7/8in&v=1`.
 *
 * Baseline and candidate are separated by a comma, a value and its ± by a colon, the readings of a list by
 * semicolons, whole and fraction by a hyphen. Digits stand as typed, with a decimal point; units by their id.
 * The version stands last: it proves that the link was not cut, and ends it on a digit, which programs that
 * find links in text keep. Nothing is left out for being a default, since defaults change; only an optional
 * quantity that is empty in both sets is.
 */
export function encodeLink({
  address,
  letter = {},
  view = '',
  version,
  values,
}: LinkParts): string {
  const pairs = values.flatMap(({ name, baseline, candidate, entry }) => {
    const texts = [encodeValue(baseline, entry), encodeValue(candidate, entry)];
    if (entry?.optional === true && texts.every((text) => text === '')) return [];
    return [`${name}=${candidate === undefined ? (texts[0] ?? '') : texts.join(',')}`];
  });
  const words = letterNames.flatMap((name) => {
    const text = (letter[name] ?? '').trim();
    return text === '' ? [] : [`${name}=${escapeText(text)}`];
  });
  if (view !== '') pairs.push(`view=${view}`);
  return `${address}#${[...words, ...pairs, `v=${version}`].join('&')}`;
}

/**
 * Reads the fragment of an address. Undefined when it is an in-page anchor; a sentence when it is too long to
 * be a link; else what could be read, and a sentence for each part that could not. Never throws.
 *
 * Mail programs break lines and write `&amp;`; both are undone. A link without its version was cut: what
 * stands last is not used, because half a number is still a number.
 *
 * @param label the words for a name, for the sentences.
 */
export function decodeLink(
  hash: string,
  label: (name: string) => string = (name) => name,
): DecodedLink | undefined {
  if (hash.length > longestLink) {
    return {
      ok: false,
      say: `This link is ${String(hash.length)} characters long; at most ${String(longestLink)} are read. None of it was used.`,
    };
  }
  if (!isLink(hash)) return undefined;
  const segments = structured(withoutSpaces(hash)).split('&');
  const pairs = segments.map(split).filter((pair) => pair.name !== '');
  const problems: string[] = [];
  const version = /^\d+/.exec(pairs.findLast(({ name }) => name === 'v')?.text ?? '')?.[0];
  const cut = version === undefined;
  // What stands before a bare `&v=` is whole: only the version itself was lost.
  const whole = !cut || /^(?:v=?)?$/.test(segments.at(-1) ?? '');
  const usable = (whole ? pairs : pairs.slice(0, -1)).filter(({ name }) => name !== 'v');
  const values = new Map<string, LinkValue>();
  const letter: { -readonly [Name in keyof Letter]: Letter[Name] } = {};
  let view = '';
  for (const { name: written, text } of usable) {
    const name = nameToday(written);
    const plain = text === undefined ? undefined : unpercented(text);
    if (text === undefined) {
      problems.push(`“${shown(name)}” in this link has no value; it is not used.`);
    } else if (isOfLetter(name)) {
      // What a program wrote with percent signs needs no escape of ours.
      const own = plain === undefined ? undefined : unescapeText(plain);
      const words = own ?? (plain === text ? undefined : plain);
      if (words === undefined)
        problems.push(`${letterWords[name]} of this link is damaged: “${shown(text)}”.`);
      else letter[name] = words;
    } else if (name === 'view') {
      view = plain ?? text;
    } else if (!isName(name)) {
      problems.push(`“${shown(name)}” in this link is no name of a quantity; it is not used.`);
    } else {
      if (values.has(name))
        problems.push(`${label(name)} stands twice in this link; the last one is used.`);
      const read = readPair(name, plain ?? text, label(name), problems);
      if (read !== undefined) values.set(name, read);
    }
  }
  const read = [...values.values()];
  const numbers = read.reduce((sum, one) => sum + filled(one.baseline) + filled(one.candidate), 0);
  if (cut) {
    const last = whole ? '' : ', and the last may be cut: it is not used';
    problems.unshift(
      `The end of this link is missing; ${countWords(numbers)} could be read${last}.`,
    );
  } else if (Number(version) > linkVersion) {
    problems.unshift(
      `This link was made by a later version of these pages (${version}; this one knows ${String(linkVersion)}). What could be read is used.`,
    );
  }
  return { ok: true, letter, view, values: read, problems: few(problems), numbers };
}

const letterWords: Readonly<Record<keyof Letter, string>> = {
  job: 'The job label',
  by: 'The sender',
  on: 'The date',
  note: 'The message',
  say: 'The choice of sentences',
  sets: 'The names of the sets',
  units: 'The system of units',
  was: 'What the results were',
};

function isOfLetter(name: string): name is keyof Letter {
  return letterNames.some((one) => one === name);
}

/**
 * The pairs of a link with the signs that part them in plain form, since some programs write `=` as `%3D`, `&` as
 * `%26` and `#` as `%23`. A pair that has a plain sign keeps the others, which then belong to its value.
 */
function structured(text: string): string {
  const plain = text.includes('=') ? text : text.replace(/%26/gi, '&');
  return plain
    .replace(/^(?:#|%23)+/i, '')
    .replace(/&amp;/g, '&')
    .split('&')
    .map((pair) => (pair.includes('=') ? pair : pair.replace(/%3D/i, '=')))
    .join('&');
}

/** Line breaks of mail programs and the invisible characters of chat programs, taken out. */
function withoutSpaces(text: string): string {
  return text.replace(/[\s\u00AD\u200B-\u200D\u2060]|%(?:20|0A|0D|09)/gi, '');
}

function split(segment: string): { readonly name: string; readonly text: string | undefined } {
  const at = segment.indexOf('=');
  return at < 0
    ? { name: segment, text: undefined }
    : { name: segment.slice(0, at), text: segment.slice(at + 1) };
}

/** Undoes the percent signs that some programs put in; undefined where they are damaged. */
function unpercented(text: string): string | undefined {
  if (!text.includes('%')) return text;
  try {
    return withoutSpaces(decodeURIComponent(text));
  } catch {
    return undefined;
  }
}

function readPair(
  name: string,
  text: string,
  label: string,
  problems: string[],
): LinkValue | undefined {
  const [baseline = '', candidate, ...more] = text.split(',');
  if (more.length > 0) {
    problems.push(
      `${label} has more than two sets in this link: “${shown(text)}”; it is not used.`,
    );
    return undefined;
  }
  const read = (part: string | undefined, set: string): StoredValue | undefined => {
    if (part === undefined) return undefined;
    try {
      if (part.length > longestValue) throw new RangeError(`“${shown(part)}” is too long`);
      const value = decodeValue(part);
      return value.unit === '' && value.text !== '' ? { ...value, unit: unitOfBare(name) } : value;
    } catch (error) {
      const reason = error instanceof Error ? error.message : String(error);
      problems.push(`${label} (${set}): ${reason}; it is not used.`);
      return undefined;
    }
  };
  const first = read(baseline, 'baseline');
  const second = read(candidate, 'candidate');
  if (first === undefined && second === undefined) return undefined;
  return {
    name,
    ...(first === undefined ? {} : { baseline: first }),
    ...(second === undefined ? {} : { candidate: second }),
  };
}

function filled(value: StoredValue | undefined): number {
  return value === undefined || value.text === '' ? 0 : 1;
}

function countWords(count: number): string {
  return count === 1 ? '1 number' : `${String(count)} numbers`;
}

/*
 * What has a name of its own is found by that name, by its symbol and by other words of the trade for it. Words of
 * running text are pagefind's (full-text.ts); it knows neither symbols nor what a workshop calls a thing elsewhere.
 */

/** What has a name; at equal merit the first of these stands first. */
const kinds = ['topic', 'term', 'quantity', 'result', 'caution', 'source', 'page'] as const;
export type NameKind = (typeof kinds)[number];

/** One thing of the site that has a name. */
export interface Named {
  readonly kind: NameKind;
  readonly name: string;
  /** Plain text, as declarations write it: `m_bob`. */
  readonly symbol?: string;
  /** Its other name on this site. */
  readonly also?: string;
  /** What it is called elsewhere (content/synonyms.yaml). */
  readonly elsewhere?: readonly string[];
  /** From the site's root: `glossary/#wrist-pin`. */
  readonly path: string;
  /** What it is, in a sentence or a few; empty where the name says it. */
  readonly text: string;
}

/** A name that answers a query. */
export interface NameHit {
  readonly named: Named;
  /** The other word for it that was typed; undefined where its own name or symbol was. */
  readonly by?: string;
}

const greek: Readonly<Record<string, string>> = {
  α: 'alpha',
  β: 'beta',
  γ: 'gamma',
  δ: 'delta',
  Δ: 'delta',
  ε: 'epsilon',
  η: 'eta',
  θ: 'theta',
  κ: 'kappa',
  λ: 'lambda',
  μ: 'mu',
  ν: 'nu',
  ρ: 'rho',
  Σ: 'sigma',
  σ: 'sigma',
  τ: 'tau',
  φ: 'phi',
  ψ: 'psi',
  ω: 'omega',
};

/** A text as words are compared: lower case, with single spaces, hyphens and signs dropped, Greek letters kept. */
export function plainWords(text: string): string {
  return text
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[’']/g, '')
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
}

/** One word without the ending of its plural, so that one circlip is found as two are. */
function singular(word: string): string {
  return word.replace(/(?<=\p{L}{3})(?<![su])s$/u, '');
}

/** The words of a text without the endings of their plurals. */
function stems(text: string): readonly string[] {
  return plainWords(text).split(' ').map(singular);
}

/** A symbol as it may be typed: with nothing between its letters, Greek ones spelt out or not. */
function spellings(symbol: string): readonly string[] {
  const joined = symbol.replace(/[\s_,]+/g, '');
  return [joined, [...joined].map((letter) => greek[letter] ?? letter).join('')];
}

/**
 * How well a symbol answers: 0 as it is printed, 1 but for capitals and what stands between its letters, 2 by the letter
 * before its index; else undefined.
 */
function symbolRank(query: string, symbol: string): number | undefined {
  const typed = query.replace(/[\s_,]+/g, '');
  const whole = spellings(symbol);
  if (query === symbol || (symbol.length === 1 && whole.includes(query))) return 0;
  if (whole.some((one) => one.toLowerCase() === typed.toLowerCase())) return 1;
  return spellings(symbol.replace(/_.*/s, '')).includes(typed) ? 2 : undefined;
}

/** How well a name answers: 0 wholly, 1 as its beginning, 2 each word as the beginning of one of its words. */
function wordsRank(query: string, name: string): number | undefined {
  const [asked, words] = [stems(query), stems(name)];
  if (asked.join(' ') === words.join(' ')) return 0;
  if (query.length < 2) return undefined;
  if (words.join(' ').startsWith(asked.join(' '))) return 1;
  return asked.every((part) => words.some((word) => word.startsWith(part))) ? 2 : undefined;
}

/** How well a thing answers by its own name, its symbol or its meaning, where 3 is the meaning; else undefined. */
function ownRank(query: string, { kind, name, symbol, text }: Named): number | undefined {
  // The text of a topic is found with its title (full-text.ts).
  if (kind === 'topic') return undefined;
  const ranks = [
    wordsRank(plainWords(query), name),
    symbol === undefined ? undefined : symbolRank(query, symbol),
    query.length > 2 && wordsRank(plainWords(query), text) !== undefined ? 3 : undefined,
  ].filter((rank) => rank !== undefined);
  return ranks.length === 0 ? undefined : Math.min(...ranks);
}

/** How well another word for a thing answers: the beginning of one is worth less than the beginning of its own name. */
function otherRank(query: string, word: string): number {
  const rank = wordsRank(query, word) ?? Infinity;
  return rank === 0 ? 0 : rank + 0.5;
}

/**
 * What a query names, the best answer first.
 *
 * @param query as typed
 * @param all everything that has a name
 */
export function namesFor(query: string, all: readonly Named[]): readonly NameHit[] {
  const plain = plainWords(query);
  if (plain === '') return [];
  const found: { readonly hit: NameHit; readonly rank: number }[] = [];
  for (const named of all) {
    let rank = ownRank(query.trim(), named) ?? Infinity;
    let hit: NameHit = { named };
    for (const word of [named.also ?? [], named.elsewhere ?? []].flat()) {
      const its = otherRank(plain, word);
      if (its < rank) [rank, hit] = [its, { named, by: word }];
    }
    if (rank < Infinity) found.push({ hit, rank });
  }
  return found
    .sort(
      (a, b) =>
        a.rank - b.rank ||
        kinds.indexOf(a.hit.named.kind) - kinds.indexOf(b.hit.named.kind) ||
        a.hit.named.name.length - b.hit.named.name.length,
    )
    .map(({ hit }) => hit);
}

/** A query in the site's words: what stands for it in the running text, and which word of the query was another. */
export interface Translated {
  readonly query: string;
  readonly from?: { readonly word: string; readonly to: string };
}

/**
 * Puts the site's term for another word of the trade, the longest that the query has.
 *
 * @param query as typed
 * @param all everything that has a name
 */
export function inOurWords(query: string, all: readonly Named[]): Translated {
  const asked = stems(query).join(' ');
  let best: { readonly word: string; readonly to: string; readonly part: string } | undefined;
  for (const { kind, name, elsewhere } of all) {
    // What leads to a topic or a page may well stand in its text.
    if (kind !== 'term') continue;
    for (const word of elsewhere ?? []) {
      const part = stems(word).join(' ');
      const isLonger = part.length > (best?.part.length ?? 0);
      if (isLonger && ` ${asked} `.includes(` ${part} `)) best = { word, to: name, part };
    }
  }
  if (best === undefined) return { query };
  const { word, to, part } = best;
  return { query: ` ${asked} `.replace(` ${part} `, ` ${to} `).trim(), from: { word, to } };
}

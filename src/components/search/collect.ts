import type { AnyCalculator, Entry } from '../../calculators/define.ts';
import type { QuantityNote } from '../../calculators/quantity-notes.ts';
import { shortSource } from '../text/short-source.ts';
import type { Named } from './names.ts';

/** What content and declarations hold, as far as names are concerned. */
export interface NamedContent {
  readonly terms: readonly {
    readonly id: string;
    readonly term: string;
    readonly also?: string | undefined;
    readonly meaning: string;
  }[];
  /** In learning order. */
  readonly topics: readonly {
    readonly id: string;
    readonly title: string;
    readonly summary: string;
    readonly calculators: readonly string[];
  }[];
  readonly cautions: readonly {
    readonly id: string;
    readonly title: string;
    readonly sentences: readonly string[];
  }[];
  readonly sources: readonly {
    readonly id: string;
    readonly authors: string;
    readonly title: string;
    readonly year: string;
  }[];
  readonly synonyms: readonly Synonym[];
  readonly quantities: Readonly<Record<string, Entry>>;
  readonly notes: Readonly<Record<string, QuantityNote>>;
  readonly calculators: Readonly<Record<string, AnyCalculator>>;
  /** Path and name. */
  readonly pages: readonly (readonly [path: string, name: string])[];
}

/** Other words, and the one thing that they lead to. */
export interface Synonym {
  readonly id: string;
  readonly words: readonly string[];
  readonly term?: string | undefined;
  readonly topic?: string | undefined;
  readonly quantity?: string | undefined;
  readonly page?: string | undefined;
}

/** Gives the other words for a target, as `term wrist-pin`. */
type WordsFor = (target: string) => Pick<Named, 'elsewhere'>;

function targetOf({ term, topic, quantity, page }: Synonym): string {
  if (term !== undefined) return `term ${term}`;
  if (topic !== undefined) return `topic ${topic}`;
  return quantity === undefined ? `page ${page ?? ''}` : `quantity ${quantity}`;
}

/**
 * Everything of the site that has a name of its own.
 *
 * @throws if other words lead to what is not there
 */
export function collectNames(content: NamedContent): readonly Named[] {
  const words = new Map<string, readonly string[]>();
  for (const synonym of content.synonyms) {
    const target = targetOf(synonym);
    words.set(target, [...(words.get(target) ?? []), ...synonym.words]);
  }
  const used = new Set<string>();
  const wordsFor: WordsFor = (target) => {
    used.add(target);
    const elsewhere = words.get(target);
    return elsewhere === undefined ? {} : { elsewhere };
  };
  const names = [
    ...namesOfTopics(content, wordsFor),
    ...namesOfTerms(content, wordsFor),
    ...namesOfQuantities(content, wordsFor),
    ...namesOfResults(content),
    ...content.cautions.map(({ id, title, sentences }): Named => ({
      kind: 'caution',
      name: title,
      path: `cautions/#caution-${id}`,
      text: sentences.join(' '),
    })),
    ...content.sources.map(({ id, title, ...source }): Named => ({
      kind: 'source',
      name: shortSource(source),
      path: `sources/#${id}`,
      text: `${source.authors}: ${title}.`,
    })),
    ...content.pages.map(([path, name]): Named => ({
      kind: 'page',
      name,
      ...wordsFor(`page ${path}`),
      path,
      text: '',
    })),
  ];
  const dead = [...words.keys()].filter((target) => !used.has(target));
  if (dead.length > 0)
    throw new Error(`content/synonyms.yaml leads to what is not there: ${dead.join(', ')}.`);
  return names;
}

function namesOfTopics({ topics }: NamedContent, wordsFor: WordsFor): readonly Named[] {
  return topics.map(({ id, title, summary }) => ({
    kind: 'topic',
    name: title,
    ...wordsFor(`topic ${id}`),
    path: `${id}/`,
    text: summary,
  }));
}

function namesOfTerms({ terms }: NamedContent, wordsFor: WordsFor): readonly Named[] {
  return terms.map(({ id, term, also, meaning }) => ({
    kind: 'term',
    name: term,
    ...(also === undefined ? {} : { also }),
    ...wordsFor(`term ${id}`),
    path: `glossary/#${id}`,
    text: meaning,
  }));
}

function namesOfQuantities(
  { quantities, notes }: NamedContent,
  wordsFor: WordsFor,
): readonly Named[] {
  return Object.entries(quantities).map(([key, { label, symbol }]) => ({
    kind: 'quantity',
    name: label,
    symbol,
    ...wordsFor(`quantity ${key}`),
    path: `symbols/#${key}`,
    text: notes[key]?.measure ?? '',
  }));
}

/** A result that several calculators give under one symbol and name is one, and stands with the first of them. */
function namesOfResults({ topics, calculators }: NamedContent): readonly Named[] {
  const names = new Map<string, Named>();
  for (const { id, title, calculators: its } of topics)
    for (const calculator of its)
      for (const [key, output] of Object.entries(calculators[calculator]?.outputs ?? {})) {
        if (output.type === 'series') continue;
        const { label, symbol } = output;
        const known = `${symbol} ${label}`;
        if (!names.has(known))
          names.set(known, {
            kind: 'result',
            name: label,
            symbol,
            path: `${id}/working/#r-${key}`,
            text: `A result of “${title}”.`,
          });
      }
  return [...names.values()];
}

import { getCollection } from 'astro:content';
import { calculators } from '../../calculators/index.ts';
import * as quantities from '../../calculators/quantities.ts';
import { quantityNotes } from '../../calculators/quantity-notes.ts';
import { jobPages, learningPages, mainPages, referencePages, takingPages } from '../site/pages.ts';
import { topicsInOrder } from '../site/topics.ts';
import { collectNames } from './collect.ts';
import type { Named } from './names.ts';

/** The names of this site; for the build, since it needs every declaration. */
export async function allNames(): Promise<readonly Named[]> {
  const [terms, topics, cautions, sources, synonyms] = await Promise.all([
    getCollection('glossary'),
    topicsInOrder(),
    getCollection('cautions'),
    getCollection('sources'),
    getCollection('synonyms'),
  ]);
  return collectNames({
    terms: terms.map(({ data }) => data),
    topics: topics.map(({ id, data }) => ({ id, ...data })),
    cautions: cautions.map(({ data }) => data),
    sources: sources.map(({ id, data }) => ({ id, ...data })),
    synonyms: synonyms.map(({ data }) => data),
    quantities,
    notes: quantityNotes,
    calculators,
    pages: [...mainPages, ...learningPages, ...jobPages, ...referencePages, ...takingPages],
  });
}

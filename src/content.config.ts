import { defineCollection } from 'astro:content';
import { file, glob } from 'astro/loaders';
import { z } from 'astro/zod';
import { noteSchema } from './components/teach/note.ts';

/** Ids are part of links that must last: lower case, digits and hyphens. */
const id = z
  .string()
  .regex(
    /^[a-z0-9]+(-[a-z0-9]+)*$/,
    'An id is written in lower case with hyphens: beer-johnston-2009',
  );

/** What a topic teaches, and the id of an exercise for it. */
interface Aim {
  readonly aim: string;
  readonly practise?: string;
}

const topics = defineCollection({
  loader: glob({
    base: './content/topics',
    pattern: '*/index.mdx',
    generateId: ({ entry }) => entry.replace(/\/index\.mdx$/, ''),
  }),
  schema: z.strictObject({
    title: z.string(),
    summary: z.string(),
    order: z.number({ error: 'order is the place in the learning order, a number' }),
    part: z.string(),
    /** What should be read before: ids of topics, without what those need themselves. */
    needs: z.array(id).default([]),
    calculators: z.array(id),
    /** How many sections of the text stand open; two where nothing is said. */
    openSections: z.number().int().min(0).optional(),
    /** What a reader can do afterwards, each with the exercise that shows it. */
    teaches: z
      .array(
        z.union([
          z.string().transform((aim): Aim => ({ aim })),
          z.strictObject({ aim: z.string(), practise: z.string() }),
        ]),
      )
      .default([]),
    cautions: z.array(id).default([]),
  }),
});

const teach = defineCollection({
  loader: glob({
    base: './content/topics',
    pattern: '*/teach.yaml',
    generateId: ({ entry }) => entry.replace(/\/teach\.yaml$/, ''),
  }),
  schema: noteSchema,
});

const lessons = defineCollection({
  loader: glob({ base: './content/lessons', pattern: '*.mdx' }),
  schema: z.strictObject({ title: z.string(), summary: z.string(), part: z.string() }),
});

// The cases of checks.yaml are read by src/checks, which tests and pages share.

const sources = defineCollection({
  loader: glob({ base: './content/sources', pattern: '*.yaml' }),
  schema: z.strictObject({
    authors: z.string(),
    title: z.string(),
    edition: z
      .union([z.string(), z.number()])
      .transform((edition) => String(edition))
      .optional(),
    publisher: z.string().optional(),
    year: z.union([z.number().int(), z.string()]).transform((year) => String(year)),
    kind: z.enum(['book', 'standard', 'paper', 'report', 'course'], {
      error: 'kind is one of book, standard, paper, report, course',
    }),
    quotedBy: z.string().optional(),
    lost: z.literal(true).optional(),
    note: z.string().optional(),
  }),
});

const glossary = defineCollection({
  loader: file('content/glossary.yaml'),
  schema: z.strictObject({
    id,
    term: z.string(),
    also: z.string().optional(),
    meaning: z.string(),
    /** A word that running text also uses in its everyday sense, so that it is marked nowhere. */
    everyday: z.literal(true).optional(),
    see: z.array(id).default([]),
  }),
});

/** Words that are used elsewhere for what this site calls otherwise. */
const synonyms = defineCollection({
  loader: file('content/synonyms.yaml'),
  schema: z
    .strictObject({
      id,
      words: z.array(z.string().min(2)).min(1),
      /** What they lead to: one of these. */
      term: id.optional(),
      topic: id.optional(),
      quantity: z.string().optional(),
      page: z.string().optional(),
    })
    .refine(
      ({ term, topic, quantity, page }) =>
        [term, topic, quantity, page].filter((target) => target !== undefined).length === 1,
      'Words lead to one of term, topic, quantity, page',
    ),
});

const cautions = defineCollection({
  loader: file('content/cautions.yaml'),
  schema: z.strictObject({
    id,
    title: z.string(),
    sentences: z.array(z.string()).min(3).max(6),
  }),
});

const changes = defineCollection({
  loader: file('content/changes.yaml'),
  schema: z.strictObject({
    id,
    /** Of the calculations: what a link or a file of then carries. */
    version: z.number().int().min(1),
    date: z.iso.date(),
    what: z.string(),
    /** The same numbers give another result in these. */
    calculators: z.array(id),
  }),
});

const judgement = defineCollection({
  loader: glob({ base: './content/judgement', pattern: '*.yaml' }),
  schema: z.strictObject({
    /** The topic whose page of practice it stands on. */
    topic: id,
    calculator: id,
    set: z.enum(['baseline', 'candidate']),
    title: z.string(),
    task: z.string(),
    /** What the sheet is called. */
    sheet: z.string(),
    /** Inputs that are stated above it, as they truly are. */
    stated: z.array(z.string()),
    lines: z
      .array(
        z.strictObject({
          line: z.string(),
          shows: z.string().optional(),
          with: z.record(z.string(), z.string()).optional(),
          fault: z.literal(true).optional(),
          why: z.string(),
        }),
      )
      .min(5),
  }),
});

export const collections = {
  topics,
  teach,
  lessons,
  sources,
  glossary,
  synonyms,
  cautions,
  changes,
  judgement,
};

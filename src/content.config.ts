import { defineCollection } from 'astro:content';
import { file, glob } from 'astro/loaders';
import { z } from 'astro/zod';

/** Ids are part of links that must last: lower case, digits and hyphens. */
const id = z
  .string()
  .regex(
    /^[a-z0-9]+(-[a-z0-9]+)*$/,
    'An id is written in lower case with hyphens: beer-johnston-2009',
  );

const printed = z.string({
  error:
    'Write the published value in quotes, digit for digit as it is printed: published: "523.4"',
});

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
    calculators: z.array(id),
    teaches: z.array(z.string()).default([]),
    cautions: z.array(id).default([]),
  }),
});

const expectedValue = z.strictObject({
  output: z.string(),
  published: printed,
  unit: z.string(),
  tolerance: z.number().positive(),
  absolute: z.boolean().optional(),
  why: z.string({ error: 'Say why this tolerance: "printed to four figures"' }),
});

const expectedRange = z.strictObject({
  output: z.string(),
  atLeast: z.number().optional(),
  atMost: z.number().optional(),
  unit: z.string(),
  why: z.string(),
});

const checks = defineCollection({
  loader: glob({
    base: './content/topics',
    pattern: '*/checks.yaml',
    generateId: ({ entry }) => entry.replace(/\.yaml$/, ''),
  }),
  schema: z.array(
    z.strictObject({
      id,
      calculator: id,
      title: z.string(),
      source: id,
      where: z.string(),
      evidence: z.enum(['read', 'quoted', 'transcribed', 'memory', 'practice'], {
        error: 'evidence is one of read, quoted, transcribed, memory, practice',
      }),
      inputs: z.record(
        z.string(),
        z.union([z.string(), z.number()]).transform((typed) => String(typed)),
      ),
      expected: z.array(z.union([expectedValue, expectedRange])).nonempty(),
      note: z.string().optional(),
    }),
  ),
});

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
    see: z.array(id).default([]),
  }),
});

const cautions = defineCollection({
  loader: file('content/cautions.yaml'),
  schema: z.strictObject({
    id,
    title: z.string(),
    sentences: z.array(z.string()).min(3).max(6),
  }),
});

export const collections = { topics, checks, sources, glossary, cautions };

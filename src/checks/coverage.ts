import type { AnyCalculator } from '../calculators/define.ts';
import { evidenceWords, isPrinted, type Evidence, type Expected } from './case.ts';
import type { TopicChecks } from './files.ts';
import { type Row, runCase, work } from './run.ts';

/** All rows of all topics, in the order of the files. */
export function runAll(
  topics: readonly TopicChecks[],
  calculators: Readonly<Record<string, AnyCalculator>>,
): readonly Row[] {
  return topics.flatMap(({ topic, cases }) =>
    cases.flatMap((entry) => runCase(topic, entry, calculators)),
  );
}

/** A published text that somebody has seen; neither memory nor custom. */
export function isPublished({ evidence }: { readonly evidence: string }): boolean {
  return evidence !== 'memory' && evidence !== 'practice';
}

/**
 * Where on the axis of one validity strip published cases that pass stand: least and greatest place, in SI.
 * Undefined when there is none. What is only remembered, or only custom, tests nothing here; a case that prints
 * no value but only a band, or whose values are all worked out from the print, neither.
 */
export function testedRange(
  calculator: AnyCalculator,
  validityId: string,
  topics: readonly TopicChecks[],
): readonly [number, number] | undefined {
  const strip = calculator.validity.find(({ id }) => id === validityId);
  if (strip === undefined) throw new RangeError(`${calculator.id} has no validity ${validityId}`);
  const places = topics.flatMap(({ topic, cases }) =>
    cases
      .filter((entry) => entry.calculator === calculator.id && isPublished(entry))
      .filter(({ expected }) =>
        expected.some((value) => isPrinted(value) && (strip.by?.includes(value.output) ?? true)),
      )
      .filter((entry) =>
        runCase(topic, entry, { [calculator.id]: calculator }).every(({ passes }) => passes),
      )
      .map((entry) => {
        const { input, output } = work(entry, calculator);
        return strip.of(input, output);
      }),
  );
  return places.length === 0 ? undefined : [Math.min(...places), Math.max(...places)];
}

/** The line under a result: how many cases stand behind a topic, and how the worst of them agrees. */
export interface Summary {
  readonly cases: number;
  readonly values: number;
  /** Of the values: those that stand in a print, or are remembered to. */
  readonly printed: number;
  /** Worked out from a print; the print itself does not hold them. */
  readonly derived: number;
  /** Printed wrongly; the miss is shown. */
  readonly misprinted: number;
  /** Only a band. */
  readonly bands: number;
  readonly failing: number;
  /** The published value that agrees least; absent when no row compares digits. */
  readonly worst?: Row;
  /** Cases and values by evidence, only those there are. */
  readonly evidence: Readonly<Partial<Record<Evidence, { cases: number; values: number }>>>;
}

/** Sums up the rows of a topic or of a calculator. */
export function summarise(rows: readonly Row[]): Summary {
  const cases = new Set(rows.map((row) => row.case));
  const evidence: Partial<Record<Evidence, { cases: number; values: number }>> = {};
  for (const { evidence: kind, expected } of cases) {
    const { cases: before = 0, values = 0 } = evidence[kind] ?? {};
    evidence[kind] = { cases: before + 1, values: values + expected.length };
  }
  const compared = rows.filter(({ agreeingDigits }) => agreeingDigits !== undefined);
  const worst = compared.reduce<Row | undefined>(
    (least, row) =>
      least === undefined || (row.agreeingDigits ?? 16) < (least.agreeingDigits ?? 16)
        ? row
        : least,
    undefined,
  );
  const count = (holds: (expected: Expected) => boolean): number =>
    rows.filter(({ expected }) => holds(expected)).length;
  const misprinted = count((value) => 'misprint' in value);
  const bands = count((value) => !('published' in value));
  const printed = count(isPrinted);
  return {
    cases: cases.size,
    values: rows.length,
    printed,
    derived: rows.length - printed - misprinted - bands,
    misprinted,
    bands,
    failing: rows.filter(({ passes }) => !passes).length,
    ...(worst === undefined ? {} : { worst }),
    evidence,
  };
}

/** The evidence of a summary as the pages print it: “3 cases with 7 values read; 1 case with 1 value quoted”. */
export function sayEvidence({ evidence }: Summary): string {
  const plural = (count: number, word: string): string =>
    `${count} ${count === 1 ? word : `${word}s`}`;
  return (Object.keys(evidenceWords) as Evidence[])
    .flatMap((kind) => {
      const found = evidence[kind];
      return found === undefined
        ? []
        : [
            `${plural(found.cases, 'case')} with ${plural(found.values, 'value')} ${evidenceWords[kind]}`,
          ];
    })
    .join('; ');
}

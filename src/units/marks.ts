/** Marks of the parts of a list, such as letters stamped on pistons: one for each place; empty where a part has none. */
export type Marks = readonly string[];

/** More is a description, and belongs in the note. */
export const longestMark = 32;

/** A mark in one line, and no longer than one that is stamped. */
function tidyMark(mark: string): string {
  return [...mark.replace(/\s+/g, ' ').trim()].slice(0, longestMark).join('');
}

/** Marks as they are kept: each in one line, none after the last; undefined where no part has one. */
export function tidyMarks(marks: Marks | undefined): Marks | undefined {
  const tidy = (marks ?? []).map(tidyMark);
  const last = tidy.findLastIndex((mark) => mark !== '');
  return last < 0 ? undefined : tidy.slice(0, last + 1);
}

/** The marks with another one in a place, counted from 0. */
export function withMark(marks: Marks | undefined, at: number, mark: string): Marks {
  const length = Math.max(marks?.length ?? 0, at + 1);
  return Array.from({ length }, (_, place) => (place === at ? mark : (marks?.[place] ?? '')));
}

/** What a part is called: its mark, else its place in the list, counted from 1. */
export function nameOfPart(marks: Marks | undefined, at: number): string {
  const mark = marks?.[at] ?? '';
  return mark === '' ? String(at + 1) : mark;
}

/** What is wrong with marks that should tell parts apart: two parts have the same. Undefined where nothing is. */
export function doubleMark(marks: Marks | undefined): string | undefined {
  const known = (marks ?? []).filter((mark) => mark !== '');
  return known.find((mark, at) => known.indexOf(mark) < at);
}

import { readFileSync } from 'node:fs';
import { parse } from 'yaml';

/**
 * Mutants that no test can catch, looked at one by one: by the file, each with what it changes and why that makes no
 * difference. Held by their text, so that an answer outlives lines that come before it.
 *
 * @typedef {Readonly<Record<string, readonly { mutant: string, because: string }[]>>} Answers
 */

/** @returns {Answers} */
export function readAnswers() {
  return parse(readFileSync(new URL('answered.yaml', import.meta.url), 'utf8')) ?? {};
}

/**
 * @param {Answers} answers
 * @param {string} file
 * @param {string} change
 */
export function isAnswered(answers, file, change) {
  return answers[file]?.some(({ mutant }) => mutant === change) ?? false;
}

/**
 * The answers of a file to nothing: no mutant of those tried survives as they say.
 *
 * @param {Answers} answers
 * @param {string} file
 * @param {readonly { file: string, change: string }[]} survivors
 * @param {readonly string[]} tried what was tried in the file
 */
export function staleAnswers(answers, file, survivors, tried) {
  const alive = new Set(survivors.filter((each) => each.file === file).map((each) => each.change));
  const all = new Set(tried);
  return (answers[file] ?? [])
    .map(({ mutant }) => mutant)
    .filter((mutant) => all.has(mutant) && !alive.has(mutant));
}

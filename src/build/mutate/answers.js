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
 * The answers to nothing: their mutants were tried and did not survive.
 *
 * @param {Answers} answers
 * @param {readonly { file: string, change: string }[]} tried
 * @param {readonly { file: string, change: string }[]} survivors
 * @returns {string[]} each with its file
 */
export function staleAnswers(answers, tried, survivors) {
  /** @param {{ file: string, change: string }} mutant */
  const text = ({ file, change }) => `${file}  ${change}`;
  const [all, alive] = [new Set(tried.map(text)), new Set(survivors.map(text))];
  return Object.entries(answers)
    .flatMap(([file, each]) => each.map(({ mutant }) => text({ file, change: mutant })))
    .filter((answer) => all.has(answer) && !alive.has(answer));
}

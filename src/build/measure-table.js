import { at, machineFactor } from './measure-machine.js';

/** @type {string[][]} */
const rows = [['What', 'Measured', 'At factor 1', 'Budget', 'Kept']];

/**
 * Adds a line to the table.
 *
 * @param {string} what
 * @param {string} measured
 * @param {{ fair?: string, budget?: string, kept?: boolean }} [judged] `fair` is the time on the reference machine
 */
export function note(what, measured, { fair = '', budget = '', kept } = {}) {
  rows.push([what, measured, fair, budget, kept === undefined ? '' : kept ? 'yes' : 'NO']);
}

/**
 * Adds a line for an amount of bytes.
 *
 * @param {string} what
 * @param {number} bytes
 * @param {number} budget in kB
 */
export function noteBytes(what, bytes, budget) {
  note(what, `${(bytes / 1000).toFixed(1)} kB`, {
    budget: `${budget} kB`,
    kept: bytes / 1000 <= budget,
  });
}

/**
 * Adds a line for the median of some times and one for what 95 % of them keep within; both are judged as they would
 * be on the reference machine.
 *
 * @param {string} what
 * @param {readonly number[]} times in ms
 * @param {readonly number[]} fixed the times of the fixed piece of work in between, in ms
 * @param {{ budget?: number, slowed?: number }} how the budget in ms; how many times the processor was slowed
 */
export function noteTimes(what, times, fixed, { budget, slowed = 1 }) {
  const digits = budget !== undefined && budget < 10 ? 3 : 1;
  /** @type {(time: number) => string} */
  const print = (time) => `${time.toFixed(digits)} ms`;
  for (const [name, share] of /** @type {const} */ ([
    ['median', 0.5],
    ['95 %', 0.95],
  ])) {
    const time = at(times, share);
    const factor = machineFactor(fixed, share, slowed);
    note(`${what}, ${name}`, `${print(time)} at factor ${factor.toFixed(2)}`, {
      fair: print(time / factor),
      ...(budget === undefined ? {} : { budget: `${budget} ms`, kept: time / factor <= budget }),
    });
  }
}

/** Prints the table. */
export function printTable() {
  const widths = (rows[0] ?? []).map((_, column) =>
    Math.max(...rows.map((row) => (row[column] ?? '').length)),
  );
  for (const row of rows)
    console.log(
      row
        .map((cell, column) => cell.padEnd(widths[column] ?? 0))
        .join('  ')
        .trimEnd(),
    );
}

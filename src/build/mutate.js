import { readFileSync } from 'node:fs';
import { isAnswered, readAnswers, staleAnswers } from './mutate/answers.js';
import { tryFormulas } from './mutate/formulas.js';
import { mutantsOf } from './mutate/mutants.js';
import { filesIn, stagesFor } from './mutate/tests.js';
import { Trials } from './mutate/trials.js';
import { root } from './tool.js';

/*
 * npm run mutate -- [--formulas] [--guards] [--operators] [--quick] [part of a path]: makes the physics wrong, one
 * small change at a time, and lists the changes that no test notices. It takes long: about a second for each change,
 * and half a minute for one that only the slow tests could notice; `--quick` leaves these tests out.
 */

/** @typedef {{ file: string, line?: number, change: string }} Survivor */
/** @typedef {{ tried: Survivor[], survivors: Survivor[], late: number }} Tried */

process.chdir(root);
const kinds = /** @type {const} */ (['formulas', 'guards', 'operators']);
const words = process.argv.slice(2);
const options = [...kinds, 'quick'].map((name) => `--${name}`);
const unknown = words.find((word) => word.startsWith('--') && !options.includes(word));
if (unknown !== undefined)
  throw new Error(`There is no ${unknown}; there are ${options.join(' ')}`);
const isQuick = words.includes('--quick');
const named = kinds.filter((kind) => words.includes(`--${kind}`));
const wanted = new Set(named.length === 0 ? kinds : named);
const filter = words.find((word) => !word.startsWith('--')) ?? '';
const answers = readAnswers();

/** @type {Record<string, Tried>} */
const sums = Object.fromEntries(
  kinds
    .filter((kind) => wanted.has(kind))
    .map((kind) => [kind, { tried: [], survivors: [], late: 0 }]),
);
/** @param {Survivor} survivor */
function line({ file, line, change }) {
  return `${file}${line === undefined ? '' : `:${line}`}  ${change}`;
}

/** @param {string} file @param {'guards' | 'operators'} kind */
function stages(file, kind) {
  return stagesFor(file, kind).filter(({ slow }) => !isQuick || slow !== true);
}

/**
 * The tests must pass as long as nothing is wrong; else every mutant would count as caught.
 *
 * @param {readonly string[]} files
 * @param {Trials} trials
 */
async function tryNothing(files, trials) {
  const [file] = files;
  if (file === undefined) throw new Error(`No file of src/core has “${filter}” in its path`);
  const all = files.flatMap((each) => stages(each, 'operators'));
  const named = all.filter(({ names }) => names !== undefined).slice(0, 1);
  const others = new Set(all.flatMap(({ tests, names }) => (names === undefined ? tests : [])));
  const whole = { file, text: readFileSync(file, 'utf8') };
  const { caught, by } = await trials.meet(whole, [...named, { tests: [...others] }], 600);
  if (caught) throw new Error(`A test fails without any change; look at ${by}`);
}

/** @param {string} file @param {Trials} trials */
async function tryFile(file, trials) {
  const mutants = mutantsOf(file, readFileSync(file, 'utf8')).filter(({ kind }) =>
    wanted.has(kind),
  );
  let alive = 0;
  const began = Date.now();
  for (const mutant of mutants) {
    const sum = sums[mutant.kind];
    if (sum === undefined) continue;
    sum.tried.push(mutant);
    const { caught, by } = await trials.meet(mutant, stages(file, mutant.kind));
    if (by === 'time') {
      sum.late += 1;
      console.log(`${line(mutant)}: its tests came to no end`);
    }
    if (caught) continue;
    alive += 1;
    sum.survivors.push(mutant);
    if (!isAnswered(answers, file, mutant.change)) console.log(line(mutant));
  }
  const seconds = ((Date.now() - began) / 1000).toFixed(0);
  console.log(`${file}: ${mutants.length} tried in ${seconds} s, ${alive} survived`);
}

if (wanted.has('formulas')) {
  const formulas = tryFormulas(filter);
  sums['formulas'] = { ...formulas, late: 0 };
  for (const survivor of formulas.survivors)
    if (!isAnswered(answers, survivor.file, survivor.change)) console.log(line(survivor));
}
if (wanted.has('guards') || wanted.has('operators')) {
  const trials = new Trials();
  for (const signal of ['SIGINT', 'SIGTERM'])
    process.once(signal, () => {
      trials.end();
      process.exit(1);
    });
  try {
    const files = filesIn('src/core').filter((file) => file.includes(filter));
    await tryNothing(files, trials);
    for (const file of files) await tryFile(file, trials);
  } finally {
    trials.end();
  }
}

console.log();
const all = Object.values(sums);
const stale = staleAnswers(
  answers,
  all.flatMap(({ tried }) => tried),
  all.flatMap(({ survivors }) => survivors),
);
let open = stale.length;
for (const [kind, { tried, survivors, late }] of Object.entries(sums)) {
  const unanswered = survivors.filter(({ file, change }) => !isAnswered(answers, file, change));
  open += unanswered.length;
  const caught = tried.length - survivors.length;
  const byTime = late === 0 ? '' : ` (${late} by never ending)`;
  console.log(
    `${kind}: ${tried.length} mutants, ${caught} caught${byTime}, ${survivors.length} survived, ${unanswered.length} of them unanswered`,
  );
}
for (const answer of stale) console.log(`Stale answer: ${answer}`);
process.exit(open === 0 ? 0 : 1);

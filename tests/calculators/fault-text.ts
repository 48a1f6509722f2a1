import { readdirSync, readFileSync } from 'node:fs';
import type { AnyCalculator, Value } from '../../src/calculators/define.ts';
import type { Fault } from './formula-faults.ts';

const root = new URL('../../', import.meta.url);
const folder = 'src/calculators/';

/** Paths of the declarations and what they are split into, by the text of each. */
const sources: ReadonlyMap<string, string> = new Map(
  readdirSync(new URL(folder, root), { recursive: true, encoding: 'utf8' })
    .map((path) => folder + path.replaceAll('\\', '/'))
    .filter((path) => path.endsWith('.ts'))
    .map((path) => [path, readFileSync(new URL(path, root), 'utf8')]),
);

/** The `.steps.ts` files that a file imports. */
function stepsBehind(path: string): string[] {
  const imports = [...(sources.get(path) ?? '').matchAll(/from '\.\/([\w.-]+\.steps\.ts)'/gu)];
  return imports.map(([, file]) => `${path.slice(0, path.lastIndexOf('/'))}/${file ?? ''}`);
}

/** The file, from the root of the project, in which a calculator declares a step; else its declaration. */
export function fileOf({ id }: AnyCalculator, step?: string): string {
  const declaration = [...sources.keys()].find((path) => path.endsWith(`/${id}.ts`)) ?? folder;
  const split = stepsBehind(declaration);
  // A declaration that has its steps elsewhere names them only as outputs.
  const places = [...split, ...split.flatMap(stepsBehind), declaration];
  const line = new RegExp(`^ +${step ?? ''}: \\w+\\(`, 'mu');
  const found = places.find((path) => line.test(sources.get(path) ?? ''));
  return step === undefined ? declaration : (found ?? declaration);
}

function shown(value: Value): string {
  if (typeof value === 'number') return String(Number(value.toPrecision(9)));
  if (value === undefined) return 'left out';
  return typeof value === 'string' ? `"${value}"` : `[${value.map(shown).join(', ')}]`;
}

function list(values: Readonly<Record<string, Value>>): string {
  return Object.entries(values)
    .map(([name, value]) => `${name} ${shown(value)}`)
    .join(', ');
}

/** What is wrong with a line of the working, where it stands, and what to do about it. */
export function faultText(calculator: AnyCalculator, fault: Fault): string {
  const { of, formula, draws, answered, missed, first } = fault;
  const place = `${fileOf(calculator, of)}, step "${of}"`;
  if (first === undefined)
    return `${place}: only ${answered} of ${draws} random inputs have an answer, too few to test the formula. Correct the usual ranges of its inputs.`;
  const { asked, worked, onPage, used, input } = first;
  const other =
    asked === undefined
      ? `the page's own evaluator works it to ${shown(onPage)}: correct src/components/working/postfix.ts or src/calculators/postfix.ts`
      : `compute gives  ${shown(asked)}: correct whichever is wrong`;
  const page = asked === undefined || onPage === worked ? '' : ` (${shown(onPage)} on the page)`;
  return [
    `${place}: wrong for ${missed} of ${answered} random inputs. For the first of them, in SI,`,
    `  ${formula}`,
    `  gives  ${shown(worked)}${page}, with ${list(used)};`,
    `  ${other}.`,
    `  Inputs: ${list(input)}`,
  ].join('\n');
}

import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';

/** A place in `src/core` that refuses a quantity. */
export interface GuardCall {
  /** From `src/core/` on. */
  readonly file: string;
  readonly line: number;
  /** Each name that its key can stand for: `${name}Gap` stands for both rings' gaps. */
  readonly quantities: readonly string[];
  /** Each relation that it states. */
  readonly relations: readonly string[];
}

/** The guards of `refuse.ts` and what they state, and where the other two take quantity and relation. */
const relations = new Map<string, readonly string[]>([
  ['finite', ['a number']],
  ['above', ['greater than']],
  ['atLeast', ['at least']],
  ['below', ['less than']],
  ['atMost', ['at most']],
  ['fraction', ['at least', 'at most']],
]);
const places = new Map([
  ['refusal', { quantity: 1, relation: 2 }],
  ['OutOfDomain', { quantity: 0, relation: 2 }],
]);

const root = 'src/core';

/** Every call of a guard in `src/core`, by the syntax tree and the types of its arguments. */
export function guardCalls(): readonly GuardCall[] {
  const files = readdirSync(root, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts') && name !== 'refuse.ts')
    .sort();
  const program = ts.createProgram(
    files.map((name) => join(root, name)),
    {
      strict: true,
      noEmit: true,
      allowImportingTsExtensions: true,
      target: ts.ScriptTarget.ESNext,
      module: ts.ModuleKind.ESNext,
      moduleResolution: ts.ModuleResolutionKind.Bundler,
      types: [],
    },
  );
  const checker = program.getTypeChecker();

  /** The strings that an expression can be; none where its type says no more than `string`. */
  function strings(node: ts.Node | undefined): readonly string[] {
    if (node === undefined) return [];
    const own = checker.getTypeAtLocation(node);
    const type = checker.getBaseConstraintOfType(own) ?? own;
    const parts = type.isUnion() ? type.types : [type];
    return parts.flatMap((part) => (part.isStringLiteral() ? [part.value] : []));
  }

  function callsIn(file: string): GuardCall[] {
    const source = program.getSourceFile(join(root, file));
    if (source === undefined) throw new RangeError(`${file} is not part of the program`);
    const found: GuardCall[] = [];
    const visit = (node: ts.Node): void => {
      if ((ts.isCallExpression(node) || ts.isNewExpression(node)) && node.arguments !== undefined) {
        const name = node.expression.getText(source);
        const place = places.get(name);
        const stated = relations.get(name) ?? (place && strings(node.arguments[place.relation]));
        if (stated !== undefined)
          found.push({
            file,
            line: source.getLineAndCharacterOfPosition(node.getStart(source)).line + 1,
            quantities: strings(node.arguments[place?.quantity ?? 1]),
            relations: stated,
          });
      }
      ts.forEachChild(node, visit);
    };
    visit(source);
    return found;
  }

  return files.flatMap(callsIn);
}

import { sep } from 'node:path';

/** What only the build reads: the words of the working and of the page. The browser never asks for them. */
const buildOnly = new Set(['steps', 'assumptions', 'cautions', 'sources', 'exercise', 'purpose']);

/**
 * A Vite plugin that empties these members of every `defineCalculator({...})` in the code for browsers, so
 * that a page sends what computes and not what explains; the explanation already stands in its HTML.
 *
 * @returns {import('vite').Plugin}
 */
export function leanDeclarations() {
  const folder = `${sep}src${sep}calculators${sep}`;
  return {
    name: 'throwbook-lean-declarations',
    // After TypeScript is gone, so that the code parses as it will run.
    enforce: 'post',
    apply: 'build',
    transform(code, id) {
      if (this.environment.name !== 'client' || !id.includes(folder)) return null;
      if (!code.includes('defineCalculator(')) return null;
      /** @type {{ start: number, end: number, empty: string }[]} */
      const cuts = [];
      for (const declaration of declarations(this.parse(code))) {
        for (const member of declaration.properties) {
          if (member.type !== 'Property' || member.computed || member.key.type !== 'Identifier')
            continue;
          if (!buildOnly.has(member.key.name)) continue;
          const name = member.key.name;
          const empty = name === 'purpose' ? `''` : name === 'exercise' ? '{}' : '[]';
          cuts.push({ start: member.start, end: member.end, empty: `${name}: ${empty}` });
        }
      }
      if (cuts.length === 0) return null;
      let lean = code;
      for (const { start, end, empty } of cuts.sort((a, b) => b.start - a.start))
        lean = lean.slice(0, start) + empty + lean.slice(end);
      return { code: lean, map: null };
    },
  };
}

/**
 * The object literals handed to `defineCalculator` at the top of a module.
 *
 * @param {any} program
 * @returns {any[]}
 */
function declarations(program) {
  return program.body.flatMap((/** @type {any} */ statement) => {
    const declared =
      statement.type === 'ExportNamedDeclaration' ? statement.declaration : statement;
    if (declared?.type !== 'VariableDeclaration') return [];
    return declared.declarations.flatMap((/** @type {any} */ { init }) =>
      init?.type === 'CallExpression' &&
      init.callee.name === 'defineCalculator' &&
      init.arguments[0]?.type === 'ObjectExpression'
        ? [init.arguments[0]]
        : [],
    );
  });
}

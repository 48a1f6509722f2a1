import { sep } from 'node:path';

/** What only the build reads: the words of the working and of the page. The browser never asks for them. */
const buildOnly = new Set(['steps', 'assumptions', 'cautions', 'sources', 'exercise', 'purpose']);

/**
 * A Vite plugin for the code of browsers: a page sends what computes and not what explains, which already
 * stands in its HTML. It empties the members above of every `defineCalculator({...})`, and says that core,
 * units and calculators do nothing when they are merely imported, so that a page fetches only the subjects
 * of the dictionary that it uses.
 *
 * @returns {import('vite').Plugin}
 */
export function leanDeclarations() {
  const pure = ['core', 'units', 'calculators'].map((layer) => `${sep}src${sep}${layer}${sep}`);
  return {
    name: 'throwbook-lean-declarations',
    // After TypeScript is gone, so that the code parses as it will run.
    enforce: 'post',
    apply: 'build',
    transform(code, id) {
      if (this.environment.name !== 'client' || !pure.some((layer) => id.includes(layer)))
        return null;
      /** @type {{ start: number, end: number, empty: string }[]} */
      const cuts = [];
      const declared = code.includes('defineCalculator(') ? declarations(this.parse(code)) : [];
      for (const declaration of declared) {
        for (const member of declaration.properties) {
          if (member.type !== 'Property' || member.computed || member.key.type !== 'Identifier')
            continue;
          if (!buildOnly.has(member.key.name)) continue;
          const name = member.key.name;
          const empty =
            name === 'purpose' ? `''` : /^(?:exercise|steps)$/u.test(name) ? '{}' : '[]';
          cuts.push({ start: member.start, end: member.end, empty: `${name}: ${empty}` });
        }
      }
      let lean = code;
      for (const { start, end, empty } of cuts.sort((a, b) => b.start - a.start))
        lean = lean.slice(0, start) + empty + lean.slice(end);
      return { code: lean, map: null, moduleSideEffects: false };
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

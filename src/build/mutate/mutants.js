import ts from 'typescript';

/**
 * One small wrong change of a file.
 *
 * @typedef {object} Mutant
 * @property {string} file from the project's folder on, with `/`
 * @property {'guards' | 'operators'} kind
 * @property {number} line from 1
 * @property {string} change what stands there and what it becomes, on one line: `a < b → a <= b`
 * @property {string} text the whole file with the change
 */

const guards = new Set(['above', 'atLeast', 'below', 'atMost', 'finite', 'fraction', 'eachAbove']);

/** What each operator is taken for. */
const flipped = new Map([
  [ts.SyntaxKind.PlusToken, '-'],
  [ts.SyntaxKind.MinusToken, '+'],
  [ts.SyntaxKind.AsteriskToken, '/'],
  [ts.SyntaxKind.SlashToken, '*'],
  [ts.SyntaxKind.PlusEqualsToken, '-='],
  [ts.SyntaxKind.MinusEqualsToken, '+='],
  [ts.SyntaxKind.AsteriskEqualsToken, '/='],
  [ts.SyntaxKind.SlashEqualsToken, '*='],
  [ts.SyntaxKind.LessThanToken, '<='],
  [ts.SyntaxKind.LessThanEqualsToken, '<'],
  [ts.SyntaxKind.GreaterThanToken, '>='],
  [ts.SyntaxKind.GreaterThanEqualsToken, '>'],
  [ts.SyntaxKind.AmpersandAmpersandToken, '||'],
  [ts.SyntaxKind.BarBarToken, '&&'],
]);

const otherFunction = new Map([
  ['Math.min', 'max'],
  ['Math.max', 'min'],
  ['Math.sin', 'cos'],
  ['Math.cos', 'sin'],
]);

/** @param {ts.Node} node whether it is text, which a plus only joins */
function isText(node) {
  return ts.isStringLiteralLike(node) || ts.isTemplateExpression(node);
}

/**
 * What one node is replaced by, if by anything: a guard by what it lets through, an operator by its like.
 * `from` to `to` is replaced; `shown` is the part of the file in which the report shows the change.
 *
 * @typedef {{ kind: Mutant['kind'], from: number, to: number, by: string, shown: ts.Node }} Change
 * @param {ts.Node} node
 * @param {ts.SourceFile} source
 * @returns {Change | undefined}
 */
function changeOf(node, source) {
  /** @param {ts.Node} part @param {Mutant['kind']} kind @param {string} by @returns {Change} */
  const replace = (part, kind, by) => ({
    kind,
    from: part.getStart(source),
    to: part.getEnd(),
    by,
    shown: node,
  });
  if (ts.isThrowStatement(node)) return replace(node, 'guards', ';');
  if (ts.isCallExpression(node)) {
    const called = node.expression.getText(source);
    const [given, key] = node.arguments;
    if (guards.has(called) && given !== undefined && key !== undefined) {
      // As a statement of its own it must not begin like the call of what stands before it.
      const alone = ts.isExpressionStatement(node.parent);
      return replace(
        node,
        'guards',
        alone ? 'void 0' : `(${given.getText(source)})[${key.getText(source)}]`,
      );
    }
    const other = otherFunction.get(called);
    if (other !== undefined && ts.isPropertyAccessExpression(node.expression))
      return replace(node.expression.name, 'operators', other);
  }
  if (ts.isBinaryExpression(node)) {
    const by = flipped.get(node.operatorToken.kind);
    if (by !== undefined && !isText(node.left) && !isText(node.right))
      return replace(node.operatorToken, 'operators', by);
  }
  if (ts.isPrefixUnaryExpression(node) && node.operator === ts.SyntaxKind.MinusToken)
    return replace(node, 'operators', node.operand.getText(source));
  return undefined;
}

/** @param {string} text */
function onOneLine(text) {
  return text.replace(/\s+/gu, ' ').trim();
}

/**
 * Every mutant of a file of `src/core`: each guard dropped, each operator flipped. Types, and what is put
 * into a text, stay as they are.
 *
 * @param {string} file
 * @param {string} text
 * @returns {Mutant[]}
 */
export function mutantsOf(file, text) {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
  /** @type {Mutant[]} */
  const found = [];
  /** @param {ts.Node} node */
  const visit = (node) => {
    if (ts.isTypeNode(node) || ts.isInterfaceDeclaration(node) || ts.isTemplateExpression(node))
      return;
    const change = changeOf(node, source);
    if (change !== undefined) {
      const { kind, from, to, by, shown } = change;
      const [start, end] = [shown.getStart(source), shown.getEnd()];
      found.push({
        file,
        kind,
        line: source.getLineAndCharacterOfPosition(from).line + 1,
        change: `${onOneLine(text.slice(start, end))} → ${onOneLine(text.slice(start, from) + by + text.slice(to, end))}`,
        text: text.slice(0, from) + by + text.slice(to),
      });
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

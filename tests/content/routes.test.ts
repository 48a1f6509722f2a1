import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import ts from 'typescript';
import { expect, test } from 'vitest';
import { routesOf } from '../../src/checks/routes.ts';

/** `topic.key` of every route that a test's title names through `proves(routes.key)`. */
function taken(file: string): readonly string[] {
  const source = ts.createSourceFile(
    file,
    readFileSync(file, 'utf8'),
    ts.ScriptTarget.Latest,
    true,
  );
  const topics = new Map<string, string>();
  for (const statement of source.statements) {
    if (!ts.isImportDeclaration(statement) || !ts.isStringLiteral(statement.moduleSpecifier))
      continue;
    const path = relative('.', join(dirname(file), statement.moduleSpecifier.text));
    const topic = /^content\/topics\/(.+)\/routes\.ts$/.exec(path)?.[1];
    const bindings = statement.importClause?.namedBindings;
    if (topic !== undefined && bindings !== undefined && ts.isNamedImports(bindings))
      for (const { name } of bindings.elements) topics.set(name.text, topic);
  }
  const names: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isCallExpression(node) && node.expression.getText() === 'proves') {
      const [route] = node.arguments;
      // It names a route only as the title of a test.
      const title = ts.isCallExpression(node.parent) && node.parent.arguments[0] === node;
      if (title && route !== undefined && ts.isPropertyAccessExpression(route))
        names.push(`${topics.get(route.expression.getText()) ?? '?'}.${route.name.text}`);
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return names;
}

test('every route is taken by a test, and none twice under one name', () => {
  const files = readdirSync('tests', { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.test.ts'))
    .map((name) => join('tests', name));
  const named = new Set(files.flatMap(taken));
  const all = Object.entries(routesOf).flatMap(([topic, routes]) =>
    Object.keys(routes).map((key) => `${topic}.${key}`),
  );
  expect(
    all.filter((route) => !named.has(route)),
    'routes in content/topics/<topic>/routes.ts that no test names with proves(routes.key): write the test, or take the route out',
  ).toEqual([]);
});

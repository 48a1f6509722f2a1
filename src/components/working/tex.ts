import { casesTex } from './cases.ts';
import { type Expression, functions, ungrouped } from './parse.ts';

const greek: Readonly<Record<string, string>> = {
  α: '\\alpha',
  β: '\\beta',
  γ: '\\gamma',
  δ: '\\delta',
  ε: '\\varepsilon',
  ζ: '\\zeta',
  η: '\\eta',
  θ: '\\theta',
  κ: '\\kappa',
  λ: '\\lambda',
  μ: '\\mu',
  ν: '\\nu',
  ξ: '\\xi',
  π: '\\pi',
  ρ: '\\rho',
  σ: '\\sigma',
  τ: '\\tau',
  φ: '\\varphi',
  ψ: '\\psi',
  ω: '\\omega',
  Γ: '\\Gamma',
  Δ: '\\Delta',
  Θ: '\\Theta',
  Λ: '\\Lambda',
  Σ: '\\Sigma',
  Φ: '\\Phi',
  Ω: '\\Omega',
};

function escaped(text: string): string {
  return text.replace(/[#$%&_{}]/gu, '\\$&').replace(/[~^\\](?![#$%&_{}])/gu, ' ');
}

/**
 * A declared symbol in TeX: `m_piston` becomes m with the word piston below, `θ` its letter. A stem of several
 * letters stands upright, since a row of slanted letters would read as a product.
 */
export function symbolTex(symbol: string): string {
  const [stem = '', ...rest] = symbol.split('_');
  const letters = [...stem];
  const isWord = letters.length > 1 && letters.every((letter) => /[A-Za-z]/u.test(letter));
  const stemTex = isWord
    ? `\\text{${stem}}`
    : letters
        .map((letter) => (greek[letter] === undefined ? letter : `${greek[letter]} `))
        .join('');
  const subscript = rest.join('_');
  if (subscript === '') return stemTex;
  const below = [...subscript];
  const lone = below.length === 1 ? greek[subscript] : undefined;
  return `{${stemTex}}_{${lone ?? `\\text{${escaped(subscript)}}`}}`;
}

/** A symbol that can be questioned: the mark becomes a `data-q` attribute when the formula is rendered. */
export function questionable(name: string, symbol: string): string {
  return `\\href{#q:${name}}{${symbolTex(symbol)}}`;
}

function isTall(expression: Expression): boolean {
  switch (expression.is) {
    case 'divide':
    case 'when':
      return true;
    case 'call':
      return ['sqrt', 'squares'].includes(expression.name) || expression.of.some(isTall);
    case 'number':
    case 'name':
      return false;
    case 'group':
    case 'negate':
      return isTall(expression.of);
    default:
      return isTall(expression.left) || isTall(expression.right);
  }
}

/** Brackets grow only around what is tall: some math fonts stretch them too far round a flat line. */
function bracketed(inside: string, tall: boolean): string {
  return tall ? `\\left(${inside}\\right)` : `(${inside})`;
}

function startsWithNumber(expression: Expression): boolean {
  if (expression.is === 'number') return true;
  if (expression.is === 'multiply' || expression.is === 'power')
    return startsWithNumber(expression.left);
  return false;
}

/** What the names of a formula mean; each throws for a name that is not declared. */
export interface Meaning {
  /** The declared symbol of a quantity. */
  symbolOf(name: string): string;
  /** The options of a choice with their labels. */
  optionsOf(choice: string): Readonly<Record<string, string>>;
}

/**
 * An expression over quantities as a line of symbols in TeX; a choice between cases as a brace.
 *
 * @throws Error when a choice stands inside a larger expression, where no brace can be read
 */
export function expressionTex(expression: Expression, { symbolOf, optionsOf }: Meaning): string {
  function tex(part: Expression): string {
    switch (part.is) {
      case 'number':
        return part.text === 'π' ? '\\pi ' : part.text;
      case 'name':
        return questionable(part.name, symbolOf(part.name));
      case 'group':
        return bracketed(tex(part.of), isTall(part.of));
      case 'negate':
        return `-${tex(part.of)}`;
      case 'add':
        return `${tex(part.left)}+${tex(part.right)}`;
      case 'subtract':
        return `${tex(part.left)}-${tex(part.right)}`;
      case 'multiply': {
        const sign = startsWithNumber(part.right) ? '\\times ' : '\\,';
        return `${tex(part.left)}${sign}${tex(part.right)}`;
      }
      case 'divide':
        return `\\frac{${tex(ungrouped(part.left))}}{${tex(ungrouped(part.right))}}`;
      case 'power':
        return power(part.left, tex(ungrouped(part.right)));
      case 'call':
        return call(part.name, part.of);
      case 'when':
        throw new Error('when(…) is printed only as a whole formula, or last in another when(…)');
    }
  }
  function power(base: Expression, exponent: string): string {
    if (base.is === 'call' && base.name !== 'sqrt' && base.name.length === 3)
      return call(base.name, base.of, `^{${exponent}}`);
    return `{${tex(base)}}^{${exponent}}`;
  }
  function call(name: string, of: readonly Expression[], raised = ''): string {
    const word = functions[name]?.tex ?? name;
    if (name === 'sqrt') return `\\sqrt{${of.map((part) => tex(ungrouped(part))).join(',')}}`;
    if (name === 'abs') {
      const inside = of.map((part) => tex(ungrouped(part))).join(',');
      return of.some(isTall) ? `\\left|${inside}\\right|` : `\\lvert ${inside}\\rvert `;
    }
    const [only, mean] = of;
    if (name === 'exp' && only !== undefined) return `\\mathrm{e}^{${tex(ungrouped(only))}}`;
    if (name === 'squares' && only !== undefined && mean !== undefined)
      return `${word}_{i}{(${tex(only)}-${tex(mean)})}^{2}`;
    if (of.length === 1 && only?.is === 'name' && name.length < 5 && /sin|cos|tan/u.test(name))
      return `${word}${raised}{${tex(only)}}`;
    const inside = of.map((part) => tex(ungrouped(part))).join(',\\ ');
    return `${word}${raised}${bracketed(inside, of.some(isTall))}`;
  }
  if (expression.is !== 'when') return tex(expression);
  return casesTex(expression, { tex, optionsOf, text: (words) => `\\text{${escaped(words)}}` });
}

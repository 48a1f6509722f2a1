import { at } from '../../../src/core/math/at.ts';
import type { ShaftLine } from '../../../src/core/torsion/shaft-line.ts';

/** The springs of a line as a matrix, each row and column over the root of its inertia. */
function scaledMatrix({ lineInertias, lineStiffnesses }: ShaftLine): number[][] {
  return lineInertias.map((J, i) =>
    lineInertias.map((other, j) => {
      const before = lineStiffnesses[i - 1] ?? 0;
      const behind = lineStiffnesses[i] ?? 0;
      const k = i === j ? before + behind : j === i + 1 ? -behind : j === i - 1 ? -before : 0;
      return k / Math.sqrt(J * other);
    }),
  );
}

/**
 * Frequencies [rad/s] and shapes (greatest swing ±1, the first positive) by Jacobi’s rotations of the full matrix: slow,
 * and with nothing in common with the counting and halving of `core`. The frequency zero is left out.
 */
export function jacobiModes(
  line: ShaftLine,
): readonly { readonly frequency: number; readonly shape: readonly number[] }[] {
  const a = scaledMatrix(line);
  const n = a.length;
  const turned = a.map((_, i) => a.map((__, j) => (i === j ? 1 : 0)));
  for (let sweep = 0; sweep < 60; sweep++)
    for (let p = 0; p < n; p++) for (let q = p + 1; q < n; q++) rotate(a, turned, p, q);
  return a
    .map((row, i) => {
      const swings = line.lineInertias.map((J, j) => at(at(turned, j), i) / Math.sqrt(J));
      const most = Math.max(...swings.map(Math.abs)) * Math.sign(at(swings, 0));
      const square = Math.max(0, at(row, i));
      return { frequency: Math.sqrt(square), shape: swings.map((each) => each / most) };
    })
    .sort((one, other) => one.frequency - other.frequency)
    .slice(1);
}

function rotate(a: number[][], turned: number[][], p: number, q: number): void {
  const apq = at(at(a, p), q);
  if (apq === 0) return;
  const half = (at(at(a, q), q) - at(at(a, p), p)) / (2 * apq);
  const t = (half < 0 ? -1 : 1) / (Math.abs(half) + Math.hypot(half, 1));
  const c = 1 / Math.hypot(t, 1);
  const s = t * c;
  for (const row of [...a, ...turned]) {
    const [x, y] = [at(row, p), at(row, q)];
    row[p] = c * x - s * y;
    row[q] = s * x + c * y;
  }
  const [rowP, rowQ] = [at(a, p), at(a, q)];
  for (let j = 0; j < a.length; j++) {
    const [x, y] = [at(rowP, j), at(rowQ, j)];
    rowP[j] = c * x - s * y;
    rowQ[j] = s * x + c * y;
  }
}

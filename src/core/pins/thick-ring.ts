import { at } from '../math/at.ts';

/** Solves a small linear system by elimination with pivots; rows of `system` end in the right-hand side. */
function solved(system: readonly (readonly number[])[]): readonly number[] {
  const rows = system.map((row) => [...row]);
  const size = rows.length;
  const entry = (i: number, j: number): number => at(at(rows, i), j);
  for (let column = 0; column < size; column++) {
    let pivot = column;
    for (let i = column + 1; i < size; i++)
      if (Math.abs(entry(i, column)) > Math.abs(entry(pivot, column))) pivot = i;
    const [first, second] = [at(rows, column), at(rows, pivot)];
    [rows[column], rows[pivot]] = [second, first];
    rows.forEach((row, i) => {
      if (i === column) return;
      const share = at(row, column) / at(second, column);
      rows[i] = row.map((value, j) => value - share * at(second, j));
    });
  }
  return rows.map((row, i) => at(row, size) / at(row, i));
}

/**
 * {@link lobeMovement} without a bore, in closed form: (1 + ν)/2 [1/(n − 1) + κ/(n + 1)], κ = (3 − ν)/(1 + ν). Narrow
 * lobes press on the skin alone, so that it is the limit of a ring for many lobes too.
 */
export function solidLobeMovement(n: number, ν: number): number {
  const κ = (3 - ν) / (1 + ν);
  return ((1 + ν) / 2) * (1 / (n - 1) + κ / (n + 1));
}

/**
 * Inward movement of the outer face of a hollow cylinder at the middle of a lobe, in units of pressure times
 * outer radius over E, when the outer face is pressed by cos(n θ) and the inner face is free; plane stress.
 *
 * Airy's function (A rⁿ + B r⁻ⁿ + C rⁿ⁺² + D r²⁻ⁿ) cos n θ (J. H. Michell, 1899), with powers of r/b and a/r so
 * that no coefficient grows. `α` is inner over outer radius, between 0 and 1; `n` a whole number from 2 up;
 * ν Poisson's ratio. Falls to the thin ring's (12 R⁴/t³)/(n² − 1)² as α nears 1.
 */
export function lobeMovement(α: number, n: number, ν: number): number {
  const powers = (r: number): readonly number[] => [
    r ** (n - 2),
    (α / r) ** n / r ** 2,
    r ** n,
    (α / r) ** n,
  ];
  const weigh = (weights: readonly number[], r: number): readonly number[] =>
    powers(r).map((power, i) => power * at(weights, i));
  const radial = [n * (1 - n), -n * (n + 1), 2 + n - n * n, 2 - n - n * n];
  const shear = [n * (n - 1), -n * (n + 1), n * (n + 1), -n * (n - 1)];
  const factors = solved([
    [...weigh(radial, 1), -1],
    [...weigh(shear, 1), 0],
    [...weigh(radial, α), 0],
    [...weigh(shear, α), 0],
  ]);
  const κ = (3 - ν) / (1 + ν);
  // Movement is r times the same powers; 2G = E/(1 + ν).
  const outward = weigh([-n, n, κ - n - 1, κ + n - 1], 1).reduce(
    (sum, weight, i) => sum + weight * at(factors, i),
    0,
  );
  return -outward * (1 + ν);
}

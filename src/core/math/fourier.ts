import { at } from './at.ts';

/** Coefficients of `mean + Σ cosine_k cos(kθ) + sine_k sin(kθ)`; the arrays run along the orders asked for. */
export interface Harmonics {
  readonly mean: number;
  readonly cosine: readonly number[];
  readonly sine: readonly number[];
}

/**
 * Harmonic coefficients of a function of period 2π, for the whole `orders` asked for.
 *
 * `f` takes an angle [rad] from 0; coefficients have the unit of `f`. Equal samples over one turn: for a
 * smooth periodic function this converges faster than any power of 1/samples, and it is exact for a sum
 * of harmonics below samples/2. What is neglected: order k also collects orders samples ± k.
 *
 * Throws RangeError unless every order is a whole number from 1 to below samples/2.
 */
export function fourier(
  f: (angle: number) => number,
  orders: readonly number[],
  samples: number,
): Harmonics {
  for (const order of orders)
    if (!Number.isInteger(order) || order < 1 || 2 * order >= samples)
      throw new RangeError(`order ${order} must be a whole number from 1 to below ${samples / 2}`);
  const step = (2 * Math.PI) / samples;
  const values = Array.from({ length: samples }, (_, i) => f(i * step));
  const mean = values.reduce((sum, y) => sum + y, 0) / samples;
  const cosines = values.map((_, i) => Math.cos(i * step));
  const sines = values.map((_, i) => Math.sin(i * step));
  // Whole turns fall away in the index, so that high orders keep their digits.
  const against = (wave: readonly number[], order: number): number =>
    (2 / samples) *
    values.reduce((sum, value, i) => sum + value * at(wave, (order * i) % samples), 0);
  return {
    mean,
    cosine: orders.map((order) => against(cosines, order)),
    sine: orders.map((order) => against(sines, order)),
  };
}

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
  const turn = 2 * Math.PI;
  const cosine = orders.map(() => 0);
  const sine = orders.map(() => 0);
  const wave = Array.from({ length: samples }, (_, i) => Math.sin((turn * i) / samples));
  let mean = 0;
  for (let i = 0; i < samples; i++) {
    const y = f((turn * i) / samples);
    mean += y / samples;
    orders.forEach((order, k) => {
      // Whole multiples of the sampling step stay on the table, a quarter turn ahead for the cosine.
      const angle = (order * i) % samples;
      sine[k]! += (2 * y * wave[angle]!) / samples;
      cosine[k]! +=
        (2 *
          y *
          (samples % 4 === 0
            ? wave[(angle + samples / 4) % samples]!
            : Math.cos((turn * angle) / samples))) /
        samples;
    });
  }
  return { mean, cosine, sine };
}

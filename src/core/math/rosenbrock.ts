/**
 * A system of ordinary differential equations that may be stiff, with its derivatives.
 * `size` is the number of unknowns; all arrays are filled in place, matrices row by row.
 */
export interface StiffSystem {
  readonly size: number;
  slope(t: number, y: Float64Array, out: Float64Array): void;
  /** `byY` holds ∂(slope i)/∂(y j) at i·size + j; `byT` the partial derivative by t. */
  jacobian(t: number, y: Float64Array, byY: Float64Array, byT: Float64Array): void;
}

/** How an integration is to be carried out. */
export interface StiffControl {
  /** Error allowed in one step, relative to each unknown. */
  readonly relative: number;
  /** Error allowed in one step where an unknown is near zero, one for each. */
  readonly absolute: readonly number[];
  readonly firstStep: number;
  readonly longestStep: number;
  /**
   * Fixed places to step to, in rising order, in the place of error control: the end then depends smoothly
   * on the start, which a search for a steady cycle needs.
   */
  readonly mesh?: ArrayLike<number> | undefined;
  /** Positive or zero inside the stretch; the integration stops where it turns negative. */
  readonly inside?: (t: number, y: Float64Array) => number;
  /** Called at the start and after each accepted step, the last one shortened to the event. */
  readonly seen?: (t: number, y: Float64Array) => void;
}

/** Where an integration came to rest. */
export interface StiffEnd {
  readonly t: number;
  readonly y: Float64Array;
  /** True where `inside` turned negative before the end was reached. */
  readonly stopped: boolean;
  readonly steps: number;
}

/** Solves a·x = b for a small matrix, in place, with row exchange. The matrix is overwritten. */
function eliminate(a: Float64Array, n: number, pivots: Int32Array): void {
  for (let k = 0; k < n; k++) {
    let best = k;
    for (let i = k + 1; i < n; i++)
      if (Math.abs(a[i * n + k] ?? 0) > Math.abs(a[best * n + k] ?? 0)) best = i;
    pivots[k] = best;
    if (best !== k)
      for (let j = 0; j < n; j++) {
        const keep = a[k * n + j] ?? 0;
        a[k * n + j] = a[best * n + j] ?? 0;
        a[best * n + j] = keep;
      }
    const pivot = a[k * n + k] ?? 0;
    if (pivot === 0) throw new RangeError('the step matrix is singular');
    for (let i = k + 1; i < n; i++) {
      const factor = (a[i * n + k] ?? 0) / pivot;
      a[i * n + k] = factor;
      for (let j = k + 1; j < n; j++)
        a[i * n + j] = (a[i * n + j] ?? 0) - factor * (a[k * n + j] ?? 0);
    }
  }
}

function substitute(a: Float64Array, n: number, pivots: Int32Array, b: Float64Array): void {
  for (let k = 0; k < n; k++) {
    const best = pivots[k] ?? k;
    if (best !== k) {
      const keep = b[k] ?? 0;
      b[k] = b[best] ?? 0;
      b[best] = keep;
    }
  }
  for (let k = 0; k < n; k++)
    for (let i = k + 1; i < n; i++) b[i] = (b[i] ?? 0) - (a[i * n + k] ?? 0) * (b[k] ?? 0);
  for (let k = n - 1; k >= 0; k--) {
    let sum = b[k] ?? 0;
    for (let j = k + 1; j < n; j++) sum -= (a[k * n + j] ?? 0) * (b[j] ?? 0);
    b[k] = sum / (a[k * n + k] ?? 1);
  }
}

/**
 * Integrates a stiff system from `from` to `to` with control of the step and location of an event.
 *
 * Method: a four-stage Rosenbrock formula of order 3 with an embedded one of order 2, stiffly accurate and
 * L-stable, so that a path that is far too wide for its volume costs no small steps: the fast part is
 * damped at once and the rest follows. A test measures the order and the damping.
 * Source of the coefficients: A. Sandu, J. G. Verwer, J. G. Blom, E. J. Spee, G. R. Carmichael, F. A. Potra,
 * Benchmarking stiff ODE solvers for atmospheric chemistry problems II: Rosenbrock solvers, Atmospheric
 * Environment 31 (1997), "RODAS3"; from memory, checked by the order test.
 *
 * The event is found by shortening the step that crosses it, with the same matrix, to 1e-9 of the interval.
 * Throws RangeError where the step falls below 1e-12 of the interval or a slope is not finite.
 */
export function integrateStiff(
  system: StiffSystem,
  from: number,
  start: ArrayLike<number>,
  to: number,
  { relative, absolute, firstStep, longestStep, mesh, inside, seen }: StiffControl,
): StiffEnd {
  const n = system.size;
  let y = Float64Array.from(start);
  let t = from;
  let steps = 0;
  let h = Math.min(firstStep, longestStep, to - from);
  const least = 1e-12 * Math.max(to - from, 1);

  const byY = new Float64Array(n * n);
  const byT = new Float64Array(n);
  const matrix = new Float64Array(n * n);
  const pivots = new Int32Array(n);
  const [slope0, slope1, at, next, errors] = [0, 0, 0, 0, 0].map(() => new Float64Array(n)) as [
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  const [k1, k2, k3, k4] = [0, 0, 0, 0].map(() => new Float64Array(n)) as [
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
  ];

  /** One step of length `step` from (t, y) into `next`; returns the error over what is allowed. */
  function attempt(step: number): number {
    const scale = 2 / step;
    for (let i = 0; i < n * n; i++) matrix[i] = -(byY[i] ?? 0);
    for (let i = 0; i < n; i++) matrix[i * n + i] = (matrix[i * n + i] ?? 0) + scale;
    eliminate(matrix, n, pivots);
    for (let i = 0; i < n; i++) k1[i] = (slope0[i] ?? 0) + 0.5 * step * (byT[i] ?? 0);
    substitute(matrix, n, pivots, k1);
    for (let i = 0; i < n; i++)
      k2[i] = (slope0[i] ?? 0) + (4 / step) * (k1[i] ?? 0) + 1.5 * step * (byT[i] ?? 0);
    substitute(matrix, n, pivots, k2);
    for (let i = 0; i < n; i++) at[i] = (y[i] ?? 0) + 2 * (k1[i] ?? 0);
    system.slope(t + step, at, slope1);
    for (let i = 0; i < n; i++) k3[i] = (slope1[i] ?? 0) + ((k1[i] ?? 0) - (k2[i] ?? 0)) / step;
    substitute(matrix, n, pivots, k3);
    for (let i = 0; i < n; i++) at[i] = (at[i] ?? 0) + (k3[i] ?? 0);
    system.slope(t + step, at, slope1);
    for (let i = 0; i < n; i++)
      k4[i] = (slope1[i] ?? 0) + ((k1[i] ?? 0) - (k2[i] ?? 0) - (8 / 3) * (k3[i] ?? 0)) / step;
    substitute(matrix, n, pivots, k4);
    let worst = 0;
    for (let i = 0; i < n; i++) {
      const end = (at[i] ?? 0) + (k4[i] ?? 0);
      next[i] = end;
      errors[i] = k4[i] ?? 0;
      const allowed = (absolute[i] ?? 0) + relative * Math.max(Math.abs(y[i] ?? 0), Math.abs(end));
      const share = Math.abs(errors[i] ?? 0) / allowed;
      if (!(share <= worst)) worst = share;
    }
    return worst;
  }

  let knot = 0;
  seen?.(t, y);
  while (t < to - least) {
    if (mesh !== undefined) {
      while (knot < mesh.length && (mesh[knot] ?? to) <= t + least) knot++;
      h = Math.min(to, mesh[knot] ?? to) - t;
    }
    system.slope(t, y, slope0);
    system.jacobian(t, y, byY, byT);
    for (;;) {
      if (t + h > to - least) h = to - t;
      const error = attempt(h);
      if (error <= 1 || mesh !== undefined) {
        const crossed = inside !== undefined && inside(t + h, next) < 0;
        if (crossed) {
          let [low, high] = [0, h];
          while (high - low > 1e-9 * Math.max(to - from, 1)) {
            const middle = (low + high) / 2;
            attempt(middle);
            if (inside(t + middle, next) < 0) high = middle;
            else low = middle;
          }
          attempt(high);
          t += high;
          y = Float64Array.from(next);
          seen?.(t, y);
          return { t, y, stopped: true, steps: steps + 1 };
        }
        t += h;
        steps++;
        y.set(next);
        seen?.(t, y);
        h = Math.min(longestStep, h * Math.min(4, 0.9 / Math.cbrt(Math.max(error, 1e-6))));
        break;
      }
      if (Number.isNaN(error)) h *= 0.1;
      else h *= Math.max(0.2, 0.9 / Math.cbrt(error));
      if (h < least) throw new RangeError(`the step became too short at ${t}`);
    }
  }
  return { t, y, stopped: false, steps };
}

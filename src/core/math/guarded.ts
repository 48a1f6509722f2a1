/** `f(x)`, or NaN where `f` throws or has no finite value, so that a search can pass over it. */
export function guarded(f: (x: number) => number, x: number): number {
  try {
    const y = f(x);
    return Number.isFinite(y) ? y : Number.NaN;
  } catch {
    return Number.NaN;
  }
}

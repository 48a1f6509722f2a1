/** The value, or a failing test where there is none. */
export function must<T>(value: T | undefined): T {
  if (value === undefined) throw new Error('there is no value where the test needs one');
  return value;
}

/**
 * The version of what the calculators work out. It grows with every change after which the same numbers give another
 * result; `content/changes.yaml` says what changed and why. A link and a file carry it with their results.
 */
export const calculationsVersion = 1;

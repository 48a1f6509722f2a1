/** The smooth stand-in for a cylinder's pressure [Pa] that the fixture's generator uses, at an angle [rad]. */
export function standInPressure(angle: number): number {
  if (angle > Math.PI) return 1e5 + 0.12e5 * Math.sin((angle - Math.PI) / 2) ** 2;
  const [r, l] = [0.073 / 2, 0.146];
  const down = r * (1 - Math.cos(angle)) + l - Math.sqrt(l * l - (r * Math.sin(angle)) ** 2);
  const ratio = (0.0066 + down) / (0.0066 + 2 * r);
  return 1.5e5 * ratio ** -1.3 - 0.5e5 + 34e5 * Math.exp(-(((angle - 0.32) / 0.36) ** 2));
}

/** A table of it at `steps` equal intervals from −π to 3π. */
export function standInTable(steps: number): Float64Array {
  return Float64Array.from({ length: steps + 1 }, (_, i) =>
    standInPressure(-Math.PI + (4 * Math.PI * i) / steps),
  );
}

/** Rounded, so that server and browser write the same path. */
function n(value: number): number {
  // Nothing is added to nothing, so that a zero has no sign.
  return Math.round(value * 100) / 100 + 0;
}

/**
 * The path of an arrow from a place by (dx, dy), its head open and no longer than the arrow itself; empty for one too
 * short to be seen.
 */
export function arrow(x: number, y: number, dx: number, dy: number, head = 7): string {
  const length = Math.hypot(dx, dy);
  if (length < 1) return '';
  const along = Math.min(head, length) / length;
  const [backX, backY] = [x + dx - along * dx, y + dy - along * dy];
  const [sideX, sideY] = [-0.36 * along * dy, 0.36 * along * dx];
  return (
    `M${n(x)} ${n(y)}L${n(x + dx)} ${n(y + dy)}` +
    `M${n(backX + sideX)} ${n(backY + sideY)}L${n(x + dx)} ${n(y + dy)}L${n(backX - sideX)} ${n(backY - sideY)}`
  );
}

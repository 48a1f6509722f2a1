import { short } from './short.ts';

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
    `M${short(x)} ${short(y)}L${short(x + dx)} ${short(y + dy)}` +
    `M${short(backX + sideX)} ${short(backY + sideY)}L${short(x + dx)} ${short(y + dy)}L${short(backX - sideX)} ${short(backY - sideY)}`
  );
}

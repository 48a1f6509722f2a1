import { short } from '../parts/short.ts';
import { spotAt } from './counter-turning.ts';

/** A place at a distance from the axis, in the direction of an angle [rad] from throw 1. */
function place(radius: number, angle: number): string {
  const { x, y } = spotAt(radius, angle);
  return `${short(x)} ${short(y)}`;
}

/** A counterweight as it is drawn; lengths in drawing units, angles in rad. */
interface Outline {
  readonly middle: number;
  /** From its middle to one of its ends. */
  readonly half: number;
  readonly rim: number;
  /** The radius that nothing is cut below; the hub is drawn for form, somewhat within it. */
  readonly keepOut: number;
}

/** The counterweight from the nose, about the axis. */
export function counterweightPath({ middle, half, rim, keepOut }: Outline): string {
  const hub = 0.62 * keepOut;
  const wide = half > Math.PI / 2 ? 1 : 0;
  return (
    `M${place(rim, middle - half)}A${short(rim)} ${short(rim)} 0 ${wide} 1 ${place(rim, middle + half)}` +
    `L${place(hub, middle + Math.PI / 2)}A${short(hub)} ${short(hub)} 0 0 1 ${place(hub, middle - Math.PI / 2)}z`
  );
}

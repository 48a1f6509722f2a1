import type { StiffSystem } from '../math/rosenbrock.ts';
import { driveAt, driveStill, type RingDrive } from './ring-drive.ts';
import { fillFlows, ringFlows, type RingFlows } from './ring-flows.ts';
import { axialGas, radialForce } from './ring-forces.ts';
import type { RingPack, RingSeat } from './ring-pack.ts';

/** Where the ring is: on the lower flank, in flight between both, on the upper one. */
export type RingPlace = 'low' | 'flying' | 'high';

/**
 * The equations of the ring and its two volumes, by the crank angle.
 *
 * Unknowns: pressure behind and on the second land [Pa], gas that has come in from the cylinder and gone out
 * to the crankcase since the start [kg]; in flight also the height over the lower flank [m] and its rise per
 * radian. Volumes keep the wall's temperature: V·dp/dt = R·T·(in − out).
 */
export interface RingEquations {
  readonly seated: StiffSystem;
  readonly flying: StiffSystem;
  /** Where the seated ring stands; read by `seated`. */
  place: RingPlace;
  /** Force [N] that presses the ring on the flank it sits on; negative when it leaves. */
  hold(angle: number, y: Float64Array): number;
}

/** Number of unknowns while the ring sits, and in flight. */
export const seatedSize = 4;
export const flyingSize = 6;

/** Makes the equations for one pack, one engine and one way of seating. */
export function ringEquations(pack: RingPack, drive: RingDrive, seat: RingSeat): RingEquations {
  const now = driveStill();
  const flows: RingFlows = ringFlows();
  const gas = { down: 0, byCylinder: 0, byBehind: 0, byLand: 0, byLift: 0 };
  const toBehind = pack.rt / pack.behindVolume / drive.speed;
  const toLand = pack.rt / pack.landVolume / drive.speed;
  const perTurn = 1 / drive.speed;
  const perSquare = 1 / (drive.speed * drive.speed);

  function rates(lift: number, y: Float64Array, out: Float64Array): void {
    fillFlows(pack, seat, now.pressure, drive.crankcase, y[0] ?? 0, y[1] ?? 0, lift, flows);
    const { above, ports, below, gapBehind, gapFace, exit } = flows;
    out[0] = toBehind * (above.flow + ports.flow - below.flow - gapBehind.flow);
    out[1] = toLand * (below.flow + gapBehind.flow + gapFace.flow - exit.flow);
    out[2] = perTurn * (above.flow + ports.flow + gapFace.flow);
    out[3] = perTurn * exit.flow;
  }

  function rateSlopes(
    lift: number,
    y: Float64Array,
    n: number,
    byY: Float64Array,
    byT: Float64Array,
  ): void {
    byY.fill(0);
    fillFlows(pack, seat, now.pressure, drive.crankcase, y[0] ?? 0, y[1] ?? 0, lift, flows);
    const { above, ports, below, gapBehind, gapFace, exit } = flows;
    byY[0] = toBehind * (above.bySecond + ports.bySecond - below.byFirst - gapBehind.byFirst);
    byY[1] = toBehind * (-below.bySecond - gapBehind.bySecond);
    byY[n] = toLand * (below.byFirst + gapBehind.byFirst);
    byY[n + 1] = toLand * (below.bySecond + gapBehind.bySecond + gapFace.bySecond - exit.byFirst);
    byY[2 * n] = perTurn * (above.bySecond + ports.bySecond);
    byY[2 * n + 1] = perTurn * gapFace.bySecond;
    byY[3 * n + 1] = perTurn * exit.byFirst;
    byT[0] = toBehind * (above.byFirst + ports.byFirst) * now.slope;
    byT[1] = toLand * gapFace.byFirst * now.slope;
    byT[2] = perTurn * (above.byFirst + ports.byFirst + gapFace.byFirst) * now.slope;
    byT[3] = 0;
    if (n === flyingSize) {
      byY[4] = toBehind * (-above.byHeight - below.byHeight - gapBehind.byHeight);
      byY[n + 4] = toLand * (below.byHeight + gapBehind.byHeight);
      byY[2 * n + 4] = -perTurn * above.byHeight;
    }
  }

  /** Force [N] on the ring, downward, apart from inertia. */
  function down(lift: number, behind: number, land: number): number {
    axialGas(pack, now.pressure, behind, land, lift, gas);
    // The bore drags against the ring's way: upward while the piston goes down.
    return gas.down - now.way * pack.friction * radialForce(pack, now.pressure, behind, land);
  }

  const seatedLift = (): number => (equations.place === 'high' ? pack.clearance : 0);
  const equations: RingEquations = {
    place: 'low',
    hold(angle, y) {
      driveAt(drive, angle, now);
      const lift = seatedLift();
      const onLower = down(lift, y[0] ?? 0, y[1] ?? 0) - pack.mass * now.acceleration;
      return equations.place === 'high' ? -onLower : onLower;
    },
    seated: {
      size: seatedSize,
      slope(angle, y, out) {
        driveAt(drive, angle, now);
        rates(seatedLift(), y, out);
      },
      jacobian(angle, y, byY, byT) {
        driveAt(drive, angle, now);
        rateSlopes(seatedLift(), y, seatedSize, byY, byT);
      },
    },
    flying: {
      size: flyingSize,
      slope(angle, y, out) {
        driveAt(drive, angle, now);
        const lift = y[4] ?? 0;
        rates(lift, y, out);
        out[4] = y[5] ?? 0;
        out[5] = perSquare * (now.acceleration - down(lift, y[0] ?? 0, y[1] ?? 0) / pack.mass);
      },
      jacobian(angle, y, byY, byT) {
        driveAt(drive, angle, now);
        const lift = y[4] ?? 0;
        const [behind, land] = [y[0] ?? 0, y[1] ?? 0];
        rateSlopes(lift, y, flyingSize, byY, byT);
        axialGas(pack, now.pressure, behind, land, lift, gas);
        const radial = radialForce(pack, now.pressure, behind, land);
        const grip = radial > 0 ? now.way * pack.friction * pack.faceArea : 0;
        const n = flyingSize;
        byY[4 * n + 5] = 1;
        byT[4] = 0;
        byY[5 * n] = (-perSquare / pack.mass) * (gas.byBehind - grip);
        byY[5 * n + 1] = (-perSquare / pack.mass) * (gas.byLand + grip * pack.faceFactor);
        byY[5 * n + 4] = (-perSquare / pack.mass) * gas.byLift;
        byT[5] =
          perSquare *
          (now.accelerationSlope -
            (gas.byCylinder * now.slope +
              grip * (1 - pack.faceFactor) * now.slope -
              now.waySlope * pack.friction * radial) /
              pack.mass);
      },
    },
  };
  return equations;
}

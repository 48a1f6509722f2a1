import { above, atLeast, atMost } from '../refuse.ts';
import { roadFactor, type RoadGearing } from './rotating-inertia.ts';

/** A car in one gear. Masses in kg, inertias in kg·m², torque in N·m. */
export interface CarInGear extends RoadGearing {
  /** All that turns with the crank, the gearbox input included when the clutch is closed. */
  readonly engineInertia: number;
  /** Of one wheel with tyre and brake; four are counted, at the tyre's rolling radius. */
  readonly wheelInertia: number;
  readonly carMass: number;
  /** Gearbox and axle together, above 0 and at most 1; power out over power in. */
  readonly drivelineEfficiency: number;
  /** At the crank, what the engine gives at steady speed; zero is a coasting car. */
  readonly netTorque: number;
}

/** What the road sees of it. */
export interface GearedMass {
  /** Engine inertia as mass on the road [kg], no loss. */
  readonly equivalentMass: number;
  /** The same while the engine drives the car: times the efficiency. */
  readonly drivingMass: number;
  /** The same while the car drives the engine: over the efficiency. */
  readonly overrunMass: number;
  /** Four wheels as mass on the road [kg]. */
  readonly wheelMass: number;
  /** All that must be sped up over the car's mass, no loss. */
  readonly massFactor: number;
  /** Force at the tyres [N] at steady speed: torque × ratio × efficiency over radius. */
  readonly roadForce: number;
  /** Acceleration on the level without air or rolling resistance [m/s²], the engine driving. */
  readonly acceleration: number;
  /** How fast the engine's speed rises then [rad/s²]. */
  readonly engineRise: number;
}

/**
 * The engine's inertia seen from the road, and what it takes from the car's acceleration.
 *
 * Equal energy: I(i_g i_f)²/r_t². With loss it depends on which way power flows. The engine must first speed
 * itself up; what is left passes the gears and loses there, so that while it drives, its inertia counts by η.
 * On the overrun the road has to push through the gears, and it counts by 1/η (T. Bevan, The Theory of
 * Machines, 3rd ed., ch. 2, Example 10, for the second).
 *
 * Neglected: inertia of gears and shafts, air and rolling resistance, slip, a torque that changes with speed.
 * Throws OutOfDomain for a mass, radius or ratio of zero, or an efficiency outside 0 to 1.
 */
export function gearedMass(car: CarInGear): GearedMass {
  const perInertia = roadFactor(car);
  above(car, 'drivelineEfficiency');
  const η = atMost(car, 'drivelineEfficiency', 1);
  const mass = above(car, 'carMass');
  const equivalentMass = atLeast(car, 'engineInertia') * perInertia;
  const wheelMass = (4 * atLeast(car, 'wheelInertia')) / car.tyreRadius ** 2;
  const drivingMass = equivalentMass * η;
  const ratio = (car.gearRatio * car.finalDrive) / car.tyreRadius;
  const roadForce = atLeast(car, 'netTorque') * ratio * η;
  const acceleration = roadForce / (mass + wheelMass + drivingMass);
  return {
    equivalentMass,
    drivingMass,
    overrunMass: equivalentMass / η,
    wheelMass,
    massFactor: (mass + wheelMass + equivalentMass) / mass,
    roadForce,
    acceleration,
    engineRise: acceleration * ratio,
  };
}

/** What a swing of energy does to the speed of an inertia. */
export interface Ripple {
  /** Greatest less least speed over the mean. */
  readonly coefficient: number;
  /** Greatest less least speed, and both [rad/s]. */
  readonly spread: number;
  readonly highest: number;
  readonly lowest: number;
}

/**
 * Speed ripple from the swing of energy within a cycle: ΔE = I ω² C_s, the mean speed midway between the
 * extremes (R. S. Khurmi, J. K. Gupta, Theory of Machines, 14th ed., ch. 16). Half the inertia, twice the
 * ripple. Exact for that mean, since ½I(ω₁² − ω₂²) = I ω̄ (ω₁ − ω₂); a torque that itself depends on speed,
 * and any twist of the crank, are left out.
 *
 * Throws OutOfDomain for an inertia or a speed of zero, and for a swing so great that the engine would stop
 * within the cycle (C_s above 2).
 */
export function speedRipple(engine: {
  readonly energySwing: number;
  readonly engineInertia: number;
  readonly meanSpeed: number;
}): Ripple {
  const engineInertia = above(engine, 'engineInertia');
  const meanSpeed = above(engine, 'meanSpeed');
  const most = 2 * engineInertia * meanSpeed ** 2;
  atLeast(engine, 'energySwing');
  const energySwing = atMost(engine, 'energySwing', most, 'what would stop the engine');
  const coefficient = energySwing / (engineInertia * meanSpeed ** 2);
  const spread = coefficient * meanSpeed;
  return {
    coefficient,
    spread,
    highest: meanSpeed + spread / 2,
    lowest: meanSpeed - spread / 2,
  };
}

/**
 * The speed [rad/s] when this share of the swing of energy has been taken up, 0 at the slowest moment and 1 at the
 * fastest: ½Iω² = ½Iω_lo² + share·ΔE. How the share runs over the cycle is the torque's matter, and not known here.
 *
 * Throws OutOfDomain as {@link speedRipple} does, and RangeError for a share outside 0 to 1.
 */
export function speedAtEnergy(
  engine: {
    readonly energySwing: number;
    readonly engineInertia: number;
    readonly meanSpeed: number;
  },
  share: number,
): number {
  if (!(share >= 0 && share <= 1)) throw new RangeError(`a share is 0 to 1, not ${share}`);
  const { lowest, highest } = speedRipple(engine);
  // By the two speeds instead of the energy, so that no rounding passes either of them.
  return Math.sqrt(lowest ** 2 + share * (highest - lowest) * (highest + lowest));
}

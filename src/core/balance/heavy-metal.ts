import { above, atLeast, atMost, below, refusal } from '../refuse.ts';
import { axialSpacing, axialWall, hair, spreadFactor } from './hole-fan.ts';

/** A slug parallel to the shaft that fills its hole, seat included. Lengths in m. */
export interface Slug {
  readonly slugDiameter: number;
  readonly slugLength: number;
  /** From the axis of the shaft to that of the slug. */
  readonly slugRadius: number;
}

/** Densities in kg/m³. */
export interface SlugMetals {
  readonly slugDensity: number;
  readonly steelDensity: number;
}

/** Equal slugs side by side in one counterweight. */
export interface SlugRow {
  readonly slugCount: number;
  /** [rad] Between the axes of neighbours. */
  readonly slugSpacing: number;
}

/** The counterweight they stand in. Lengths in m. */
export interface SlugPlace {
  readonly counterweightRadius: number;
  /** Along the shaft. */
  readonly counterweightWidth: number;
  /** No slug may come nearer to the axis. */
  readonly keepOutRadius: number;
}

/** What one slug brings. */
export interface SlugGain {
  /** [kg] Of the slug. */
  readonly mass: number;
  /** [kg] Less the steel that its hole has lost. */
  readonly massGain: number;
  /** [kg·m] About the axis of the shaft. */
  readonly unbalance: number;
}

/** Metal around a slug [m]. */
export interface SlugWalls {
  /** Outside it, to the rim. */
  readonly rim: number;
  /** Beside it, to the next slug; undefined for one slug. */
  readonly beside: number | undefined;
  /** The least of both. */
  readonly least: number;
}

/** More slugs than this in one counterweight nobody sets. */
const mostSlugs = 12;

/**
 * What one slug brings: (ρ_W − ρ_steel)·V at its own centre, whose radius is less than that of the rim. The slug is
 * symmetric about its axis, so its centre of mass is exactly there.
 *
 * @throws OutOfDomain for a length or a density that is not above 0, or an alloy that is not denser than the steel
 * Source: own derivation.
 */
export function slugGain(slug: Slug, metals: SlugMetals): SlugGain {
  const volume = (Math.PI / 4) * above(slug, 'slugDiameter') ** 2 * above(slug, 'slugLength');
  const steel = above(metals, 'steelDensity');
  const denser =
    above(metals, 'slugDensity', steel, 'the density of the steel it replaces') - steel;
  return {
    mass: metals.slugDensity * volume,
    massGain: denser * volume,
    unbalance: denser * volume * above(slug, 'slugRadius'),
  };
}

/**
 * The pull [N] of a whole slug at a crank speed [rad/s]: m·R·ω². What its hole has lost does not lessen it.
 *
 * @param at the name of the speed
 * @throws OutOfDomain for a radius or a speed that is not above 0
 */
export function slugPull<S extends 'maxSpeed' | 'missedShiftSpeed'>(
  slug: Slug,
  mass: number,
  speeds: { readonly [K in S]: number },
  at: S,
): number {
  return mass * above(slug, 'slugRadius') * above(speeds, at) ** 2;
}

/** What of n slugs is left because they do not all stand in one direction. */
function checkedSpread(row: SlugRow): number {
  const count = atLeast(row, 'slugCount', 1);
  atMost(row, 'slugCount', mostSlugs);
  if (!Number.isInteger(count))
    throw refusal(row, 'slugCount', 'at most', Math.floor(count), 'a whole number of slugs');
  above(row, 'slugSpacing');
  if (count > 1)
    atMost(
      row,
      'slugSpacing',
      Math.PI / (count - 1),
      'the spacing at which they stand over half a turn',
    );
  return spreadFactor({ holeCount: count, holeSpacing: row.slugSpacing });
}

/**
 * The metal around slugs in a counterweight.
 *
 * @throws OutOfDomain where a slug would reach the axis or the radius that none may reach, has no metal outside it, is
 *   longer than the counterweight is wide, or meets its neighbour; for a count that is not a whole number from 1 to 12
 */
export function slugWalls(slug: Slug, row: SlugRow, place: SlugPlace): SlugWalls {
  const half = above(slug, 'slugDiameter') / 2;
  const radius = above(slug, 'slugRadius', half, 'half the slug, which would reach the axis');
  atLeast(
    slug,
    'slugRadius',
    atLeast(place, 'keepOutRadius') + half - hair,
    'the radius that none may reach, and half the slug',
  );
  below(
    slug,
    'slugRadius',
    above(place, 'counterweightRadius') - half,
    'the rim’s radius less half the slug: no metal would be left outside it',
  );
  atMost(
    slug,
    'slugLength',
    above(place, 'counterweightWidth') + hair,
    'the width of the counterweight',
  );
  const rim = place.counterweightRadius - radius - half;
  checkedSpread(row);
  if (row.slugCount === 1) return { rim, beside: undefined, least: rim };
  above(
    row,
    'slugSpacing',
    axialSpacing(radius, half, 0),
    'the spacing at which slugs of this size meet',
  );
  const beside = axialWall(radius, half, row.slugSpacing);
  return { rim, beside, least: Math.min(rim, beside) };
}

/** What equal slugs do against an unbalance to be added. */
export interface SlugSum {
  /** Of slugs in one direction these are worth so much. */
  readonly spread: number;
  /** [kg·m] All of them, in the direction of their middle. */
  readonly together: number;
  /** [kg·m] Still to add; negative where they are too much. */
  readonly left: number;
  /** How many of them it takes; undefined where no number at this spacing is enough. */
  readonly needed: number | undefined;
  /** Times its own length, each of the slugs would give all of it. */
  readonly lengthShare: number;
}

/**
 * Slugs at a spacing against what is wanted [kg·m]. They are set about the direction that wants it; n of them add up to
 * sin(nβ/2)/sin(β/2) of one.
 *
 * @param perSlug what one gains [kg·m], above 0
 * @throws OutOfDomain for an unbalance that is not above 0, or a row as in {@link slugWalls}
 */
export function slugSum(
  row: SlugRow,
  perSlug: number,
  wanted: { readonly addedUnbalance: number },
): SlugSum {
  const asked = above(wanted, 'addedUnbalance');
  const spread = checkedSpread(row);
  const together = row.slugCount * spread * perSlug;
  return {
    spread,
    together,
    left: asked - together,
    needed: slugsFor(asked / perSlug, row.slugSpacing),
    lengthShare: asked / together,
  };
}

/** The least n with sin(nβ/2)/sin(β/2) of `times` or more; undefined where none has it or it is past the most. */
function slugsFor(times: number, spacing: number): number | undefined {
  const sine = times * Math.sin(spacing / 2);
  if (sine > 1) return undefined;
  // What rounding alone makes one more is none more.
  const needed = Math.max(1, Math.ceil((2 / spacing) * Math.asin(sine) - 1e-9));
  const enough = Math.sin((needed * spacing) / 2) > sine * (1 - 1e-9);
  return needed <= mostSlugs && enough ? needed : undefined;
}

/**
 * Nominal stress [Pa] in the metal that a slug pulls on: its pull over both ligaments' area, 2·t·l. A measure to compare
 * one seat with another, no proof of strength: it knows no notch, no bending, no press fit, and not the pull of the
 * ligaments' own metal.
 *
 * @param pull [N]
 * @param wall t [m], above 0. Beside slugs the wall serves two of them, so half of it is each one's.
 */
export function ligamentStress(slug: Slug, pull: number, wall: number): number {
  return pull / (2 * wall * above(slug, 'slugLength'));
}

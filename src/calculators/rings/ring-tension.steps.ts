import type { RingName } from '../../core/rings/ring-tension.ts';
import { is, length, millimetres, secondMoment } from '../step.ts';

const inMillimetres = { units: millimetres } as const;

/** The working of one ring, from the gap to the stress; `name` is the first half of its quantities' names. */
export function ringSteps(name: RingName) {
  const [height, radial, modulus, freeGap, gap, tension] = [
    `${name}Height`,
    `${name}Radial`,
    `${name}Modulus`,
    `${name}FreeGap`,
    `${name}Gap`,
    `${name}Tension`,
  ] as const;
  return {
    closure: is(
      `${freeGap} - ${gap}`,
      'What the bore closes: the free gap less the gap that is left.',
      inMillimetres,
    ),
    meanRadius: length(
      'r',
      `(bore - ${radial}) / 2`,
      'The line through the middle of the section bends; this is its radius in the bore.',
      inMillimetres,
    ),
    sectionMoment: secondMoment(
      'I',
      `${height} * ${radial}^3 / 12`,
      'How hard the section is to bend: width once, radial wall three times.',
      inMillimetres,
    ),
    tangentialForce: is(
      `closure * ${modulus} * sectionMoment / (3 * pi * meanRadius^3)`,
      'The bending moments of all sections together close the gap by this much for each newton along the ring.',
      inMillimetres,
    ),
    contactPressure: is(
      `2 * tangentialForce / (bore * ${height})`,
      'Half a ring is pushed off the wall by pressure on its projected area, d times h, and held by the force at both its cut faces.',
      { units: millimetres, source: 'piston-ring-manual-2008' },
    ),
    placeStress: is(
      `12 * tangentialForce * meanRadius / (${height} * ${radial}^2)`,
      'Opposite the gap the moment is twice the force times the radius; the section resists it with h a²/6.',
      inMillimetres,
    ),
    fittingStress: is(
      `${modulus} * ${radial} * (ringOpening - ${freeGap}) / (3 * pi * meanRadius^2)`,
      'Opening bends the other way by the same law: from the free gap to the gap that passes the piston.',
      inMillimetres,
    ),
    conformability: is(
      `tangentialForce * meanRadius^2 / (${modulus} * sectionMoment)`,
      'The spring set against the stiffness it must overcome to follow a bore that is not round.',
      inMillimetres,
    ),
    followedOval: is(
      'conformability * meanRadius / 9',
      'An oval has two lobes: the divisor is (2² − 1)².',
    ),
    followedFour: is(
      'conformability * meanRadius / 225',
      'Four head bolts pull four lobes: (4² − 1)².',
    ),
    thickness: is(`bore / ${radial}`, 'How slender the ring is across its radius.', inMillimetres),
    gapRatio: is(`${freeGap} / ${radial}`, 'The free gap counted in radial walls.', inMillimetres),
    openingRatio: is(
      `ringOpening / ${radial}`,
      'The opening counted in radial walls.',
      inMillimetres,
    ),
    wantedFreeGap: is(
      `3 * pi * ${tension} * meanRadius^3 / (${modulus} * sectionMoment) + ${gap}`,
      'The tension that was measured, read backwards: what it closes, and the gap that is left.',
      inMillimetres,
    ),
  };
}

import type { RingName } from '../../core/ring-tension.ts';
import type { Step } from '../define.ts';

/** N, mm and MPa fit together: 1 MPa is 1 N on 1 mm². */
const newtonMillimetre = { length: 'mm', pressure: 'MPa', secondMoment: 'mm4' } as const;

/** The working of one ring, from the gap to the stress; `name` is the first half of its quantities' names. */
export function ringSteps(name: RingName): readonly Step[] {
  const [height, radial, modulus, freeGap, gap] = [
    `${name}Height`,
    `${name}Radial`,
    `${name}Modulus`,
    `${name}FreeGap`,
    `${name}Gap`,
  ] as const;
  return [
    {
      of: 'closure',
      formula: `${freeGap} - ${gap}`,
      say: 'What the bore closes: the free gap less the gap that is left.',
      units: { length: 'mm' },
    },
    {
      of: 'meanRadius',
      symbol: 'r',
      kind: 'length',
      formula: `(bore - ${radial}) / 2`,
      say: 'The line through the middle of the section bends; this is its radius in the bore.',
      units: { length: 'mm' },
    },
    {
      of: 'sectionMoment',
      symbol: 'I',
      kind: 'secondMoment',
      formula: `${height} * ${radial}^3 / 12`,
      say: 'How hard the section is to bend: height once, radial thickness three times.',
      units: { length: 'mm', secondMoment: 'mm4' },
    },
    {
      of: 'tangentialForce',
      formula: `closure * ${modulus} * sectionMoment / (3 * pi * meanRadius^3)`,
      say: 'The bending moments of all sections together close the gap by this much for each newton along the ring.',
      units: newtonMillimetre,
    },
    {
      of: 'contactPressure',
      formula: `2 * tangentialForce / (bore * ${height})`,
      say: 'Half a ring is pushed off the wall by pressure on its shadow, d times h, and held by the force at both its cut faces.',
      units: newtonMillimetre,
      source: 'piston-ring-manual-2008',
    },
    {
      of: 'placeStress',
      formula: `12 * tangentialForce * meanRadius / (${height} * ${radial}^2)`,
      say: 'Opposite the gap the moment is twice the force times the radius; the section resists it with h a²/6.',
      units: newtonMillimetre,
    },
    {
      of: 'fittingStress',
      formula: `${modulus} * ${radial} * (ringOpening - ${freeGap}) / (3 * pi * meanRadius^2)`,
      say: 'Opening bends the other way by the same law: from the free gap to the gap that passes the piston.',
      units: newtonMillimetre,
    },
    {
      of: 'conformability',
      formula: `tangentialForce * meanRadius^2 / (${modulus} * sectionMoment)`,
      say: 'The spring set against the stiffness it must overcome to follow a bore that is not round.',
      units: newtonMillimetre,
    },
    {
      of: 'followedOval',
      formula: 'conformability * meanRadius / 9',
      say: 'An oval has two lobes: the divisor is (2² − 1)².',
    },
    {
      of: 'followedFour',
      formula: 'conformability * meanRadius / 225',
      say: 'Four head bolts pull four lobes: (4² − 1)².',
    },
    {
      of: 'thickness',
      formula: `bore / ${radial}`,
      say: 'How slender the ring is across its radius.',
      units: { length: 'mm' },
    },
    {
      of: 'gapRatio',
      formula: `${freeGap} / ${radial}`,
      say: 'The free gap counted in radial thicknesses.',
      units: { length: 'mm' },
    },
    {
      of: 'openingRatio',
      formula: `ringOpening / ${radial}`,
      say: 'The opening counted in radial thicknesses.',
      units: { length: 'mm' },
    },
  ];
}

/**
 * The geometry of the drawing on the first page: one throw, one rod and one piston, cut across the crank's axis.
 * All lengths in [mm]; x to the right and y up from the crank's axis, which lies on the cylinder's axis.
 */

/** The sizes that the drawing takes from one set [mm]. */
export const sizeNames = [
  'stroke',
  'rodLength',
  'bore',
  'mainDiameter',
  'crankpinDiameter',
  'rodHousing',
  'housingOutside',
  'rodShellWall',
  'pinDiameter',
  'pinBore',
  'ring1Height',
  'ring1Radial',
  'ring2Height',
  'ring2Radial',
  'topLandHeight',
  'secondLandHeight',
  'topLandClearance',
  'portDiameter',
  'pistonToHead',
  'balanceRadius',
  'shankHeight',
  'shankWidth',
  'flangeThickness',
  'webThickness',
  'flywheelThickness',
] as const;
export type Sizes = Readonly<Record<(typeof sizeNames)[number], number>>;

/** A place of the drawing [mm]. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** Where the parts stand at one crank angle. */
export interface Assembly {
  readonly crankpin: Point;
  readonly wristPin: Point;
  /** From the cylinder's axis to the rod's, positive with the crankpin to the right [rad]. */
  readonly lean: number;
  /** Height of the piston's crown above the crank's axis. */
  readonly crown: number;
  /** Height of the head's face above the crank's axis. */
  readonly head: number;
  /** Wrist pin's height at TDC and at BDC. */
  readonly top: number;
  readonly bottom: number;
  /** From the wrist pin's centre to the crown. */
  readonly compressionHeight: number;
}

/** The grooves from the crown down: how far below it each begins, its width, and the depth of its ring. */
export function grooves(
  sizes: Sizes,
): readonly { readonly from: number; readonly width: number; readonly depth: number }[] {
  const { topLandHeight, ring1Height, secondLandHeight, ring2Height } = sizes;
  const second = topLandHeight + ring1Height + secondLandHeight;
  return [
    { from: topLandHeight, width: ring1Height, depth: sizes.ring1Radial },
    { from: second, width: ring2Height, depth: sizes.ring2Radial },
    // The example asks for no size of the oil ring: it is drawn twice as wide as the second ring.
    {
      from: second + ring2Height + 0.7 * secondLandHeight,
      width: 2 * ring2Height,
      depth: sizes.ring2Radial,
    },
  ];
}

/** How far below the crown the last groove ends. */
export function beltHeight(sizes: Sizes): number {
  return Math.max(...grooves(sizes).map(({ from, width }) => from + width));
}

/**
 * Where crankpin, wrist pin and crown stand, without an offset of pin or bore.
 *
 * @param crankAngle after TDC, clockwise [rad]; negative turns the crankpin to the left
 */
export function assemble(sizes: Sizes, crankAngle: number): Assembly {
  const throwRadius = sizes.stroke / 2;
  const crankpin = {
    x: throwRadius * Math.sin(crankAngle),
    y: throwRadius * Math.cos(crankAngle),
  };
  const lean = Math.asin(crankpin.x / sizes.rodLength);
  const wristPin = { x: 0, y: crankpin.y + sizes.rodLength * Math.cos(lean) };
  // No number of the example says how high the crown stands above the pin: the belt and the boss need this much.
  const compressionHeight = beltHeight(sizes) + 0.8 * sizes.pinDiameter;
  const top = sizes.rodLength + throwRadius;
  return {
    crankpin,
    wristPin,
    lean,
    crown: wristPin.y + compressionHeight,
    head: top + compressionHeight + sizes.pistonToHead,
    top,
    bottom: sizes.rodLength - throwRadius,
    compressionHeight,
  };
}

/** A place given along the rod: `across` to the right of its axis, `along` from the crankpin to the wrist pin. */
export function onRod({ crankpin, lean }: Assembly, across: number, along: number): Point {
  return {
    x: crankpin.x + across * Math.cos(lean) - along * Math.sin(lean),
    y: crankpin.y + across * Math.sin(lean) + along * Math.cos(lean),
  };
}

/** The right half of the piston's cut, from the crown's middle round to it again; x from the axis, y from the pin. */
export function pistonHalf(sizes: Sizes, { compressionHeight }: Assembly): readonly Point[] {
  const radius = (sizes.bore - sizes.topLandClearance) / 2;
  const crownThickness = 0.065 * sizes.bore;
  const belt = compressionHeight - beltHeight(sizes);
  const inside = radius - Math.max(sizes.ring1Radial, sizes.ring2Radial) - 0.045 * sizes.bore;
  const skirt = radius - 0.035 * sizes.bore;
  const skirtEnd = -0.27 * sizes.bore;
  const notches = grooves(sizes).flatMap(({ from, width, depth }) => {
    const [upper, lower] = [compressionHeight - from, compressionHeight - from - width];
    // Each groove is a little deeper than its ring.
    const bottom = radius - depth - 0.6;
    return [
      { x: radius, y: upper },
      { x: bottom, y: upper },
      { x: bottom, y: lower },
      { x: radius, y: lower },
    ];
  });
  return [
    { x: 0, y: compressionHeight },
    { x: radius, y: compressionHeight },
    ...notches,
    { x: radius, y: skirtEnd },
    { x: skirt, y: skirtEnd },
    { x: skirt, y: belt - 5 },
    { x: inside, y: belt - 2 },
    { x: inside, y: compressionHeight - crownThickness - 4 },
    { x: inside - 4, y: compressionHeight - crownThickness },
    { x: 0, y: compressionHeight - crownThickness },
  ];
}

/** The outline of the beam's section, an I, about its middle: x in the plane of motion, y across it. */
export function beamSection(sizes: Sizes): readonly Point[] {
  const [long, wide] = [sizes.shankHeight / 2, sizes.shankWidth / 2];
  const [inner, web] = [long - sizes.flangeThickness, sizes.webThickness / 2];
  const quarter = [
    { x: long, y: wide },
    { x: inner, y: wide },
    { x: inner, y: web },
  ];
  const half = [...quarter, ...quarter.toReversed().map(({ x, y }) => ({ x: -x, y }))];
  return [...half, ...half.toReversed().map(({ x, y }) => ({ x, y: -y }))];
}

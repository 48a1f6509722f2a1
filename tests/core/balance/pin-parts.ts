/** One cylinder of a pin with two rods, in kg: round numbers, for sums by hand. */
export const pinParts = {
  pistonMass: 0.4,
  pinMass: 0.12,
  ringMass: 0.04,
  lockMass: 0.002,
  bigEndMass: 0.42,
  smallEndMass: 0.17,
  shellMass: 0.04,
  oilMass: 0.004,
  rodsPerPin: 2,
  reciprocatingFraction: 0.5,
};

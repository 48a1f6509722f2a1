import { defineRoutes } from '../../../src/checks/route.ts';

/** Other ways to the answers of this topic; each is taken by the tests that name it. */
export const routes = defineRoutes({
  agreesAreaSecond: {
    kind: 'second route',
    say: 'Area and second moments of an I and an H against ten thousand strips.',
    legs: ['rod-shank.area', 'rod-shank.secondMomentX'],
  },
  agreesBendingMoment: {
    kind: 'second route',
    say: 'The whip’s bending moment and its place against a beam of 4000 masses on two supports.',
    legs: ['rod-shank.whipMoment', 'rod-shank.whipStress', 'rod-shank.whipPlace'],
  },
  agreesStrutBent: {
    kind: 'second route',
    say: 'Euler’s load against the energy of a strut bent into half a sine wave.',
    legs: ['column-buckling.eulerLoad', 'column-buckling.eulerStress', 'rod-shank.eulerStress'],
  },
  johnsonParabolaTouches: {
    kind: 'closed form',
    say: 'Johnson’s parabola meets Euler’s curve at half of yield, with the same slope.',
    legs: [
      'column-buckling.johnsonLoad',
      'column-buckling.johnsonStress',
      'rod-shank.johnsonStress',
      'rod-shank.transition',
    ],
  },
  neitherJohnsonNor: {
    kind: 'property',
    say: 'Neither Johnson nor Rankine with the fitting divisor promises more than yield, or than Euler.',
  },
  anglePushGas: {
    kind: 'closed form',
    say: 'With the peak at TDC the push is gas less pull.',
    legs: ['rod-shank.push', 'rod-shank.pushStress'],
  },
  stripsAndStruts: {
    kind: 'second route',
    say: 'Fourteen rod beams from strips of the section, accelerations as differences of positions, stretch slice by slice, and struts followed along their length until they bow.',
    legs: [
      'rod-shank.pullStress',
      'rod-shank.lowSpeedStress',
      'rod-shank.pushStress',
      'rod-shank.amplitude',
      'rod-shank.meanStress',
      'rod-shank.rodStretch',
      'rod-shank.shankStretch',
      'rod-shank.bucklingShare',
      'rod-shank.johnsonStress',
      'rod-shank.rankineStress',
      'rod-shank.bucklingMargin',
      'rod-shank.slendernessX',
      'rod-shank.slendernessY',
      'rod-shank.pull',
      'rod-shank.push',
      'rod-shank.lowSpeedPush',
      'rod-shank.area',
      'rod-shank.secondMomentX',
      'rod-shank.secondMomentY',
      'rod-shank.radiusX',
      'rod-shank.radiusY',
      'rod-shank.eulerStress',
      'rod-shank.transition',
      'rod-shank.divisor',
    ],
  },
});

import { defineRoutes } from '../../../src/checks/route.ts';

/** Other ways to the answers of this topic; each is taken by the tests that name it. */
export const routes = defineRoutes({
  dragThinFilm: {
    kind: 'second route',
    say: 'The cube law of drag against shear stress, skin and arm of a thin film.',
  },
  comesFormulaTolerance: {
    kind: 'second route',
    say: 'The tolerances of the table against the formula behind them, to the standard’s own rounding.',
    legs: ['iso-fit.sixByFormula'],
  },
  stepEndsOwn: {
    kind: 'property',
    say: 'A step of the table ends with its own upper end.',
  },
  smallPieces: {
    kind: 'second route',
    say: 'Surface speed by following a point, the projected area by a thousand strips, drag by the shear stress of a thin film on ten thousand.',
    legs: [
      'journal-sizes.pinSpeed',
      'journal-sizes.pinSpeedCommon',
      'journal-sizes.mainSpeed',
      'journal-sizes.projectedArea',
      'journal-sizes.unitLoad',
      'journal-sizes.drag',
      'journal-sizes.area',
    ],
  },
});

import { pinBend } from '../../../src/core/pins/pin-bend.ts';
import { pinBody, pinLoads, pinStress } from '../../../src/core/pins/wrist-pin.ts';
import { guarded, type Tables } from '../guards.ts';

const pin = {
  pinDiameter: 0.022,
  pinBore: 0.013,
  pinTaperBore: 0.017,
  pinTaperLength: 0.015,
  pinLength: 0.06,
};

export const pins: Tables = {
  'pins/pin-bend.ts': [
    guarded(
      { pinModulus: 205e9 },
      (own) => pinBend({ ...pin, ...own }, { smallEndWidth: 0.024, bossGap: 0.027 }, 1e4, 0.01),
      [['pinModulus', 'greater than', 0]],
    ),
  ],
  'pins/wrist-pin.ts': [
    guarded(pin, pinBody, [
      ['pinDiameter', 'greater than', 0],
      ['pinLength', 'greater than', 0],
      ['pinBore', 'at least', 0],
      ['pinBore', 'less than', 0.022, 'the pin’s diameter'],
      ['pinTaperLength', 'at least', 0],
      ['pinTaperLength', 'at most', 0.03, 'half the pin’s length'],
      ['pinTaperBore', 'at least', 0],
      ['pinTaperBore', 'at least', 0.013, 'the bore of the straight part'],
      ['pinTaperBore', 'less than', 0.022, 'the pin’s diameter'],
    ]),
    guarded({ smallEndWidth: 0.024, bossGap: 0.027 }, (seat) => pinStress(pin, seat, 1e4), [
      ['smallEndWidth', 'greater than', 0],
      ['bossGap', 'greater than', 0],
      ['bossGap', 'less than', 0.06, 'the pin’s length'],
      ['smallEndWidth', 'at most', 0.027, 'the gap between the bosses'],
    ]),
    guarded(
      {
        bore: 0.09,
        peakPressure: 70e5,
        crankcasePressure: 1e5,
        bossMass: 0.4,
        pinMass: 0.12,
        topFactor: 0.05,
        torqueSpeed: 400,
        maxSpeed: 700,
      },
      pinLoads,
      [
        ['bore', 'greater than', 0],
        ['peakPressure', 'at least', 0],
        ['crankcasePressure', 'at least', 0],
        ['torqueSpeed', 'at least', 0],
        ['maxSpeed', 'at least', 0],
      ],
    ),
  ],
};

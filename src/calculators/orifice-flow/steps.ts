import type { Step } from '../define.ts';

/** The working of the hole: from the two pressures to the flow, and from the flow to the vessel. */
export const orificeSteps: readonly Step[] = [
  {
    of: 'pressureRatio',
    formula: 'downstreamPressure / upstreamPressure',
    say: 'The two pressures decide by their ratio alone.',
  },
  {
    of: 'chokingRatio',
    formula: '(2 / (heatRatio + 1))^(heatRatio / (heatRatio - 1))',
    say: 'At this ratio the gas in the throat reaches the speed of sound. News of a lower pressure behind the hole can no longer run upstream.',
    source: 'cengel-boles',
  },
  {
    of: 'throatRatio',
    symbol: 'r_t',
    kind: 'ratio',
    formula: 'max(pressureRatio, chokingRatio)',
    say: 'So the throat keeps the greater of both.',
  },
  {
    of: 'throatTemperature',
    formula: 'gasTemperature * throatRatio^((heatRatio - 1) / heatRatio)',
    say: 'Gas that expands without heat or friction cools.',
    source: 'cengel-boles',
  },
  {
    of: 'throatSpeed',
    formula:
      'sqrt(2 * heatRatio / (heatRatio - 1) * gasConstant * (gasTemperature - throatTemperature))',
    say: 'What it lost in warmth it has as speed.',
  },
  {
    of: 'throatPressure',
    formula: 'upstreamPressure * throatRatio',
    say: 'Pressure at the throat.',
  },
  {
    of: 'throatDensity',
    formula: 'throatPressure / (gasConstant * throatTemperature)',
    say: 'Density there, from the law of the perfect gas.',
  },
  {
    of: 'massFlow',
    formula: 'dischargeCoefficient * orificeArea * throatDensity * throatSpeed',
    say: 'Area times density times speed is the mass that passes in a second; the coefficient takes off what contraction and friction cost.',
    source: 'heywood-1988',
  },
  {
    of: 'flowNumber',
    formula:
      'massFlow * sqrt(gasConstant * gasTemperature) / (dischargeCoefficient * orificeArea * upstreamPressure)',
    say: 'The same without size, pressure and temperature: a number of the pressure ratio alone.',
  },
  {
    of: 'timeConstant',
    formula: 'vesselVolume * upstreamPressure / (chokedFlow * gasConstant * gasTemperature)',
    say: 'The mass in the vessel over what the choked hole passes.',
  },
  {
    of: 'emptyWall',
    tex: '\\q{emptyWall} = \\q{timeConstant} \\ln\\frac{1}{\\q{targetPressure}}',
    say: 'While the hole stays choked the flow falls with the pressure, so the pressure falls as an exponential when the wall keeps the gas warm.',
  },
  {
    of: 'emptyAlone',
    formula:
      '2 * timeConstant / (heatRatio - 1) * (targetPressure^((1 - heatRatio) / (2 * heatRatio)) - 1)',
    say: 'Without heat from the wall the gas left in the vessel cools, and the pressure falls faster.',
  },
];

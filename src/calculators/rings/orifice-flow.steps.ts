import { is, ratio } from '../step.ts';

/** The working of the hole: from the two pressures to the flow, and from the flow to the vessel. */
export const orificeSteps = {
  pressureRatio: is(
    'downstreamPressure / upstreamPressure',
    'The two pressures decide by their ratio alone.',
  ),
  chokingRatio: is(
    '(2 / (heatRatio + 1))^(heatRatio / (heatRatio - 1))',
    'At this ratio the gas in the throat reaches the speed of sound. News of a lower pressure behind the hole can no longer run upstream.',
    { source: 'cengel-boles' },
  ),
  throatRatio: ratio(
    'r_t',
    'max(pressureRatio, chokingRatio)',
    'So the throat keeps the greater of both.',
  ),
  throatTemperature: is(
    'gasTemperature * throatRatio^((heatRatio - 1) / heatRatio)',
    'Gas that expands without heat or friction cools.',
    { source: 'cengel-boles' },
  ),
  throatSpeed: is(
    'sqrt(2 * heatRatio / (heatRatio - 1) * gasConstant * (gasTemperature - throatTemperature))',
    'What it lost in warmth it has as speed.',
  ),
  throatMach: is(
    'throatSpeed / sqrt(heatRatio * gasConstant * throatTemperature)',
    'That speed over the speed of sound in the throat: one where it chokes.',
  ),
  throatPressure: is('upstreamPressure * throatRatio', 'Pressure at the throat.'),
  throatDensity: is(
    'throatPressure / (gasConstant * throatTemperature)',
    'Density there, from the law of the perfect gas.',
  ),
  massFlow: is(
    'dischargeCoefficient * orificeArea * throatDensity * throatSpeed',
    'Area times density times speed is the mass that passes in a second; the coefficient takes off what contraction and friction cost.',
    { source: 'heywood-1988' },
  ),
  flowNumber: is(
    'massFlow * sqrt(gasConstant * gasTemperature) / (dischargeCoefficient * orificeArea * upstreamPressure)',
    'The same without size, pressure and temperature: a number of the pressure ratio alone.',
  ),
  chokedFlow: is(
    'dischargeCoefficient * orificeArea * upstreamPressure * sqrt(heatRatio / (gasConstant * gasTemperature)) * (2 / (heatRatio + 1))^((heatRatio + 1) / (2 * (heatRatio - 1)))',
    'With the choking ratio in the throat the hole passes the most it can, whatever lies behind it.',
    { source: 'heywood-1988' },
  ),
  timeConstant: is(
    'vesselVolume * upstreamPressure / (chokedFlow * gasConstant * gasTemperature)',
    'The mass in the vessel over what the choked hole passes.',
  ),
  emptyWall: is(
    'timeConstant * ln(1 / targetPressure)',
    'While the hole stays choked the flow falls with the pressure, so the pressure falls as an exponential when the wall keeps the gas warm.',
  ),
  emptyAlone: is(
    '2 * timeConstant / (heatRatio - 1) * (targetPressure^((1 - heatRatio) / (2 * heatRatio)) - 1)',
    'Without heat from the wall the gas left in the vessel cools, and the pressure falls faster.',
  ),
};

import type { Absent } from '../define.ts';

/** [K] No rod runs hotter (300 °C); a temperature beyond says only that the shell grows as the rod does. */
const beyond = 573.15;

/** The temperature at which shells go loose, or why there is none worth naming. */
export function looseOrAbsent(temperature: number | undefined): number | Absent {
  if (temperature === undefined)
    return { absent: 'The rod does not grow faster than the shells: heat does not loosen them.' };
  return temperature > beyond
    ? { absent: 'The rod hardly grows faster than the shells: they hold beyond 300 °C.' }
    : temperature;
}

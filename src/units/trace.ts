import { formatNumber } from './format.ts';
import { chooseColumns, median, unitNamed } from './trace/columns.ts';
import { readTable } from './trace/table.ts';
import { toSI, unitOf } from './units.ts';

/** A measured cycle, brought to the angles of the site. */
export interface Trace {
  readonly ok: true;
  /** Crank angle [rad] from firing TDC, rising from −π to 3π in steps of half a degree. */
  readonly angle: Float64Array;
  /** Pressure [Pa], the mean of the cycles read. */
  readonly pressure: Float64Array;
  readonly cycles: number;
  /** Standard deviation over mean of the cycles' peaks; absent for fewer than ten cycles. */
  readonly peakSpread?: number;
  /** How the text was read, and what is wrong with it, sentence by sentence. */
  readonly report: readonly string[];
}

/** Why a text is no measured cycle, in one sentence. */
export interface NoTrace {
  readonly ok: false;
  readonly say: string;
}

const traceSteps = 1440;

function refuse(say: string): NoTrace {
  return { ok: false, say };
}

function degrees(value: number): string {
  return `${formatNumber(value, { decimals: Number.isInteger(value) ? 0 : 1 })}°`;
}

interface Unrolled {
  /** Degrees, rising; a counter that starts again at 0 or −360 goes on instead. */
  readonly angle: number[];
  readonly pressure: number[];
  readonly backwards: number;
  readonly lost: number;
}

function unroll(angles: readonly number[], pressures: readonly number[]): Unrolled {
  const angle: number[] = [];
  const pressure: number[] = [];
  let turns = 0;
  let backwards = 0;
  let lost = 0;
  angles.forEach((raw, i) => {
    const p = pressures[i] ?? Number.NaN;
    if (!Number.isFinite(raw) || !Number.isFinite(p)) {
      lost += 1;
      return;
    }
    const last = angle.at(-1) ?? -Infinity;
    let at = raw + turns;
    if (at < last - 360) {
      turns += 720;
      at += 720;
    }
    if (at <= last) {
      backwards += 1;
      return;
    }
    angle.push(at);
    pressure.push(p);
  });
  return { angle, pressure, backwards, lost };
}

/** The pressure at `at` on the straight line between its neighbours; `from` is where the search may begin. */
function between(own: Unrolled, at: number, from: number): { value: number; index: number } {
  let i = from;
  while (i < own.angle.length - 2 && (own.angle[i + 1] ?? Infinity) < at) i += 1;
  const [x0, x1] = [own.angle[i] ?? 0, own.angle[i + 1] ?? 0];
  const [y0, y1] = [own.pressure[i] ?? 0, own.pressure[i + 1] ?? 0];
  return { value: y0 + ((y1 - y0) * (at - x0)) / (x1 - x0), index: i };
}

/**
 * Reads a measured pressure trace: crank angle in degrees and pressure, in any order among other columns,
 * with a point or a comma as decimal sign, 0 to 720, −360 to 360 or any other 720° in a row, one cycle or many.
 *
 * The unit of pressure stands in the heading (bar, mbar, psi, kPa, hPa, MPa, Pa) or is given as `unit`.
 * Firing TDC is the multiple of 180° nearest to the greatest pressure, so that counters from either dead centre
 * will do. Several cycles are averaged. Gaps up
 * to 20° are bridged by a straight line and reported; larger ones, and less than a whole cycle, are refused.
 *
 * Nothing is smoothed and no zero line is moved: a trace that goes below zero is reported as not absolute.
 */
export function readTrace(text: string, unit?: string): Trace | NoTrace {
  const table = readTable(text);
  if ('say' in table) return refuse(table.say);
  const chosen = chooseColumns(table);
  if (typeof chosen === 'string') return refuse(chosen);
  const heading = table.heading[chosen.pressure] ?? '';
  const pressureUnit = unit ?? unitNamed(heading);
  if (pressureUnit === undefined)
    return refuse('The heading does not say the unit of the pressure. Choose it beside the field.');
  const own = unroll(table.columns[chosen.angle] ?? [], table.columns[chosen.pressure] ?? []);
  const first = own.angle[0];
  const last = own.angle.at(-1);
  if (first === undefined || last === undefined || own.angle.length < 90)
    return refuse(
      `Only ${own.angle.length} usable points were found; a cycle needs at least 90, one for each 8°.`,
    );
  const steps = own.angle.slice(1).map((at, i) => at - (own.angle[i] ?? at));
  const step = median(steps);
  // 0…719 is a whole cycle: the last step leads back to the first point.
  const covered = last - first + step;
  if (covered < 720 - 1e-6 * 720)
    return refuse(
      `The angles run from ${degrees(first)} to ${degrees(last)}, which is ${degrees(covered)} and not a whole cycle of 720°.${covered < 13 ? ' They look like radians; give degrees of the crank.' : ''}`,
    );
  const widest = Math.max(...steps);
  if (widest > 20)
    return refuse(
      `Between ${degrees(own.angle[steps.indexOf(widest)] ?? first)} and the next point ${degrees(widest)} are missing. More than 20° cannot be bridged.`,
    );
  const report: string[] = [];
  const order = chosen.angle < chosen.pressure ? 'angle before pressure' : 'pressure before angle';
  report.push(
    `Read ${own.angle.length} points from ${degrees(first)} to ${degrees(last)}, every ${formatNumber(step, { significant: 2 })}°, ${order}, pressure in ${unitOf(pressureUnit).symbol}.`,
  );
  const left = table.skipped + own.lost;
  if (left > 0)
    report.push(`${left} ${left === 1 ? 'line was' : 'lines were'} left out: not numbers.`);
  if (own.backwards > 0)
    report.push(
      `${own.backwards} ${own.backwards === 1 ? 'point was' : 'points were'} left out: the angle did not rise there.`,
    );
  const gaps = steps.filter((one) => one > 2.5 * step);
  if (gaps.length > 0)
    report.push(
      `${gaps.length} ${gaps.length === 1 ? 'gap' : 'gaps'}, the widest ${degrees(widest)}: bridged by a straight line.`,
    );

  const top = own.pressure.reduce(
    (best, p, i) => (p > (own.pressure[best] ?? -Infinity) ? i : best),
    0,
  );
  const cycles = Math.max(1, Math.floor(covered / 720 + 1e-9));
  const firing = Math.round((own.angle[top] ?? 0) / 180) * 180;
  const after = (own.angle[top] ?? 0) - firing;
  report.push(
    `The greatest pressure stands at ${degrees(own.angle[top] ?? 0)}, so firing TDC is at ${degrees(firing)}.`,
  );

  if (after < -20 || after > 60)
    report.push(
      `That is ${degrees(Math.abs(after))} ${after < 0 ? 'before' : 'after'} the dead centre, which no usual engine shows. Check the zero of the angle.`,
    );

  // One cycle after another on the same grid. A cycle that ends a step short of 720° borrows its own beginning.
  const wrapped: Unrolled = {
    ...own,
    angle: [...own.angle, first + cycles * 720],
    pressure: [...own.pressure, own.pressure[0] ?? 0],
  };
  if ((wrapped.angle.at(-1) ?? 0) <= last) {
    wrapped.angle.pop();
    wrapped.pressure.pop();
  }
  const grid = Float64Array.from({ length: traceSteps + 1 }, (_, i) => -180 + i / 2);
  const sum = new Float64Array(traceSteps + 1);
  const peaks: number[] = [];
  for (let cycle = 0; cycle < cycles; cycle++) {
    const start = first + cycle * 720;
    let peak = -Infinity;
    const shift = (at: number): number => start + ((((at + firing - start) % 720) + 720) % 720);
    const order = [...grid.keys()].sort((a, b) => shift(grid[a] ?? 0) - shift(grid[b] ?? 0));
    let index = 0;
    for (const i of order) {
      const read = between(wrapped, shift(grid[i] ?? 0), index);
      index = read.index;
      sum[i] = (sum[i] ?? 0) + read.value;
      peak = Math.max(peak, read.value);
    }
    peaks.push(peak);
  }
  if (cycles > 1) report.push(`${cycles} cycles were averaged.`);
  const pressure = sum.map((total) => toSI(total / cycles, pressureUnit));
  const peak = Math.max(...pressure);

  // A straight line through both neighbours misses a clean curve by little; what is left over is noise.
  const misses = own.pressure
    .slice(1, -1)
    .map((p, i) => Math.abs(p - ((own.pressure[i] ?? p) + (own.pressure[i + 2] ?? p)) / 2));
  const noise = toSI(median(misses) / 0.6745 / Math.sqrt(1.5), pressureUnit);
  if (noise > 0.002 * peak)
    report.push(
      `The trace is noisy: about ${formatNumber(noise / 1e5, { significant: 2 })} bar from point to point. Its highest point lies above the true peak by about twice that.`,
    );
  const lowest = Math.min(...pressure);
  if (lowest < 0)
    report.push(
      'The pressure goes below zero, so it is not absolute. Peak and curve are then too low by one constant; the mean effective pressure is not touched by it.',
    );
  const mean = peaks.reduce((total, one) => total + one, 0) / cycles;
  const spread =
    cycles < 10
      ? undefined
      : Math.sqrt(peaks.reduce((total, one) => total + (one - mean) ** 2, 0) / (cycles - 1)) / mean;
  return {
    ok: true,
    angle: grid.map((at) => (at * Math.PI) / 180),
    pressure,
    cycles,
    ...(spread === undefined ? {} : { peakSpread: spread }),
    report,
  };
}

import { formatQuantity } from './format.ts';
import { clean, takeNumber } from './number.ts';
import { readQuantity } from './quantity.ts';
import type { ReadContext, Reading } from './reading.ts';
import { refuse } from './say.ts';
import { differenceToSI, fromSI, unitOf } from './units.ts';

/**
 * Reads the ± of a value: a difference, 0 or more, in any unit of the value's kind, with or without a
 * leading ± or +/-. `si` is a difference, so 5 °F is 2.78 K.
 *
 * `0.5 %` is a share of the value, also for a plain number; it needs `of`, the value in SI, and gives
 * `value` in percent, `unit` 'pct' and `si` = share × |of|. The context's ranges are those of the value;
 * only their width serves here, to settle `1,875`.
 */
export function readPlusMinus(typed: string, context: ReadContext, of?: number): Reading {
  const about = {
    label: `± of ${context.label}`,
    kind: context.kind,
    unit: context.unit,
    samples: ['0.1'],
  };
  const text = typed.replace(/^\s*(±|\+ ?\/? ?[-−])\s*/, '');
  const number = takeNumber(clean(text));
  const entered = `You entered “${clean(typed).slice(0, 40)}”`;
  if (typeof number !== 'string' && number.value < 0)
    return refuse('text', about, `${entered}; 0 or more is wanted.`);
  if (typeof number !== 'string' && /^(%|pct|per ?cent)$/i.test(number.rest))
    return share(number.value, number.step, about, entered, of);
  const span = context.hard === undefined ? undefined : context.hard[1] - context.hard[0];
  const read = readQuantity(text, {
    ...about,
    ...(span === undefined ? {} : { hard: [0, span] as const }),
  });
  if (!read.ok) return read;
  const { value, unit, typedUnit, step, echo } = read;
  return {
    ok: true,
    si: differenceToSI(value, unit),
    value,
    unit,
    typedUnit,
    step,
    // The echo of a temperature would convert the point on the scale, not the difference.
    ...(echo === undefined || context.kind === 'temperature' ? {} : { echo }),
    suggestions: [],
  };
}

function share(
  percent: number,
  step: number,
  context: ReadContext,
  entered: string,
  of: number | undefined,
): Reading {
  const si = of === undefined ? Number.NaN : (Math.abs(of) * percent) / 100;
  if (!Number.isFinite(si))
    return refuse('text', context, `${entered}; a share needs a value to be a share of.`);
  return {
    ok: true,
    si,
    value: percent,
    unit: 'pct',
    typedUnit: true,
    step,
    ...(unitOf(context.unit).offset === undefined && Number.isFinite(fromSI(si, context.unit))
      ? { echo: `${percent} % of the value = ${formatQuantity(si, context.unit)}` }
      : {}),
    suggestions: [],
  };
}

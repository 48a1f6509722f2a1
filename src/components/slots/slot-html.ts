import type { AnyCalculator, SetId } from '../../calculators/define.ts';
import type { PropagatedOutputs } from '../../calculators/uncertainty.ts';
import type { System } from '../../units/kinds.ts';
import { valueOnTheWay } from './on-the-way.ts';
import { slotContent, type SlotMarks, type SlotValues } from './content.ts';

/** One slot, as it is written into the page at build, with the number it opens with. */
export interface SlotToWrite extends SlotMarks {
  readonly name: string;
  readonly set: SetId | 'both';
  /** Works a value on the way; see src/calculators/postfix.ts. */
  readonly postfix?: string | undefined;
}

function escaped(text: string): string {
  return text.replace(/&/gu, '&amp;').replace(/</gu, '&lt;').replace(/"/gu, '&quot;');
}

/**
 * The HTML of a slot. The page's script finds it again by `data-v`.
 *
 * @param values the set's inputs, outputs and values on the way, in SI
 * @param tag `mtext` inside a formula, `span` elsewhere
 */
export function slotHtml(
  slot: SlotToWrite,
  calculator: AnyCalculator,
  values: SlotValues,
  tag: 'span' | 'mtext' = 'span',
  system: System = 'metric',
  plusMinus?: PropagatedOutputs,
): string {
  const { name, set, postfix, unit, figures, guarded, zero, brief, also } = slot;
  // A list is as long as its readings; it may break between them.
  const list = calculator.inputs[name]?.type === 'list' ? '' : undefined;
  const marks = Object.entries({ unit, figures, guarded, zero, brief, also, postfix, list })
    .filter(([, value]) => value !== undefined)
    .map(([key, value]) =>
      value === '' ? ` data-${key}` : ` data-${key}="${escaped(value ?? '')}"`,
    )
    .join('');
  const text = escaped(slotContent(slot, name, calculator, values, system, plusMinus));
  return `<${tag} data-v="${calculator.id}.${name}.${set}"${marks}>${text}</${tag}>`;
}

/**
 * A part of a line of numbers that is shown only where its condition holds. It is no slot but holds slots.
 *
 * @param postfix works to 1 where the part is shown; see src/calculators/postfix.ts
 * @param of the step and the set that the part belongs to
 */
export function caseHtml(
  inside: string,
  postfix: string,
  of: { readonly name: string; readonly set: SetId },
  calculator: AnyCalculator,
  values: SlotValues,
): string {
  const hidden = valueOnTheWay(postfix, values) === 1 ? '' : ' hidden';
  return `<span data-case="${calculator.id}.${of.name}.${of.set}" data-if="${escaped(postfix)}"${hidden}>${inside}</span>`;
}

import type { AnyCalculator } from '../../calculators/define.ts';
import { slotContent, type SlotMarks, type SlotValues } from '../slots/content.ts';
import { valueOnTheWay } from '../slots/on-the-way.ts';

/**
 * Writes the numbers of one question into lines of a working, once: they never change, so nothing follows them. The
 * marks are those of src/components/slots/slots.ts.
 *
 * @param values inputs and results [SI]
 */
export function fillLines(lines: ParentNode, calculator: AnyCalculator, values: SlotValues): void {
  const known: Record<string, SlotValues[string]> = { ...values };
  for (const slot of lines.querySelectorAll<HTMLElement>('[data-v], [data-case]')) {
    const marks: SlotMarks & Readonly<Record<string, string | undefined>> = { ...slot.dataset };
    const { v, if: condition, postfix } = marks;
    if (condition !== undefined) slot.hidden = valueOnTheWay(condition, known) !== 1;
    if (v === undefined) continue;
    const [, name = ''] = v.split('.');
    if (postfix !== undefined) known[name] = valueOnTheWay(postfix, known);
    slot.textContent = slotContent(marks, name, calculator, known, 'metric');
  }
}

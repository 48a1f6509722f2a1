import type { AnyCalculator, NumberEntry, SetId } from '../../calculators/define.ts';
import { notebook } from '../../notebook/notebook.svelte.ts';
import { bothSets } from '../../notebook/values.ts';
import { readQuantity } from '../../units/read.ts';
import { steppedBy } from '../form/stepping.ts';
import { unitOf } from '../../units/units.ts';

/** What follows the reader in prose by itself, and stands in no control. */
const plain =
  '[data-v]:not([data-also]):not(:is([data-calculator], [data-figure], a, button, summary, label, math) *)';

/** The quantity and set that a number in a sentence shows, where it is one that is entered. */
function entered(
  number: HTMLElement,
  calculator: AnyCalculator,
): { readonly entry: NumberEntry; readonly set: SetId } | undefined {
  const [of, name = '', column] = number.dataset['v']?.split('.') ?? [];
  const set = bothSets.find((each) => each === column);
  const entry = Object.hasOwn(calculator.inputs, name) ? calculator.inputs[name] : undefined;
  if (of !== calculator.id || set === undefined || entry?.type !== 'number') return undefined;
  return { entry, set };
}

/**
 * Opens a field in the place of a number. What can be read is written at once, as on the sheet; Escape puts back what
 * stood there, and a number that cannot be read says so and is written nowhere.
 */
function open(number: HTMLElement, entry: NumberEntry, set: SetId): void {
  const shown = notebook.display(set, entry);
  const wasExample = notebook.isExample(set, entry);
  const before = notebook.value(set, entry);
  const { symbol } = unitOf(shown.unit);

  const box = document.createElement('input');
  box.type = 'text';
  box.autocomplete = 'off';
  box.value = shown.text;
  box.size = Math.max(5, shown.text.length + 1);
  box.setAttribute('aria-label', [entry.label, set, symbol].filter(Boolean).join(', '));
  const fault = document.createElement('span');
  fault.setAttribute('role', 'alert');
  const field = document.createElement('span');
  field.className = 'in-sentence';
  field.append(box, symbol === '' ? '' : `\u00a0${symbol}`, fault);

  function problem(): string {
    const read = readQuantity(box.value, {
      label: entry.label,
      kind: entry.kind,
      unit: shown.unit,
    });
    return read.ok ? '' : read.say;
  }
  function write(): void {
    fault.textContent = '';
    if (problem() === '')
      notebook.put(set, entry.name, { text: box.value, unit: shown.unit }, entry);
  }
  let isOpen = true;
  /** Puts the number back, once: a field that is taken away also loses the focus. */
  function close(): void {
    if (!isOpen) return;
    isOpen = false;
    field.remove();
    number.hidden = false;
  }
  function closeHere(): void {
    close();
    number.focus();
  }
  box.addEventListener('input', write);
  box.addEventListener('keydown', (event) => {
    const next = steppedBy(event, box.value);
    if (next !== undefined) {
      event.preventDefault();
      box.value = next;
      write();
    } else if (event.key === 'Enter') {
      fault.textContent = problem();
      if (fault.textContent === '') closeHere();
    } else if (event.key === 'Escape') {
      if (wasExample) notebook.clear(set, entry.name);
      else notebook.put(set, entry.name, before, entry);
      closeHere();
    }
  });
  box.addEventListener('blur', close);
  number.hidden = true;
  number.after(field);
  box.focus();
  box.select();
}

/** Lets the numbers of a calculator that are entered be changed where they stand in a sentence. */
export function changeInSentences(calculator: AnyCalculator): void {
  for (const number of document.querySelectorAll<HTMLElement>(plain)) {
    const found = entered(number, calculator);
    if (found === undefined || number.matches('[role]')) continue;
    const { entry, set } = found;
    number.setAttribute('role', 'button');
    number.tabIndex = 0;
    number.title = `Change: ${entry.label}, ${set}`;
    number.addEventListener('click', () => {
      open(number, entry, set);
    });
    number.addEventListener('keydown', (event) => {
      if (event.key !== 'Enter' && event.key !== ' ') return;
      event.preventDefault();
      open(number, entry, set);
    });
  }
}

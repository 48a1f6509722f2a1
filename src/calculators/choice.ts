import type { ChoiceEntry } from './define.ts';

/** What a choice says: the label of its option, or what was written in its place. Undefined for a text that is neither. */
export function choiceWords(entry: ChoiceEntry, text: string): string | undefined {
  if (Object.hasOwn(entry.options, text)) return entry.options[text];
  return entry.written?.isOne(text) === true ? entry.written.say(text) : undefined;
}

/** Why a text is no choice of the entry, in a sentence; undefined for one that is. */
export function choiceProblem(entry: ChoiceEntry, text: string): string | undefined {
  if (Object.hasOwn(entry.options, text)) return undefined;
  if (entry.written?.isOne(text) === true) return entry.written.problemOf(text);
  const options = Object.values(entry.options).join(', ');
  return `${entry.label} must be one of: ${options}. It is “${text}”.`;
}

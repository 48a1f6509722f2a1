import { copyText } from '../cite/copy.ts';
import { embedLine, fragmentOf, isSize } from './line.ts';

/** What the form of the page holds, by name. */
function element<Kind extends Element>(selector: string): Kind {
  const found = document.querySelector<Kind>(selector);
  if (found === null) throw new Error(`The page has no ${selector}.`);
  return found;
}
const part = element<HTMLSelectElement>('[name=part]');
const link = element<HTMLInputElement>('[name=link]');
const width = element<HTMLInputElement>('[name=width]');
const height = element<HTMLInputElement>('[name=height]');
const line = element<HTMLTextAreaElement>('[name=line]');
const said = element<HTMLElement>('[data-said]');

/** What is wrong with what was typed; empty when all can be used. */
function problem(): string {
  if (fragmentOf(link.value) === undefined)
    return 'This link brings no numbers. Take one from “Copy link” on the topic’s page.';
  if (!isSize(width.value)) return 'The width is a number of pixels, or a share as 100%.';
  if (!isSize(height.value)) return 'The height is a number of pixels.';
  return '';
}

function write(): void {
  said.textContent = problem();
  if (said.textContent !== '') return;
  const chosen = part.selectedOptions[0];
  const address = new URL(part.value, location.href).href + (fragmentOf(link.value) ?? '');
  line.value = embedLine({
    address,
    title: chosen?.dataset['title'] ?? '',
    width: width.value,
    height: height.value,
  });
}

part.addEventListener('change', () => {
  height.value = part.selectedOptions[0]?.dataset['height'] ?? height.value;
  write();
});
for (const field of [link, width, height]) field.addEventListener('input', write);
element('form').addEventListener('submit', (event) => {
  event.preventDefault();
});
element('[data-copy-line]').addEventListener('click', () => {
  if (problem() !== '') return;
  void copyText(line).then((words) => {
    said.textContent = words;
  });
});

/** Chooses the first part of the topic that the address names. */
function chooseNamed(): void {
  const wanted = part.querySelector<HTMLOptionElement>(
    `option[data-topic="${CSS.escape(location.hash.slice(1))}"]`,
  );
  if (wanted === null) return;
  part.value = wanted.value;
  part.dispatchEvent(new Event('change'));
}
window.addEventListener('hashchange', chooseNamed);
chooseNamed();
write();

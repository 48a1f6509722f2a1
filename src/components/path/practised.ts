import { practiceShelf, readProgress } from '../../notebook/practice/progress.ts';

/** Says beside each topic how many of its exercises were answered right on this device, once one was tried. */
const { records } = readProgress(practiceShelf(() => window.localStorage));
for (const place of document.querySelectorAll<HTMLElement>('[data-exercises]')) {
  const ids = (place.dataset['exercises'] ?? '').split(' ');
  if (!ids.some((id) => Object.hasOwn(records, id))) continue;
  const right = ids.filter((id) => (records[id]?.right ?? 0) > 0).length;
  const words = document.createElement('small');
  words.textContent = ` ${String(right)} of ${String(ids.length)} `;
  const rest = document.createElement('span');
  rest.className = 'visually-hidden';
  rest.textContent = 'exercises answered right';
  words.append(rest);
  place.querySelector('a')?.append(words);
}

import { verdictOf, wordsOf } from './verdict.ts';

/** Marks the sheets of a page: which faults were found, which were not, and which lines are well as they are. */
for (const form of document.querySelectorAll<HTMLFormElement>('[data-judgement]')) wire(form);

function wire(form: HTMLFormElement): void {
  const rows = [...form.querySelectorAll('tbody tr')].map((row) => ({
    isFault: row.hasAttribute('data-fault'),
    box: row.querySelector('input'),
    why: row.querySelector<HTMLElement>('.judgement-why'),
    verdict: row.querySelector<HTMLElement>('[data-verdict]'),
  }));
  const said = form.querySelector<HTMLElement>('[data-said]');

  /** Tells of the lines that were marked, and of all of them where all is to be shown. */
  function tell(isAll: boolean): void {
    const marks = rows.map(({ isFault, box }) => verdictOf(isFault, box?.checked === true));
    for (const [at, { why, verdict }] of rows.entries()) {
      const mark = marks[at] ?? 'passed';
      // What was not marked is told only at the end, so that it can still be found.
      const isTold = isAll || mark === 'found' || mark === 'wronged';
      if (why !== null) why.hidden = !isTold;
      if (verdict !== null) verdict.textContent = isTold ? `${verdictWords[mark]} ` : '';
    }
    if (said !== null) said.textContent = wordsOf(marks, isAll);
  }
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    tell(false);
  });
  form.querySelector('[data-show]')?.addEventListener('click', () => tell(true));
}

const verdictWords = {
  found: 'Found:',
  missed: 'Wrong, and not marked:',
  wronged: 'Right as it stands:',
  passed: 'Right:',
} as const;

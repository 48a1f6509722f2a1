import { askNoMore, asksNothing } from './questions.ts';

/** Wires every predict-first question of the page; opens the answers for who wants no questions. */
if (asksNothing()) openAnswers();
else holdFigures();
for (const question of document.querySelectorAll<HTMLElement>('[data-predict]')) wire(question);

function openAnswers(): void {
  for (const answer of document.querySelectorAll<HTMLDetailsElement>('.predict-answer'))
    answer.open = true;
}

/** The figures come; what the reader has at hand stays where it is. */
function showFigures(atHand?: Element): void {
  const top = atHand?.getBoundingClientRect().top;
  document.documentElement.removeAttribute('data-asking');
  if (atHand !== undefined && top !== undefined)
    scrollBy({ top: atHand.getBoundingClientRect().top - top, behavior: 'instant' });
}

/** The figures under the question wait for its answer; who goes on to the sheet or a section is not kept waiting. */
function holdFigures(): void {
  for (const kind of ['pointerdown', 'focusin', 'click']) {
    document.addEventListener(kind, ({ target }) => {
      const atHand = target instanceof Element ? target.closest('.calculator, a[href^="#"]') : null;
      if (atHand !== null && 'asking' in document.documentElement.dataset) showFigures(atHand);
    });
  }
}

function wire(question: HTMLElement): void {
  const form = question.querySelector('form');
  const say = question.querySelector<HTMLElement>('.predict-say');
  const answer = question.querySelector('details');
  if (form === null || say === null || answer === null) return;
  const choices = [...form.querySelectorAll('input')];
  const right = Number(question.dataset['right']);

  function tell(sentence: string): void {
    if (say === null) return;
    say.textContent = sentence;
    say.focus();
  }

  function reveal(sentence: string): void {
    if (form === null || answer === null) return;
    for (const choice of choices) choice.disabled = true;
    form.querySelector<HTMLElement>('.predict-buttons')?.remove();
    question.setAttribute('data-revealed', '');
    answer.open = true;
    showFigures();
    tell(sentence);
  }

  form.addEventListener('submit', (event) => {
    event.preventDefault();
    const chosen = choices.findIndex((choice) => choice.checked);
    if (chosen < 0) {
      tell('Choose one of the three first, or have the answer shown.');
      return;
    }
    reveal(
      chosen === right
        ? `Your prediction agrees: ${wordsOf(chosen)}. The reason matters more:`
        : `You predicted: ${wordsOf(chosen)}. It comes out differently: ${wordsOf(right)}. Here is why:`,
    );
  });
  form.querySelector('[data-no-more]')?.addEventListener('click', () => {
    askNoMore();
    openAnswers();
    showFigures();
  });
  form.querySelector('[data-skip]')?.addEventListener('click', () => {
    reveal(`The answer: ${wordsOf(right)}.`);
  });

  function wordsOf(place: number): string {
    return choices[place]?.parentElement?.textContent.trim().replace(/\.$/, '') ?? '';
  }
}

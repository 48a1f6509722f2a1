import { askNoMore, asksNothing } from './questions.ts';

/** Wires every predict-first question of the page; opens the answers for who wants no questions. */
if (asksNothing()) openAnswers();
for (const question of document.querySelectorAll<HTMLElement>('[data-predict]')) wire(question);

function openAnswers(): void {
  for (const answer of document.querySelectorAll<HTMLDetailsElement>('.predict-answer'))
    answer.open = true;
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
  });
  form.querySelector('[data-skip]')?.addEventListener('click', () => {
    reveal(`The answer: ${wordsOf(right)}.`);
  });

  function wordsOf(place: number): string {
    return choices[place]?.parentElement?.textContent.trim().replace(/\.$/, '') ?? '';
  }
}

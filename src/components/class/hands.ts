/** The counts of a show of hands, and which option is right, before and after it is told. */
export function wireHands(question: HTMLElement): void {
  const options = [...question.querySelectorAll<HTMLElement>('[data-option]')];
  question.addEventListener('click', ({ target }) => {
    const button = target instanceof Element ? target.closest<HTMLElement>('[data-hands]') : null;
    const count = button?.parentElement?.querySelector('output');
    if (button === null || count === null || count === undefined) return;
    const hands = Number(count.textContent) + Number(button.dataset['hands']);
    count.textContent = String(Math.max(0, Math.min(999, hands)));
    draw();
  });

  /** A bar for each option, the longest for the one with the most hands. */
  function draw(): void {
    const counts = options.map((option) => Number(option.querySelector('output')?.textContent));
    const most = Math.max(1, ...counts);
    for (const [at, option] of options.entries())
      option.style.setProperty('--share', String((counts[at] ?? 0) / most));
  }
}

/** Tells which option it is, or hides it again. */
export function tellRight(question: HTMLElement, isTold: boolean): void {
  const right = Number(question.dataset['right']);
  for (const [at, option] of [
    ...question.querySelectorAll<HTMLElement>('[data-option]'),
  ].entries()) {
    option.toggleAttribute('data-is-right', isTold && at === right);
    option.toggleAttribute('data-is-wrong', isTold && at !== right);
  }
}

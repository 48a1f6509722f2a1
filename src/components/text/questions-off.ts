// Written by `questions.ts`. That file is in the first script of every topic, and shares no chunk with this page.
const key = 'throwbook/questions';

/** Shows where questions are off on this device, and turns them on again. */
for (const line of document.querySelectorAll<HTMLElement>('[data-questions-off]')) {
  line.hidden = !isOff();
  line.querySelector('button')?.addEventListener('click', () => {
    localStorage.removeItem(key);
    location.reload();
  });
}

function isOff(): boolean {
  try {
    return localStorage.getItem(key) === 'no';
  } catch {
    // Storage is forbidden: nothing can have been kept.
    return false;
  }
}

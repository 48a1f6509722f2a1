/** Where this device remembers that its reader wants no questions; `public/early.js` reads it before the first paint. */
const key = 'throwbook/questions';

/** True when the answers are to stand without their questions. */
export function asksNothing(): boolean {
  return document.documentElement.dataset['noQuestions'] !== undefined;
}

/** From now on, on every page of this device. */
export function askNoMore(): void {
  document.documentElement.dataset['noQuestions'] = '';
  try {
    localStorage.setItem(key, 'no');
  } catch {
    // Storage is forbidden: it holds for this page.
  }
}

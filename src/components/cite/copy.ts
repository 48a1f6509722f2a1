/** Copies a text where the browser lets a page do so; else selects it, so that a key does. Says which. */
export async function copyText(from: HTMLElement): Promise<string> {
  const text = from instanceof HTMLTextAreaElement ? from.value : (from.textContent ?? '');
  try {
    await navigator.clipboard.writeText(text);
    return 'Copied.';
  } catch {
    if (from instanceof HTMLTextAreaElement) from.select();
    else getSelection()?.selectAllChildren(from);
    return 'This browser does not let the page copy. The text is selected: copy it with Ctrl+C.';
  }
}

/**
 * Makes a list show an option of it, for `{@attach}`. The `selected` of the options serves the server's HTML;
 * it moves nothing any more once the reader has chosen. (Svelte's own binding does both, at six times the code.)
 */
export function choose(list: HTMLSelectElement, option: string): void {
  list.value = option;
}

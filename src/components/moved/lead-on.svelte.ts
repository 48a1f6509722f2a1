import { notebook, opened } from '../../notebook/notebook.svelte.ts';

/** Shows, while a link's numbers are shown, the lines of the parts that it has numbers for. */
await opened;
$effect.root(() => {
  $effect(() => {
    const brought = notebook.visiting === undefined ? {} : notebook.contents.values.baseline;
    for (const line of document.querySelectorAll<HTMLElement>('[data-moved]'))
      line.hidden = !Object.hasOwn(brought, line.dataset['moved'] ?? '');
  });
});

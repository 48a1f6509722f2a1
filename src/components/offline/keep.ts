import { to } from '../site/to.ts';

/*
 * After the first visit the whole site stays on the device (the worker is made by build/offline.js). A newer version
 * waits until the reader asks for it: a page that changed under someone's hands would mix two versions.
 */

function offer(load: () => void): void {
  if (document.querySelector('.newer') !== null) return;
  const line = document.createElement('p');
  line.className = 'newer no-print';
  line.setAttribute('role', 'status');
  const button = document.createElement('button');
  button.type = 'button';
  button.textContent = 'Load it';
  button.addEventListener('click', load);
  line.append('A newer version of these pages is ready. Your numbers stay. ', button);
  document.body.append(line);
}

/** Has the worker keep the site, and offers a newer version when there is one. */
export async function keep(worker: ServiceWorkerContainer): Promise<void> {
  let isFirst = worker.controller === null;
  let asked = false;
  worker.addEventListener('controllerchange', () => {
    if (asked) location.reload();
    // Another tab has asked for the newer version: what this page has not fetched yet may be gone.
    else if (!isFirst)
      offer(() => {
        location.reload();
      });
    isFirst = false;
  });
  const kept = await worker.register(to('offline.js'), { scope: to('') });
  const look = (): void => {
    const { waiting } = kept;
    if (waiting === null || worker.controller === null) return;
    offer(() => {
      asked = true;
      waiting.postMessage('take over');
    });
  };
  look();
  kept.addEventListener('updatefound', () => {
    kept.installing?.addEventListener('statechange', look);
  });
}

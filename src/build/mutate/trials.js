import { fork } from 'node:child_process';
import { once } from 'node:events';
import { fileURLToPath } from 'node:url';
import { root } from '../tool.js';

/** Seconds after which a mutant counts as caught: its tests do not come to an end. */
const patience = 60;

/** Tries mutants one after the other in a process that is begun anew when one of them blocks it. */
export class Trials {
  /** @type {import('node:child_process').ChildProcess | undefined} */
  #child;

  async #begin() {
    const child = fork(fileURLToPath(new URL('worker.js', import.meta.url)), [], {
      cwd: root,
      // A group of its own, so that the processes it begins end with it.
      detached: process.platform !== 'win32',
      stdio: ['ignore', 'ignore', 'inherit', 'ipc'],
    });
    this.#child = child;
    await Promise.race([
      once(child, 'message'),
      once(child, 'exit').then(() => {
        throw new Error('the tests could not be begun');
      }),
    ]);
    return child;
  }

  /** Ends the process and all that it began. */
  end() {
    const child = this.#child;
    this.#child = undefined;
    if (child?.pid === undefined || child.exitCode !== null) return;
    if (process.platform === 'win32') child.kill('SIGKILL');
    else process.kill(-child.pid, 'SIGKILL');
  }

  /**
   * @param {{ file: string, text: string }} mutant
   * @param {readonly import('./tests.js').Stage[]} stages
   * @param {number} [wait] [s] how long the tests may take; longer counts as caught
   * @returns {Promise<{ caught: boolean, by: string }>} by which tests, or by their never ending
   */
  async meet({ file, text }, stages, wait = patience) {
    const child = this.#child ?? (await this.#begin());
    const waiting = new AbortController();
    const answer = once(child, 'message', { signal: waiting.signal });
    /** @type {NodeJS.Timeout | undefined} */
    let timer;
    const late = new Promise((done) => {
      timer = setTimeout(done, 1000 * wait, 'late');
    });
    child.send({ file, text, stages });
    const first = await Promise.race([answer, late]);
    clearTimeout(timer);
    if (first === 'late') {
      waiting.abort();
      answer.catch(() => {});
      this.end();
      return { caught: true, by: 'time' };
    }
    const [{ caught, by, problem }] = /** @type {any[]} */ (first);
    if (problem !== undefined) throw new Error(`${file}: ${problem}`);
    return { caught, by };
  }
}

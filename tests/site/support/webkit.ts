import { spawn, type ChildProcess } from 'node:child_process';
import { createServer } from 'node:net';
import { env } from 'node:process';
import { patience } from './patience.ts';
import { selectAll, type Running, type Tab } from './tab.ts';

/** A port that nobody listens at. */
function freePort(): Promise<number> {
  return new Promise((done, failed) => {
    const server = createServer().once('error', failed);
    server.listen(0, '127.0.0.1', () => {
      const address = server.address();
      server.close(() => {
        done(typeof address === 'object' && address !== null ? address.port : 0);
      });
    });
  });
}

/** A screen that nobody sees, where the machine has none; its number comes once it is there. */
function startScreen(): Promise<{ readonly screen: ChildProcess; readonly display: string }> {
  const screen = spawn(
    'Xvfb',
    ['-displayfd', '1', '-screen', '0', '1600x1200x24', '-nolisten', 'tcp'],
    {
      stdio: ['ignore', 'pipe', 'ignore'],
    },
  );
  return new Promise((done, failed) => {
    screen.once('error', failed);
    screen.stdout.once('data', (number: Buffer) => {
      done({ screen, display: `:${number.toString().trim()}` });
    });
  });
}

/** One command of the WebDriver protocol (W3C, WebDriver, level 2); throws what the driver answers for a failure. */
async function command(
  method: 'GET' | 'POST' | 'DELETE',
  address: string,
  body?: object,
  // The driver gives up first, and says why.
  most = 2 * patience,
): Promise<unknown> {
  const answer = await fetch(address, {
    method,
    ...(body === undefined ? {} : { body: JSON.stringify(body) }),
    signal: AbortSignal.timeout(most),
  });
  const { value } = (await answer.json()) as { value: unknown };
  if (!answer.ok) throw new Error(`${method} ${address}: ${JSON.stringify(value)}`);
  return value;
}

/** Waits until the driver takes orders. */
async function ready(address: string): Promise<void> {
  const end = Date.now() + patience;
  for (;;) {
    try {
      await command('GET', `${address}/status`);
      return;
    } catch (error) {
      if (Date.now() > end) throw error;
      await new Promise((done) => setTimeout(done, 50));
    }
  }
}

/** WebKitGTK. Each tab is a session of the driver, and each session a profile that is forgotten at its end. */
export async function startWebKit(program: {
  readonly driver: string;
  readonly browser: string;
}): Promise<Running> {
  const shown = env['DISPLAY'] ?? env['WAYLAND_DISPLAY'] ?? '';
  const own = shown === '' ? await startScreen() : undefined;
  const drivers = new Set<ChildProcess>();

  async function tab(): Promise<Tab> {
    // A driver that has ended a session was seen to hang in the next one, so each has one of its own.
    const port = await freePort();
    const driver = spawn(program.driver, [`--port=${String(port)}`], {
      stdio: 'ignore',
      env: { ...env, ...(own === undefined ? {} : { DISPLAY: own.display }) },
    });
    drivers.add(driver);
    const root = `http://127.0.0.1:${String(port)}`;
    await ready(root);
    const options = { binary: program.browser, args: ['--automation'] };
    const begun = (await command('POST', `${root}/session`, {
      capabilities: { alwaysMatch: { 'webkitgtk:browserOptions': options } },
    })) as { sessionId: string };
    const session = `${root}/session/${begun.sessionId}`;
    await command('POST', `${session}/timeouts`, { script: patience, pageLoad: patience });

    /** The driver loses an answer now and then, or does not give it: what may be asked again is. */
    async function twice(what: string, body: object): Promise<unknown> {
      try {
        return await command('POST', `${session}/${what}`, body, patience);
      } catch (error) {
        const isLost =
          String(error).includes('Could not parse script result') ||
          (error instanceof DOMException && error.name === 'TimeoutError');
        if (!isLost) throw error;
        return command('POST', `${session}/${what}`, body);
      }
    }
    async function run<Result>(body: string): Promise<Result> {
      const script = `const done = arguments[0]; (async () => {${body}})().then((value) => done({ value }), (error) => done({ error: String(error) }));`;
      // Nothing that is asked of a page changes it.
      const told = (await twice('execute/async', { script, args: [] })) as {
        value?: Result;
        error?: string;
      };
      if (told.error !== undefined) throw new Error(told.error);
      return told.value as Result;
    }
    return {
      run,
      goto: async (url) => void (await twice('url', { url })),
      reload: async () => void (await command('POST', `${session}/refresh`, {})),
      async type(selector, text) {
        await run(selectAll(selector));
        const actions = [...text].flatMap((value) => [
          { type: 'keyDown', value },
          { type: 'keyUp', value },
        ]);
        await command('POST', `${session}/actions`, {
          actions: [{ type: 'key', id: 'keys', actions }],
        });
      },
      widen: async (width) =>
        void (await command('POST', `${session}/window/rect`, { width, height: 900 })),
      async close() {
        await command('DELETE', session);
        driver.kill();
        drivers.delete(driver);
      },
    };
  }
  return {
    tab,
    close() {
      for (const driver of drivers) driver.kill();
      own?.screen.kill();
      return Promise.resolve();
    },
  };
}

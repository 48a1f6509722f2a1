import { chromium, type Browser } from 'playwright-core';
import { inject } from 'vitest';
import { patience } from './patience.ts';

const options = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** Starts the browser that the tests drive. No other file knows which engine it is, or how it is started. */
export function startBrowser(): Promise<Browser> {
  return chromium.launch({
    executablePath: inject('browser'),
    args: options,
    timeout: patience,
  });
}

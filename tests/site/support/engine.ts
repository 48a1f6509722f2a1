import { chromium, type Browser } from 'playwright-core';
import { inject } from 'vitest';
import { patience } from './patience.ts';

/**
 * A window of Chromium brings two hidden pages for its address bar, which no test needs and which cost as much as
 * the page that is tested.
 */
const addressBar = ['WebUIOmniboxPopup', 'WebUIOmniboxAimPopup', 'WebUIOmniboxFullPopup'];

/** Chromium heeds only the last list of features to leave out, so those that Playwright names stand here again. */
const usual = [
  'AimEnabled',
  'AvoidCorsURLLoaderRestartOnRedirect',
  'AvoidUnnecessaryBeforeUnloadCheckSync',
  'DestroyProfileOnBrowserClose',
  'HttpsFirstBalancedModeAutoEnable',
  'HttpsUpgrades',
  'LensOverlay',
  'MediaRouter',
  'NetworkTimeServiceQuerying',
  'OptimizationHints',
  'PaintHolding',
  'PreconnectToSearch',
  'ThirdPartyStoragePartitioning',
];

/** Starts the browser that the tests drive. No other file knows which engine it is, or how it is started. */
export function startBrowser(): Promise<Browser> {
  return chromium.launch({
    executablePath: inject('browser'),
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      `--disable-features=${[...usual, ...addressBar].join()}`,
    ],
    timeout: patience,
  });
}

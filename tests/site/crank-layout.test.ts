import type { Locator, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { enter, field, note, openFolds, result, says, seen, shows } from './support/form.ts';
import { pagesOf, print } from './support/print.ts';
import { useSite } from './support/site.ts';

const site = useSite();

async function begin(page: Page, name: string, layout?: string): Promise<void> {
  await page.goto('jobs/');
  await page.locator('[data-jobs][data-alive]').waitFor();
  await page.getByLabel('Name', { exact: true }).fill(name);
  const form = page.locator('.new-job');
  if (layout !== undefined) await form.getByLabel('Crank layout').selectOption({ label: layout });
  await form.getByRole('button', { name: 'Begin it' }).click();
  await says(page.getByRole('status').first(), `${name} is open`);
}
const engine = (page: Page): Locator => page.getByRole('form', { name: 'Engine' });

/** Opens a page of the job and wakes one of its calculators. */
async function work(page: Page, path: string, calculator: string): Promise<void> {
  await page.goto(path);
  const sheet = page.locator(`[data-calculator="${calculator}"]`);
  await sheet.hover();
  await page.locator(`[data-calculator="${calculator}"][data-alive]`).waitFor();
}

const masses = {
  pistonMass: 400,
  pinMass: 100,
  ringMass: 30,
  lockMass: 2,
  smallEndMass: 150,
  bigEndMass: 420,
  shellMass: 40,
} as const;
const reciprocating = 400 + 100 + 30 + 2 + 150;
/** The allowance of the example, which stands in every job as an assumption. */
const oil = 4;

async function weigh(page: Page): Promise<void> {
  for (const [name, grams] of Object.entries(masses))
    await enter(field(page, 'bobweight', name, 'baseline'), String(grams));
}
/** The text of a field once its fold is open. */
async function stands(page: Page, calculator: string, name: string, wanted: string): Promise<void> {
  const box = field(page, calculator, name, 'baseline');
  await openFolds(box);
  await expect.poll(() => box.inputValue(), { message: name }).toBe(wanted);
}

/** The card with its code, on one side of either paper. */
async function onOneSide(page: Page): Promise<void> {
  await page.locator('.card-qr').waitFor();
  for (const format of ['A4', 'Letter'] as const)
    expect(pagesOf(await print(page, format)), format).toBe(1);
}

describe('a job begins with its layout', () => {
  it('a V6 at 60°: one rod on each half pin, six bobweights, 50 per cent, on the sheet and the card', async () => {
    const page = await site.arrive('jobs/');
    await begin(page, 'Green V6', 'V6, 60°, pins split by 60°');
    await says(page.getByRole('status').first(), 'Three split pins, one rod on each half.');
    await says(engine(page), 'Six bobweights to make, each clamped at the angle of its half pin.');
    await says(engine(page), 'Balance factor: 50 %, a result.');
    await says(page.locator('li.open'), '0 numbers of your own; V6, 60°, pins split by 60°');

    await work(page, 'bobweight/', 'bobweight');
    await stands(page, 'bobweight', 'rodsPerPin', '1');
    await says(note(page, 'bobweight', 'rodsPerPin', 'baseline'), 'from Crank layout');
    await says(note(page, 'bobweight', 'rodsPerPin', 'candidate'), 'same as Baseline');
    await stands(page, 'bobweight', 'reciprocatingFraction', '50');
    await says(note(page, 'bobweight', 'reciprocatingFraction', 'baseline'), 'from Crank layout');
    await weigh(page);
    const bobweight = 420 + 40 + oil + reciprocating / 2;
    await shows(result(page, 'bobweight', 'bobweight', 'baseline'), bobweight, 'g');
    expect(await seen(page.locator('[data-calculator="bobweight"]'))).not.toContain(
      'No bobweights needed',
    );

    await work(page, 'balance-factor/', 'partial-balance');
    await stands(page, 'partial-balance', 'bankAngle', '60');
    await work(page, 'rotating-inertia/', 'rotating-inertia');
    await stands(page, 'rotating-inertia', 'cylinders', '6');

    await page.goto('balance-card/');
    await page.locator('[data-card][data-alive]').waitFor();
    const card = page.locator('.card');
    await says(
      card,
      'V6, 60°, pins split by 60°. Three split pins, one rod on each half. Six bobweights',
    );
    await says(card, 'Clamp weights fitted, half pins 1 to 6 (g)');
    await says(card.locator('.card-answer'), `Bobweight of each half pin ${bobweight.toFixed(1)}`);
    await says(card.locator('tr', { hasText: 'Rods on one crankpin' }), /1 (?:—|1)$/);
    await says(card.locator('tr', { hasText: 'Balance factor' }), /50 %/);
    await onOneSide(page);
  });

  it('a V-twin at 45°: two rods, one bobweight, and a factor of the reader’s own goes before', async () => {
    const page = await site.arrive('jobs/');
    await begin(page, 'Blue twin', 'V-twin, 45°, one pin');
    await says(engine(page), 'One pin with two rods. One bobweight to make.');
    await says(engine(page), '50 to 66 % (common practice, no source)');
    await work(page, 'bobweight/', 'bobweight');
    await stands(page, 'bobweight', 'rodsPerPin', '2');
    await weigh(page);
    const rotating = 2 * (420 + 40) + oil;
    await shows(result(page, 'bobweight', 'bobweight', 'baseline'), rotating + reciprocating, 'g');
    await enter(field(page, 'bobweight', 'reciprocatingFraction', 'baseline'), '60');
    await says(
      note(page, 'bobweight', 'reciprocatingFraction', 'baseline'),
      'your own; Crank layout gives 50 %',
    );
    await shows(
      result(page, 'bobweight', 'bobweight', 'baseline'),
      rotating + 1.2 * reciprocating,
      'g',
    );
    await work(page, 'balance-factor/', 'partial-balance');
    await stands(page, 'partial-balance', 'bankAngle', '45');
    await stands(page, 'partial-balance', 'reciprocatingFraction', '60');

    await page.goto('balance-card/');
    await page.locator('[data-card][data-alive]').waitFor();
    const card = page.locator('.card');
    await says(card, 'V-twin, 45°, one pin. One pin with two rods. One bobweight to make.');
    await says(card, 'Clamp weights fitted, the pin (g)');
    await says(card.locator('tr', { hasText: 'Balance factor' }), /60 %/);
  });

  it('an in-line six: no bobweights needed, on the sheet, the job and the card', async () => {
    const page = await site.arrive('jobs/');
    await begin(page, 'Long six', 'In-line six');
    await says(engine(page), 'Six pins with one rod each. No bobweights needed:');
    await work(page, 'bobweight/', 'bobweight');
    await stands(page, 'bobweight', 'rodsPerPin', '1');
    // No factor follows from it: the custom of the page stands.
    await stands(page, 'bobweight', 'reciprocatingFraction', '50');
    expect(await seen(note(page, 'bobweight', 'reciprocatingFraction', 'baseline'))).not.toContain(
      'Crank layout',
    );
    await weigh(page);
    await says(
      page.locator('[data-calculator="bobweight"]'),
      'Baseline: No bobweights needed: with the same mass on every pin the throws cancel',
    );
    await page.goto('parts/#parts-layout');
    await page.locator('[data-parts]').dispatchEvent('pointermove');
    await page.locator('[data-parts][data-alive]').waitFor();
    await says(page.locator('#part-crankLayout'), 'No bobweights needed');

    await page.goto('balance-card/');
    await page.locator('[data-card][data-alive]').waitFor();
    await says(
      page.locator('.card'),
      'In-line six. Six pins with one rod each. No bobweights needed',
    );
  });
});

describe('the layout', () => {
  it('that is not known changes nothing, and is chosen later in the open job with the sizes of the engine', async () => {
    const page = await site.arrive('jobs/');
    await begin(page, 'Unknown');
    await says(engine(page), 'not known yet');
    await work(page, 'bobweight/', 'bobweight');
    await stands(page, 'bobweight', 'rodsPerPin', '');
    await page.goto('balance-card/');
    await page.locator('[data-card][data-alive]').waitFor();
    await says(page.locator('.card'), 'Clamp weights fitted, each pin (g)');
    expect(await page.locator('.card-layout').count()).toBe(0);

    await page.goto('jobs/');
    await page.locator('[data-jobs][data-alive]').waitFor();
    await engine(page).getByLabel('Crank layout').selectOption({ label: 'In-line three' });
    await says(engine(page), 'Three pins with one rod each. Three bobweights to make.');
    for (const [name, text] of [
      ['bore', '80'],
      ['stroke', '90'],
      ['rodLength', '150'],
      ['maxSpeed', '7000'],
      ['missedShiftSpeed', '7500'],
    ] as const) {
      const box = field(page, 'crank-layout', name, 'baseline');
      expect(await box.inputValue()).toBe('');
      await enter(box, text);
    }
    // By hand: π/4 × 8² × 9 × 3 cm³.
    await says(engine(page), 'Displacement: 1357 cm³.');
    await says(page.locator('li.open'), '5 numbers of your own; In-line three');
    await work(page, 'piston-motion/', 'piston-motion');
    await stands(page, 'piston-motion', 'stroke', '90');
    await stands(page, 'piston-motion', 'maxSpeed', '7000');
    await work(page, 'crank-layout/', 'crank-layout');
    await shows(result(page, 'crank-layout', 'bobweights', 'baseline'), 3, '');
    await shows(result(page, 'crank-layout', 'displacement', 'baseline'), 1357.17, 'cm³');
  });

  it('of two sets may differ, and the job and the card say so', async () => {
    const page = await site.arrive('jobs/');
    await begin(page, 'Two cranks', 'V6, 90°, pins split by 30°');
    await work(page, 'crank-layout/', 'crank-layout');
    await field(page, 'crank-layout', 'crankLayout', 'candidate').selectOption('v8-flat');
    await shows(result(page, 'crank-layout', 'bobweights', 'baseline'), 6, '');
    await shows(result(page, 'crank-layout', 'bobweights', 'candidate'), 0, '');
    await page.goto('balance-card/');
    await page.locator('[data-card][data-alive]').waitFor();
    await says(page.locator('.card'), 'Baseline: V6, 90°, pins split by 30°. Three split');
    await says(page.locator('.card'), 'Candidate: V8, 90°, flat-plane. Four pins');
    await onOneSide(page);
    await page.goto('jobs/');
    await page.locator('[data-jobs][data-alive]').waitFor();
    await says(engine(page), 'not the same in both sets');
    await says(engine(page), 'Candidate: V8, 90°, flat-plane.');
  });

  it('of the example is nobody’s choice until it is made', async () => {
    const page = await site.arrive('bobweight/');
    await work(page, 'bobweight/', 'bobweight');
    await stands(page, 'bobweight', 'rodsPerPin', '2');
    expect(await seen(note(page, 'bobweight', 'rodsPerPin', 'baseline'))).toBe('');
    await page.goto('jobs/');
    await page.locator('[data-jobs][data-alive]').waitFor();
    await says(engine(page), 'the example’s: V8, 90°, cross-plane');
  });
});

import { describe, expect, it } from 'vitest';
import { mass, press, step, stories, typeOver, weighing } from './support/deeds.ts';
import { enter, field, stored } from './support/form.ts';
import { alive, useSite } from './support/site.ts';
import { desk, differences, openHeldBack, phone } from './support/waking.ts';

const site = useSite();

describe.each([
  ['on a desk', desk],
  ['on a phone', phone],
])('done before the code is there, as if it had been, %s', (_, width) => {
  it.each(Object.entries(stories))('%s', async (_name, { path, deeds, at, shows }) => {
    const wanted = await site.open(path, width);
    await deeds(wanted);
    const seen = expect.poll(() => at(wanted));
    await (typeof shows === 'string' ? seen.toBe(shows) : seen.toMatch(shows));

    const { context } = await site.reader(width);
    const { page, release } = await openHeldBack(context, path);
    await deeds(page);
    release();
    await alive(page);
    await expect.poll(() => differences(page, wanted), { timeout: 30_000 }).toEqual([]);
  });
});

it('what an input method composes meanwhile goes on as it was begun', async () => {
  const { context } = await site.reader(desk);
  const { page, release } = await openHeldBack(context, `${weighing}/`);
  const devtools = await context.newCDPSession(page);
  const compose = (text: string): Promise<unknown> =>
    devtools.send('Input.imeSetComposition', {
      text,
      selectionStart: text.length,
      selectionEnd: text.length,
    });
  await page.getByRole('radio', { name: 'Inch' }).click();
  await page.getByLabel('Job').click();
  await compose('V');
  await compose('V8');
  release();
  await alive(page);
  await compose('V8 h');
  await devtools.send('Input.insertText', { text: 'V8 hill' });
  expect(await page.getByLabel('Job').inputValue()).toBe('V8 hill');
  await expect.poll(async () => (await stored(page))['throwbook/1/job']).toBe('V8 hill');
  expect(await page.getByRole('radio', { name: 'Inch' }).isChecked()).toBe(true);
});

describe('numbers that come from elsewhere while the code is fetched', () => {
  it('stand, where they are newer than what was typed', async () => {
    const { context, open } = await site.reader(desk);
    const other = await open(`${weighing}/`);
    const { page, release } = await openHeldBack(context, `${weighing}/`);
    await mass(page).click();
    await typeOver(page, '500');
    await field(page, weighing, 'rodMass', 'candidate').click();
    await typeOver(page, '400');
    await enter(mass(other), '510');
    await press(page, 'ArrowUp');
    release();
    await alive(page);
    await expect.poll(() => mass(page).inputValue()).toBe('510');
    await expect.poll(() => mass(other).inputValue()).toBe('510');
    expect(await field(page, weighing, 'rodMass', 'candidate').inputValue()).toBe('401');
  });

  it('are what a step goes on from, and what is typed takes the place of', async () => {
    const { context, open } = await site.reader(desk);
    const other = await open(`${weighing}/`);
    const { page, release } = await openHeldBack(context, `${weighing}/`);
    await enter(mass(other), '510');
    await enter(field(other, weighing, 'rodMass', 'candidate'), '410');
    await field(page, weighing, 'rodMass', 'candidate').click();
    await typeOver(page, '400');
    await step(page, 'More', 2);
    release();
    await alive(page);
    await expect.poll(() => mass(page).inputValue()).toBe('512');
    expect(await field(page, weighing, 'rodMass', 'candidate').inputValue()).toBe('400');
  });

  it('are a link’s, and what was typed before it is none of them', async () => {
    const { context } = await site.reader(desk);
    const { page, release } = await openHeldBack(context, `${weighing}/`);
    await mass(page).click();
    await typeOver(page, '500');
    await page.evaluate(() => {
      location.hash = '#rodMass=510g,410.5g&v=1';
    });
    await field(page, weighing, 'rodMass', 'candidate').click();
    await press(page, 'End', 'ArrowUp');
    release();
    await alive(page);
    await expect.poll(() => mass(page).inputValue()).toBe('510');
    expect(await field(page, weighing, 'rodMass', 'candidate').inputValue()).toBe('410.6');
  });

  it('leave a number in the unit that stood beside it when it was typed', async () => {
    const { context, open } = await site.reader(desk);
    await (
      await open('')
    ).evaluate(() => {
      localStorage.setItem('throwbook/1/system', 'inch');
    });
    const { page, release } = await openHeldBack(context, 'crank-overlap/');
    await field(page, 'crank-overlap', 'mainDiameter', 'baseline').click();
    await typeOver(page, '60');
    release();
    await alive(page);
    expect((await stored(page))['throwbook/1/baseline/mainDiameter']).toMatch(/"60","unit":"mm"/);
    await press(page, 'Tab');
    await expect
      .poll(() => field(page, 'crank-overlap', 'mainDiameter', 'baseline').inputValue())
      .toMatch(/^2\.36/);
  });
});

import { type Locator } from 'playwright-core';
import { expect, it } from 'vitest';
import { enter, field, printed, result, says, seen, shows } from './support/form.ts';
import { useSite } from './support/site.ts';

const site = useSite();
const set = 'candidate';

/** [g·mm] What a hole of a drill of 118° takes out of a rim of steel, its curve included; lengths in mm. */
function holeBy(hand: { d: number; h: number; R: number; density: number }): number {
  const { d, h, R, density } = hand;
  const point = d / 2 / Math.tan((59 * Math.PI) / 180);
  const flat = ((Math.PI * d ** 2) / 4) * (h * (R - h / 2) + (point / 3) * (R - h - point / 4));
  return (density / 1000) * (flat - (Math.PI * d ** 4) / 128);
}

async function number(cell: Locator): Promise<number> {
  return printed(await seen(cell)).value;
}

it('a crank is balanced for new parts, from the change of its bobweights to the card', async () => {
  const { open, context } = await site.reader();

  // New parts are 452.1 g lighter on each of four pins: by hand Δm r √10 a/D in each end plane.
  const residual = await open('residual-unbalance/');
  await enter(field(residual, 'bobweight-error', 'bobweightError', set), '452.1 g');
  const change = result(residual, 'bobweight-error', 'planeUnbalance', set);
  await expect
    .poll(() => number(change))
    .toBeCloseTo((452.1 * 36.5 * Math.sqrt(10) * 100) / 388, -1);

  // The machine reads with the rotation, from throw 1, where to add; the crank turns anticlockwise.
  const drilling = await open('counterweight-drilling/');
  const reading = (name: string) => field(drilling, 'unbalance-reading', name, set);
  await enter(reading('unbalanceRead'), '3.9 kg·mm');
  await enter(reading('unbalanceAngle'), '12');
  await reading('readingNames').selectOption('light');
  await reading('angleSense').selectOption('with');
  await reading('crankTurns').selectOption('anticlockwise');
  // 12° with an anticlockwise turn is 348° clockwise; the heavy spot is opposite.
  await shows(result(drilling, 'unbalance-reading', 'heavySpot', set), 168, '°');

  const hole = (name: string) => field(drilling, 'counterweight-drilling', name, set);
  const holes = (name: string) => result(drilling, 'counterweight-drilling', name, set);
  await enter(hole('holeDiameter'), '16 mm');
  await enter(hole('holeCount'), '3');
  await enter(hole('counterweightRadius'), '78 mm');
  // With the example's 19 mm a drill of 16 would leave less than 2 mm to each face, and is refused.
  await enter(hole('counterweightWidth'), '24 mm');
  await expect.poll(() => number(holes('middle'))).toBe(168);
  // Three holes, 24° apart, make 1 + 2 cos 24° of one.
  const fan = 1 + 2 * Math.cos((24 * Math.PI) / 180);
  await expect
    .poll(async () => {
      const depth = await number(holes('depth'));
      return Math.abs(fan * holeBy({ d: 16, h: depth, R: 78, density: 7.85 }) - 3900);
    })
    .toBeLessThan(5);

  // The second spin reads 400 g·mm to add at 60° with the rotation: the heavy spot is at 120°.
  await enter(field(drilling, 'second-spin', 'secondUnbalance', set), '400');
  await enter(field(drilling, 'second-spin', 'secondAngle', set), '60');
  const first = {
    x: 3900 * Math.cos((168 * Math.PI) / 180),
    y: 3900 * Math.sin((168 * Math.PI) / 180),
  };
  const second = {
    x: 400 * Math.cos((120 * Math.PI) / 180),
    y: 400 * Math.sin((120 * Math.PI) / 180),
  };
  const off = Math.hypot(first.x - second.x, first.y - second.y);
  await expect
    .poll(() => number(result(drilling, 'second-spin', 'amountError', set)))
    .toBeCloseTo(100 * (off / 3900 - 1), 1);

  // The last reading, and what a grade permits: 16 mm/s × 25.032 kg at 7500 turns a minute.
  const good = (name: string) => field(residual, 'residual-unbalance', name, set);
  for (const [name, text] of [
    ['balanceGrade', '16'],
    ['crankMass', '20.1 kg'],
    ['bobweightsMass', '4.932 kg'],
    ['maxSpeed', '7500 rpm'],
    ['residualA', '120 g·mm'],
    ['residualB', '95 g·mm'],
  ] as const)
    await enter(good(name), text);
  const permitted = (0.016 * 25.032 * 1e6) / ((7500 * Math.PI) / 30);
  await expect
    .poll(() => number(result(residual, 'residual-unbalance', 'permissible', set)))
    .toBeCloseTo(permitted, -1);
  const inA = await seen(result(residual, 'residual-unbalance', 'correctionA', set));

  // The card has it, of the set that the crank is balanced for, and of no other.
  const card = await context.newPage();
  await card.goto('balance-card/');
  await card.locator('[data-card][data-alive]').waitFor();
  const line = (name: string) => card.locator(`.card-record [data-line="${name}"]`);
  expect(await line('holes').locator('b').count()).toBe(0);
  await card.getByLabel('Card for').selectOption(set);
  await says(
    line('holes'),
    `3 of 16 mm, ${await seen(holes('depth'))} deep, middle at 168° clockwise from throw 1`,
  );
  await says(line('lastA'), '120 g·mm');
  await says(line('lastB'), '95 g·mm');
  await says(line('tolerance'), `G 16: ${inA} in A`);
  const reached = await seen(result(residual, 'residual-unbalance', 'gradeReached', set));
  await says(line('reached'), `G ${reached.replace(' mm/s', '')} at 7500 rpm`);
  await card.getByLabel('Card for').selectOption('baseline');
  await expect.poll(() => line('lastA').locator('b').count()).toBe(0);
});

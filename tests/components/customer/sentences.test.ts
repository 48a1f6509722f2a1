import { describe, expect, test } from 'vitest';
import {
  kindIds,
  kindsOf,
  readKinds,
  sentenceOf,
  type Fact,
  type Facts,
  type Kind,
} from '../../../src/components/customer/sentences.ts';

const fell: Fact = { before: '757 g', after: '558 g', step: -1 };
const rose: Fact = { before: '558 g', after: '757 g', step: 1 };
const stayed: Fact = { before: '757 g', after: '757 g', step: 0 };
const pulls = {
  fell: { before: '15.6 kN', after: '11.4 kN', step: -1 },
  rose: { before: '15.6 kN', after: '19.7 kN', step: 1 },
  stayed: { before: '15.6 kN', after: '15.6 kN', step: 0 },
} as const satisfies Record<string, Fact>;
const speeds = {
  rose: { before: '6400 rpm', after: '8400 rpm', step: 1 },
  stayed: { before: '6400 rpm', after: '6400 rpm', step: 0 },
} as const satisfies Record<string, Fact>;

describe('what a customer is told', () => {
  test.each<[Kind, Facts, string]>([
    [
      'pull',
      { reciprocating: fell, pull: pulls.rose, speed: speeds.rose },
      'What goes up and down in each cylinder changes from 757 g to 558 g. The pull on the bolts of one rod changes from 15.6 kN at 6400 rpm to 19.7 kN at 8400 rpm.',
    ],
    [
      'pull',
      { reciprocating: fell, pull: pulls.fell, speed: speeds.stayed },
      'What goes up and down in each cylinder changes from 757 g to 558 g. At the highest speed, 6400 rpm, the pull on the bolts of one rod changes from 15.6 kN to 11.4 kN.',
    ],
    [
      'pull',
      { reciprocating: stayed, pull: pulls.stayed, speed: speeds.stayed },
      'What goes up and down in each cylinder stays at 757 g. At the highest speed, 6400 rpm, the pull on the bolts of one rod stays at 15.6 kN.',
    ],
    [
      'pull',
      { reciprocating: fell, pull: pulls.stayed, speed: speeds.rose },
      'What goes up and down in each cylinder changes from 757 g to 558 g. The pull on the bolts of one rod is 15.6 kN at 6400 rpm before and at 8400 rpm now.',
    ],
    [
      'balance',
      { bobweight: fell },
      'The bobweight, which stands for rods and pistons while a crank is balanced, changes from 757 g to 558 g: the crank has to be balanced for the parts that go in.',
    ],
    [
      'balance',
      { bobweight: stayed },
      'The bobweight, which stands for rods and pistons while a crank is balanced, stays at 757 g.',
    ],
    [
      'power',
      { reciprocating: fell },
      'Lighter parts make no power at a steady speed; the engine only gains speed more readily.',
    ],
    [
      'power',
      { reciprocating: rose },
      'Heavier parts cost no power at a steady speed; the engine only gains speed less readily.',
    ],
    [
      'inertia',
      { inertia: fell },
      'In the gear worked out, what turns in the engine counts as mass of the car, and that changes from 757 g to 558 g: the car gains speed more readily.',
    ],
    [
      'inertia',
      { inertia: rose },
      'In the gear worked out, what turns in the engine counts as mass of the car, and that changes from 558 g to 757 g: the car gains speed less readily.',
    ],
    [
      'inertia',
      { inertia: stayed },
      'In the gear worked out, what turns in the engine counts as mass of the car, and that stays at 757 g.',
    ],
    [
      'speed',
      { speed: speeds.rose, pistonSpeed: { before: '15.6 m/s', after: '20.4 m/s', step: 1 } },
      'The highest speed changes from 6400 rpm to 8400 rpm. The mean piston speed at it changes from 15.6 m/s to 20.4 m/s.',
    ],
    ['speed', { speed: speeds.stayed }, 'The highest speed stays at 6400 rpm.'],
    [
      'rings',
      { ring: { before: '0.15 MPa', after: 'about 0.09 MPa', step: -1 } },
      'The pressure of the top ring on the wall by its own spring changes from 0.15 MPa to about 0.09 MPa; while the engine fires, the gas behind the ring presses far harder.',
    ],
    [
      'clearance',
      {
        clearance: { before: '0.050 mm', after: '0.066 mm', step: 1 },
        clearanceHot: '0.089 mm',
        clearanceCold: '0.058 mm',
      },
      'The oil clearance of the rod bearing, at the temperature of the shop, changes from 0.050 mm to 0.066 mm. With the parts that go in it is 0.089 mm running and 0.058 mm at the coldest start.',
    ],
    [
      'metal',
      { metal: 'aluminium' },
      'An aluminium rod has no load that it carries for ever: its runs are counted, and it is replaced after the number agreed.',
    ],
  ])('%s', (kind, facts, expected) => {
    expect(sentenceOf(kind, facts)).toBe(expected);
  });

  test('is nothing where a number is not there', () => {
    for (const kind of kindIds) expect(sentenceOf(kind, {}), kind).toBeUndefined();
    expect(sentenceOf('pull', { reciprocating: fell, pull: pulls.fell })).toBeUndefined();
    expect(sentenceOf('power', { reciprocating: stayed })).toBeUndefined();
    expect(sentenceOf('metal', { metal: 'steel' })).toBeUndefined();
    expect(kindsOf({ bobweight: fell, metal: 'steel' })).toEqual(['balance']);
  });

  test('claims nothing that no calculation can', () => {
    const all: Facts = {
      reciprocating: fell,
      bobweight: fell,
      pull: pulls.rose,
      speed: speeds.rose,
      inertia: fell,
      ring: fell,
      clearance: rose,
      metal: 'aluminium',
    };
    expect(kindsOf(all)).toEqual(kindIds);
    for (const kind of kindIds)
      expect(sentenceOf(kind, all)).not.toMatch(
        /\b(safe|guarantee|will last|proven|optimum|blueprint)/i,
      );
  });

  test.each([
    [undefined, undefined],
    ['', undefined],
    ['any', undefined],
    ['none', []],
    ['balance.pull', ['pull', 'balance']],
    ['rings.<b>.constructor.speed', ['speed', 'rings']],
    ['pull.balance.power.inertia.speed', ['pull', 'balance', 'power']],
  ])('a link that asks for %j', (text, expected) => {
    expect(readKinds(text)).toEqual(expected);
  });
});

import { readFileSync } from 'node:fs';
import { render } from 'svelte/server';
import { describe, expect, test } from 'vitest';
import type { AnyCalculator, Entry, SetId } from '../../../src/calculators/define.ts';
import { calculators } from '../../../src/calculators/index.ts';
import { demoWork } from '../../../src/components/calculator/demo-work.ts';
import { forcesOf } from '../../../src/components/figures/balance/counter-turning.ts';
import ArrowsDrawing from '../../../src/components/figures/balance/parts/ArrowsDrawing.svelte';
import Drawn from '../../../src/components/figures/Drawn.svelte';
import { chartQuantities, sections } from '../../../src/components/figures/loads/load-speed.ts';
import { motionCurves } from '../../../src/components/figures/motion/mechanism.ts';
import MotionPlots from '../../../src/components/figures/motion/parts/MotionPlots.svelte';
import { states } from '../../../src/components/figures/rings/groove-section.ts';
import RodSide from '../../../src/components/figures/rods/parts/RodSide.svelte';
import ShankCut from '../../../src/components/figures/rods/parts/ShankCut.svelte';
import { cases, shankOf } from '../../../src/components/figures/rods/rod-section.ts';
import { drawable, figureIds } from '../../../src/components/figures/static.ts';
import type { FigureSet, FigureWork } from '../../../src/components/figures/types.ts';
import { evaluate } from '../../../src/notebook/evaluation.ts';
import { exampleOf } from '../../../src/notebook/example.ts';
import { must } from '../../calculators/must.ts';
import { markedBy } from './marked.ts';

/** What each mark of a page's text says, several names with spaces between them. */
function marksIn(html: string): readonly string[] {
  return [...html.matchAll(/data-q="([^"]*)"/gu)].map(([, names = '']) => names);
}
const namesIn = (marks: readonly string[]): readonly string[] =>
  [...new Set(marks.flatMap((mark) => mark.split(' ')))].sort();
const listed = (names = ''): readonly string[] => (names === '' ? [] : names.split(' '));

/** The names that are no input and no output of a calculator. */
function strangers(names: readonly string[], { inputs, outputs }: AnyCalculator): string[] {
  return names.filter((name) => !Object.hasOwn(inputs, name) && !Object.hasOwn(outputs, name));
}

function html(id: string, work: FigureWork): string {
  return render(Drawn, { props: { Part: drawable(id).figure.default, work } }).body;
}

/** The example with another choice made in both sets. */
function withChoice(calculator: AnyCalculator, name: string, option: string): FigureWork {
  const set = (id: SetId): FigureSet => {
    const value = (entry: Entry): ReturnType<typeof exampleOf> =>
      entry.name === name ? { text: option, unit: '' } : exampleOf(id, entry);
    const { input, output } = evaluate(calculator, value);
    return { input, output, stale: false };
  };
  return {
    sets: { baseline: set('baseline'), candidate: set('candidate') },
    system: 'metric',
    put: () => undefined,
  };
}

test('what every figure marks is written down', () => {
  expect(Object.keys(markedBy).sort()).toEqual(figureIds);
});

describe.each(figureIds)('%s', (id) => {
  const { calculator } = drawable(id);
  const whole = html(id, demoWork(calculator));
  const drawing = /<svg[\s\S]*?<\/svg>/gu;
  const drawn = marksIn((whole.match(drawing) ?? []).join(''));
  const beside = marksIn(whole.replace(drawing, ''));
  const { marks, ...names } = must(markedBy[id]);

  test('marks with names of its calculator alone', () => {
    expect(drawn.length).toBeGreaterThan(0);
    expect(strangers(namesIn([...drawn, ...beside]), calculator)).toEqual([]);
  });

  test('marks each part that stands for a quantity', () => {
    expect(namesIn(drawn)).toEqual(listed(names.drawn));
    expect(namesIn(beside).filter((name) => !namesIn(drawn).includes(name))).toEqual(
      listed(names.beside),
    );
    expect([drawn.length, beside.length]).toEqual(marks);
  });

  test('has a part for all that its calculator asks and answers, or is known to have none', () => {
    const there = namesIn([...drawn, ...beside]);
    const without = [...new Set([...calculator.asks, ...calculator.answers])].filter(
      (name) => !there.includes(name),
    );
    expect(without.sort()).toEqual(listed(names.without));
  });
});

const choices = figureIds.flatMap((id) =>
  Object.values(drawable(id).calculator.inputs).flatMap((entry) =>
    entry.type === 'choice'
      ? Object.keys(entry.options).map((option) => ({ id, name: entry.name, option }))
      : [],
  ),
);
test.each(choices)('$id marks with its names where $name is $option', ({ id, name, option }) => {
  const { calculator } = drawable(id);
  const there = namesIn(marksIn(html(id, withChoice(calculator, name, option))));
  expect(there.length).toBeGreaterThan(0);
  expect(strangers(there, calculator)).toEqual([]);
});

describe('what is drawn when a reader asks for it', () => {
  test('a part on a knife edge has its distance and its radius of gyration marked, and no wires', () => {
    const work = withChoice(calculators['bench-swing'], 'swingRig', 'knife-edge');
    const drawn = marksIn((html('swing-rig', work).match(/<svg[\s\S]*?<\/svg>/gu) ?? []).join(''));
    expect(namesIn(drawn)).toEqual(
      listed('gyration partInertia swingMass swingPeriod swingRig swingSpacing'),
    );
  });

  test('the pull of every rod, without the counterweight', () => {
    const { input } = demoWork(calculators['partial-balance']).sets.baseline;
    const { body } = render(ArrowsDrawing, {
      props: {
        set: 'baseline',
        forces: must(forcesOf(input, 1)),
        angle: 1,
        bank: 1.5,
        greatest: 1e4,
        balanced: false,
        ring: 90,
        ondrag: () => undefined,
      },
    });
    expect(marksIn(body).filter((mark) => mark === 'inertiaForce')).toHaveLength(2);
    expect(strangers(namesIn(marksIn(body)), calculators['partial-balance'])).toEqual([]);
  });

  test('the series of two terms', () => {
    const work = demoWork(calculators['piston-motion']);
    const curves = motionCurves('metric');
    const { body } = render(MotionPlots, {
      props: { work, curves, angle: 90, short: 'baseline' },
    });
    const names = namesIn(marksIn(body));
    expect(names).toEqual(expect.arrayContaining(['twoTermAcceleration', 'twoTermCurve']));
    expect(strangers(names, calculators['piston-motion'])).toEqual([]);
  });

  test.each(cases)('a beam under the $label', (load) => {
    const shank = must(shankOf(demoWork(calculators['rod-shank']).sets.baseline));
    const own = { set: 'baseline', shank, case: load, scale: 1000 } as const;
    const side = render(RodSide, { props: { ...own, long: 20 } }).body;
    const cut = render(ShankCut, {
      props: { ...own, id: 'cut', reach: 20, stress: '1 MPa', show: String },
    }).body;
    expect(namesIn(marksIn(side))).toEqual(
      [load.load, 'rodLength', ...(load.id === 'whip' ? ['whipPlace'] : [])].sort(),
    );
    expect(namesIn(marksIn(cut))).toEqual(
      ['area', load.stress, 'shankHeight', 'shankWidth'].sort(),
    );
    expect(strangers([load.load, load.stress], calculators['rod-shank'])).toEqual([]);
  });

  test.each(sections)('the pull $place', ({ id }) => {
    const names = namesIn(Object.values(chartQuantities(id)));
    expect(names).toContain(`${id}Pull`);
    expect(strangers(names, calculators['reversal-load'])).toEqual([]);
  });

  test.each(states)('a groove that is $label', ({ behind, shortfall, land, holes }) => {
    const names = [behind, shortfall, land, ...listed(holes)];
    expect(strangers(names, calculators['gas-port'])).toEqual([]);
  });
});

test('the drawing of the two offsets marks both', () => {
  const file = new URL('../../../src/components/figures/motion/OffsetSigns.astro', import.meta.url);
  const marks = marksIn(readFileSync(file, 'utf8'));
  expect(marks).toEqual(['pinOffset', 'boreOffset']);
  for (const id of ['piston-motion', 'rod-angularity'] as const)
    expect(strangers(marks, calculators[id])).toEqual([]);
});

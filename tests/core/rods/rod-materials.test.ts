import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  hotYieldShare,
  materialOf,
  metalOf,
  properties,
  rodMaterials,
} from '../../../src/calculators/rods/rod-materials.choices.ts';
import { rodMaterials as calculator } from '../../../src/calculators/rods/rod-materials.ts';
import { loadSources } from '../../../src/checks/files.ts';
import { OutOfDomain } from '../../../src/core/refuse.ts';
import {
  rodAreas,
  rodForces,
  stretchOf,
  type RodDuty,
  type RodTargets,
} from '../../../src/core/rods/rod-materials.ts';
import { routes } from '../../../content/topics/rod-materials/routes.ts';
import { proves } from '../../proves.ts';

const duty: RodDuty = {
  maxSpeed: (6400 * Math.PI) / 30,
  stroke: 0.073,
  rodLength: 0.142,
  reciprocatingMass: 0.7568,
  bore: 0.0905,
  peakPressure: 54e5,
  crankcasePressure: 101e3,
};
const targets: RodTargets = {
  rodMargin: 1.5,
  rodNotchFactor: 1.3,
  stretchWanted: 80e-6,
  stretchFactor: 1.6,
  shankLength: 0.1,
};
const anyMetal = fc.constantFrom(...rodMaterials).map((id) => ({ id, metal: metalOf(id) }));

describe('the example engine, as printed before', () => {
  it('pulls with 15 597 N and pushes with 34 086 N', () => {
    const { pull, push } = rodForces(duty);
    expect(Math.abs(pull / 15597 - 1)).toBeLessThan(1e-4);
    expect(Math.abs(push / 34086 - 1)).toBeLessThan(1e-4);
  });

  it('at equal section aluminium looks like 36 % of the mass and 2.9 times the stretch', () => {
    const steel = metalOf('4340-650');
    const light = metalOf('7075-t6');
    expect(light.density / steel.density).toBeCloseTo(0.36, 2);
    expect(steel.youngsModulus / light.youngsModulus).toBeCloseTo(2.9, 1);
  });
});

describe('closed forms', () => {
  it(proves(routes.equalStretchCompares), () => {
    fc.assert(
      fc.property(
        anyMetal,
        anyMetal,
        fc.double({ min: 300, max: 1200, noNaN: true }),
        (one, other, maxSpeed) => {
          const forces = rodForces({ ...duty, maxSpeed });
          const mass = ({ metal }: typeof one) =>
            metal.density * rodAreas(forces, metal, targets).stretchArea;
          const index = ({ metal }: typeof one) => metal.density / metal.youngsModulus;
          expect(mass(one) / mass(other)).toBeCloseTo(index(one) / index(other), 10);
        },
      ),
    );
  });

  it('where fatigue decides, equal margin compares density over fatigue strength', () => {
    const forces = rodForces(duty);
    for (const [one, other] of [
      ['7075-t6', 'ti-6al-4v'],
      ['4340-540', 'c70s6'],
    ] as const) {
      const [a, b] = [metalOf(one), metalOf(other)];
      const [x, y] = [rodAreas(forces, a, targets), rodAreas(forces, b, targets)];
      expect([x.marginArea, y.marginArea]).toEqual([x.fatigueArea, y.fatigueArea]);
      expect(x.marginArea / y.marginArea).toBeCloseTo(b.fatigueStrength / a.fatigueStrength, 12);
    }
  });
});

describe('properties', () => {
  it(proves(routes.sectionStretchStretches), () => {
    fc.assert(
      fc.property(anyMetal, ({ metal }) => {
        const forces = rodForces(duty);
        const areas = rodAreas(forces, metal, targets);
        expect(stretchOf(areas.stretchArea, forces, metal, targets)).toBeCloseTo(80e-6, 15);
        const fatigue =
          metal.fatigueStrength / ((targets.rodNotchFactor * forces.amplitude) / areas.marginArea);
        const crush = metal.yieldStrength / (forces.greatest / areas.marginArea);
        expect(Math.min(fatigue, crush)).toBeCloseTo(1.5, 10);
        expect(areas.bothArea).toBe(Math.max(areas.marginArea, areas.stretchArea));
      }),
    );
  });

  it('compares no sections for a duty without load', () => {
    const still = {
      ...duty,
      ...targets,
      maxSpeed: 0,
      peakPressure: 1e5,
      crankcasePressure: 1e5,
      shankArea: 167.2e-6,
      rodTemperature: 378,
      assemblyTemperature: 293,
      rodMaterial: 'c70s6' as const,
    };
    const set = { input: still, output: calculator.compute(still) };
    expect(calculator.compare?.({ baseline: set, candidate: set })).toMatchObject({
      sectionMassRatio: 1,
      marginAreaRatio: { absent: 'nothing pulls or pushes' },
      marginMassRatio: { absent: 'nothing pulls or pushes' },
      marginStretchRatio: { absent: 'nothing pulls or pushes' },
    });
  });

  it(proves(routes.pageComparesOne), () => {
    const common = {
      ...duty,
      ...targets,
      shankArea: 167.2e-6,
      rodTemperature: 378,
      assemblyTemperature: 293,
    };
    const one = { ...common, rodMaterial: 'c70s6' as const };
    const other = { ...common, rodMaterial: '7075-t6' as const };
    const baseline = { input: one, output: calculator.compute(one) };
    const candidate = { input: other, output: calculator.compute(other) };
    const ratios = calculator.compare?.({ baseline, candidate });
    expect(ratios?.marginMassRatio).toBeCloseTo(
      candidate.output.marginMass / baseline.output.marginMass,
      12,
    );
    expect(ratios?.marginStretchRatio).toBeCloseTo(
      candidate.output.marginStretch / baseline.output.marginStretch,
      12,
    );
    expect(ratios?.stretchMassRatio).toBeCloseTo(
      candidate.output.stretchMass / baseline.output.stretchMass,
      12,
    );
    expect(ratios?.sectionMassRatio).toBeCloseTo(
      candidate.output.sectionMass / baseline.output.sectionMass,
      12,
    );
    expect(ratios?.sectionStretchRatio).toBeCloseTo(
      candidate.output.sectionStretch / baseline.output.sectionStretch,
      12,
    );
    expect(baseline.output.sectionMargin).toBeCloseTo(
      (1.5 * 167.2e-6) / baseline.output.marginArea,
      12,
    );
  });
});

describe('the table of metals', () => {
  const sources = Object.keys(loadSources());

  it.each(rodMaterials)('%s: every value has its evidence and every source is listed', (id) => {
    const row = materialOf(id);
    expect(sources).toContain(row.source);
    for (const property of properties) {
      expect(row[property]).toBeGreaterThan(0);
      expect(['read', 'quoted', 'memory', 'rule']).toContain(row.evidence[property]);
      const source = row.sources[property];
      if (source !== undefined && source !== 'memory') expect(sources).toContain(source);
      // A value that cannot be read anywhere says so, and so does one with no source to name.
      if (source === 'memory') expect(row.evidence[property]).toBe('memory');
    }
    expect(row.tensileStrength).toBeGreaterThan(row.yieldStrength);
    expect(row.fatigueStrength).toBeLessThan(row.yieldStrength);
    if (row.hotYield) expect(sources).toContain(row.hotYield.source);
  });

  it('steels by the rule: half of the tensile strength, at most 700 MPa, times 0.85', () => {
    for (const id of rodMaterials) {
      const row = materialOf(id);
      if (row.evidence.fatigueStrength !== 'rule') continue;
      expect(row.family).toBe('steel');
      const worked = 0.85 * Math.min(row.tensileStrength / 2, 700);
      expect(Math.abs(row.fatigueStrength - worked)).toBeLessThanOrEqual(0.5);
    }
  });

  it('no metal is set against another by a milder test: rotating bending counts 0.85', () => {
    for (const id of rodMaterials) {
      const row = materialOf(id);
      expect(['axial', 'rotating bending', 'not stated']).toContain(row.fatigueTest);
      const share = row.fatigueTest === 'rotating bending' ? 0.85 : 1;
      expect(metalOf(id).fatigueStrength / (row.fatigueStrength * 1e6)).toBeCloseTo(share, 12);
      if (row.evidence.fatigueStrength === 'rule') expect(row.fatigueTest).toBe('axial');
      if (row.family === 'aluminium') expect(row.fatigueTest).toBe('rotating bending');
    }
  });

  it('at equal margin aluminium weighs somewhat more than the steel of the example', () => {
    const [steel, light] = [metalOf('c70s6'), metalOf('7075-t6')];
    const mass = ({ density, fatigueStrength }: typeof steel) => density / fatigueStrength;
    expect(mass(light) / mass(steel)).toBeCloseTo(1.15, 2);
  });

  it('promises no steel a life beyond ten million reversals', () => {
    for (const id of rodMaterials) {
      const row = materialOf(id);
      if (row.family === 'steel') expect(row.fatigueLife).toBeLessThanOrEqual(1e7);
    }
  });

  it('yield that is left falls with temperature and ends with the table', () => {
    expect(hotYieldShare('2014-t6', 273.15 + 100)).toBeCloseTo(0.9493, 10);
    expect(hotYieldShare('2014-t6', 273.15)).toBe(1);
    expect(hotYieldShare('2014-t6', 273.15 + 124.5)).toBeCloseTo((0.9493 + 0.5821) / 2, 10);
    expect(hotYieldShare('2014-t6', 273.15 + 250)).toBeUndefined();
    expect(hotYieldShare('c70s6', 300)).toBeUndefined();
  });
});

describe('refusals', () => {
  it('a rod shorter than the throw', () => {
    expect(() => rodForces({ ...duty, rodLength: 0.03 })).toThrow(
      expect.objectContaining({ quantity: 'rodLength' }),
    );
  });

  it.each(['youngsModulus', 'yieldStrength', 'fatigueStrength'])(
    'a metal without %s is a fault of its table, no reader’s',
    (property) => {
      const metal = { ...metalOf('c70s6'), [property]: 0 };
      const work = () => rodAreas(rodForces(duty), metal, targets);
      expect(work).toThrow(RangeError);
      expect(work).not.toThrow(OutOfDomain);
    },
  );
});

import { expect, test } from 'vitest';
import { specCsv, specJson, type SpecText } from '../../../src/components/spec/spec-text.ts';

const sheet: SpecText = {
  job: 'Hill <b>V8</b>',
  heads: ['Road', '=HYPERLINK("x")'],
  entered: [
    {
      title: 'Pistons',
      rows: [
        {
          name: 'pistonMass',
          label: 'Piston, bare',
          baseline: '428.0\u00a0g ± 0.1',
          candidate: '–',
          from: 'measured, "new" scale',
        },
      ],
    },
  ],
  results: [
    {
      title: 'Bobweight',
      rows: [
        {
          name: 'bobweight',
          label: 'Bobweight of one crankpin',
          baseline: '1685.2 ± 2.0 g',
          candidate: '−1 g',
          from: '',
        },
      ],
    },
  ],
};

test('separated values have a number a line, and nothing that a spreadsheet runs', () => {
  expect(specCsv(sheet).split('\r\n')).toEqual([
    `,Group,Quantity,Road,"'=HYPERLINK(""x"")",Where from`,
    'entered,Pistons,"Piston, bare",428.0 g ± 0.1,–,"measured, ""new"" scale"',
    "result,Bobweight,Bobweight of one crankpin,1685.2 ± 2.0 g,'−1 g,",
    '',
  ]);
});

test('JSON says the same, and leaves out what nobody said', () => {
  expect(JSON.parse(specJson(sheet))).toEqual({
    job: 'Hill <b>V8</b>',
    sets: ['Road', '=HYPERLINK("x")'],
    entered: [
      { group: 'Pistons', rows: [{ ...sheet.entered[0]?.rows[0], baseline: '428.0 g ± 0.1' }] },
    ],
    results: [
      {
        group: 'Bobweight',
        rows: [
          {
            name: 'bobweight',
            label: 'Bobweight of one crankpin',
            baseline: '1685.2 ± 2.0 g',
            candidate: '−1 g',
          },
        ],
      },
    ],
  });
});

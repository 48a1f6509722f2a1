import type { SectionShape } from '../../core/rods/shank-section.ts';
import type { ChoiceEntry } from '../define.ts';

/** Which way the flanges lie. */
export const shankShape: ChoiceEntry<SectionShape> = {
  type: 'choice',
  name: 'shankShape',
  label: 'Shape of the beam',
  symbol: 'I or H',
  options: {
    i: 'I: flanges across the plane of motion',
    h: 'H: flanges along the plane of motion',
  },
  demo: { baseline: 'i', candidate: 'i' },
};

/** Whether the area of the section is worked from its dimensions, or known, fillets and all. */
export const areaFrom: ChoiceEntry<'dimensions' | 'given'> = {
  type: 'choice',
  name: 'areaFrom',
  label: 'Area of the section',
  symbol: 'A from',
  options: { dimensions: 'from the four dimensions', given: 'as given, fillets and all' },
  demo: { baseline: 'dimensions', candidate: 'dimensions' },
};

import { kindWords, type Kind } from './kinds.ts';
import { units, unitsOfKind } from './units.ts';

/** Where the factors come from. Only the build reads this file. */
const unitSources = {
  yard: 'International yard and pound agreement, 1959: 1 in = 25.4 mm and 1 lb = 0.45359237 kg, both exact',
  gravity:
    'Standard gravity, 3rd General Conference on Weights and Measures, 1901: 9.80665 m/s², exact',
  si: 'Definition in the SI, exact',
  mercury:
    'Conventional inch of mercury: density 13 595.1 kg/m³ by convention, times standard gravity, times 1 in',
  trade:
    'Usage of the trade, a decimal part of an inch or a millimetre; common practice, no source',
} as const;

/** One row of the Units page. */
export interface UnitRow {
  readonly id: string;
  readonly symbol: string;
  readonly kind: Kind;
  readonly kindWords: string;
  /** The factor to SI as a product of defined numbers: "0.45359237 × 9.80665 / 0.0254²". */
  readonly factor: string;
  /** The SI unit that the factor gives. */
  readonly si: string;
  readonly from: string;
  /** Ways of typing it, besides the symbol. */
  readonly spellings: readonly string[];
}

const { yard, gravity, mercury, trade } = unitSources;
const gravityToo = `${yard}; ${gravity}`;

/** Factors that are not a plain decimal number of the SI. */
const exact: Readonly<Record<string, readonly [factor: string, from: string]>> = {
  hundredth: ['0.00001', trade],
  in: ['0.0254', yard],
  thou: ['0.0254 / 1000', `${yard}; ${trade}`],
  tenth: ['0.0254 / 10 000', `${yard}; ${trade}`],
  ft: ['12 × 0.0254', yard],
  in2: ['0.0254²', yard],
  in3: ['0.0254³', yard],
  in4: ['0.0254² × 0.0254²', yard],
  oz: ['0.45359237 / 16', yard],
  lb: ['0.45359237', yard],
  gr: ['0.45359237 / 7000', yard],
  'lb/in3': ['0.45359237 / 0.0254³', yard],
  gin: ['0.001 × 0.0254', yard],
  ozin: ['0.45359237 / 16 × 0.0254', yard],
  lbin2: ['0.45359237 × 0.0254²', yard],
  lbft2: ['0.45359237 × (12 × 0.0254)²', yard],
  deg: ['π / 180', unitSources.si],
  rpm: ['2π / 60', unitSources.si],
  'km/h': ['1000 / 3600', unitSources.si],
  'ft/min': ['12 × 0.0254 / 60', yard],
  'ft/s': ['12 × 0.0254', yard],
  'in/s': ['0.0254', yard],
  mph: ['5280 × 12 × 0.0254 / 3600', yard],
  gravity: ['9.80665', gravity],
  'ft/s2': ['12 × 0.0254', yard],
  'in/s2': ['0.0254', yard],
  lbf: ['0.45359237 × 9.80665', gravityToo],
  lbft: ['0.45359237 × 9.80665 × 12 × 0.0254', gravityToo],
  lbin: ['0.45359237 × 9.80665 × 0.0254', gravityToo],
  'Nm/deg': ['180 / π', unitSources.si],
  'lbft/deg': ['0.45359237 × 9.80665 × 12 × 0.0254 × 180 / π', gravityToo],
  'lbin/rad': ['0.45359237 × 9.80665 × 0.0254', gravityToo],
  cpm: ['1 / 60', unitSources.si],
  radps: ['0.5 / π', unitSources.si],
  'rpm/s': ['2π / 60', unitSources.si],
  ftlbf: ['0.45359237 × 9.80665 × 12 × 0.0254', gravityToo],
  hp: ['550 × 0.45359237 × 9.80665 × 12 × 0.0254', gravityToo],
  'Btu/lb': ['2326', 'International table British thermal unit, 1956: 1 Btu/lb = 2326 J/kg, exact'],
  psi: ['0.45359237 × 9.80665 / 0.0254²', gravityToo],
  ksi: ['1000 × 0.45359237 × 9.80665 / 0.0254²', gravityToo],
  Mpsi: ['1 000 000 × 0.45359237 × 9.80665 / 0.0254²', gravityToo],
  'ppm/degF': ['0.000001 × 1.8', unitSources.si],
  'um/mm': ['0.001', unitSources.si],
  'thou/in': ['0.001', `${yard}; ${trade}`],
  inHg: ['13 595.1 × 9.80665 × 0.0254', `${mercury}; ${gravity}`],
  degC: ['1, then add 273.15', unitSources.si],
  degF: ['(value + 459.67) / 1.8', unitSources.si],
};

/** Every unit the site reads, in the order of the kinds. */
export const unitTable: readonly UnitRow[] = Object.values(units).map((unit) => {
  const [factor, from] = exact[unit.id] ?? [String(unit.factor), unitSources.si];
  return {
    id: unit.id,
    symbol: unit.symbol,
    kind: unit.kind,
    kindWords: kindWords[unit.kind],
    factor,
    si: unitsOfKind(unit.kind)[0]?.symbol ?? '',
    from,
    spellings: unit.spellings,
  };
});

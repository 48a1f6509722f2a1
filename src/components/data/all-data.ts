import { calculators } from '../../calculators/index.ts';
import * as quantities from '../../calculators/quantities.ts';
import { quantityNotes } from '../../calculators/quantity-notes.ts';
import { loadSources } from '../../checks/files.ts';
import { allRows } from '../../checks/known.ts';
import { checksData, sourcesData } from './checks-data.ts';
import type { DataSet } from './data-set.ts';
import { tablesData } from './tables-data.ts';
import { glossaryData, symbolsData, type Term } from './words-data.ts';

/** Every table that is published below `data/`, in the order of its page. Build only. */
export function allData(terms: readonly Term[]): readonly DataSet[] {
  return [
    checksData(allRows),
    ...tablesData,
    symbolsData(Object.values(quantities), quantityNotes, Object.values(calculators)),
    glossaryData(terms),
    sourcesData(loadSources()),
  ];
}

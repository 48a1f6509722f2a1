import fc from 'fast-check';

/** `THROWBOOK_SEED` draws other cases; without it every run draws the same, so that a failure is there again. */
const named = process.env['THROWBOOK_SEED'] ?? '';
const seed = named === '' ? 20_261_125 : Number(named);
if (!Number.isSafeInteger(seed)) throw new Error(`THROWBOOK_SEED is no whole number: ${named}`);

// A property that fails prints the seed and the path to the case.
fc.configureGlobal({ ...fc.readConfigureGlobal(), seed });

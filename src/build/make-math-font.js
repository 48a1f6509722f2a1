/**
 * Cuts the math font down to the glyphs that the site's formulas can use and keeps its MATH table, without
 * which brackets do not stretch and a root sign is a stub. Run `node src/build/make-math-font.js` after adding
 * a character below; the same input gives the same bytes.
 *
 * Font: Noto Sans Math, SIL Open Font License 1.1 (the licence stands beside the result).
 */
import { copyFile, readFile, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import subsetFont from 'subset-font';

const digits = '0123456789';
const punctuation = ' .,;:!%°′″…\u2061';
const operators = '+-−±×·/=≠≈<>≤≥→∞∂∑∫√';
const brackets = '()[]{}|∣';
const uprightGreek = 'ΔΣ';

/** Letters that formulas use as symbols. Browsers set a one-letter symbol in mathematical italics. */
const latin = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz';
const greek = 'Δαβγδεζηθκλμνπρστφχψω';

/** Mathematical italics stand in their own block; the italic h is the old Planck constant. */
const italics = [...latin, ...greek].map((letter) => {
  const code = letter.codePointAt(0) ?? 0;
  if (letter === 'h') return '\u210E';
  if (code < 0x5b) return String.fromCodePoint(0x1d434 + code - 0x41);
  if (code < 0x7b) return String.fromCodePoint(0x1d44e + code - 0x61);
  if (code < 0x3b1) return String.fromCodePoint(0x1d6e2 + code - 0x391);
  return String.fromCodePoint(0x1d6fc + code - 0x3b1);
});

// Upright words (indices such as "rec") are left to the system's text font, as in the prose around them.
const glyphs = [digits, punctuation, operators, brackets, uprightGreek, ...italics].join('');

const require = createRequire(import.meta.url);
const fontFolder = new URL(
  '.',
  `file://${require.resolve('@fontsource/noto-sans-math/package.json')}`,
);
const source = new URL('files/noto-sans-math-latin-400-normal.woff2', fontFolder);
const target = new URL('../../public/fonts/', import.meta.url);

const subset = await subsetFont(await readFile(source), glyphs, {
  targetFormat: 'woff2',
  // Small capitals and script-size variants are never asked for; the MATH table brings its own.
  noLayoutClosure: true,
});
await writeFile(new URL('throwbook-math.woff2', target), subset);
await copyFile(new URL('LICENSE', fontFolder), new URL('LICENSE.txt', target));
console.log(`public/fonts/throwbook-math.woff2: ${subset.length} bytes`);

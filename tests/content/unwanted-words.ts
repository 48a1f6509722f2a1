/**
 * Words that no shop uses, or that mean several things, each with what is said instead. They are looked for in
 * all that a page shows: labels, sentences and lines of the working, prose, glossary, cautions and tables.
 */
export const unwanted: readonly (readonly [RegExp, string])[] = [
  [/\bslid(?:es|ing) (?:mass|parts?|forces?|ones)\b/iu, 'reciprocating'],
  [/\bwhat slides\b/iu, 'what reciprocates'],
  [/\bturning (?:mass|parts?|couple)\b/iu, 'rotating'],
  [/\bthe share f\b|\bfor 0\.01 more\b/iu, 'balance factor, in per cent'],
  [/\breciprocating fraction\b/iu, 'balance factor'],
  [/\(1 s\)/u, 'standard deviation'],
  [/\bhearsay\b|\bheard of\b/iu, 'quoted'],
  [/(?<![-/])\bshanks?\b(?! of the drill)/iu, 'beam'],
  [/\bmissed-shift speed\b/iu, 'over-rev speed'],
  [/\bhighest intended speed\b(?!\))/iu, 'redline'],
  [/\bold gas\b/iu, 'residual gas'],
  [/\bgas’s heats\b/iu, 'ratio of specific heats'],
  [/\bV2\b/u, 'V-twin'],
  [/(?<!gap |loop )\bclosure\b/iu, 'gap closure, loop closure, misfit'],
  [/(?<![A-Za-z/])1\/min\b/u, 'rpm'],
  [/\baxial height\b|\bradial thickness\b/iu, 'ring width, radial wall'],
  [/\bboth locks\b/iu, 'pin locks (pair)'],
];

/** Where a word may stand: another name in the glossary or in the list of other words, a heading of a table's column. */
export const allowed = [
  /^\s*(?:also:|, also) (?:shank|sliding|speed ripple)/u,
  /^\s*(?:axial height|radial thickness|rod shank)\s*$/u,
  /\/ \(1\/min\)|^\s*1\/min; drag/u,
];

/** The pages that the header and the foot of every page lead to: path from the site's root, and name. */
type PageLink = readonly [path: string, name: string];

export const mainPages: readonly PageLink[] = [
  ['topics/', 'Topics'],
  ['jobs/', 'Jobs'],
  ['parts/', 'Parts table'],
  ['balance-card/', 'Balance card'],
  ['checks/', 'Checks'],
];
/** For who learns and who teaches. */
export const learningPages: readonly PageLink[] = [
  ['first-lesson/', 'First lesson'],
  ['path/', 'Path'],
  ['teach/', 'Teacher’s notes'],
  ['demonstrations/', 'Demonstrations'],
];
/** Made from the job that is open. */
export const jobPages: readonly PageLink[] = [
  ['spec-sheet/', 'Spec sheet'],
  ['weigh-sheet/', 'Weigh sheet'],
  ['matching-sheet/', 'Matching sheet'],
  ['customer/', 'For the customer'],
];
export const referencePages: readonly PageLink[] = [
  ['tables/', 'Tables'],
  ['symbols/', 'Symbols'],
  ['units/', 'Units'],
  ['glossary/', 'Glossary'],
  ['sources/', 'Sources'],
  ['cautions/', 'Cautions'],
  ['how-checked/', 'How this is checked'],
  ['changes/', 'Changes'],
];
/** For who takes something of the site elsewhere. */
export const takingPages: readonly PageLink[] = [
  ['data/', 'Data'],
  ['cite/', 'Cite'],
  ['embed/', 'Embed'],
];

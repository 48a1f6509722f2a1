/** What became of one line: its fault was found or missed, or it is right and was marked or let pass. */
export type Verdict = 'found' | 'missed' | 'wronged' | 'passed';

export function verdictOf(isFault: boolean, isMarked: boolean): Verdict {
  if (isFault) return isMarked ? 'found' : 'missed';
  return isMarked ? 'wronged' : 'passed';
}

function lines(count: number): string {
  return count === 1 ? '1 line' : `${String(count)} lines`;
}

/** The outcome of all lines in a sentence. How many faults are left is told, and not where, until all is shown. */
export function wordsOf(marks: readonly Verdict[], isAll: boolean): string {
  const count = (verdict: Verdict): number => marks.filter((mark) => mark === verdict).length;
  const [found, missed, wronged] = [count('found'), count('missed'), count('wronged')];
  if (found + wronged === 0 && !isAll)
    return 'Nothing is marked. Mark the lines that are wrong, then check.';
  if (missed + wronged === 0)
    return `Right: all ${String(found)} faults are found, and no other line is marked.`;
  const marked =
    wronged === 0
      ? ''
      : ` ${lines(wronged)} marked ${wronged === 1 ? 'is' : 'are'} right as ${wronged === 1 ? 'it stands' : 'they stand'}.`;
  const left =
    missed === 0
      ? ''
      : isAll
        ? ` ${lines(missed)} ${missed === 1 ? 'was' : 'were'} not marked.`
        : ` ${lines(missed)} more ${missed === 1 ? 'is' : 'are'} wrong: look again.`;
  return `Not yet: ${String(found)} of ${String(found + missed)} faults found.${marked}${left}`;
}

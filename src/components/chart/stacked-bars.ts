/** One part of a stacked bar before it is laid. */
export interface BarPart {
  readonly label: string;
  /** Names the part below the bar where its label does not fit. */
  readonly letter: string;
  /** In SI. */
  readonly value: number;
  readonly fill: 'lines' | 'dots';
}

/** One part as it lies in the bar: from where to where, in SI. */
export interface BarSegment extends BarPart {
  readonly from: number;
  readonly to: number;
}

/** The parts laid end to end. A part of nothing, or of less, takes no room. */
export function laidEndToEnd(parts: readonly BarPart[]): BarSegment[] {
  let end = 0;
  return parts.map((part) => {
    const from = end;
    end += Math.max(0, part.value);
    return { ...part, from, to: end };
  });
}

/**
 * Moves places apart so that neighbours stand at least `gap` from each other and none leaves
 * [`low`, `high`]. The places must rise.
 */
export function spread(
  places: readonly number[],
  gap: number,
  low: number,
  high: number,
): number[] {
  const moved = [...places];
  for (let i = 0; i < moved.length; i += 1) {
    const before = i === 0 ? low - gap : (moved[i - 1] ?? low);
    moved[i] = Math.max(moved[i] ?? low, before + gap);
  }
  for (let i = moved.length - 1; i >= 0; i -= 1) {
    const after = i === moved.length - 1 ? high + gap : (moved[i + 1] ?? high);
    moved[i] = Math.min(moved[i] ?? high, after - gap);
  }
  return moved;
}

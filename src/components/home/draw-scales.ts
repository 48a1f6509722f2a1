import { type Sizes } from './assembly.ts';
import { box, path, round, scale, type Drawn } from './assembly-pen.ts';

/** A third as large, beside the section: the rod on the two scales that weigh its ends. */
export function scales(sizes: Sizes): Drawn {
  const small = scale / 3;
  const length = sizes.rodLength * small;
  const [left, y] = [728, 704];
  const right = left + length;
  const round3 = (x: number, radius: number): string => {
    const r = round(radius * small);
    return `M${round(x - radius * small)} ${String(y)}a${r} ${r} 0 1 0 ${round(2 * radius * small)} 0a${r} ${r} 0 1 0 ${round(-2 * radius * small)} 0z`;
  };
  const half = (sizes.shankHeight / 2) * small;
  const beam = box(left, y - half, length, 2 * half);
  const eyes = round3(left, sizes.housingOutside / 2) + round3(right, 0.8 * sizes.pinDiameter);
  const bores = round3(left, sizes.rodHousing / 2) + round3(right, sizes.pinDiameter / 2);
  // Of the beam what lies between the eyes, so that nothing is filled twice.
  const [first, last] = [
    left + (sizes.housingOutside / 2) * small,
    right - 0.8 * sizes.pinDiameter * small,
  ];
  const free = box(first, y - half, last - first, 2 * half);
  const ground = y + 58;
  const scaleUnder = (x: number, from: number): string =>
    `M${round(x)} ${round(from)}l-7 11h14z` + box(x - 26, from + 11, 52, ground - from - 11);
  const stands =
    scaleUnder(left, y + (sizes.rodHousing / 2) * small) +
    scaleUnder(right, y + (sizes.pinDiameter / 2) * small);
  return {
    picture: [
      path('part double', beam + eyes),
      path('paper', beam),
      path('paper', eyes),
      path('part', bores),
      path('part', stands),
      path('thick', `M690 ${String(ground)}H${round(right + 36)}`),
    ].join(''),
    targets: {
      'rod-weighing': { shape: free + eyes + stands, at: { x: right + 20, y: ground - 12 } },
    },
  };
}

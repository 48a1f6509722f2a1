import { type Sizes } from './assembly.ts';
import { box, cross, line, path, round, scale, type Drawn } from './assembly-pen.ts';

/** How large the things of the bench are drawn beside the section: a third as large. */
const small = scale / 3;

function ring(x: number, y: number, radius: number): string {
  const r = round(radius);
  return `M${round(x - radius)} ${round(y)}a${r} ${r} 0 1 0 ${round(2 * radius)} 0a${r} ${r} 0 1 0 ${round(-2 * radius)} 0z`;
}

/** The rod on the two scales that weigh its ends. */
export function scales(sizes: Sizes): Drawn {
  const length = sizes.rodLength * small;
  const [left, y] = [728, 704];
  const right = left + length;
  const half = (sizes.shankHeight / 2) * small;
  const beam = box(left, y - half, length, 2 * half);
  const eyes =
    ring(left, y, (sizes.housingOutside / 2) * small) +
    ring(right, y, 0.8 * sizes.pinDiameter * small);
  const bores =
    ring(left, y, (sizes.rodHousing / 2) * small) + ring(right, y, (sizes.pinDiameter / 2) * small);
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

/** A bobweight: two halves that are clamped on the crankpin by two bolts. */
export function clamp(sizes: Sizes): Drawn {
  const [x, y, outside] = [600, 838, 40];
  const pin = (sizes.crankpinDiameter / 2) * small;
  const bolts = [-1, 1]
    .map(
      (side) => box(x + side * 29 - 3.5, y - 34, 7, 68) + box(x + side * 29 - 6.5, y - 40, 13, 6),
    )
    .join('');
  const body = ring(x, y, outside) + ring(x, y, pin);
  return {
    picture: [
      path('part', body),
      path('cut', body),
      path('part', bolts),
      path(
        'thick',
        `M${String(x - outside)} ${String(y)}h${round(outside - pin)}m${round(2 * pin)} 0h${round(outside - pin)}`,
      ),
      cross({ x, y }, outside + 8),
    ].join(''),
    targets: { 'quoted-bobweight': { shape: body, at: { x: x + outside - 7, y: y - 13 } } },
  };
}

/** A part with its axis upright on two wires. No number of the example is its size: it is drawn for form. */
export function swing(): Drawn {
  const [x, top, y] = [390, 880, 956];
  const disc = box(x - 44, y, 88, 12) + box(x - 12, y - 10, 24, 10) + box(x - 12, y + 12, 24, 8);
  const wires = [-36, 36].map((off) => `M${String(x + off)} ${String(top)}V${String(y)}`).join('');
  return {
    picture: [
      path('thick', `M${String(x - 52)} ${String(top)}H${String(x + 52)}`),
      path('thick', wires),
      path('part', disc),
      line('chain', { x, y: top - 8 }, { x, y: y + 30 }),
    ].join(''),
    targets: {
      'inertia-by-swinging': { shape: disc, at: { x: x - 40, y: y + 6 } },
    },
  };
}

/** A main journal of the crank, from the end, on two rollers of the balancing machine. */
export function rollers(sizes: Sizes): Drawn {
  const [x, y, roller, ground] = [790, 842, 15, 916];
  const journal = (sizes.mainDiameter / 2) * small;
  const rim = (sizes.balanceRadius + 9) * small;
  // Each roller carries the journal at an angle of 45°.
  const reach = (journal + roller) * Math.SQRT1_2;
  const discs = [-1, 1].map((side) => ring(x + side * reach, y + reach, roller)).join('');
  const post = box(x - reach - 6, y + reach + roller, 12, ground - y - reach - roller);
  const other = box(x + reach - 6, y + reach + roller, 12, ground - y - reach - roller);
  const shape = ring(x, y, journal);
  return {
    picture: [
      path('hidden', ring(x, y, rim)),
      path('part', shape),
      path('part', discs),
      path('part', post + other),
      path('thick', `M${round(x - rim - 10)} ${String(ground)}H${round(x + rim + 10)}`),
      cross({ x, y }, journal + 8),
    ].join(''),
    targets: { 'residual-unbalance': { shape, at: { x: x + journal - 6, y: y + 4 } } },
  };
}

/** A damper from the nose: its hub, the rubber, and the ring. Drawn for form. */
export function damper(): Drawn {
  const [x, y] = [640, 962];
  const shape = ring(x, y, 40) + ring(x, y, 27);
  const hub = ring(x, y, 23) + ring(x, y, 9);
  return {
    picture: [
      path('part', shape),
      path('cut', shape),
      path('part', hub),
      // The mark that shows whether the ring has slipped.
      path('thick', `M${String(x)} ${String(y - 40)}v13m0 4v14`),
      cross({ x, y }, 48),
    ].join(''),
    targets: { 'crank-torsion': { shape, at: { x: x + 34, y: y + 6 } } },
  };
}

/** The crank of two throws that stands for any, from the side: an arrow in each of two planes. */
export function planes(sizes: Sizes): Drawn {
  const [x, y, half] = [628, 1066, 92];
  const [main, pin, r] = [
    (sizes.mainDiameter / 2) * small,
    (sizes.crankpinDiameter / 2) * small,
    (sizes.stroke / 2) * small,
  ];
  const journal = (from: number, to: number): string =>
    box(x + from, y - main, to - from, 2 * main);
  const web = (at: number, up: number): string =>
    box(x + at - 3, y - (up > 0 ? r + pin : main), 6, r + pin + main);
  const pins = [box(x - 41, y - r - pin, 24, 2 * pin), box(x + 17, y + r - pin, 24, 2 * pin)].join(
    '',
  );
  const webs = web(-44, 1) + web(-14, 1) + web(14, -1) + web(44, -1);
  const shaft = journal(-half, -47) + journal(-11, 11) + journal(47, half);
  const arrowAt = (at: number, up: number): string => {
    const tip = round(y - up * 34);
    return `M${round(x + at)} ${round(y)}V${String(tip)}m-4 ${String(up * 8)}l4 ${String(-up * 8)}l4 ${String(up * 8)}`;
  };
  const target = box(x + 70, y - main, 22, 2 * main);
  return {
    picture: [
      path('part', shaft + webs + pins),
      line('chain', { x: x - half - 12, y }, { x: x + half + 12, y }),
      path('thick', arrowAt(-76, 1) + arrowAt(76, -1)),
    ].join(''),
    targets: { 'two-plane': { shape: target, at: { x: x + half - 8, y: y + main - 3 } } },
  };
}

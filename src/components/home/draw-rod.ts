import { assemble, beamSection, onRod, type Assembly, type Point, type Sizes } from './assembly.ts';
import {
  circle,
  crankAngle,
  cross,
  head,
  line,
  path,
  place,
  plate,
  polygon,
  round,
  scale,
  write,
  type Drawn,
} from './assembly-pen.ts';

/** The rod's sizes as they are drawn [mm]: those the example gives, and those the drawing adds. */
function rodSizes(sizes: Sizes) {
  const [housing, outside] = [sizes.rodHousing / 2, sizes.housingOutside / 2];
  const eye = 0.8 * sizes.pinDiameter;
  const half = sizes.shankHeight / 2;
  const from = Math.sqrt(outside ** 2 - half ** 2) - 1;
  const until = sizes.rodLength - Math.sqrt(eye ** 2 - half ** 2) + 1;
  const flange = half - sizes.flangeThickness;
  return { housing, outside, eye, half, flange, from, until, bolt: housing + 5.5 };
}

/** A rectangle along the rod. */
function onBeam(assembly: Assembly, points: readonly Point[]): string {
  return polygon(points.map(({ x, y }) => onRod(assembly, x, y)));
}

/** A line along the rod or across it. */
function ruled(assembly: Assembly, kind: string, from: Point, to: Point): string {
  const [start, end] = [from, to].map(({ x, y }) => place(onRod(assembly, x, y))) as [Point, Point];
  return line(kind, start, end);
}

/** The beam from outside, with its section turned into the sheet. */
function beam(sizes: Sizes, assembly: Assembly): Drawn {
  const { half, flange, from, until } = rodSizes(sizes);
  const outline = onBeam(assembly, plate(-half, from, 2 * half, until - from));
  const middle = (from + until) / 2 + 8;
  const section = onBeam(
    assembly,
    beamSection(sizes).map(({ x, y }) => ({ x, y: y + middle })),
  );
  const edges = [-flange, flange].map((x) =>
    ruled(assembly, 'thick', { x, y: from + 4 }, { x, y: until - 5 }),
  );
  return {
    picture: [path('part', outline), ...edges, path('part', section), path('cut', section)].join(
      '',
    ),
    targets: {
      'rod-shank': { shape: outline, at: place(onRod(assembly, flange + 2, middle - 18)) },
      'rod-materials': { shape: section, at: place(onRod(assembly, flange + 2, middle + 5)) },
    },
  };
}

/** Both ends in section, with cap, bolts, shells and crankpin. Bolts are not cut, as ISO 128 has it. */
function ends(sizes: Sizes, assembly: Assembly): Drawn {
  const { crankpin, wristPin } = assembly;
  const { housing, outside, eye, bolt } = rodSizes(sizes);
  const boss = onBeam(assembly, plate(-outside - 1, -15, 2 * outside + 2, 30));
  const ring = circle(crankpin, outside);
  const bolts = [-bolt, bolt]
    .map(
      (x) =>
        onBeam(assembly, plate(x - 3.2, -15, 6.4, 40)) +
        onBeam(assembly, plate(x - 5.6, -21, 11.2, 6)),
    )
    .join('');
  const shells = circle(crankpin, housing) + circle(crankpin, housing - sizes.rodShellWall);
  const pin = circle(crankpin, sizes.crankpinDiameter / 2);
  const parted = [-1, 1].map((side) =>
    ruled(assembly, 'thick', { x: side * housing, y: 0 }, { x: side * (outside + 1), y: 0 }),
  );
  const chains = [-bolt, bolt].map((x) => ruled(assembly, 'chain', { x, y: -27 }, { x, y: 31 }));
  const picture = [
    // One outline round both: drawn twice as thick, its inner half then covered.
    path('part double', boss + ring),
    ...[boss, ring].map((each) => path('paper', each)),
    ...[boss, ring].map((each) => path('cut', each)),
    ...parted,
    path('part', bolts),
    ...chains,
    path('paper', circle(crankpin, housing)),
    path('shell', shells),
    path('part', pin),
    path('cut back', pin),
    path('part', circle(wristPin, eye)),
    path('cut', circle(wristPin, eye)),
  ].join('');
  return {
    picture,
    targets: {
      'reversal-load': { shape: bolts, at: place(onRod(assembly, -bolt, 21)) },
      'bearing-clearance': { shape: shells, at: place(onRod(assembly, -housing + 1, 3)) },
    },
  };
}

/** The axes of rod and cylinder, and the angle between them. */
function axes(sizes: Sizes, assembly: Assembly): Drawn {
  const { crankpin, wristPin, lean } = assembly;
  const { outside } = rodSizes(sizes);
  const reach = 100;
  const start = place({ x: 0, y: wristPin.y - reach });
  const tip = place(onRod(assembly, 0, sizes.rodLength - reach));
  const r = round(reach * scale);
  const arc = `A${r} ${r} 0 0 ${lean < 0 ? 1 : 0} ${write(tip)}`;
  const [foot, top] = [-sizes.balanceRadius - 18, assembly.head + 8];
  return {
    picture: [
      ruled(assembly, 'chain', { x: 0, y: -outside - 12 }, { x: 0, y: sizes.rodLength + 30 }),
      line('chain', place({ x: 0, y: foot }), place({ x: 0, y: top })),
      cross(place(crankpin), 62),
      path('dimension', `M${write(start)}${arc}`),
      head(tip, { x: -Math.cos(lean), y: Math.sin(lean) }),
      head(start, { x: 1, y: 0 }),
    ].join(''),
    targets: {
      'rod-angularity': {
        shape: `M${write(place(wristPin))}L${write(start)}${arc}z`,
        at: place({ x: -2, y: wristPin.y - reach }),
      },
    },
  };
}

/** The rod with its bolts, shells, crankpin and beam. */
export function rod(sizes: Sizes): Drawn {
  const assembly = assemble(sizes, crankAngle);
  const parts = [beam, ends, axes].map((part) => part(sizes, assembly));
  return {
    picture: parts.map(({ picture }) => picture).join(''),
    targets: Object.assign({}, ...parts.map(({ targets }) => targets)) as Drawn['targets'],
  };
}

/** The drawing on the first page as SVG: what is drawn, and for each topic the shape that leads to it. */
import { lens } from '../figures/bearings/crank-throw.ts';
import {
  assemble,
  beamSection,
  grooves,
  onRod,
  pistonHalf,
  type Point,
  type Sizes,
} from './assembly.ts';
import type { DrawnTopic } from './assembly-topics.ts';

/** The sheet in drawing units; between the two elbows stands the drawing, outside them the labels. */
export const sheet = { width: 1180, height: 818, left: 288, right: 892 } as const;

/** Drawing units for one millimetre, and where the crank's axis stands. */
const scale = 2.4;
const axis = { x: 500, y: 548 } as const;
/** The crankpin stands to the left, so that the rod leans. */
const crankAngle = (-50 * Math.PI) / 180;

/** What one topic has of the drawing: the shape that is filled, as path data, and the place its line leads to. */
export interface Target {
  readonly shape: string;
  readonly at: Point;
}

const round = (value: number): string => String(Math.round(value * 100) / 100);
/** A place of the assembly [mm] in drawing units. */
const place = ({ x, y }: Point): Point => ({ x: axis.x + x * scale, y: axis.y - y * scale });
const write = ({ x, y }: Point): string => `${round(x)} ${round(y)}`;
const polygon = (points: readonly Point[]): string =>
  `M${points.map((point) => write(place(point))).join('L')}z`;
const box = (x: number, y: number, width: number, height: number): string =>
  `M${round(x)} ${round(y)}h${round(width)}v${round(height)}h${round(-width)}z`;
/** A circle about a place of the assembly, radius in [mm]. */
function circle(centre: Point, radius: number): string {
  const { x, y } = place(centre);
  const r = round(radius * scale);
  return `M${round(x - radius * scale)} ${round(y)}a${r} ${r} 0 1 0 ${round(2 * radius * scale)} 0a${r} ${r} 0 1 0 ${round(-2 * radius * scale)} 0z`;
}
const path = (kind: string, data: string): string => `<path class="${kind}" d="${data}"/>`;
const line = (kind: string, from: Point, to: Point): string =>
  path(kind, `M${write(from)}L${write(to)}`);

/** An arrowhead at `tip` (drawing units) that points along the unit vector `to`. */
function head(tip: Point, to: Point): string {
  const [long, half] = [13, 3.6];
  const foot = { x: tip.x - long * to.x, y: tip.y - long * to.y };
  const corner = (side: number): Point => ({
    x: foot.x - side * half * to.y,
    y: foot.y + side * half * to.x,
  });
  return path('solid', `M${write(tip)}L${write(corner(1))}L${write(corner(-1))}z`);
}

/** A line that shows where something is broken off, as ISO 128 draws it by hand: from one place to another, upright or level. */
function broken(from: Point, to: Point): string {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const at = (along: number, off: number): string =>
    `${round(from.x + along * dx - off * dy)} ${round(from.y + along * dy + off * dx)}`;
  return `M${at(0, 0)}C${at(0.25, 0.08)} ${at(0.3, 0.08)} ${at(0.5, 0)}S${at(0.8, -0.08)} ${at(1, 0)}`;
}

/** Both halves of an outline given to the right of the cylinder's axis, about the wrist pin. */
function mirrored(half: readonly Point[], height: number): string {
  const right = half.map(({ x, y }) => ({ x, y: y + height }));
  return polygon([...right, ...right.toReversed().map(({ x, y }) => ({ x: -x, y }))]);
}

/**
 * Draws the assembly of one set.
 *
 * @returns `picture`, the SVG of all that is drawn, and for each topic its target
 */
export function drawAssembly(sizes: Sizes): {
  readonly picture: string;
  readonly targets: Readonly<Record<DrawnTopic, Target>>;
} {
  const parts = [crank(sizes), rod(sizes), cylinder(sizes), flywheel(sizes), scales(sizes)];
  const targets = Object.assign({}, ...parts.map((part) => part.targets)) as Record<
    DrawnTopic,
    Target
  >;
  // The main journal lies behind; what the crankpin shares with it shows through the cut.
  const overlap = path('hidden', targets['crank-overlap'].shape);
  return { picture: parts.map(({ picture }) => picture).join('') + overlap, targets };
}

interface Drawn {
  readonly picture: string;
  readonly targets: Readonly<Partial<Record<DrawnTopic, Target>>>;
}

/** Web and counterweight behind the cut, the main journal behind them, and the overlap. */
function crank(sizes: Sizes): Drawn {
  const { crankpin } = assemble(sizes, crankAngle);
  const [main, pin, r] = [sizes.mainDiameter / 2, sizes.crankpinDiameter / 2, sizes.stroke / 2];
  const [sin, cos] = [Math.sin(crankAngle), Math.cos(crankAngle)];
  /** From the throw's own axes, y towards the crankpin. */
  const turn = ({ x, y }: Point): Point => ({ x: x * cos + y * sin, y: -x * sin + y * cos });
  // The counterweight reaches as far beyond its balance mass as a drilled hole needs.
  const rim = sizes.balanceRadius + 9;
  const spread = (64 * Math.PI) / 180;
  const corner = { x: rim * Math.sin(spread), y: -rim * Math.cos(spread) };
  const nose = pin + 7;
  const to = (point: Point): string => write(place(turn(point)));
  const arc = (radius: number): string => `A${round(radius * scale)} ${round(radius * scale)} 0`;
  const web =
    `M${to({ x: nose, y: r })}L${to({ x: main + 8, y: -6 })}L${to(corner)}` +
    `${arc(rim)} 0 1 ${to({ x: -corner.x, y: corner.y })}L${to({ x: -main - 8, y: -6 })}` +
    `L${to({ x: -nose, y: r })}${arc(nose)} 0 1 ${to({ x: nose, y: r })}z`;
  const holes = [-24, 24].map((degrees) => {
    const angle = (degrees * Math.PI) / 180;
    return turn({
      x: sizes.balanceRadius * Math.sin(angle),
      y: -sizes.balanceRadius * Math.cos(angle),
    });
  });
  const centre = place({ x: 0, y: 0 });
  const over = turnedLens(lens(main * scale, pin * scale, r * scale), crankAngle, centre);
  const middle = (main + r - pin) / 2;
  const picture = [
    path('part', web),
    ...holes.map((hole) => path('part', circle(hole, 5.5)) + cross(place(hole), 19)),
    path('hidden', circle({ x: 0, y: 0 }, main)),
  ].join('');
  return {
    picture,
    targets: {
      bobweight: { shape: web, at: place({ x: 52, y: -44 }) },
      'crank-overlap': { shape: over, at: place(turn({ x: 0, y: middle })) },
      // The pin without what it shares with the main journal.
      'journal-sizes': {
        shape: circle(crankpin, pin) + over,
        at: place({ x: crankpin.x - 0.5 * pin, y: crankpin.y - 0.3 * pin }),
      },
    },
  };
}

/** The path of a lens drawn upright about the origin, turned and moved: only moves, arcs and ends occur in it. */
function turnedLens(data: string, angle: number, centre: Point): string {
  const [sin, cos] = [Math.sin(angle), Math.cos(angle)];
  return data.replace(
    /(^M|\d )?(-?[\d.]+) (-?[\d.]+)(?=A|z|$)/gu,
    (_, before: string | undefined, x: string, y: string) => {
      const point = {
        x: centre.x + Number(x) * cos - Number(y) * sin,
        y: centre.y + Number(x) * sin + Number(y) * cos,
      };
      return `${before ?? ''}${write(point)}`;
    },
  );
}

/** Two short chain lines through a centre. */
function cross({ x, y }: Point, reach: number): string {
  return path(
    'chain',
    `M${round(x - reach)} ${round(y)}H${round(x + reach)}M${round(x)} ${round(y - reach)}V${round(y + reach)}`,
  );
}

/** The rod with its bolts, shells, crankpin and beam. */
function rod(sizes: Sizes): Drawn {
  const assembly = assemble(sizes, crankAngle);
  const { crankpin, wristPin, lean } = assembly;
  const along = (points: readonly Point[]): string =>
    polygon(points.map(({ x, y }) => onRod(assembly, x, y)));
  const plate = (x: number, y: number, width: number, height: number): string =>
    along([
      { x, y },
      { x: x + width, y },
      { x: x + width, y: y + height },
      { x, y: y + height },
    ]);
  const [housing, outside] = [sizes.rodHousing / 2, sizes.housingOutside / 2];
  const eye = 0.8 * sizes.pinDiameter;
  const half = sizes.shankHeight / 2;
  const flange = half - sizes.flangeThickness;
  const [from, until] = [
    Math.sqrt(outside ** 2 - half ** 2) - 1,
    sizes.rodLength - Math.sqrt(eye ** 2 - half ** 2) + 1,
  ];
  const beam = plate(-half, from, 2 * half, until - from);
  const middle = (from + until) / 2 + 8;
  const section = along(beamSection(sizes).map(({ x, y }) => ({ x, y: y + middle })));
  const boss = plate(-outside - 1, -15, 2 * outside + 2, 30);
  const ring = circle(crankpin, outside);
  const bolt = housing + 5.5;
  const bolts = [-bolt, bolt]
    .map((x) => plate(x - 3.2, -15, 6.4, 40) + plate(x - 5.6, -21, 11.2, 6))
    .join('');
  const chain = (x: number, y: number, end: number): string =>
    line('chain', place(onRod(assembly, x, y)), place(onRod(assembly, x, end)));
  const shells = circle(crankpin, housing) + circle(crankpin, housing - sizes.rodShellWall);
  const edge = (x: number): string =>
    line('thick', place(onRod(assembly, x, from + 4)), place(onRod(assembly, x, until - 5)));
  const parting = (x: number): string =>
    line(
      'thick',
      place(onRod(assembly, x, 0)),
      place(onRod(assembly, Math.sign(x) * (outside + 1), 0)),
    );
  const eyeRing = circle(wristPin, eye);
  const picture = [
    path('part', beam),
    edge(-flange),
    edge(flange),
    path('part', section),
    path('cut', section),
    // One outline round both: drawn twice as thick, its inner half then covered.
    path('part double', boss + ring),
    path('paper', boss),
    path('paper', ring),
    path('cut', boss),
    path('cut', ring),
    parting(-housing),
    parting(housing),
    path('part', bolts),
    chain(-bolt, -27, 31),
    chain(bolt, -27, 31),
    path('paper', circle(crankpin, housing)),
    path('shell', shells),
    path('part', circle(crankpin, sizes.crankpinDiameter / 2)),
    path('cut back', circle(crankpin, sizes.crankpinDiameter / 2)),
    path('part', eyeRing),
    path('cut', eyeRing),
  ].join('');
  const reach = 100;
  const [start, tip] = [
    place({ x: 0, y: wristPin.y - reach }),
    place(onRod(assembly, 0, sizes.rodLength - reach)),
  ];
  const r = round(reach * scale);
  const sector = `M${write(place(wristPin))}L${write(start)}A${r} ${r} 0 0 ${lean < 0 ? 1 : 0} ${write(tip)}z`;
  const axes =
    chain(0, -outside - 12, sizes.rodLength + 30) +
    line(
      'chain',
      place({ x: 0, y: -sizes.balanceRadius - 18 }),
      place({ x: 0, y: assembly.head + 8 }),
    ) +
    cross(place(crankpin), 62) +
    path('dimension', `M${write(start)}A${r} ${r} 0 0 ${lean < 0 ? 1 : 0} ${write(tip)}`) +
    head(tip, { x: -Math.cos(lean), y: Math.sin(lean) }) +
    head(start, { x: Math.cos(lean / 4), y: 0 });
  return {
    picture: picture + axes,
    targets: {
      'rod-shank': { shape: beam, at: place(onRod(assembly, flange + 2, middle - 18)) },
      'rod-angularity': {
        shape: sector,
        at: place({ x: -2, y: wristPin.y - reach }),
      },
      'rod-materials': { shape: section, at: place(onRod(assembly, flange + 2, middle + 5)) },
      'reversal-load': { shape: bolts, at: place(onRod(assembly, -bolt, 21)) },
      'bearing-clearance': {
        shape: shells,
        at: place(onRod(assembly, -housing + 1, 3)),
      },
    },
  };
}

/** Piston, wrist pin, rings, gas port, bore and head, the gas's arrows and the stroke. */
function cylinder(sizes: Sizes): Drawn {
  const assembly = assemble(sizes, crankAngle);
  const { wristPin, crown } = assembly;
  const bore = sizes.bore / 2;
  const land = bore - sizes.topLandClearance / 2;
  const piston = mirrored(pistonHalf(sizes, assembly), wristPin.y);
  const wallEnd = wristPin.y - 0.27 * sizes.bore - 14;
  const wall = 6;
  const liner = [-bore - wall, bore]
    .map((x) =>
      polygon([
        { x, y: assembly.head },
        { x: x + wall, y: assembly.head },
        { x: x + wall, y: wallEnd },
        { x, y: wallEnd },
      ]),
    )
    .join('');
  const top = polygon([
    { x: -bore - wall, y: assembly.head },
    { x: bore + wall, y: assembly.head },
    { x: bore + wall, y: assembly.head + 7 },
    { x: -bore - wall, y: assembly.head + 7 },
  ]);
  const rings = grooves(sizes)
    .flatMap(({ from, width, depth }) =>
      [-1, 1].map((side) => {
        const inner = bore - depth;
        return polygon([
          { x: side * inner, y: crown - from },
          { x: side * bore, y: crown - from },
          { x: side * bore, y: crown - from - width },
          { x: side * inner, y: crown - from - width },
        ]);
      }),
    )
    .join('');
  const portAt = bore - sizes.ring1Radial - 0.2;
  const port = (side: number, wider = 0): string => {
    const [middle, half] = [side * portAt, sizes.portDiameter / 2 + wider];
    return polygon([
      { x: middle - half, y: crown + wider },
      { x: middle + half, y: crown + wider },
      { x: middle + half, y: crown - sizes.topLandHeight - wider },
      { x: middle - half, y: crown - sizes.topLandHeight - wider },
    ]);
  };
  const boss = 1.02 * sizes.pinDiameter;
  const under = crown - 0.065 * sizes.bore;
  const seen = [-boss, boss]
    .map((x) => line('thick', place({ x, y: wristPin.y + 4 }), place({ x, y: under })))
    .join('');
  const pin = circle(wristPin, sizes.pinDiameter / 2) + circle(wristPin, sizes.pinBore / 2);
  const arrows = [-30, -10, 10, 30]
    .map((x) => {
      const [from, to] = [place({ x, y: assembly.head - 2 }), place({ x, y: crown + 1 })];
      return line('dimension', from, to) + head(to, { x: 0, y: 1 });
    })
    .join('');
  const gas = polygon([
    { x: -bore, y: assembly.head },
    { x: bore, y: assembly.head },
    { x: bore, y: crown },
    { x: -bore, y: crown },
  ]);
  const strokeAt = bore + wall + 14;
  const [tdc, bdc] = [
    place({ x: strokeAt, y: assembly.top }),
    place({ x: strokeAt, y: assembly.bottom }),
  ];
  const stroke =
    line('dimension', tdc, bdc) +
    head(tdc, { x: 0, y: -1 }) +
    head(bdc, { x: 0, y: 1 }) +
    [assembly.top, assembly.bottom]
      .map((y) =>
        line('extension', place({ x: bore + wall + 3, y }), place({ x: strokeAt + 4, y })),
      )
      .join('');
  const behind = path('behind', circle(wristPin, boss)) + seen;
  return {
    picture:
      behind +
      [
        path('part', piston),
        path('cut', piston),
        path('ring', rings),
        path('port', port(-1) + port(1)),
        path('part', liner + top),
        path('cut back', liner + top),
        arrows,
        path('paper', circle(wristPin, sizes.pinDiameter / 2)),
        path('part', pin),
        path('cut back', pin),
        cross(place(wristPin), 34),
        stroke,
      ].join(''),
    targets: {
      'cylinder-pressure': {
        shape: gas,
        at: place({ x: -38, y: (crown + assembly.head) / 2 + 3 }),
      },
      'ring-tension': {
        shape: rings,
        at: place({ x: -bore + 1, y: crown - sizes.topLandHeight - sizes.secondLandHeight - 1.4 }),
      },
      'gas-port': { shape: port(-1, 1.2) + port(1, 1.2), at: place({ x: -portAt, y: crown - 1 }) },
      'wrist-pin': { shape: pin, at: place({ x: 0.4 * sizes.pinDiameter, y: wristPin.y + 1 }) },
      'piston-motion': {
        shape: box(tdc.x - 9, tdc.y, 18, bdc.y - tdc.y),
        at: { x: tdc.x, y: tdc.y + 22 },
      },
    },
  };
}

/** From the side, on the same axis: main journal, flange and flywheel, all broken off. */
function flywheel(sizes: Sizes): Drawn {
  const main = (sizes.mainDiameter / 2) * scale;
  const thick = sizes.flywheelThickness * scale;
  const [start, flange] = [720, 768];
  const face = flange + 20;
  const [top, bottom] = [axis.y - 78 * scale, axis.y + 36 * scale];
  const { y } = axis;
  const stub = `${broken({ x: start, y: y + main }, { x: start, y: y - main })}H${String(flange)}V${round(y + main)}z`;
  const plate = box(flange, y - main - 12, 20, 2 * main + 24);
  const wheel = `${broken({ x: face, y: top }, { x: face + thick, y: top })}V${round(bottom)}${broken({ x: face + thick, y: bottom }, { x: face, y: bottom }).replace(/^M[^C]*/u, '')}z`;
  return {
    picture: [
      path('part', stub + plate),
      path('part', wheel),
      path('cut', wheel),
      line('chain', { x: 300, y }, { x: face + thick + 20, y }),
    ].join(''),
    targets: {
      'rotating-inertia': { shape: wheel + plate + stub, at: { x: face + thick - 6, y: y - 150 } },
    },
  };
}

/** A third as large, beside the section: the rod on the two scales that weigh its ends. */
function scales(sizes: Sizes): Drawn {
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

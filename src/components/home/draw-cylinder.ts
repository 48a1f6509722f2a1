import {
  assemble,
  grooves,
  pistonHalf,
  type Assembly,
  type Point,
  type Sizes,
} from './assembly.ts';
import {
  box,
  circle,
  crankAngle,
  cross,
  head,
  line,
  path,
  place,
  plate,
  polygon,
  type Drawn,
} from './assembly-pen.ts';

/** How thick the cut wall is drawn [mm]; the example has no number for it. */
const wall = 6;

/** Both halves of an outline given to the right of the cylinder's axis, about the wrist pin. */
function mirrored(half: readonly Point[], height: number): string {
  const right = half.map(({ x, y }) => ({ x, y: y + height }));
  return polygon([...right, ...right.toReversed().map(({ x, y }) => ({ x: -x, y }))]);
}

/** The piston in section with its rings and gas ports, and its bosses behind the cut. */
function piston(sizes: Sizes, assembly: Assembly): Drawn {
  const { wristPin, crown } = assembly;
  const bore = sizes.bore / 2;
  const outline = mirrored(pistonHalf(sizes, assembly), wristPin.y);
  const rings = grooves(sizes)
    .flatMap(({ from, width, depth }) =>
      [-bore, bore - depth].map((x) => polygon(plate(x, crown - from - width, depth, width))),
    )
    .join('');
  const portAt = bore - sizes.ring1Radial - 0.2;
  const ports = (wider: number): string =>
    [-portAt, portAt]
      .map((middle) => {
        const width = sizes.portDiameter + 2 * wider;
        const foot = crown - sizes.topLandHeight - wider;
        return polygon(plate(middle - width / 2, foot, width, sizes.topLandHeight + 2 * wider));
      })
      .join('');
  const boss = 1.02 * sizes.pinDiameter;
  const under = crown - 0.065 * sizes.bore;
  const sides = [-boss, boss].map((x) =>
    line('thick', place({ x, y: wristPin.y + 4 }), place({ x, y: under })),
  );
  const second = crown - sizes.topLandHeight - sizes.secondLandHeight - 1.4;
  return {
    picture: [
      path('behind', circle(wristPin, boss)),
      ...sides,
      path('part', outline),
      path('cut', outline),
      path('ring', rings),
      path('port', ports(0)),
    ].join(''),
    targets: {
      'ring-tension': { shape: rings, at: place({ x: -bore + 1, y: second }) },
      'gas-port': { shape: ports(1.2), at: place({ x: -portAt, y: crown - 1 }) },
    },
  };
}

/** The wrist pin, cut. */
function wristPinCut(sizes: Sizes, { wristPin }: Assembly): Drawn {
  const outside = circle(wristPin, sizes.pinDiameter / 2);
  const pin = outside + circle(wristPin, sizes.pinBore / 2);
  const at = place({ x: 0.4 * sizes.pinDiameter, y: wristPin.y + 1 });
  return {
    picture: [
      path('paper', outside),
      path('part', pin),
      path('cut back', pin),
      cross(place(wristPin), 34),
    ].join(''),
    targets: { 'wrist-pin': { shape: pin, at } },
  };
}

/** Bore and head in section, and the gas that presses on the crown. */
function walls(sizes: Sizes, assembly: Assembly): Drawn {
  const { wristPin, crown, head: roof } = assembly;
  const bore = sizes.bore / 2;
  const foot = wristPin.y - 0.27 * sizes.bore - 14;
  const cut = [
    plate(-bore - wall, foot, wall, roof - foot),
    plate(bore, foot, wall, roof - foot),
    plate(-bore - wall, roof, 2 * (bore + wall), 7),
  ]
    .map(polygon)
    .join('');
  const arrows = [-30, -10, 10, 30].map((x) => {
    const [from, to] = [place({ x, y: roof - 2 }), place({ x, y: crown + 1 })];
    return line('dimension', from, to) + head(to, { x: 0, y: 1 });
  });
  return {
    picture: [path('part', cut), path('cut back', cut), ...arrows].join(''),
    targets: {
      'cylinder-pressure': {
        shape: polygon(plate(-bore, crown, 2 * bore, roof - crown)),
        at: place({ x: -38, y: (crown + roof) / 2 + 3 }),
      },
    },
  };
}

/** The stroke as a dimension beside the bore, from the wrist pin's height at TDC to that at BDC. */
function stroke(sizes: Sizes, { top, bottom }: Assembly): Drawn {
  const edge = sizes.bore / 2 + wall;
  const x = edge + 14;
  const [tdc, bdc] = [place({ x, y: top }), place({ x, y: bottom })];
  const extensions = [top, bottom].map((y) =>
    line('extension', place({ x: edge + 3, y }), place({ x: x + 4, y })),
  );
  return {
    picture: [
      line('dimension', tdc, bdc),
      head(tdc, { x: 0, y: -1 }),
      head(bdc, { x: 0, y: 1 }),
      ...extensions,
    ].join(''),
    targets: {
      'piston-motion': {
        shape: box(tdc.x - 9, tdc.y, 18, bdc.y - tdc.y),
        at: { x: tdc.x, y: tdc.y + 22 },
      },
    },
  };
}

/** Piston, rings, gas ports, bore and head, wrist pin and stroke. */
export function cylinder(sizes: Sizes): Drawn {
  const assembly = assemble(sizes, crankAngle);
  const parts = [piston, walls, wristPinCut, stroke].map((part) => part(sizes, assembly));
  return {
    picture: parts.map(({ picture }) => picture).join(''),
    targets: Object.assign({}, ...parts.map(({ targets }) => targets)) as Drawn['targets'],
  };
}

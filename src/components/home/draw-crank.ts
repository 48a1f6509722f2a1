import { assemble, type Point, type Sizes } from './assembly.ts';
import {
  axis,
  box,
  broken,
  circle,
  crankAngle,
  cross,
  line,
  path,
  place,
  round,
  scale,
  write,
  type Drawn,
} from './assembly-pen.ts';

/** Where the shaft to the gears is broken off. */
const shaftEnd = 852;

/** The start of an arc about a radius in [mm], up to its two flags. */
function arc(radius: number): string {
  return `A${round(radius * scale)} ${round(radius * scale)} 0`;
}

/**
 * What the main journal and the crankpin share, or nothing where they do not meet.
 *
 * @param to writes a place given along the throw
 */
function lens(main: number, pin: number, radius: number, to: (point: Point) => string): string {
  const y = (main ** 2 - pin ** 2 + radius ** 2) / (2 * radius);
  if (Math.abs(y) >= main) return '';
  const x = Math.sqrt(main ** 2 - y ** 2);
  const [left, right] = [to({ x: -x, y }), to({ x, y })];
  return `M${left}${arc(main)} ${y < 0 ? 1 : 0} 1 ${right}${arc(pin)} ${y > radius ? 1 : 0} 1 ${left}z`;
}

/** A centre of mass: a circle in four quarters, two of them filled. Radius in [mm]. */
function centreOfMass(centre: Point, radius: number): string {
  const { x, y } = place(centre);
  const r = round(radius * scale);
  const quarter = (from: number): string =>
    `M${write({ x, y })}h${round(from * radius * scale)}A${r} ${r} 0 0 1 ${round(x)} ${round(y + from * radius * scale)}z`;
  return path('part', circle(centre, radius)) + path('solid', quarter(1) + quarter(-1));
}

/** Web and counterweight behind the cut, the main journal behind them, and the overlap. */
export function crank(sizes: Sizes): Drawn {
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
  const besideHoles = (-46 * Math.PI) / 180;
  const slug = turn({
    x: sizes.balanceRadius * Math.sin(besideHoles),
    y: -sizes.balanceRadius * Math.cos(besideHoles),
  });
  const over = lens(main, pin, r, to);
  const middle = (main + r - pin) / 2;
  const balance = turn({ x: 0, y: -sizes.balanceRadius });
  const picture = [
    path('part', web),
    ...holes.map((hole) => path('part', circle(hole, 5.5)) + cross(place(hole), 19)),
    path('part', circle(slug, 6)),
    path('cut', circle(slug, 6)),
    centreOfMass(balance, 5),
    path('hidden', circle({ x: 0, y: 0 }, main)),
  ].join('');
  return {
    picture,
    targets: {
      bobweight: { shape: web, at: place({ x: -8, y: -36 }) },
      'balance-factor': {
        shape: circle(balance, 8),
        at: place({ x: balance.x + 4, y: balance.y }),
      },
      'counterweight-drilling': {
        shape: holes.map((hole) => circle(hole, 5.5)).join(''),
        at: place(holes[0] ?? balance),
      },
      'heavy-metal': { shape: circle(slug, 6), at: place(slug) },
      'crank-overlap': { shape: over, at: place(turn({ x: 0, y: middle })) },
      // The pin without what it shares with the main journal.
      'journal-sizes': {
        shape: circle(crankpin, pin) + over,
        at: place({ x: crankpin.x - 0.5 * pin, y: crankpin.y - 0.3 * pin }),
      },
    },
  };
}

/** From the side, on the same axis: main journal, flange, flywheel and the shaft to the gears, all broken off. */
export function flywheel(sizes: Sizes): Drawn {
  const main = (sizes.mainDiameter / 2) * scale;
  const thick = sizes.flywheelThickness * scale;
  const [start, flange] = [720, 768];
  const face = flange + 20;
  const [top, bottom] = [axis.y - 78 * scale, axis.y + 36 * scale];
  const { y } = axis;
  const stub = `${broken({ x: start, y: y + main }, { x: start, y: y - main })}H${String(flange)}V${round(y + main)}z`;
  const flangePlate = box(flange, y - main - 12, 20, 2 * main + 24);
  const wheel = `${broken({ x: face, y: top }, { x: face + thick, y: top })}V${round(bottom)}${broken({ x: face + thick, y: bottom }, { x: face, y: bottom }).replace(/^M[^C]*/u, '')}z`;
  // No number of the example is the shaft's: it is drawn a third as thick as the main journal.
  const back = face + thick;
  const shaft = `M${round(back)} ${round(y - main / 3)}H${String(shaftEnd)}${broken({ x: shaftEnd, y: y - main / 3 }, { x: shaftEnd, y: y + main / 3 }).replace(/^M[^C]*/u, '')}H${round(back)}z`;
  return {
    picture: [
      path('part', stub + flangePlate),
      path('part', wheel),
      path('cut', wheel),
      path('part', shaft),
      line('chain', { x: 300, y }, { x: shaftEnd + 14, y }),
    ].join(''),
    targets: {
      'rotating-inertia': {
        shape:
          `${broken({ x: face, y: top }, { x: back, y: top })}V${round(y)}H${round(face)}z` +
          flangePlate +
          stub,
        at: { x: back - 6, y: y - 150 },
      },
      'inertia-through-gears': { shape: shaft, at: { x: shaftEnd - 14, y: y - 4 } },
      'speed-fluctuation': {
        shape: `M${round(face)} ${round(y)}H${round(back)}V${round(bottom)}${broken({ x: back, y: bottom }, { x: face, y: bottom }).replace(/^M[^C]*/u, '')}z`,
        at: { x: back - 6, y: y + 60 },
      },
    },
  };
}

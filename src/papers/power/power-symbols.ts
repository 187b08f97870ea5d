import { pathShape } from '../drawing/marks.ts';
import type { PathStep } from '../drawing/path-data.ts';
import type { Point } from '../drawing/point.ts';
import { polyline, rectangle } from '../drawing/polyline.ts';
import type { Shape, Stroke } from '../drawing/shapes.ts';
import type { PowerSymbol } from './power-node.ts';

/** Room of one symbol along the line, its leads with it. */
export const symbolMm = 10;

const line: Stroke = { ink: 'power', widthMm: 0.35 };
const plate: Stroke = { ink: 'power', widthMm: 0.9 };

const strokes = (at: Point, paths: readonly (readonly Point[])[], stroke: Stroke = line): Shape =>
  pathShape(
    paths.flatMap((points) => polyline(points.map(([x, y]): Point => [at[0] + x, at[1] + y]))),
    { stroke },
  );

const boxAt = (at: Point, { widthMm, heightMm }: { widthMm: number; heightMm: number }): PathStep[] =>
  rectangle({
    leftMm: at[0] + (symbolMm - widthMm) / 2,
    topMm: at[1] - heightMm / 2,
    widthMm,
    heightMm,
  });

/** The two leads of a box, and the box. */
const boxed = (at: Point, size: { widthMm: number; heightMm: number }, dashMm?: readonly number[]): Shape[] => {
  const sideMm = (symbolMm - size.widthMm) / 2;
  return [
    strokes(at, [
      [
        [0, 0],
        [sideMm, 0],
      ],
      [
        [symbolMm - sideMm, 0],
        [symbolMm, 0],
      ],
    ]),
    pathShape(boxAt(at, size), { stroke: dashMm === undefined ? line : { ...line, dashMm }, fill: 'paper' }),
  ];
};

/** A contact that opens: its arm hinges at the right and lifts off the left lead. */
const contact = (at: Point): Shape =>
  strokes(at, [
    [
      [0, 0],
      [2.6, 0],
    ],
    [
      [2.9, -2.2],
      [7.4, 0],
      [symbolMm, 0],
    ],
  ]);

/** Two cells: the long thin plate is plus, and the line leaves there. */
const battery = (at: Point): Shape[] => [
  strokes(
    at,
    [
      [
        [1.2, -1.3],
        [1.2, 1.3],
      ],
      [
        [4.4, -1.3],
        [4.4, 1.3],
      ],
    ],
    plate,
  ),
  strokes(at, [
    [
      [2.8, -2.6],
      [2.8, 2.6],
    ],
    [
      [6, -2.6],
      [6, 2.6],
    ],
    [
      [2.8, 0],
      [4.4, 0],
    ],
    [
      [6, 0],
      [symbolMm, 0],
    ],
  ]),
];

/** The rectangle with the line through it. */
const fuse = (at: Point): Shape[] => [
  ...boxed(at, { widthMm: 5.6, heightMm: 2.2 }),
  strokes(at, [
    [
      [2.2, 0],
      [7.8, 0],
    ],
  ]),
];

/** A contact with a cross where it opens: it breaks a fault by itself. */
const breaker = (at: Point): Shape[] => [
  contact(at),
  strokes(at, [
    [
      [1.7, -0.9],
      [3.5, 0.9],
    ],
    [
      [1.7, 0.9],
      [3.5, -0.9],
    ],
  ]),
];

/** A contact with a bar where it opens: it parts a circuit and keeps it apart. */
const isolator = (at: Point): Shape[] => [
  contact(at),
  strokes(at, [
    [
      [2.6, -1.1],
      [2.6, 1.1],
    ],
  ]),
];

/** A square with a diagonal, the two lines of direct current on each side of it. */
const converter = (at: Point): Shape[] => [
  ...boxed(at, { widthMm: 5.4, heightMm: 5.4 }),
  strokes(at, [
    [
      [2.3, 2.7],
      [7.7, -2.7],
    ],
    ...[-1.7, -1].map((y): Point[] => [
      [2.9, y],
      [4.4, y],
    ]),
    ...[1, 1.7].map((y): Point[] => [
      [5.6, y],
      [7.1, y],
    ]),
  ]),
];

/** A unit: the plain box of any apparatus, at the end of the line. */
const load = (at: Point): Shape[] => [
  strokes(at, [
    [
      [0, 0],
      [2, 0],
    ],
  ]),
  pathShape(boxAt(at, { widthMm: 6, heightMm: 4 }), { stroke: line, fill: 'paper' }),
];

/** A backbone: a piece of thick trunk with the small squares of two tees, as on the boat drawing. */
const bus = (at: Point): Shape[] => [
  strokes(at, [
    [
      [0, 0],
      [5, 0],
    ],
  ]),
  strokes(
    at,
    [
      [
        [5, -2.4],
        [5, 2.4],
      ],
    ],
    { ink: 'data', widthMm: 0.95 },
  ),
  ...[-1.9, 1.9].map((y) =>
    pathShape(rectangle({ leftMm: at[0] + 4.1, topMm: at[1] + y - 0.9, widthMm: 1.8, heightMm: 1.8 }), {
      stroke: { ink: 'data', widthMm: 0.35 },
      fill: 'paper',
    }),
  ),
];

const drawn: Readonly<Record<PowerSymbol, (at: Point) => Shape[]>> = {
  battery,
  fuse,
  breaker,
  switch: isolator,
  converter,
  load,
  bus,
  unknown: (at) => boxed(at, { widthMm: 5.6, heightMm: 2.2 }, [0.8, 0.6]),
};

/** What each symbol stands for, beside it and in the key. */
export const symbolWords: Readonly<Record<PowerSymbol, string>> = {
  battery: 'battery',
  fuse: 'fuse',
  breaker: 'circuit breaker',
  switch: 'switch',
  converter: 'DC converter',
  load: 'unit that draws',
  bus: 'backbone',
  unknown: 'not looked up yet',
};

/**
 * A symbol in the form of IEC 60617 (from memory: the standard itself was not open to us) on a line that runs to the right; `at` is where its left lead starts, and it takes
 * `symbolMm`.
 */
export const powerSymbol = (kind: PowerSymbol, at: Point): Shape[] => drawn[kind](at);

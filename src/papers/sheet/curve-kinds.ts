import type { PlacedStrip } from './strip-layout.ts';

/** What the curve under a strip may tell; the first is the one nobody has chosen. */
export const curveKinds = ['volts', 'lost volts', 'load'] as const;
export type CurveKind = (typeof curveKinds)[number];

/** The same in a few words, over the column that takes the curve's place on a narrow sheet. */
export const curveHeads: Readonly<Record<CurveKind, string>> = {
  volts: 'volts at the plug',
  'lost volts': 'volts lost',
  load: 'load of the trunk',
};

/** A point of a curve: under which x of the strip, how much, and what it is about. */
export interface CurvePoint {
  readonly xMm: number;
  readonly value: number;
  readonly about: readonly string[];
}

/** One curve as it is read: its points from left to right, where its axis starts, and what it is held against. */
export interface Curve {
  readonly points: readonly CurvePoint[];
  /** where figures stand and, on a curve of points, dots; the points themselves unless it runs in steps */
  readonly figuresAt?: readonly CurvePoint[];
  readonly caption: string;
  readonly unit: string;
  readonly decimals: number;
  /** the least value the axis shows beside those of the points */
  readonly fromValue?: number;
  readonly limit?: { readonly value: number; readonly words: string };
}

const atPlugs = (placed: PlacedStrip, which: 'lowestV' | 'dropV'): CurvePoint[] =>
  placed.nodes.flatMap((node) => {
    const value = node[which];
    return value === undefined ? [] : [{ xMm: node.xMm, value, about: node.mark?.about ?? [] }];
  });

/** Where the load changes at a stop: at its feed, else in the middle of its tees. */
const stopMiddles = (placed: PlacedStrip): ReadonlyMap<number, number> => {
  const stops = new Map<number, { sumMm: number; count: number; feedMm?: number }>();
  for (const { stop, xMm, kind } of placed.nodes) {
    const before = stops.get(stop) ?? { sumMm: 0, count: 0 };
    stops.set(stop, {
      ...before,
      sumMm: before.sumMm + xMm,
      count: before.count + 1,
      ...(kind === 'feed' ? { feedMm: xMm } : {}),
    });
  }
  return new Map([...stops].map(([stop, { sumMm, count, feedMm }]) => [stop, feedMm ?? sumMm / count]));
};

interface Load {
  readonly fromMm: number;
  readonly toMm: number;
  readonly carriesLen: number;
  readonly about: readonly string[];
}

/** The load is the same from one stop to the next. */
const loadsOf = (placed: PlacedStrip): Load[] => {
  const { nodes, strip } = placed;
  const middles = stopMiddles(placed);
  return strip.stretches.flatMap(({ afterNode, carriesLen, about }) => {
    const fromMm = middles.get(nodes[afterNode]?.stop ?? -1);
    const toMm = middles.get(nodes[afterNode + 1]?.stop ?? -1);
    return fromMm === undefined || toMm === undefined || carriesLen === undefined
      ? []
      : [{ fromMm, toMm, carriesLen, about }];
  });
};

const loadPoints = (placed: PlacedStrip): { points: CurvePoint[]; figuresAt: CurvePoint[] } => {
  const loads = loadsOf(placed);
  return {
    points: loads.flatMap(({ fromMm, toMm, carriesLen: value, about }) => [
      { xMm: fromMm, value, about },
      { xMm: toMm, value, about },
    ]),
    figuresAt: loads.map(({ fromMm, toMm, carriesLen: value, about }) => ({ xMm: (fromMm + toMm) / 2, value, about })),
  };
};

/** The curve of one kind for one strip; without points where nothing feeds the bus. */
export const curveOf = (placed: PlacedStrip, kind: CurveKind): Curve => {
  const { held } = placed.strip.bus;
  switch (kind) {
    case 'volts':
      return {
        points: atPlugs(placed, 'lowestV'),
        caption: placed.strip.withAll
          ? 'volts at the plug, everything drawing'
          : 'volts at the plug, bank at its lowest',
        unit: 'V',
        decimals: 2,
        ...(held === undefined ? {} : { limit: { value: held.leastV, words: 'least' } }),
      };
    case 'lost volts':
      return {
        points: atPlugs(placed, 'dropV'),
        caption: 'volts lost between panel and plug',
        unit: 'V',
        decimals: 2,
        fromValue: 0,
        ...(held?.lostV === undefined ? {} : { limit: { value: held.lostV, words: 'most' } }),
      };
    case 'load':
      return {
        ...loadPoints(placed),
        caption: 'load that the trunk carries, 1 LEN = 50 mA',
        unit: 'LEN',
        decimals: 0,
        fromValue: 0,
        ...(held?.legLen === undefined ? {} : { limit: { value: held.legLen, words: 'most' } }),
      };
  }
};

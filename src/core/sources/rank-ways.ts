import type { BoatIndex } from '../boat/boat-index.ts';
import { byCodeUnit } from '../boat/ids.ts';
import { sensorKinds } from '../facts/source-choice.ts';
import { isScreen } from '../readings/before-and-after.ts';
import type { PortNetwork } from '../readings/port-network.ts';
import type { WayIn } from '../readings/ways-in.ts';
import type { Better } from '../sources-shape.ts';

/** How far the sheets of a way can be trusted, the least first. */
export const trust = ['typical', 'manual', 'recording'] as const;

/** The least trusted sheet of the units of a way. */
export const restsOn = (index: BoatIndex, way: WayIn): (typeof trust)[number] => {
  const ranks = way.kit.map((kit) => trust.indexOf(index.sheetOf.get(kit)?.source ?? 'typical'));
  return trust[Math.min(...ranks)] ?? 'typical';
};

/** Units that turn a reading into another message on a way; a switch and a unit in line only let it through. */
export const convertersOn = (network: PortNetwork, { ports, kit }: WayIn): number =>
  ports.filter((port, at) => {
    const node = network.nodes.get(port);
    const next = network.nodes.get(ports[at + 1] ?? '');
    return node !== undefined && next !== undefined && kit[at] === next.kit && !node.group.includes(next);
  }).length;

const sensorRank = (index: BoatIndex, [source = '']: readonly string[]): number => {
  if (sensorKinds.has(index.sheetOf.get(source)?.kind ?? '')) return 0;
  return isScreen(index, source) ? 2 : 1;
};

const referenceRank = ({ signal, wanted }: WayIn): number => {
  if (signal.reference === 'lost') return 3;
  if (wanted.references.length === 0) return 0;
  if (signal.reference === undefined) return 2;
  return wanted.references.includes(signal.reference) ? 0 : 1;
};

const offsetRank = ({ signal }: WayIn): number =>
  signal.reading !== 'depth' || signal.withOffset === true ? 0 : signal.withOffset === undefined ? 1 : 2;

/** A way with what it is ranked by; the lower figure is the better in each. */
export interface RankedWay {
  readonly way: WayIn;
  readonly figures: readonly (readonly [Better, number])[];
}

const most = Number.MAX_SAFE_INTEGER;

/** Measures a way by everything a source is chosen by, in its order (source: choice-source-order). */
export const rankedWay = (network: PortNetwork, way: WayIn): RankedWay => ({
  way,
  figures: [
    ['sensor', sensorRank(network.index, way.kit)],
    ['reference', referenceRank(way)],
    ['offset', offsetRank(way)],
    ['rate', way.signal.everyMs ?? most],
    ['converters', convertersOn(network, way)],
    ['rests', -trust.indexOf(restsOn(network.index, way))],
    ['number', way.signal.instance ?? most],
    ['path', way.ports.length],
  ],
});

const messageOf = ({ signal }: WayIn): string => String(signal.message ?? '');

/** Below 0 where `a` comes before `b`; two that are equal in every figure stand by the names of their ports. */
export const compareWays = (a: RankedWay, b: RankedWay): number => {
  for (const [at, [, figure]] of a.figures.entries()) {
    const other = b.figures[at]?.[1] ?? 0;
    if (figure !== other) return figure - other;
  }
  return byCodeUnit(a.way.ports.join(' '), b.way.ports.join(' ')) || byCodeUnit(messageOf(a.way), messageOf(b.way));
};

/** The first figure in which the one way is better than the other; undefined where it is the other that is better. */
export const whyBetter = (one: RankedWay, other: RankedWay): Better | undefined => {
  for (const [at, [by, figure]] of one.figures.entries()) {
    const theirs = other.figures[at]?.[1] ?? 0;
    if (figure !== theirs) return figure < theirs ? by : undefined;
  }
  return compareWays(one, other) < 0 ? 'name' : undefined;
};

import type { BoatIndex } from '../boat/boat-index.ts';
import type { LineKind } from '../boat/boat-schema.ts';
import { byCodeUnit } from '../boat/ids.ts';
import type { LineEntry, StandingJoin } from '../plan-shape.ts';
import { withCoaxKind } from './coax-of-line.ts';
import { keptCables, keptLine, type LineEnd, type LineGap, laidLine, lineId } from './line-entry.ts';
import type { Router } from './routes.ts';
import { tailOf } from './tails.ts';

/** The lines of the joins that are no bus, sorted by id; what each join runs on; and the lines no way leads for. */
export interface JoinLines {
  readonly lines: readonly LineEntry[];
  readonly linesOf: ReadonlyMap<string, readonly string[]>;
  readonly gaps: readonly LineGap[];
}

interface Wanted {
  readonly kind: LineKind;
  readonly ends: readonly [JoinEnd, JoinEnd];
  readonly joins: string[];
}

interface JoinEnd extends LineEnd {
  readonly kit: string;
}

/**
 * The cables of all joins but the buses: from the talker's plug to each listener's, or between the two of a join without
 * direction, by the least cost over ways that allow them, a tail at either end. Joins of one kind between the same two
 * plugs share one line; wifi has none. A kept cable that serves the join is used as it lies.
 */
export const joinLines = ({
  index,
  router,
  joins,
}: {
  readonly index: BoatIndex;
  readonly router: Router;
  readonly joins: readonly StandingJoin[];
}): JoinLines => {
  const wanted = wantedLines(index, joins);
  const lineCount = new Map<string, number>();
  for (const join of [...wanted.values()].flatMap((want) => want.joins)) {
    lineCount.set(join, (lineCount.get(join) ?? 0) + 1);
  }
  const lines: LineEntry[] = [];
  const gaps: LineGap[] = [];
  const linesOf = new Map<string, string[]>(joins.map(({ id }) => [id, []]));
  for (const [id, want] of wanted) {
    const alone = want.joins.every((join) => lineCount.get(join) === 1);
    const line = joinLine({ index, router, want, alone });
    if (line === undefined) {
      const [from, to] = want.ends;
      gaps.push({ kind: want.kind, from: from.name, to: to.name, serves: want.joins });
      continue;
    }
    lines.push(line);
    for (const join of want.joins) linesOf.get(join)?.push(id);
  }
  return { lines, linesOf, gaps };
};

/** The kind of line that a join of each kind is made of; wifi has none, and a bus has its trunk and drops. */
export const lineKindOf: Readonly<Record<StandingJoin['kind'], LineKind | undefined>> = {
  nmea2000: undefined,
  nmea0183: 'pair',
  ethernet: 'ethernet',
  'single-wire': 'single-wire',
  analog: 'analog',
  'engine-can': 'engine-can',
  modbus: 'modbus',
  coax: 'coax',
  video: 'video',
  audio: 'audio',
  usb: 'usb',
  wifi: undefined,
};

/** The lines wanted, by id in order, ends sorted by name. */
const wantedLines = (index: BoatIndex, joins: readonly StandingJoin[]): ReadonlyMap<string, Wanted> => {
  const wanted = new Map<string, Wanted>();
  for (const join of joins) {
    const kind = lineKindOf[join.kind];
    if (kind === undefined) continue;
    for (const pair of memberPairs(join)) {
      const [one, other] = pair.map((member) => joinEnd(index, member)).sort(byName);
      if (one === undefined || other === undefined || one.kit === other.kit) continue;
      const id = lineId({ kind, ends: [one.name, other.name] });
      const known = wanted.get(id);
      if (known === undefined) wanted.set(id, { kind, ends: [one, other], joins: [join.id] });
      else if (!known.joins.includes(join.id)) known.joins.push(join.id);
    }
  }
  return new Map([...wanted].sort(([one], [other]) => byCodeUnit(one, other)));
};

type Member = StandingJoin['members'][number];

const memberPairs = ({ members }: StandingJoin): readonly (readonly [Member, Member])[] => {
  const talkers = members.filter((member) => member.as === 'talk');
  const listeners = members.filter((member) => member.as === 'listen');
  if (talkers.length > 0) return talkers.flatMap((talker) => listeners.map((listener) => [talker, listener] as const));
  const [one, other] = members;
  return one === undefined || other === undefined || members.length > 2 ? [] : [[one, other]];
};

const joinEnd = (index: BoatIndex, { kit, port }: Member): JoinEnd | undefined => {
  const plug = index.sheetOf.get(kit)?.ports.find((entry) => entry.id === port)?.onPlug;
  const place = index.kit.get(kit)?.place;
  return plug === undefined || place === undefined ? undefined : { kit, name: `${kit}.${plug}`, place };
};

// An end that could not be found comes last, where its line is dropped.
const byName = (one: JoinEnd | undefined, other: JoinEnd | undefined): number =>
  one === undefined || other === undefined
    ? Number(one === undefined) - Number(other === undefined)
    : byCodeUnit(one.name, other.name);

const joinLine = ({
  index,
  router,
  want: { kind, ends, joins },
  alone,
}: {
  readonly index: BoatIndex;
  readonly router: Router;
  readonly want: Wanted;
  /** whether its joins run on no other line: then a kept cable that says no plug can only be this one */
  readonly alone: boolean;
}): LineEntry | undefined => {
  const names = ends.map(({ name }) => name);
  const cables = keptCables({ index, serves: joins, kind }).filter((cable) => {
    const at = [cable.from.at, cable.to.at].filter((end) => end !== undefined);
    return at.length === 0 ? alone : at.some((end) => names.includes(end));
  });
  const kept = keptLine({ index, router, kind, ends, cables, loose: true });
  if (kept !== undefined) return kept;
  const line = lineId({ kind, ends: [ends[0].name, ends[1].name] });
  const route = router.cheapest({ kind, from: ends[0].place, to: ends[1].place, line });
  if (route === undefined) return undefined;
  const tails = ends.map(({ kit }) => tailOf({ index, kit, kind }));
  return withCoaxKind(index, laidLine({ index, kind, ends, route, tails }));
};

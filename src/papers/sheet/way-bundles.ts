import type { Way } from '../../core/boat/boat-schema.ts';
import type { LineEntry, Plan } from '../../core/plan-shape.ts';
import { byCodeUnit } from '../../core/units/by-code-unit.ts';
import type { DrawnBoat } from './drawn-boat.ts';
import { codeOf, type LineCode, leavingCode } from './line-code.ts';

/** Lines of one kind that run through one way: one stroke of its bundle. */
export interface Lane {
  readonly code: LineCode;
  readonly about: readonly string[];
  /** the sides to which it talks: along the way's ends as written, against them, or both */
  readonly talks: readonly ('along' | 'against')[];
  readonly leaving: boolean;
}

/** One way and the strokes that run through it side by side. */
export interface WayBundle {
  readonly way: Way;
  readonly guessed: boolean;
  readonly lanes: readonly Lane[];
}

/** Left to right across the bundle; the trunk lies in the middle. */
const laneOrder: readonly LineEntry['kind'][] = [
  'coax',
  'usb',
  'video',
  'audio',
  'ethernet',
  'drop',
  'trunk',
  'pair',
  'single-wire',
  'engine-can',
  'modbus',
  'analog',
  'feed',
  'feeder',
];

interface Pass {
  readonly line: LineEntry;
  readonly along: boolean;
}

const passesByWay = (lines: readonly LineEntry[], index: DrawnBoat): ReadonlyMap<string, readonly Pass[]> => {
  const passes = new Map<string, Pass[]>();
  for (const line of lines) {
    for (const [order, way] of line.ways.entries()) {
      const along = line.places[order] === index.ways.get(way)?.ends[0];
      const before = passes.get(way);
      if (before === undefined) passes.set(way, [{ line, along }]);
      else before.push({ line, along });
    }
  }
  return passes;
};

/** Talkers by line, so that an arrow can show which way a pair talks. */
const talkers = (plan: Plan): ReadonlyMap<string, ReadonlySet<string>> => {
  const byLine = new Map<string, Set<string>>();
  for (const join of plan.joins) {
    for (const line of join.lines) {
      const units = byLine.get(line) ?? new Set();
      for (const member of join.members) if (member.as === 'talk') units.add(member.kit);
      byLine.set(line, units);
    }
  }
  return byLine;
};

const talksOf = (passes: readonly Pass[], talking: ReturnType<typeof talkers>): Lane['talks'] => {
  const sides = new Set<'along' | 'against'>();
  for (const { line, along } of passes) {
    const units = talking.get(line.id);
    if (units === undefined) continue;
    if (units.has(line.from.split('.')[0] ?? '')) sides.add(along ? 'along' : 'against');
    if (units.has(line.to.split('.')[0] ?? '')) sides.add(along ? 'against' : 'along');
  }
  return [...sides].sort(byCodeUnit);
};

/** Each pass of the trunk is a stroke of its own; other lines of one kind share one. */
const lanesOf = (passes: readonly Pass[], talking: ReturnType<typeof talkers>): Lane[] =>
  laneOrder.flatMap((kind) => {
    const own = passes.filter((pass) => pass.line.kind === kind);
    if (own.length === 0) return [];
    const strokes = kind === 'trunk' ? own.map((pass) => [pass]) : [own];
    return strokes.map((stroke) => ({
      code: codeOf(kind),
      about: [...new Set(stroke.map((pass) => pass.line.id))].sort(byCodeUnit),
      talks: codeOf(kind).arrows === true ? talksOf(stroke, talking) : [],
      leaving: false,
    }));
  });

const leavingLane = (index: DrawnBoat, way: string): Lane[] => {
  const leaving = [...index.cables.values()].filter((cable) => cable.fate === 'goes' && cable.ways.includes(way));
  if (leaving.length === 0) return [];
  return [{ code: leavingCode, about: leaving.map((cable) => cable.id).sort(byCodeUnit), talks: [], leaving: true }];
};

/** The lines of a plan sorted into the ways they run through, with the old cables that leave. */
export const wayBundles = ({
  plan,
  index,
  withFeeds,
}: {
  plan: Plan;
  index: DrawnBoat;
  withFeeds: boolean;
}): WayBundle[] => {
  const isPower = (line: LineEntry): boolean => line.kind === 'feed' || line.kind === 'feeder';
  const shown = withFeeds ? plan.lines : plan.lines.filter((line) => !isPower(line));
  const passes = passesByWay(shown, index);
  const talking = talkers(plan);
  return [...index.ways.values()]
    .sort((a, b) => byCodeUnit(a.id, b.id))
    .map((way) => ({
      way,
      guessed: way.length.how === 'guessed',
      // a finding on the way lights every line in it
      lanes: [...lanesOf(passes.get(way.id) ?? [], talking), ...leavingLane(index, way.id)].map((lane) => ({
        ...lane,
        about: [...lane.about, way.id],
      })),
    }))
    .filter((bundle) => bundle.lanes.length > 0);
};

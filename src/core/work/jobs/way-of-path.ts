import type { Kit } from '../../boat/boat-schema.ts';
import { splitDotted } from '../../boat/ids.ts';
import type { Job, Watched } from '../../work-shape.ts';
import { connected, connectJobOf } from './connect-jobs.ts';
import { jobId, kindOf, type PhaseFrame } from './job-frame.ts';
import { interruptsOf, upstreamOf } from './panel-jobs.ts';
import type { FunctionPath } from './paths-of-functions.ts';
import { powerUpOf } from './power-up-jobs.ts';
import { pullGroups, unitsOfCable } from './pull-groups.ts';

type Way = Watched['ways'][number];

/** How a unit stands in a phase: aboard all through, coming, going, or not there at all. */
const standing = ({ phase }: PhaseFrame, { fate, phase: own = 1 }: Kit): 'there' | 'comes' | 'goes' | 'absent' => {
  if (fate === 'stays') return 'there';
  if (own === phase) return fate;
  return (fate === 'comes') === own < phase ? 'there' : 'absent';
};

/** Buses that a path runs over: two of its units in a row are both on one. */
const busesOf = ({ plan }: PhaseFrame, path: FunctionPath): string[] => [
  ...new Set(
    plan.joins.flatMap(({ bus, members }) => {
      if (bus === undefined) return [];
      const on = path.map((unit) => members.some(({ kit }) => kit === unit));
      return on.some((is, at) => is && on[at + 1] === true) ? [bus] : [];
    }),
  ),
];

/** Jobs that draw an old cable out which a path runs through. */
const cablesDrawn = (frame: PhaseFrame, path: FunctionPath): string[] =>
  pullGroups(frame)
    .filter(({ oldFirst }) =>
      oldFirst.some((cable) => unitsOfCable(frame, cable).filter((unit) => path.includes(unit)).length > 1),
    )
    .map(({ job }) => job);

/** Work below the waterline that ends what an old sounder felt: its hole is used again. */
const holesUsed = (frame: PhaseFrame, path: FunctionPath): string[] => {
  const isOld = path.some((unit) => kindOf(frame, unit) === 'sounder' && frame.goes.some(({ id }) => id === unit));
  if (!isOld) return [];
  return frame.comes
    .filter(({ id }) => frame.index.boat.openings?.some((one) => one.for === id && one.throughHull === true) === true)
    .map(({ id }) => jobId('underwater', id, frame.phase));
};

/** Jobs that take the supply of a path away for a while, in the order in which they are done: all of them where nobody knows what feeds one of its units. */
export const interruptsOfPath = (frame: PhaseFrame, path: FunctionPath): string[] => {
  const { index } = frame;
  const { panels } = index.boat.supply;
  const sources = new Set<string>();
  let isUnknown = false;
  const powered = path.filter((unit) => (index.sheetOf.get(unit)?.power ?? []).length > 0);
  for (const unit of powered) {
    if (index.sheetOf.get(unit)?.ownBattery === true) continue;
    const buses = frame.plan.joins.flatMap(({ bus, members }) =>
      bus !== undefined && members.some(({ kit }) => kit === unit) ? [bus] : [],
    );
    const fedBy = panels.filter(({ circuits }) =>
      circuits.some(({ feeds }) => feeds.some((feed) => splitDotted(feed).kit === unit || buses.includes(feed))),
    );
    if (fedBy.length === 0) isUnknown = true;
    for (const { id } of fedBy) for (const source of upstreamOf(index, id)) sources.add(source);
  }
  return interruptsOf(frame)
    .filter(({ off }) => isUnknown || sources.has(off))
    .map(({ job }) => job);
};

/** What must be done before a way holds, and what ends it. */
interface Span {
  readonly from: readonly string[];
  readonly until: readonly string[];
}

/** The times in which a path holds: before it is broken, after it is made; both where it is only opened in between. */
const spansOf = (frame: PhaseFrame, path: FunctionPath): Span[] => {
  const units = path.flatMap((id) => frame.index.kit.get(id) ?? []);
  const stand = new Map(units.map((unit) => [unit.id, standing(frame, unit)]));
  if ([...stand.values()].includes('absent')) return [];
  const { phase } = frame;
  const on = (id: string): string => powerUpOf(frame, id);
  const comes = path.filter((id) => stand.get(id) === 'comes').map(on);
  const goes = path.filter((id) => stand.get(id) === 'goes').map((id) => jobId('take-out', id, phase));
  const until = [...goes, ...cablesDrawn(frame, path), ...holesUsed(frame, path)];
  const opened = [...path, ...busesOf(frame, path)].filter(
    (id) => stand.get(id) !== 'comes' && stand.get(id) !== 'goes' && connected(frame).includes(id),
  );
  const again = opened.map(on);
  if (comes.length > 0) return [{ from: [...comes, ...again], until }];
  const before = { from: [], until: [...until, ...opened.map((id) => connectJobOf(frame, id))] };
  return opened.length === 0 || until.length > 0 ? [before] : [before, { from: again, until: [] }];
};

/** A way cut into the times before, between and after jobs that interrupt it one after another. */
export const cutBy = ({ by, from, until }: Way, interrupts: readonly string[]): Way[] =>
  [undefined, ...interrupts].map((before, at) => {
    const next = interrupts[at];
    return {
      by,
      from: before === undefined ? from : [...from, before],
      until: next === undefined ? until : [...until, next],
    };
  });

/** All that some jobs wait for, by however many steps. */
const beforeAll = (byId: ReadonlyMap<string, Job>, some: readonly string[]): ReadonlySet<string> => {
  const seen = new Set<string>();
  const open = [...some];
  for (let id = open.pop(); id !== undefined; id = open.pop()) {
    if (seen.has(id)) continue;
    seen.add(id);
    for (const { job } of byId.get(id)?.after ?? []) open.push(job);
  }
  return seen;
};

/** The ways by which a path gives its function in a phase. */
export const waysOfPath = (frame: PhaseFrame, path: FunctionPath, byId: ReadonlyMap<string, Job>): Way[] => {
  const there = (ids: readonly string[]): string[] => [...new Set(ids)].filter((id) => byId.has(id));
  const interrupts = interruptsOfPath(frame, path).filter((id) => byId.has(id) && byId.get(id)?.leftOut === undefined);
  return spansOf(frame, path).flatMap((span) => {
    const done = beforeAll(byId, span.from);
    const cuts = interrupts.filter((id) => !done.has(id));
    return cutBy({ by: [...path], from: there(span.from), until: there(span.until) }, cuts);
  });
};

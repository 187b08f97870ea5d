import type { Way } from '../../boat/boat-schema.ts';
import { byCodeUnit } from '../../boat/ids.ts';
import { keptFor } from '../../boat/kept-for.ts';
import type { LineEntry } from '../../plan-shape.ts';
import { fillVerdictOf } from '../../ways/fill-verdict.ts';
import { addedByWay, keptByWay } from '../../ways/way-fills.ts';
import { jobId, type PhaseFrame } from './job-frame.ts';

/** Ways that take the very same new lines, and so are pulled at one go; or all of one mast. */
export interface PullGroup {
  readonly job: string;
  readonly mast: boolean;
  readonly ways: readonly string[];
  readonly lines: readonly string[];
  /** old cables that must be out first, since the pipe is too full with them or nobody has measured it */
  readonly oldFirst: readonly string[];
}

/** Where a mast stands, of a way within it: the foot of the mast whose lines take that way. */
const mastOf = ({ plan }: PhaseFrame, way: Way, lines: readonly string[]): string =>
  plan.masts.find((mast) => mast.lines.some(({ line }) => lines.includes(line)))?.foot ?? way.id;

interface OneWay {
  readonly way: Way;
  readonly lines: readonly string[];
}

const waysTaken = ({ index, lines }: PhaseFrame): OneWay[] =>
  [...index.ways.values()].flatMap((way) => {
    const own = lines.filter(({ ways }) => ways.includes(way.id)).map(({ id }) => id);
    return own.length === 0 ? [] : [{ way, lines: [...new Set(own)].sort(byCodeUnit) }];
  });

/** Cables that go and must be out of a pipe before new ones come in: too full with both, or its bore only guessed. */
const oldFirstIn = (frame: PhaseFrame, { way }: OneWay): string[] => {
  const { index, plan, lines } = frame;
  const old = index.boat.cables.filter(({ fate, ways }) => fate === 'goes' && ways.includes(way.id));
  if (old.length === 0 || way.bore === undefined) return [];
  const added = addedByWay({ index, lines, buses: plan.buses }).get(way.id) ?? [];
  const plugs = added.flatMap(({ plugMm }) => plugMm ?? []);
  const { verdict } = fillVerdictOf({
    boreMm: way.bore.mm,
    inPlaceMm: [...(keptByWay(index).get(way.id) ?? []), ...old].map(({ diameterMm }) => diameterMm),
    addedMm: added.map(({ outsideMm }) => outsideMm),
    ...(plugs.length === 0 ? {} : { plugMm: Math.max(...plugs) }),
  });
  const isTight = verdict === 'doubt' || verdict === 'refused' || way.bore.how === 'guessed';
  return isTight ? old.map(({ id }) => id) : [];
};

const uniqueSorted = (ids: readonly string[]): string[] => [...new Set(ids)].sort(byCodeUnit);

/** How the new lines of a phase are pulled: a way at a time, ways with the same lines together, a mast in one. */
export const pullGroups = keptFor((frame: PhaseFrame): PullGroup[] => {
  const groups = new Map<string, OneWay[]>();
  for (const one of waysTaken(frame)) {
    const isMast = one.way.kind === 'mast';
    const key = isMast ? `mast ${mastOf(frame, one.way, one.lines)}` : one.lines.join(' ');
    groups.set(key, [...(groups.get(key) ?? []), one]);
  }
  return [...groups].map(([key, ways]): PullGroup => {
    const [first] = ways;
    const isMast = first?.way.kind === 'mast';
    const ids = ways.map(({ way }) => way.id);
    return {
      job: jobId(
        isMast ? 'mast-pull' : 'pull',
        isMast ? key.slice('mast '.length) : (first?.way.id ?? ''),
        frame.phase,
      ),
      mast: isMast,
      ways: ids,
      lines: uniqueSorted(ways.flatMap(({ lines }) => lines)),
      oldFirst: uniqueSorted(ways.flatMap((one) => oldFirstIn(frame, one))),
    };
  });
});

/** Ways that a gland or a watertight passage closes, which are sealed once the new lines are through. */
export const isSealed = ({ kind, through }: Way): boolean =>
  kind === 'gland' || through === 'deck' || through === 'watertight';

/** Units that go and that an old cable serves: by what it is plugged into, or by the join it stands for. */
export const unitsOfCable = ({ index }: Pick<PhaseFrame, 'index'>, cable: string): string[] => {
  const { from, to, serves } = index.cables.get(cable) ?? {};
  const plugged = [from?.at, to?.at].flatMap((at) => (at === undefined ? [] : [at.split('.')[0] ?? at]));
  const joined = serves === undefined ? [] : (index.joins.get(serves)?.members.map(({ kit }) => kit) ?? []);
  return uniqueSorted([...plugged, ...joined]).filter((unit) => index.kit.has(unit));
};

/** The new lines of a phase that pass a way. */
export const linesThrough = (lines: readonly LineEntry[], way: string): string[] =>
  lines.filter(({ ways }) => ways.includes(way)).map(({ id }) => id);

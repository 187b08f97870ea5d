import { type FailureNames, failureWords, shortName } from '../../core/blackouts/failure-words.ts';
import { type BlackoutEntry, type Failure, failureKinds, type Loss, type VitalId } from '../../core/blackouts-shape.ts';
import { splitDotted } from '../../core/boat/ids.ts';
import { readingName } from '../../core/facts/reading-words.ts';
import type { Cure, Plan } from '../../core/plan-shape.ts';
import { byCodeUnit } from '../../core/units/by-code-unit.ts';

/** What goes off one screen: readings that do for certain, and those that may stay. */
export interface ScreenLoss {
  readonly at: string;
  readonly name: string;
  readonly sure: readonly string[];
  readonly perhaps: readonly string[];
}

/** A vital reading that is gone with what was pulled out, with what keeps it and what is at hand. */
export interface VitalLoss {
  readonly of: VitalId;
  readonly perhaps: boolean;
  readonly cures: readonly Cure[];
  readonly left: readonly string[];
  readonly carry: string;
}

/** One thing pulled out: what goes dark, and what goes off which screen. */
export interface PulledOut {
  readonly what: string;
  readonly failure: Failure;
  readonly entry: BlackoutEntry;
  /** ids by which the drawing knows the thing itself */
  readonly ids: readonly string[];
  /** units that go dark besides it, by name */
  readonly dark: readonly string[];
  readonly doubtful: readonly string[];
  readonly screens: readonly ScreenLoss[];
  readonly vitals: readonly VitalLoss[];
}

const isSame = (a: Failure, b: Failure): boolean => a.fails === b.fails && a.how === b.how;

const entryOf = ({ blackouts }: Pick<Plan, 'blackouts'>, failure: Failure): BlackoutEntry | undefined =>
  blackouts.find((entry) => isSame(entry, failure) || entry.also?.some((one) => isSame(one, failure)) === true);

/** Ids by which a drawing knows what fails: a circuit by its own id, a tee by its port, a terminator by its place. */
const idsOf = ({ fails, how }: Failure): readonly string[] => {
  if (how === 'fuse') return [splitDotted(fails).part];
  const tee = fails.slice(fails.indexOf('/') + 1);
  if (how === 'terminator') return [tee.replace(/^end@/, '').replace(/#\d+$/, '')];
  return how === 'tee' ? [tee] : [fails];
};

const screensOf = (names: FailureNames, loses: readonly Loss[]): ScreenLoss[] => {
  const at = [...new Set(loses.map((loss) => loss.at))];
  const wordsOf = (own: readonly Loss[]): string[] =>
    own.map(({ reading, instance }) => readingName({ reading, instance })).sort(byCodeUnit);
  return at
    .map((screen): ScreenLoss => {
      const own = loses.filter((loss) => loss.at === screen);
      return {
        at: screen,
        name: shortName(names.kit.get(screen)?.name ?? screen),
        sure: wordsOf(own.filter(({ perhaps }) => perhaps === undefined)),
        perhaps: wordsOf(own.filter(({ perhaps }) => perhaps === true)),
      };
    })
    .sort((a, b) => b.sure.length + b.perhaps.length - a.sure.length - a.perhaps.length || byCodeUnit(a.name, b.name));
};

const vitalsOf = (names: FailureNames, { vitals }: Pick<Plan, 'vitals'>, entry: BlackoutEntry): VitalLoss[] =>
  vitals.flatMap(({ of, points, cures, leftWith, carry }) => {
    const point = points.find((one) => isSame(one, entry));
    if (point === undefined) return [];
    const cure = point.cure === undefined ? undefined : cures[point.cure];
    return [
      {
        of,
        perhaps: point.perhaps === true,
        cures: cure === undefined ? [] : [cure],
        left: leftWith.map((kit) => names.kit.get(kit)?.name ?? kit),
        carry,
      },
    ];
  });

/** What one thing pulled out takes with it; undefined where the plan knows no such failure. */
export const pulledOut = (
  names: FailureNames,
  plan: Pick<Plan, 'blackouts' | 'vitals'>,
  failure: Failure,
): PulledOut | undefined => {
  const entry = entryOf(plan, failure);
  if (entry === undefined) return undefined;
  const nameOf = (list: ReadonlyMap<string, { readonly name: string }>, id: string): string =>
    shortName(list.get(id)?.name ?? id);
  return {
    what: failureWords(names, failure),
    failure,
    entry,
    ids: idsOf(failure),
    dark: entry.dark.filter((id) => id !== failure.fails).map((id) => nameOf(names.kit, id)),
    doubtful: (entry.doubtful ?? []).map((id) => nameOf(names.buses, id)),
    screens: screensOf(names, entry.loses),
    vitals: vitalsOf(names, plan, entry),
  };
};

const unitOf = (end: string): string => {
  const tee = end.slice(end.indexOf('/') + 1);
  return tee.includes('.') ? splitDotted(tee).kit : tee;
};

/** How near a failure is to what was picked: 0 the thing itself, 1 a piece that hangs on it; undefined for anything else. */
const nearness = (names: FailureNames, { fails, how }: Failure, picked: ReadonlySet<string>): 0 | 1 | undefined => {
  if (how === 'fuse') {
    const { kit: panel, part } = splitDotted(fails);
    if (picked.has(part) || picked.has(fails)) return 0;
    const feeds = names.panels.get(panel)?.circuits.find(({ id }) => id === part)?.feeds ?? [];
    return feeds.some((target) => picked.has(unitOf(target))) ? 1 : undefined;
  }
  if (how === 'short') return fails.includes(':') && picked.has(fails) ? 1 : undefined;
  if (picked.has(fails)) return how === 'main' || how === 'feeder' ? 1 : 0;
  if (how === 'terminator') return idsOf({ fails, how }).some((id) => picked.has(id)) ? 1 : undefined;
  if (how === 'tee')
    return picked.has(unitOf(fails)) || idsOf({ fails, how }).some((id) => picked.has(id)) ? 1 : undefined;
  if (how !== 'line') return undefined;
  const ends = fails.slice(fails.indexOf(':') + 1).split('~');
  return ends.some((end) => !end.includes('/') && picked.has(unitOf(end))) ? 1 : undefined;
};

/** Choices shown of one thing that was picked. */
const most = 12;

/** What can be pulled out about the ids of something picked: the thing itself first, then the pieces that hang on it. */
export const pullChoices = (
  names: FailureNames,
  { blackouts }: Pick<Plan, 'blackouts'>,
  ids: readonly string[],
): Failure[] => {
  const picked = new Set(ids);
  const every = blackouts.flatMap(({ fails, how, also = [] }) => [{ fails, how }, ...also]);
  return every
    .flatMap((failure) => {
      const near = nearness(names, failure, picked);
      return near === undefined ? [] : [{ failure, near }];
    })
    .sort(
      (a, b) =>
        a.near - b.near ||
        failureKinds.indexOf(a.failure.how) - failureKinds.indexOf(b.failure.how) ||
        byCodeUnit(a.failure.fails, b.failure.fails),
    )
    .slice(0, most)
    .map(({ failure }) => failure);
};

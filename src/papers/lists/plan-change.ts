import type { Finding, Plan, ReadingEntry } from '../../core/plan-shape.ts';

/** What one plan has that the one before it had not, and the other way round. */
export interface PlanChange {
  /** findings of before that are no longer there */
  readonly gone: readonly Finding[];
  /** findings that were not there before */
  readonly came: readonly Finding[];
  /** findings there before and after that now say something else, as they stand after */
  readonly altered: readonly Finding[];
  /** needs that are met now and were not met, or not there, before */
  readonly gained: readonly ReadingEntry[];
  /** needs that were met and are not met any longer */
  readonly lost: readonly ReadingEntry[];
  /** needs that are no longer there, because nobody states them or their screen has left */
  readonly dropped: readonly ReadingEntry[];
}

const needKey = ({ reading, instance, at }: ReadingEntry): string => `${reading} ${instance ?? ''} ${at}`;

const byKey = <Entry>(list: readonly Entry[], keyOf: (entry: Entry) => string): ReadonlyMap<string, Entry> =>
  new Map(list.map((entry) => [keyOf(entry), entry]));

const isSameFinding = (a: Finding, b: Finding): boolean => a.says === b.says && a.level === b.level;

/** Compares two plans of one boat; each list in the order of its plan. Findings are the same when their ids are. */
export const planChange = (before: Plan, after: Plan): PlanChange => {
  const idOf = ({ id }: Finding): string => id;
  const [foundBefore, foundAfter] = [byKey(before.findings, idOf), byKey(after.findings, idOf)];
  const [neededBefore, neededAfter] = [byKey(before.readings, needKey), byKey(after.readings, needKey)];
  const isMet = (needs: ReadonlyMap<string, ReadingEntry>, entry: ReadingEntry): boolean =>
    needs.get(needKey(entry))?.arrives === true;
  return {
    gone: before.findings.filter(({ id }) => !foundAfter.has(id)),
    came: after.findings.filter(({ id }) => !foundBefore.has(id)),
    altered: after.findings.filter((finding) => {
      const old = foundBefore.get(finding.id);
      return old !== undefined && !isSameFinding(old, finding);
    }),
    gained: after.readings.filter((entry) => entry.arrives && !isMet(neededBefore, entry)),
    lost: after.readings.filter((entry) => !entry.arrives && isMet(neededBefore, entry)),
    dropped: before.readings.filter((entry) => !neededAfter.has(needKey(entry))),
  };
};

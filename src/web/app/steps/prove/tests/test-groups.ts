import type { Boat } from '../../../../../core/boat/boat-schema.ts';
import type { Found, Verdict } from '../../../../../core/proof/dock/judge.ts';
import { judge } from '../../../../../core/proof/dock/judge.ts';
import type { TestEntry } from '../../../../../core/tests-shape.ts';
import { words } from './words.ts';

/** A test with what was found at it. */
export interface JudgedTest {
  readonly test: TestEntry;
  readonly found?: Found;
  readonly verdict?: Verdict;
}

/** Tests that are done one after the other and stand under one head; a bus has its own. */
export interface TestGroup {
  readonly key: string;
  readonly group: TestEntry['group'];
  readonly title: string;
  readonly bus?: string;
  readonly tests: readonly JudgedTest[];
}

export const judgedTest = (test: TestEntry, of: (id: string) => Found | undefined): JudgedTest => {
  const found = of(test.id);
  return found === undefined ? { test } : { test, found, verdict: judge(test, found, of).verdict };
};

const titleOf = (boat: Boat, { group, about: [bus = ''] }: TestEntry): string =>
  group === 'bus' ? words.groups.bus(boat.buses.find(({ id }) => id === bus)?.name ?? bus) : words.groups[group];

/** Tests under their heads, in the order in which the first of each comes. */
export const testGroups = (boat: Boat, judged: readonly JudgedTest[]): TestGroup[] => {
  const groups = new Map<string, JudgedTest[]>();
  for (const one of judged) {
    const { group, about } = one.test;
    const key = group === 'bus' ? `bus ${about[0]}` : group;
    const own = groups.get(key);
    if (own === undefined) groups.set(key, [one]);
    else own.push(one);
  }
  return [...groups].flatMap(([key, tests]) => {
    const [first] = tests;
    if (first === undefined) return [];
    const { group, about } = first.test;
    const bus = group === 'bus' ? about[0] : undefined;
    return [{ key, group, title: titleOf(boat, first.test), ...(bus === undefined ? {} : { bus }), tests }];
  });
};

export type Shown = 'all' | 'open' | 'bad';

/** Whether a test is shown: at the place chosen, and still to do or not right where only those are wanted. */
export const isShown = ({ test, verdict }: JudgedTest, { place, shown }: { place: string; shown: Shown }): boolean => {
  if (place !== '' && test.place !== place) return false;
  if (shown === 'open') return verdict === undefined;
  return shown === 'all' || verdict === 'wrong' || verdict === 'doubtful';
};

import { foundOf } from '../../../core/proof/dock/found-of.ts';
import { judge } from '../../../core/proof/dock/judge.ts';
import type { PhoneTest } from '../../../papers/phone/phone-tests.ts';
import { el } from '../dom/el.ts';
import { putRows } from '../dom/keyed-rows.ts';
import type { PhoneState } from '../store/phone-state.ts';
import { words } from '../words.ts';
import type { Screen, ScreenParts } from './screen.ts';
import { testRow } from './test-row.ts';

interface Group {
  readonly key: string;
  readonly title: string;
  readonly tests: readonly PhoneTest[];
}

const titleOf = ({ group, bus }: PhoneTest): string =>
  group === 'bus' ? words.tests.groups.bus(bus ?? '') : words.tests.groups[group];

const groupsOf = (tests: readonly PhoneTest[]): Group[] => {
  const groups = new Map<string, PhoneTest[]>();
  for (const test of tests) {
    const key = `${test.group} ${test.bus ?? ''}`;
    groups.set(key, [...(groups.get(key) ?? []), test]);
  }
  return [...groups].flatMap(([key, own]) =>
    own[0] === undefined ? [] : [{ key, title: titleOf(own[0]), tests: own }],
  );
};

/** One group, folded until it is wanted: only what is unfolded is drawn. */
const groupView = (parts: ScreenParts, isOnlyOpen: () => boolean) => {
  const summary = el('summary', {});
  const list = el('ul', { class: 'rows' });
  const nothing = el('p', { class: 'quiet' }, words.tests.nothing);
  let last: (() => void) | undefined;
  const element = el('details', { on: { toggle: () => last?.() } }, summary, nothing, list);
  const update = (group: Group, state: PhoneState, verdicts: ReadonlyMap<string, string>): void => {
    const done = group.tests.filter(({ id }) => verdicts.has(id)).length;
    summary.textContent = words.tests.group(group.title, done, group.tests.length);
    last = () => {
      const shown = element.open ? group.tests.filter(({ id }) => !isOnlyOpen() || !verdicts.has(id)) : [];
      nothing.hidden = !element.open || shown.length > 0;
      putRows(
        list,
        shown.map((test) => testRow(test, state, verdicts, parts)),
      );
    };
    last();
  };
  return { element, update };
};

const verdictsOf = ({ log, sheet }: PhoneState): ReadonlyMap<string, string> => {
  const of = foundOf(log.readings);
  return new Map(
    (sheet?.tests ?? []).flatMap((test): [string, string][] => {
      const found = of(test.id);
      return found === undefined ? [] : [[test.id, judge(test, found, of).verdict]];
    }),
  );
};

/** The tests at the dock: what was read is typed, and judged at once. */
export const testsScreen = (parts: ScreenParts): Screen => {
  let isOnlyOpen = false;
  let state: PhoneState | undefined;
  const none = el('p', { class: 'quiet' }, words.tests.none);
  const list = el('div', {});
  const views = new Map<string, ReturnType<typeof groupView>>();
  const update = (now: PhoneState): void => {
    state = now;
    const groups = groupsOf(now.sheet?.tests ?? []);
    const verdicts = verdictsOf(now);
    none.textContent = now.sheet === undefined ? (now.sheetSays ?? words.noSheet) : words.tests.none;
    none.hidden = groups.length > 0;
    const rows = groups.map((group) => {
      const view = views.get(group.key) ?? groupView(parts, () => isOnlyOpen);
      views.set(group.key, view);
      view.update(group, now, verdicts);
      return { key: group.key, mark: '', draw: () => view.element };
    });
    putRows(list, rows);
  };
  const choice = (says: string, only: boolean): HTMLButtonElement =>
    el(
      'button',
      {
        type: 'button',
        'aria-pressed': String(isOnlyOpen === only),
        on: {
          click: () => {
            isOnlyOpen = only;
            for (const [at, button] of [all, open].entries())
              button.setAttribute('aria-pressed', String((at === 1) === only));
            if (state !== undefined) update(state);
          },
        },
      },
      says,
    );
  const all = choice(words.tests.all, false);
  const open = choice(words.tests.open, true);
  const element = el(
    'section',
    {},
    el('h2', {}, words.screens.tests),
    el('div', { class: 'choices' }, all, open),
    none,
    list,
  );
  return { element, update };
};

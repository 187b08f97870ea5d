import { dayTickId, isTicked, jobTickId } from '../../../core/work/ticks.ts';
import type { PhoneDay, PhoneWork } from '../../../papers/phone/phone-day.ts';
import type { PhoneSheet } from '../../../papers/phone/phone-sheet.ts';
import { el } from '../dom/el.ts';
import { putRows, type Row } from '../dom/keyed-rows.ts';
import type { PhoneState } from '../store/phone-state.ts';
import { words } from '../words.ts';
import { jobRow } from './job-row.ts';
import type { Screen, ScreenParts } from './screen.ts';
import { tickRow } from './tick-row.ts';

const { today } = words;

/** Days are told apart by their date, where they have one: their numbers move where something was done before the first of them. */
const keyOf = ({ phase, day, date }: PhoneDay): string => `${phase} ${date ?? day}`;

/** The date on this phone’s clock. */
const dateNow = (): string => {
  const now = new Date();
  const two = (count: number): string => String(count).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
};

/** The day it is; else the first on which something is left to do. */
const firstShown = (days: readonly PhoneDay[], state: PhoneState): number => {
  const now = dateNow();
  const byDate = days.findIndex(({ date }) => date === now);
  if (byDate >= 0) return byDate;
  const open = days.findIndex(({ jobs }) => jobs.some(({ id }) => !isTicked(state.log, jobTickId(id))));
  return Math.max(open, 0);
};

const headRow = (key: string, says: string): Row => ({
  key: `head ${key}`,
  mark: says,
  draw: () => el('li', {}, el('h3', { class: 'head' }, says)),
});

const darkRows = ({ dark }: PhoneDay, fallbacks: PhoneWork['fallbacks']): Row[] => {
  const rowsOf = (head: string, isTonight: boolean): Row[] => {
    const own = dark.filter((one) => one.isTonight === isTonight);
    const says = own.map(({ name, when }) => today.darkSays(name, when, fallbacks[name] ?? ''));
    if (own.length === 0) return [];
    const draw = (): HTMLElement =>
      el('li', {}, el('ul', { class: 'dark' }, ...says.map((line) => el('li', {}, line))));
    return [headRow(head, head), { key: `dark ${head}`, mark: says.join(), draw }];
  };
  return [...rowsOf(today.dark, true), ...rowsOf(today.darkToday, false)];
};

const rowsOf = (day: PhoneDay, sheet: PhoneSheet, state: PhoneState, parts: ScreenParts): Row[] => {
  const { fallbacks = {}, evening = {} } = sheet.work ?? {};
  const done = day.jobs.filter(({ id }) => isTicked(state.log, jobTickId(id))).length;
  return [
    ...darkRows(day, fallbacks),
    headRow('jobs', today.jobs(done, day.jobs.length)),
    ...day.jobs.map((job) => jobRow(job, sheet, state, parts)),
    ...(day.bring.length === 0
      ? []
      : [
          headRow('bring', today.bring),
          {
            key: 'bring',
            mark: day.bring.join(),
            draw: () =>
              el('li', { class: 'row' }, el('ul', { class: 'bring' }, ...day.bring.map((one) => el('li', {}, one)))),
          },
        ]),
    ...(day.evening.length === 0 ? [] : [headRow('evening', today.evening)]),
    ...day.evening.map((item) =>
      tickRow({ tick: dayTickId({ ...day, item }), says: evening[item] ?? item }, state, parts),
    ),
  ];
};

/** One day of the work: what is dark tonight, the jobs in their order, what is looked to before everybody goes. */
export const todayScreen = (parts: ScreenParts): Screen => {
  let chosen: string | undefined;
  let chosenOn = dateNow();
  let state: PhoneState | undefined;
  const title = el('h2', {});
  const says = el('p', {});
  const none = el('p', { class: 'quiet' }, today.none);
  const list = el('ul', { class: 'rows' });
  const go = (by: number): void => {
    const days = state?.sheet?.work?.days ?? [];
    const at = days.findIndex((one) => keyOf(one) === chosen);
    const wanted = days[at + by];
    if (wanted !== undefined) chosen = keyOf(wanted);
    if (state !== undefined) update(state);
  };
  const earlier = el('button', { type: 'button', on: { click: () => go(-1) } }, today.earlier);
  const later = el('button', { type: 'button', on: { click: () => go(1) } }, today.later);
  const turn = el('div', { class: 'choices' }, earlier, later);
  const update = (now: PhoneState): void => {
    state = now;
    // a page that stayed open over night begins with the new day
    if (chosenOn !== dateNow()) chosen = undefined;
    chosenOn = dateNow();
    const days = now.sheet?.work?.days ?? [];
    const found = days.findIndex((one) => keyOf(one) === chosen);
    const at = found < 0 ? firstShown(days, now) : found;
    const day = days[at];
    chosen = day === undefined ? undefined : keyOf(day);
    title.textContent = day?.title ?? words.screens.today;
    says.textContent = day?.says ?? '';
    none.textContent = now.sheet === undefined ? (now.sheetSays ?? words.noSheet) : today.none;
    none.hidden = day !== undefined;
    turn.hidden = days.length < 2;
    earlier.disabled = at <= 0;
    later.disabled = at >= days.length - 1;
    putRows(list, day === undefined || now.sheet === undefined ? [] : rowsOf(day, now.sheet, now, parts));
  };
  return { element: el('section', {}, title, says, turn, none, list), update };
};

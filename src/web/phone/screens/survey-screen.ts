import type { PhoneSheet } from '../../../papers/phone/phone-sheet.ts';
import type { PhoneStop } from '../../../papers/phone/phone-stops.ts';
import { el } from '../dom/el.ts';
import { putRows, type Row } from '../dom/keyed-rows.ts';
import type { PhoneState } from '../store/phone-state.ts';
import { words } from '../words.ts';
import { cautionLines } from './caution-lines.ts';
import { photoRow, seenRow } from './found-rows.ts';
import type { Screen, ScreenParts } from './screen.ts';
import { unitRow } from './unit-row.ts';
import { wayRow } from './way-row.ts';

/** How many things of a place nobody has looked at, by the file or by the log. */
const openOf = (stop: PhoneStop, { log }: PhoneState): number => {
  const isSeen = (id: string): boolean => log.seen.has(id);
  return (
    Number(!stop.isSeen && !isSeen(stop.place)) +
    stop.ways.filter(
      ({ id, known, isTaped }) => (known === 'assumed' && !isSeen(id)) || !(isTaped || log.measures.has(id)),
    ).length +
    stop.units.filter(({ id, wantsSerial }) => wantsSerial && !log.aboard.has(id)).length +
    stop.units.filter(({ id, tail }) => tail?.isTaped === false && !log.measures.has(id)).length
  );
};

const cautionRows = (sheet: PhoneSheet, stop: PhoneStop): Row[] =>
  cautionLines(sheet, stop.cautions).map((line, at) => ({
    key: `caution ${stop.cautions[at]}`,
    mark: line.textContent ?? '',
    draw: () => el('li', {}, line),
  }));

const rowsOf = (stop: PhoneStop, sheet: PhoneSheet, state: PhoneState, parts: ScreenParts): Row[] => [
  ...cautionRows(sheet, stop),
  seenRow({ of: stop.place, name: stop.name, title: words.survey.asInFile, isPlace: true }, state, parts),
  ...stop.ways.map((way) => wayRow(way, stop, state, parts)),
  ...stop.units.map((unit) => unitRow(unit, state, parts)),
  photoRow(stop, state, parts),
];

const stopView = (parts: ScreenParts) => {
  const summary = el('summary', {});
  const list = el('ul', { class: 'rows' });
  let draw = (): void => undefined;
  const element = el('details', { on: { toggle: () => draw() } }, summary, list);
  const update = (stop: PhoneStop, sheet: PhoneSheet, state: PhoneState): void => {
    summary.textContent = words.survey.stop(stop.name, openOf(stop, state));
    draw = () => putRows(list, element.open ? rowsOf(stop, sheet, state, parts) : []);
    draw();
  };
  return { element, update };
};

/** The walk round her: place by place, what is seen, taped, read off and photographed. */
export const surveyScreen = (parts: ScreenParts): Screen => {
  const views = new Map<string, ReturnType<typeof stopView>>();
  const none = el('p', { class: 'quiet' }, words.noSheet);
  const list = el('div', {});
  return {
    element: el('section', {}, el('h2', {}, words.screens.survey), none, list),
    update(state) {
      const { sheet } = state;
      none.hidden = sheet !== undefined;
      none.textContent = state.sheetSays ?? words.noSheet;
      if (sheet === undefined) return;
      const rows = sheet.stops.map((stop) => {
        const view = views.get(stop.place) ?? stopView(parts);
        views.set(stop.place, view);
        view.update(stop, sheet, state);
        return { key: stop.place, mark: '', draw: () => view.element };
      });
      putRows(list, rows);
    },
  };
};

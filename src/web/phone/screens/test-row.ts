import { dockFigures } from '../../../core/facts/dock-figures.ts';
import { foundOf } from '../../../core/proof/dock/found-of.ts';
import { judge } from '../../../core/proof/dock/judge.ts';
import type { PhoneTest } from '../../../papers/phone/phone-tests.ts';
import { judgedWords, verdictWords } from '../../../papers/proof/judged-words.ts';
import { printReading } from '../../../papers/proof/print-reading.ts';
import { el } from '../dom/el.ts';
import { keepTyping, writeTyped } from '../dom/kept-typing.ts';
import type { Row } from '../dom/keyed-rows.ts';
import type { PhoneState } from '../store/phone-state.ts';
import { words } from '../words.ts';
import type { ScreenParts } from './screen.ts';
import { signedLine, signedMark } from './signed-line.ts';

/** A meter that shows an open circuit has a figure too: over all that it can show. */
const openOhm = 10 * dockFigures.openOhm.value;

const figureOf = (text: string): number | undefined => {
  const plain = text.trim().replace('−', '-').replace(',', '.');
  return /^-?\d+(\.\d+)?$/.test(plain) ? Number(plain) : undefined;
};

const wroteWords = (test: PhoneTest, found: number | boolean): string => {
  const yesNo = found === true ? words.tests.yes : words.tests.no;
  return words.tests.wrote(typeof found === 'number' ? printReading(found, test.unit) : yesNo);
};

const button = (says: string, aria: string, press: () => void): HTMLElement =>
  el('button', { type: 'button', 'aria-label': aria, 'data-part': says, on: { click: press } }, says);

const figureEntry = (test: PhoneTest, { hand }: ScreenParts): HTMLElement => {
  const name = `test ${test.id}`;
  const field = keepTyping(
    name,
    el('input', {
      inputmode: 'decimal',
      autocomplete: 'off',
      enterkeyhint: 'done',
      'aria-label': words.tests.read(test.what),
    }),
  );
  const wrong = el('p', { class: 'wrong', role: 'alert' });
  const write = (value: number): void => {
    writeTyped({ [name]: field }, () => hand.write({ kind: 'reading', test: test.id, value }, wroteWords(test, value)));
  };
  const put = (event: Event): void => {
    event.preventDefault();
    const value = figureOf(field.value);
    wrong.textContent = value === undefined ? words.tests.noFigure : '';
    if (value !== undefined) write(value);
  };
  const isOpen = button(words.tests.isOpen, words.tests.isOpenOf(test.what), () => write(openOhm));
  return el(
    'form',
    { class: 'entry', on: { submit: put } },
    field,
    el('span', { class: 'unit', 'aria-hidden': 'true' }, test.unit === undefined ? '' : words.tests.units[test.unit]),
    el('button', { class: 'main', 'data-part': 'put' }, words.writeDown),
    test.unit === 'ohm' ? isOpen : undefined,
    wrong,
  );
};

const yesNoEntry = (test: PhoneTest, { hand }: ScreenParts): HTMLElement =>
  el(
    'div',
    { class: 'entry' },
    ...[true, false].map((right) => {
      const answer = right ? words.tests.yes : words.tests.no;
      return button(answer, words.tests.answers(answer, test.what), () =>
        hand.write({ kind: 'reading', test: test.id, right }, wroteWords(test, right)),
      );
    }),
  );

const resultLine = (test: PhoneTest, state: PhoneState, parts: ScreenParts): HTMLElement | undefined => {
  const entry = state.log.readings.get(test.id);
  const of = foundOf(state.log.readings);
  const found = of(test.id);
  if (entry === undefined || found === undefined) return undefined;
  const worth = judge(test, found, of);
  const yesNo = found === true ? words.tests.yes : words.tests.no;
  const figure = typeof found === 'number' ? printReading(found, test.unit) : yesNo;
  const says = `${verdictWords[worth.verdict].sign} ${figure}. ${judgedWords(test, found, worth)}`;
  return el('div', { class: `result ${worth.verdict}` }, signedLine(says, entry, state, parts));
};

/** One test as a row: what is done, what it should read, what it read and what that is worth, and where it is written down. */
export const testRow = (
  test: PhoneTest,
  state: PhoneState,
  verdicts: ReadonlyMap<string, string>,
  parts: ScreenParts,
): Row => {
  const entry = state.log.readings.get(test.id);
  const result = resultLine(test, state, parts);
  const first = (test.after ?? []).filter((id) => verdicts.get(id) !== 'right').length;
  const expected = test.kind === 'yes-no' ? words.tests.expectedYes(test.expect) : words.tests.expected(test.expect);
  const about = [
    words.tests.power[test.power],
    expected,
    ...(first === 0 || entry !== undefined ? [] : [words.tests.first(first)]),
  ].join('; ');
  return {
    key: test.id,
    mark: `${test.what} ${about} ${result?.textContent} ${entry === undefined ? '' : signedMark(entry, state)}`,
    draw: () =>
      el(
        'li',
        { class: 'row' },
        el('h3', {}, test.what),
        el('p', {}, about),
        result,
        test.kind === 'yes-no' ? yesNoEntry(test, parts) : figureEntry(test, parts),
      ),
  };
};

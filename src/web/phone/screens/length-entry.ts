import { parseLength } from '../../../core/units/parse-length.ts';
import { lengthInWords } from '../../../papers/phone/length-in-words.ts';
import { el } from '../dom/el.ts';
import { keepTyping, writeTyped } from '../dom/kept-typing.ts';
import { words } from '../words.ts';
import type { ScreenParts } from './screen.ts';

const { survey } = words;

/** Longer than any way aboard: then it was typed in other units than it was meant. */
const longestM = 200;

/** No tape reads finer than a millimetre. */
const lengthOf = (text: string): number | undefined => {
  const valueM = parseLength(text);
  return valueM === undefined || valueM <= 0 || valueM > longestM ? undefined : Math.round(valueM * 1000) / 1000;
};

/** Where a taped length is typed, in metres or in feet and inches. */
export const lengthEntry = (id: string, name: string, { hand }: ScreenParts): HTMLElement => {
  const kept = `length ${id}`;
  const field = keepTyping(
    kept,
    el('input', {
      autocomplete: 'off',
      autocapitalize: 'off',
      enterkeyhint: 'done',
      placeholder: survey.lengthHint,
      'aria-label': survey.length(name),
    }),
  );
  const wrong = el('p', { class: 'wrong', role: 'alert' });
  const put = (event: Event): void => {
    event.preventDefault();
    const valueM = lengthOf(field.value);
    wrong.textContent = valueM === undefined ? survey.noLength : '';
    if (valueM === undefined) return;
    const says = survey.taped(lengthInWords({ valueM, how: 'taped' }));
    writeTyped({ [kept]: field }, () => hand.write({ kind: 'measure', of: id, valueM, how: 'taped' }, says));
  };
  return el(
    'form',
    { class: 'entry', on: { submit: put } },
    field,
    el('button', { class: 'main', 'data-part': 'put' }, words.writeDown),
    wrong,
  );
};

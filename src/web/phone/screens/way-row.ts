import { parseLength } from '../../../core/units/parse-length.ts';
import { lengthInWords } from '../../../papers/phone/length-in-words.ts';
import type { PhoneStop, PhoneWay } from '../../../papers/phone/phone-stops.ts';
import { el } from '../dom/el.ts';
import { keepTyping, writeTyped } from '../dom/kept-typing.ts';
import type { Row } from '../dom/keyed-rows.ts';
import type { PhoneState } from '../store/phone-state.ts';
import { words } from '../words.ts';
import { photoMark, photoParts, seenMark, seenParts } from './found-rows.ts';
import type { ScreenParts } from './screen.ts';
import { signedLine, signedMark } from './signed-line.ts';

const { survey } = words;

/** Longer than any way aboard: then it was typed in other units than it was meant. */
const longestM = 200;

/** No tape reads finer than a millimetre. */
const lengthOf = (text: string): number | undefined => {
  const valueM = parseLength(text);
  return valueM === undefined || valueM <= 0 || valueM > longestM ? undefined : Math.round(valueM * 1000) / 1000;
};

const lengthEntry = (id: string, name: string, { hand }: ScreenParts): HTMLElement => {
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

/** A way as it is looked at and taped at one of its ends. */
export const wayRow = (way: PhoneWay, stop: PhoneStop, state: PhoneState, parts: ScreenParts): Row => {
  const title = survey.to(way.to);
  const name = `${stop.name}, ${title}`;
  const taped = state.log.measures.get(way.id);
  return {
    key: `way ${way.id}`,
    mark: `${title} ${way.length} ${way.known} ${seenMark(way.id, state)} ${taped === undefined ? '' : signedMark(taped, state)} ${photoMark(way.id, state)}`,
    draw: () =>
      el(
        'li',
        { class: 'row' },
        el('h3', {}, title),
        el('p', {}, survey.inFile(`${way.length}; ${survey.known[way.known]}`)),
        ...seenParts({ of: way.id, name, title, isPlace: false }, state, parts),
        taped === undefined ? undefined : signedLine(survey.taped(lengthInWords(taped)), taped, state, parts),
        lengthEntry(way.id, name, parts),
        ...photoParts({ of: way.id, name, asks: [['other', survey.photoWay]] }, state, parts),
      ),
  };
};

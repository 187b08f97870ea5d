import { lengthInWords } from '../../../papers/phone/length-in-words.ts';
import type { PhoneStop, PhoneWay } from '../../../papers/phone/phone-stops.ts';
import { el } from '../dom/el.ts';
import type { Row } from '../dom/keyed-rows.ts';
import type { PhoneState } from '../store/phone-state.ts';
import { words } from '../words.ts';
import { photoMark, photoParts, seenMark, seenParts } from './found-rows.ts';
import { lengthEntry } from './length-entry.ts';
import type { ScreenParts } from './screen.ts';
import { signedLine, signedMark } from './signed-line.ts';

const { survey } = words;

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

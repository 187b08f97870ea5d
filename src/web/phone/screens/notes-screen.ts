import { el } from '../dom/el.ts';
import { keepTyping, writeTyped } from '../dom/kept-typing.ts';
import { putRows } from '../dom/keyed-rows.ts';
import { words } from '../words.ts';
import type { Screen, ScreenParts } from './screen.ts';
import { signedLine, signedMark } from './signed-line.ts';

const kept = 'note';
/** Of many notes the latest are shown; all stand in the log on the laptop. */
const mostShown = 50;

/** Notes: written here, and read here whoever wrote them. */
export const notesScreen = (parts: ScreenParts): Screen => {
  const field = keepTyping(kept, el('textarea', { rows: '4', maxlength: '2000', placeholder: words.notes.hint }));
  const about = el('select', {}, el('option', { value: '' }, words.notes.nothing));
  const none = el('p', { class: 'quiet' }, words.notes.none);
  const list = el('ol', { class: 'rows' });
  let offered = '';
  const put = (event: Event): void => {
    event.preventDefault();
    const text = field.value.trim();
    if (text === '') return;
    const of = about.value === '' ? [] : [about.value];
    writeTyped({ [kept]: field }, () => parts.hand.write({ kind: 'note', about: of, text }, words.notes.wrote));
  };
  return {
    element: el(
      'section',
      {},
      el('h2', {}, words.screens.notes),
      el(
        'form',
        { class: 'stacked', on: { submit: put } },
        el('label', {}, el('span', {}, words.notes.note), field),
        el('label', {}, el('span', {}, words.notes.about), about),
        el('button', { class: 'main' }, words.writeDown),
      ),
      none,
      list,
    ),
    update(state) {
      const stops = state.sheet?.stops ?? [];
      const wanted = JSON.stringify(stops.map(({ place, name }) => [place, name]));
      if (wanted !== offered) {
        offered = wanted;
        about.replaceChildren(
          el('option', { value: '' }, words.notes.nothing),
          ...stops.map(({ place, name }) => el('option', { value: place }, name)),
        );
      }
      const nameOf = new Map(stops.map(({ place, name }) => [place, name]));
      const notes = [...state.log.notes].reverse().slice(0, mostShown);
      none.hidden = notes.length > 0;
      putRows(
        list,
        notes.map((note) => {
          const of = note.about.flatMap((id) => nameOf.get(id) ?? []).join(', ');
          const says = of === '' ? note.text : `${of}: ${note.text}`;
          return {
            key: note.id,
            mark: `${says} ${signedMark(note, state)}`,
            draw: () => el('li', { class: 'row' }, signedLine(says, note, state, parts)),
          };
        }),
      );
    },
  };
};

import { el } from '../dom/el.ts';
import type { Row } from '../dom/keyed-rows.ts';
import type { PhoneState } from '../store/phone-state.ts';
import { words } from '../words.ts';
import type { ScreenParts } from './screen.ts';
import { momentWords } from './signed-line.ts';

/** Something that is ticked: the id under which the log keeps it, and what it says. */
export interface Ticked {
  readonly tick: string;
  readonly says: string;
}

/** The press that ticks a thing, or says that it is not done after all; what is ticked stands with who did and when. */
export const tickPress = ({ tick, says }: Ticked, { log, waiting }: PhoneState, { hand }: ScreenParts): HTMLElement => {
  const entry = log.ticks.get(tick);
  const isDone = entry?.done === true;
  const { done, notDone } = words.today;
  const signed =
    entry === undefined || !isDone
      ? ''
      : ` ${words.by(momentWords(entry.at), entry.by)}${waiting.has(entry.id) ? `, ${words.waits}` : ''}`;
  return el(
    'button',
    {
      type: 'button',
      class: 'tick',
      role: 'checkbox',
      'aria-checked': String(isDone),
      'data-part': `tick ${tick}`,
      on: { click: () => hand.write({ kind: 'tick', of: tick, done: !isDone }, isDone ? notDone(says) : done(says)) },
    },
    el('span', { class: 'box', 'aria-hidden': 'true' }, isDone ? '✓' : ''),
    el('span', {}, says, el('span', { class: 'by' }, signed)),
  );
};

export const tickMark = (tick: string, { log, waiting }: PhoneState): string => {
  const entry = log.ticks.get(tick);
  return entry === undefined ? '' : `${entry.id} ${entry.done} ${waiting.has(entry.id)}`;
};

/** A thing to tick as a row of its own. */
export const tickRow = (item: Ticked, state: PhoneState, parts: ScreenParts): Row => ({
  key: item.tick,
  mark: `${item.says} ${tickMark(item.tick, state)}`,
  draw: () => el('li', { class: 'row' }, tickPress(item, state, parts)),
});

import type { LogEntry } from '../../../core/log/log-entry.ts';
import { el } from '../dom/el.ts';
import type { PhoneState } from '../store/phone-state.ts';
import { words } from '../words.ts';
import type { ScreenParts } from './screen.ts';

/** The hour on this phone’s clock; the day too where it is not today. */
export const momentWords = (at: string | number): string => {
  const moment = new Date(at);
  const isToday = moment.toDateString() === new Date().toDateString();
  return moment.toLocaleString([], isToday ? { timeStyle: 'short' } : { dateStyle: 'short', timeStyle: 'short' });
};

/** All that a line signed so is drawn from. */
export const signedMark = ({ id }: LogEntry, { waiting }: Pick<PhoneState, 'waiting'>): string =>
  `${id}${waiting.has(id) ? ' waits' : ''}`;

/** What stands in the log of a thing, who wrote it when, whether it waits here, and what takes it back. */
export const signedLine = (
  says: string,
  entry: LogEntry,
  { waiting }: Pick<PhoneState, 'waiting'>,
  { hand, ownName }: ScreenParts,
): HTMLElement => {
  const waits = waiting.has(entry.id);
  // the laptop lets a phone take back only what was written on it
  const isOwn = waits || (entry.by !== undefined && entry.by === ownName());
  return el(
    'div',
    { class: 'found' },
    el(
      'p',
      {},
      el('strong', {}, says),
      el('span', { class: 'by' }, ` ${words.by(momentWords(entry.at), entry.by)}${waits ? `, ${words.waits}` : ''}`),
    ),
    isOwn
      ? el(
          'button',
          { type: 'button', class: 'light', 'data-part': 'back', on: { click: () => hand.takeBack(entry.id) } },
          words.takeBack,
          el('span', { class: 'unseen' }, words.takeBackOf(says)),
        )
      : undefined,
  );
};

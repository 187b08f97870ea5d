import type { EntryOf, LogEntry } from '../../../core/log/log-entry.ts';
import { words } from '../words.ts';
import type { BoatLink, Heard } from './phone-link.ts';
import type { PictureShelf } from './shelf.ts';
import type { WaitingEntries } from './waiting-entries.ts';

const mostAtOnce = 200;

interface Sending {
  readonly entries: WaitingEntries;
  readonly pictures: PictureShelf;
  readonly link: BoatLink;
}

/** What holds up all the rest: nobody answers, or nobody knows this phone. */
type Stopped = Extract<Heard<true>, { kind: 'unheard' | 'unpaired' }>;
const isStopped = (answer: Heard<true>): answer is Stopped => answer.kind === 'unheard' || answer.kind === 'unpaired';
const done: Heard<true> = { kind: 'heard', value: true };

/** Sends some entries; where one is refused the others are sent without it. */
const sendSome = async (some: readonly LogEntry[], sending: Sending): Promise<Heard<true>> => {
  const answer = await sending.link.add(some);
  if (answer.kind !== 'refused') return answer;
  const [first, ...rest] = some;
  if (first === undefined) return done;
  if (rest.length === 0) {
    sending.entries.putAside({ entry: first, says: answer.says });
    return done;
  }
  const half = Math.ceil(some.length / 2);
  for (const part of [some.slice(0, half), some.slice(half)]) {
    const told = await sendSome(part, sending);
    if (isStopped(told)) return told;
  }
  return done;
};

/** Sends a photo: its picture, then its entry. */
const sendPhoto = async (entry: EntryOf<'photo'>, sending: Sending): Promise<Heard<true>> => {
  const picture = await sending.pictures.get(entry.picture.hash);
  const answer: Heard<true> =
    picture === undefined
      ? { kind: 'refused', says: words.photoLost }
      : await sending.link.putPicture(entry.picture.hash, picture);
  if (answer.kind === 'heard') return sendSome([entry], sending);
  if (answer.kind === 'refused') sending.entries.putAside({ entry, says: answer.says });
  return isStopped(answer) ? answer : done;
};

/** Sends all that waits but photos, in the order it was written. Gives what stopped it, if anything did. */
export const sendEntries = async (sending: Sending): Promise<Heard<true>> => {
  const waiting = sending.entries.list().filter(({ kind }) => kind !== 'photo');
  for (let at = 0; at < waiting.length; at += mostAtOnce) {
    const answer = await sendSome(waiting.slice(at, at + mostAtOnce), sending);
    if (isStopped(answer)) return answer;
  }
  return done;
};

/** Sends the photos that wait, one after the other. Gives what stopped it, if anything did. */
export const sendPhotos = async (sending: Sending): Promise<Heard<true>> => {
  for (const entry of sending.entries.list()) {
    const answer = entry.kind === 'photo' ? await sendPhoto(entry, sending) : done;
    if (isStopped(answer)) return answer;
  }
  return done;
};

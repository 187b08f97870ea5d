import type { Photo } from '../../../core/boat/photo.ts';
import type { EntryOf } from '../../../core/log/log-entry.ts';
import type { PhoneStop } from '../../../papers/phone/phone-stops.ts';
import { el } from '../dom/el.ts';
import type { Row } from '../dom/keyed-rows.ts';
import type { PhoneState } from '../store/phone-state.ts';
import { words } from '../words.ts';
import type { ScreenParts } from './screen.ts';
import { signedLine, signedMark } from './signed-line.ts';

/** A thing that is looked at: its id, its name for who does not see the head above it, and that head. */
export interface LookedAt {
  readonly of: string;
  readonly name: string;
  readonly title: string;
  readonly isPlace: boolean;
}

/** The presses that say how a place or a way was found, and what was said of it last. */
export const seenParts = (
  { of, name, isPlace }: LookedAt,
  state: PhoneState,
  parts: ScreenParts,
): (HTMLElement | undefined)[] => {
  const { survey } = words;
  const seen = state.log.seen.get(of);
  const press = (is: EntryOf<'seen'>['is'], says: string): HTMLElement =>
    el(
      'button',
      {
        type: 'button',
        'data-part': `seen ${is}`,
        'aria-pressed': String(seen?.is === is),
        'aria-label': survey.ofThing(says, name),
        on: { click: () => parts.hand.write({ kind: 'seen', of, is }, survey.wrote(survey.is[is])) },
      },
      says,
    );
  return [
    seen === undefined ? undefined : signedLine(survey.is[seen.is], seen, state, parts),
    el(
      'div',
      { class: 'entry' },
      press('so', isPlace ? survey.so : survey.cableCanGo),
      isPlace ? undefined : press('pulled', survey.pulled),
      press('not', survey.not),
    ),
  ];
};

export const seenMark = (of: string, state: PhoneState): string => {
  const seen = state.log.seen.get(of);
  return seen === undefined ? '' : signedMark(seen, state);
};

/** A place as a whole. */
export const seenRow = (looked: LookedAt, state: PhoneState, parts: ScreenParts): Row => ({
  key: `seen ${looked.of}`,
  mark: `${looked.title} ${seenMark(looked.of, state)}`,
  draw: () => el('li', { class: 'row' }, el('h3', {}, looked.title), ...seenParts(looked, state, parts)),
});

const photoPress = (
  of: string,
  name: string,
  shows: Photo['shows'],
  says: string,
  { hand }: ScreenParts,
): HTMLElement => {
  const input = el('input', {
    type: 'file',
    accept: 'image/*',
    capture: 'environment',
    hidden: true,
    on: {
      change: () => {
        const file = input.files?.[0];
        if (file !== undefined) void hand.takePhoto(of, shows, file);
        input.value = '';
      },
    },
  });
  const aria = words.survey.photoOf(words.survey.photos[shows], name);
  return el(
    'span',
    {},
    el(
      'button',
      { type: 'button', 'aria-label': aria, 'data-part': `photo ${shows}`, on: { click: () => input.click() } },
      says,
    ),
    input,
  );
};

/** The photos of a thing that were taken so far, and the presses that take more. */
export const photoParts = (
  { of, name, asks }: { of: string; name: string; asks: readonly (readonly [shows: Photo['shows'], says: string])[] },
  state: PhoneState,
  parts: ScreenParts,
): HTMLElement[] => [
  ...state.log.photos
    .filter((photo) => photo.of === of)
    .map((photo) => signedLine(words.survey.photoTaken(words.survey.photos[photo.shows]), photo, state, parts)),
  el('div', { class: 'entry' }, ...asks.map(([shows, says]) => photoPress(of, name, shows, says, parts))),
];

export const photoMark = (of: string, state: PhoneState): string =>
  state.log.photos
    .filter((photo) => photo.of === of)
    .map((photo) => signedMark(photo, state))
    .join();

/** A place as a photo shows it. */
export const photoRow = ({ place, name }: PhoneStop, state: PhoneState, parts: ScreenParts): Row => ({
  key: `photo ${place}`,
  mark: photoMark(place, state),
  draw: () =>
    el(
      'li',
      { class: 'row' },
      ...photoParts({ of: place, name, asks: [['other', words.survey.photoPlace]] }, state, parts),
    ),
});

import type { EntryOf } from '../../../core/log/log-entry.ts';
import { lengthInWords } from '../../../papers/phone/length-in-words.ts';
import type { PhoneUnit } from '../../../papers/phone/phone-stops.ts';
import { el } from '../dom/el.ts';
import { keepTyping, writeTyped } from '../dom/kept-typing.ts';
import type { Row } from '../dom/keyed-rows.ts';
import type { PhoneState } from '../store/phone-state.ts';
import { words } from '../words.ts';
import { photoMark, photoParts } from './found-rows.ts';
import { lengthEntry } from './length-entry.ts';
import type { ScreenParts } from './screen.ts';
import { signedLine, signedMark } from './signed-line.ts';

const { survey } = words;
const longest = 80;

const textField = (kept: string, hint: string, aria: string): HTMLInputElement =>
  keepTyping(
    kept,
    el('input', {
      autocomplete: 'off',
      autocapitalize: 'characters',
      spellcheck: 'false',
      maxlength: String(longest),
      placeholder: hint,
      'aria-label': aria,
    }),
  );

const plateEntry = ({ id, name }: PhoneUnit, { hand }: ScreenParts): HTMLElement => {
  const [serialName, softwareName] = [`serial ${id}`, `software ${id}`];
  const serial = textField(serialName, survey.serialHint, survey.serial(name));
  const software = textField(softwareName, survey.softwareHint, survey.software(name));
  const put = (event: Event): void => {
    event.preventDefault();
    const [number, version] = [serial.value.trim(), software.value.trim()];
    if (number === '' && version === '') return;
    const found = {
      ...(number === '' ? {} : { serial: number }),
      ...(version === '' ? {} : { software: version }),
    };
    const says = survey.wrote(survey.noted(found.serial, found.software));
    const fields = { [serialName]: serial, [softwareName]: software };
    writeTyped(fields, () => hand.write({ kind: 'aboard', of: id, ...found }, says));
  };
  return el(
    'form',
    { class: 'entry', on: { submit: put } },
    serial,
    software,
    el('button', { class: 'main', 'data-part': 'put' }, words.writeDown),
  );
};

/** The cable from the place of a unit to its plug, where the file has a length of it. */
const tailParts = (
  { id, name, tail }: PhoneUnit,
  taped: EntryOf<'measure'> | undefined,
  state: PhoneState,
  parts: ScreenParts,
): (HTMLElement | undefined)[] =>
  tail === undefined
    ? []
    : [
        el('p', {}, survey.tail(tail.length)),
        taped === undefined ? undefined : signedLine(survey.taped(lengthInWords(taped)), taped, state, parts),
        lengthEntry(id, survey.tailOf(name), parts),
      ];

/** A unit as it hangs aboard: what stands on its label, and how it looks. */
export const unitRow = (unit: PhoneUnit, state: PhoneState, parts: ScreenParts): Row => {
  const { id, name, wantsSerial, wantsPhotos } = unit;
  const noted = state.log.aboard.get(id);
  const taped = state.log.measures.get(id);
  const asks = wantsPhotos.map((shows) => [shows, survey.photos[shows]] as const);
  return {
    key: `unit ${id}`,
    mark: `${JSON.stringify(unit)} ${noted === undefined ? '' : signedMark(noted, state)} ${taped === undefined ? '' : signedMark(taped, state)} ${photoMark(id, state)}`,
    draw: () =>
      el(
        'li',
        { class: 'row' },
        el('h3', {}, name),
        noted === undefined ? undefined : signedLine(survey.noted(noted.serial, noted.software), noted, state, parts),
        wantsSerial ? plateEntry(unit, parts) : undefined,
        ...tailParts(unit, taped, state, parts),
        ...photoParts({ of: id, name, asks: [...asks, ['other', survey.photos.other]] }, state, parts),
      ),
  };
};

import type { PhoneUnit } from '../../../papers/phone/phone-stops.ts';
import { el } from '../dom/el.ts';
import { keepTyping, writeTyped } from '../dom/kept-typing.ts';
import type { Row } from '../dom/keyed-rows.ts';
import type { PhoneState } from '../store/phone-state.ts';
import { words } from '../words.ts';
import { photoMark, photoParts } from './found-rows.ts';
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

/** A unit as it hangs aboard: what stands on its label, and how it looks. */
export const unitRow = (unit: PhoneUnit, state: PhoneState, parts: ScreenParts): Row => {
  const { id, name, wantsSerial, wantsPhotos } = unit;
  const noted = state.log.aboard.get(id);
  const asks = wantsPhotos.map((shows) => [shows, survey.photos[shows]] as const);
  return {
    key: `unit ${id}`,
    mark: `${JSON.stringify(unit)} ${noted === undefined ? '' : signedMark(noted, state)} ${photoMark(id, state)}`,
    draw: () =>
      el(
        'li',
        { class: 'row' },
        el('h3', {}, name),
        noted === undefined ? undefined : signedLine(survey.noted(noted.serial, noted.software), noted, state, parts),
        wantsSerial ? plateEntry(unit, parts) : undefined,
        ...photoParts({ of: id, name, asks: [...asks, ['other', survey.photos.other]] }, state, parts),
      ),
  };
};

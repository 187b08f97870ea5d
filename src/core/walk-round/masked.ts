import type { Setting } from '../boat/aboard.ts';
import { notedSettings } from '../facts/noted-settings.ts';

/**
 * A number by which a thing is known, as it may be shown: its last two signs, the rest covered; all of it where it is short.
 *
 * @example masked('002345678') // '•••••••78'
 */
export const masked = (text: string): string => {
  const signs = [...text];
  const open = signs.length > 4 ? 2 : 0;
  return signs.map((sign, at) => (at < signs.length - open ? '•' : sign)).join('');
};

/** Nine digits running are the number of a ship or a radio, whatever a setting is called. */
const holdsShipNumber = (value: string): boolean => /\d{9}/.test(value.replace(/[\s.-]/g, ''));

/** The value of a setting as it may be shown: what is nobody else’s is covered. */
export const shownSetting = ({ name, value }: Setting): string =>
  notedSettings.closed.includes(name) || holdsShipNumber(value) ? masked(value) : value;

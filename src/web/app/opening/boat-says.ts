import type { Boat } from '../../../core/boat/boat-schema.ts';
import { words } from './boat-words.ts';

/** One line that tells a boat from another, for example "11.8 m pilothouse motorboat · 12 V · 26 units". */
export const boatSays = (boat: Boat): string => {
  const volts = [...new Set(boat.supply.banks.map((bank) => words.volts(bank.nominalV)))].join(words.and);
  const stays = boat.kit.filter((unit) => unit.fate !== 'goes').length;
  return [
    words.hull(boat.hull.lengthM, boat.hull.kind.replaceAll('-', ' ')),
    ...(volts === '' ? [] : [volts]),
    words.units(stays),
  ].join(' · ');
};

import type { Boat } from '../../../core/boat/boat-schema.ts';
import { printCount } from '../../../papers/lists/print-figure.ts';

/** One line that tells a boat from another, for example "11.8 m pilothouse motorboat · 12 V · 26 units". */
export const boatSays = (boat: Boat): string => {
  const volts = [...new Set(boat.supply.banks.map((bank) => `${bank.nominalV} V`))].join(' and ');
  const stays = boat.kit.filter((unit) => unit.fate !== 'goes').length;
  return [
    `${boat.hull.lengthM} m ${boat.hull.kind.replaceAll('-', ' ')}`,
    ...(volts === '' ? [] : [volts]),
    printCount(stays, 'unit'),
  ].join(' · ');
};

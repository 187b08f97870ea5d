import type { BoatIndex } from '../../boat/boat-index.ts';
import type { Kit } from '../../boat/boat-schema.ts';
import type { Sheet } from '../../boat/sheet.ts';
import type { EnteredSet } from './who-may-enter.ts';

/** A set that is known by the ship's own number. */
export interface OwnSet {
  readonly unit: Kit;
  readonly is: EnteredSet['is'];
}

const ownPosition = (sheet: Sheet): boolean =>
  sheet.ports.some(
    ({ sends = [], hears = [] }) =>
      sends.some(({ pgn, sentence }) => pgn === 129_025 || sentence === 'VDO') ||
      hears.some(({ reading }) => reading === 'position'),
  );

/** Which of the ship's own sets a sheet is; undefined for handhelds, receivers, and all that is no radio. An AIS that does not call itself class A is taken as class B. */
export const ownSetOf = (sheet: Sheet | undefined): EnteredSet['is'] | undefined => {
  if (sheet === undefined || sheet.ownBattery === true) return undefined;
  if (sheet.kind === 'vhf-radio' || sheet.kind === 'mfhf-radio') return 'radio';
  if (sheet.kind !== 'ais' || !ownPosition(sheet)) return undefined;
  return /class[ -]a\b/i.test(`${sheet.id} ${sheet.name}`) ? 'ais-class-a' : 'ais-class-b';
};

/** The ship's own sets of a boat, whatever becomes of them. */
export const ownSets = ({ boat, sheetOf }: BoatIndex): OwnSet[] =>
  boat.kit.flatMap((unit) => {
    const is = ownSetOf(sheetOf.get(unit.id));
    return is === undefined ? [] : [{ unit, is }];
  });

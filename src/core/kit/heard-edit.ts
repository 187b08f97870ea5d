import type { Boat } from '../boat/boat-schema.ts';
import type { EditParams } from '../boat/edits/index.ts';
import { everyId } from '../boat/every-id.ts';
import { UserError } from '../boat/user-error.ts';
import { draftBoat } from '../proof/survey/draft-boat.ts';
import type { SurveyReport } from '../proof/survey/survey-report.ts';
import { likelyPlaces } from './likely-places.ts';

/** What puts a recording’s units aboard a boat: the edit, absent where she has them all, and how many she had already. */
export interface HeardEdit {
  readonly params?: EditParams<'add-heard'>;
  readonly added: number;
  readonly known: number;
}

const busName = 'nav';

/** An id that is free in the boat and among those given out before. */
const freeAmong = (taken: Set<string>, id: string): string => {
  let free = id;
  for (let at = 2; taken.has(free); at += 1) free = `${id}-${at}`;
  taken.add(free);
  return free;
};

/**
 * Puts what a recording heard aboard a boat that is there: one unit for each NAME, or for each address that showed none, at the
 * place where such a unit usually stands, all on her first backbone. A unit whose NAME the boat knows is left as it is.
 *
 * @throws UserError for a recording in which nobody spoke, or a boat without a place
 */
export const heardEdit = (boat: Boat, report: SurveyReport): HeardEdit => {
  const draft = draftBoat(report);
  const port = draft.joins[0]?.members[0]?.port;
  if (port === undefined) {
    throw new UserError({
      says: 'Nobody spoke in this recording.',
      whatToDo: 'Record the bus with everything on it switched on.',
    });
  }
  const names = new Set(boat.kit.map(({ identity }) => identity));
  const taken = new Set(everyId(boat).map(({ id }) => id));
  const unknown = draft.kit.filter(({ identity }) => identity === undefined || !names.has(identity));
  const made = unknown.flatMap((unit) => {
    const sheet = draft.sheets.find(({ id }) => id === unit.sheet);
    const place = sheet === undefined ? undefined : likelyPlaces(boat, sheet)[0]?.id;
    if (sheet === undefined || place === undefined) return [];
    const sheetId = freeAmong(taken, sheet.id);
    return [
      { sheet: { ...sheet, id: sheetId }, unit: { ...unit, id: freeAmong(taken, unit.id), sheet: sheetId, place } },
    ];
  });
  if (made.length < unknown.length) {
    throw new UserError({ says: 'This boat has no place yet.', whatToDo: 'Add a place to her first.' });
  }
  const known = draft.kit.length - unknown.length;
  if (made.length === 0) return { added: 0, known };
  return {
    params: {
      bus: boat.buses[0]?.id ?? freeAmong(taken, busName),
      port,
      sheets: made.map(({ sheet }) => sheet),
      units: made.map(({ unit }) => unit),
    },
    added: made.length,
    known,
  };
};

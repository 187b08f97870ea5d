import { indexBoat } from '../boat/boat-index.ts';
import type { Boat } from '../boat/boat-schema.ts';
import type { EditParams } from '../boat/edits/index.ts';
import { everyId } from '../boat/every-id.ts';
import { UserError } from '../boat/user-error.ts';
import type { Plan } from '../plan-shape.ts';
import { type HeardUnitAboard, identitiesHeard, takeOver } from '../proof/compare/identities-heard.ts';
import type { Planned } from '../proof/compare/planned-sends.ts';
import { draftBoat, draftedSenders } from '../proof/survey/draft-boat.ts';
import type { SurveyReport } from '../proof/survey/survey-report.ts';
import { likelyPlaces } from './likely-places.ts';

/** What puts a recording’s units aboard a boat: the edits, each absent where there is nothing for it. */
export interface HeardEdit {
  readonly params?: EditParams<'add-heard'>;
  /** who the units aboard were heard to be */
  readonly takenOver?: EditParams<'take-identities'>;
  readonly added: number;
  /** units she had already, by their NAME or because no other could be meant */
  readonly known: number;
  /** of these: aboard, but which of several alike is not sure; nothing is taken over of them */
  readonly unsure: number;
}

const busName = 'nav';

/** Units aboard that senders surely are, on her first bus, where heard units are put too. */
const heardAboard = (planned: Planned, { senders, time }: SurveyReport): HeardUnitAboard[] => {
  const bus = planned.index.boat.buses[0]?.id;
  return bus === undefined ? [] : identitiesHeard(planned, bus, { senders, durationS: time?.durationS });
};

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
 * With her plan a unit she has without a NAME is known again too, where no other could be meant, and gets what was heard.
 *
 * @throws UserError for a recording in which nobody spoke, or a boat without a place
 */
export const heardEdit = (boat: Boat, report: SurveyReport, plan?: Plan): HeardEdit => {
  const draft = draftBoat(report);
  const port = draft.joins[0]?.members[0]?.port;
  if (port === undefined) {
    throw new UserError({
      says: 'Nobody spoke in this recording.',
      whatToDo: 'Record the bus with everything on it switched on.',
    });
  }
  const aboard = plan === undefined ? [] : heardAboard({ index: indexBoat(boat), plan }, report);
  const takenOver = takeOver(aboard);
  const unsure = aboard.filter(({ isSure }) => !isSure).length;
  const taken = { ...(takenOver === undefined ? {} : { takenOver }), unsure };
  const names = new Set(boat.kit.map(({ identity }) => identity));
  const matched = new Set(aboard.flatMap(({ senders }) => senders.map((at) => report.senders[at])));
  const heard = draftedSenders(report);
  const ids = new Set(everyId(boat).map(({ id }) => id));
  const unknown = draft.kit.filter(
    ({ identity }, at) => !matched.has(heard[at]) && (identity === undefined || !names.has(identity)),
  );
  const made = unknown.flatMap((unit) => {
    const sheet = draft.sheets.find(({ id }) => id === unit.sheet);
    const place = sheet === undefined ? undefined : likelyPlaces(boat, sheet)[0]?.id;
    if (sheet === undefined || place === undefined) return [];
    const sheetId = freeAmong(ids, sheet.id);
    return [
      { sheet: { ...sheet, id: sheetId }, unit: { ...unit, id: freeAmong(ids, unit.id), sheet: sheetId, place } },
    ];
  });
  if (made.length < unknown.length) {
    throw new UserError({ says: 'This boat has no place yet.', whatToDo: 'Add a place to her first.' });
  }
  const known = draft.kit.length - unknown.length;
  if (made.length === 0) return { ...taken, added: 0, known };
  return {
    ...taken,
    params: {
      bus: boat.buses[0]?.id ?? freeAmong(ids, busName),
      port,
      sheets: made.map(({ sheet }) => sheet),
      units: made.map(({ unit }) => unit),
    },
    added: made.length,
    known,
  };
};

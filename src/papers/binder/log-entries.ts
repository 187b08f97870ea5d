import type { Boat } from '../../core/boat/boat-schema.ts';
import { byCodeUnit } from '../../core/units/by-code-unit.ts';
import { cardBoat } from '../cards/card-boat.ts';
import { endWords } from '../lists/end-words.ts';
import type { LogEntry } from './chapters/change-log.ts';

/** What the boat file knows of changes, by day: sets of papers given out, and what was found otherwise than planned. */
export const logEntries = (boat: Boat): LogEntry[] => {
  const index = cardBoat(boat);
  const issued = (boat.revisions ?? []).map(({ mark, standing, on, by = '', says }) => ({
    dateIso: on,
    what: `Revision ${mark}, as ${standing}: ${says}`,
    sheets: 'all',
    by,
  }));
  const found = (boat.fitted ?? []).map(({ about, was, is, on, by = '', note }) => ({
    dateIso: on,
    what: `${endWords(index, about)}: ${was === undefined ? '' : `was ${was}, `}is ${is}${note === undefined ? '' : `. ${note}`}`,
    sheets: '',
    by,
  }));
  return [...issued, ...found].sort((a, b) => byCodeUnit(a.dateIso, b.dateIso));
};

import type { LogEntry } from '../../../core/log/log-entry.ts';
import { byCodeUnit } from '../../../core/units/by-code-unit.ts';
import { keysOf, type Shelf, setAtAnyPrice } from './shelf.ts';

/** An entry that the laptop will not have, with its reason; it is kept until a person has read it. */
export interface AsideEntry {
  readonly entry: LogEntry;
  readonly says: string;
}

/** The entries of one boat that the laptop’s log did not show yet, as they stand on the shelf. */
export interface WaitingEntries {
  /** in the order they were written */
  readonly list: () => readonly LogEntry[];
  /** false where there is no room: then it was not written */
  readonly put: (entry: LogEntry) => boolean;
  readonly remove: (ids: ReadonlySet<string>) => void;
  readonly aside: () => readonly AsideEntry[];
  readonly putAside: (aside: AsideEntry) => void;
  readonly dropAside: (id: string) => void;
}

const parsed = (text: string | undefined): unknown => {
  try {
    return JSON.parse(text ?? '');
  } catch {
    return undefined;
  }
};

/** Whether a value is an entry as far as a phone must know; the laptop checks the rest. */
export const isEntry = (value: unknown): value is LogEntry =>
  typeof value === 'object' &&
  value !== null &&
  'id' in value &&
  typeof value.id === 'string' &&
  /^[a-z0-9]{8,40}$/.test(value.id) &&
  'at' in value &&
  typeof value.at === 'string' &&
  'kind' in value;

const isAside = (value: unknown): value is AsideEntry =>
  typeof value === 'object' && value !== null && 'entry' in value && isEntry(value.entry) && 'says' in value;

const inOrder = (one: LogEntry, other: LogEntry): number =>
  byCodeUnit(one.at, other.at) || byCodeUnit(one.id, other.id);

/**
 * The lines of a log as the laptop sends them. It has checked them when they were written, so that here only a torn line is
 * left out.
 */
export const entriesIn = (text: string): readonly LogEntry[] => text.split('\n').map(parsed).filter(isEntry);

export const waitingEntries = (shelf: Shelf, boat: string): WaitingEntries => {
  const keys = keysOf(boat);
  const valuesUnder = (prefix: string): unknown[] =>
    shelf
      .keys()
      .filter((key) => key.startsWith(prefix))
      .map((key) => parsed(shelf.get(key)));
  return {
    list: () => valuesUnder(keys.waiting).filter(isEntry).sort(inOrder),
    put: (entry) => setAtAnyPrice(shelf, `${keys.waiting}${entry.id}`, JSON.stringify(entry)),
    remove: (ids) => {
      for (const id of ids) shelf.remove(`${keys.waiting}${id}`);
    },
    aside: () => valuesUnder(keys.aside).filter(isAside),
    putAside: (aside) => {
      // what cannot be put aside stays where it is, and is tried again
      if (setAtAnyPrice(shelf, `${keys.aside}${aside.entry.id}`, JSON.stringify(aside)))
        shelf.remove(`${keys.waiting}${aside.entry.id}`);
    },
    dropAside: (id) => shelf.remove(`${keys.aside}${id}`),
  };
};

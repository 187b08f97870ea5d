import type { BoatLog } from '../../../core/log/boat-log.ts';
import type { NewEntry } from '../../../core/log/new-entry.ts';
import type { PhoneSheet } from '../../../papers/phone/phone-sheet.ts';
import type { BoatLink } from './phone-link.ts';
import type { PictureShelf, Shelf } from './shelf.ts';
import type { AsideEntry } from './waiting-entries.ts';

/** How the phone stands with the laptop. */
export type Standing = 'asking' | 'heard' | 'unheard' | 'unpaired' | 'refused';

/** One boat as the phone has her. */
export interface PhoneState {
  /** what the laptop’s log and all that waits here come to */
  readonly log: BoatLog;
  /** ids of entries that the laptop’s log did not show yet */
  readonly waiting: ReadonlySet<string>;
  readonly aside: readonly AsideEntry[];
  readonly standing: Standing;
  /** when the laptop was heard last, by this phone’s clock */
  readonly heardAtMs?: number;
  /** what the laptop says where it does not do what it was asked */
  readonly says?: string;
  readonly sheet?: PhoneSheet;
  /** why there is no sheet, or no newer one, in a sentence */
  readonly sheetSays?: string;
}

export interface PhoneStore {
  readonly state: () => PhoneState;
  readonly onChange: (listener: () => void) => () => void;
  /** the entry is on the shelf when this gives its id; undefined where there is no room: then nothing was written */
  readonly write: (entry: NewEntry) => string | undefined;
  /** a photo: its bytes are on the shelf before its entry is */
  readonly writePhoto: (photo: Extract<NewEntry, { kind: 'photo' }>, bytes: Blob) => Promise<string | undefined>;
  readonly dropAside: (id: string) => void;
  /** looks at the shelf anew, where another tab may have written */
  readonly lookAgain: () => void;
  /** sends what waits but photos, and reads what is new */
  readonly sync: () => Promise<Again>;
  /** sends the photos that wait; beside `sync`, so that a picture on a weak link holds up no tick */
  readonly sendPhotos: () => Promise<Again>;
}

/** How long to wait before it is worth trying again, where the laptop says so. */
export interface Again {
  readonly afterS?: number;
}

export interface PhoneStoreParts {
  readonly boat: string;
  readonly shelf: Shelf;
  readonly pictures: PictureShelf;
  readonly link: BoatLink;
  readonly nowMs: () => number;
  readonly newId: () => string;
}

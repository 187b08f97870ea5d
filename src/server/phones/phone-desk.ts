import type { BoatFolder } from '../../node/boat-folder.ts';
import type { DeviceList } from './device-list.ts';
import type { PairingCodes } from './pairing-codes.ts';
import type { RateLimit } from './rate-limit.ts';
import type { SheetShelf } from './sheet-shelf.ts';

/** What requests of phones are answered from: the boats, and nothing that reaches a bus. */
export interface PhoneDesk {
  readonly boats: BoatFolder;
  readonly devices: DeviceList;
  readonly codes: PairingCodes;
  readonly sheets: SheetShelf;
  /** bytes that phones may add to logs, and pictures they may leave beside boats */
  readonly entryBytes: RateLimit;
  readonly pictures: RateLimit;
  /** begins to take in a body; gives what to call when it is in, or undefined where enough are taken in already */
  readonly beginBody: () => (() => void) | undefined;
}

import type { Step } from '../../core/boat/start-history.ts';

/** What a file of the folder held when it was last read or saved; the tag is the server’s name for it. */
export interface KeptFile {
  readonly tag: string;
  readonly text: string;
}

/** One boat with its edits as this browser keeps it. */
export interface KeptBoat {
  /** the folder and the boat’s id in it */
  readonly key: string;
  /** the boat as it is now */
  readonly text: string;
  readonly done: readonly Step[];
  readonly undone: readonly Step[];
  /** changes since the file was read or saved last */
  readonly unsaved: number;
  readonly file: KeptFile;
  /** hashes of the texts the boat had of late: a file that holds one of them was saved from here */
  readonly passed: readonly string[];
}

/** Where boats are kept between one page and the next. */
export interface BoatKeeper {
  readonly read: (key: string) => Promise<KeptBoat | undefined>;
  /** comes back once it is on the disk; throws where the browser keeps nothing */
  readonly keep: (boat: KeptBoat) => Promise<void>;
}

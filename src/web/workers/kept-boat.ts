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
  /** when it was kept, by this machine’s clock; absent in what an older program kept */
  readonly atMs?: number;
}

/** How records are made; one of a later make was kept by a newer program. */
export const recordMake = 1;

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const isStep = (value: unknown): boolean =>
  isObject(value) && typeof value.title === 'string' && Array.isArray(value.forth) && Array.isArray(value.back);

const areSteps = (value: unknown): boolean => Array.isArray(value) && value.every(isStep);

const areTexts = (value: unknown): boolean => Array.isArray(value) && value.every((entry) => typeof entry === 'string');

/** Whether what the browser has of a boat is what this program keeps; a newer one may keep it otherwise, and a disk may fail. */
export const isKeptBoat = (value: unknown): value is KeptBoat =>
  isObject(value) &&
  (value.make === undefined || value.make === recordMake) &&
  [value.key, value.text].every((text) => typeof text === 'string') &&
  areSteps(value.done) &&
  areSteps(value.undone) &&
  Number.isInteger(value.unsaved) &&
  isObject(value.file) &&
  [value.file.tag, value.file.text].every((text) => typeof text === 'string') &&
  areTexts(value.passed);

/** Where boats are kept between one page and the next. */
export interface BoatKeeper {
  /** what is kept, which is a KeptBoat unless a newer program or a fault wrote it; undefined where there is nothing */
  readonly read: (key: string) => Promise<unknown>;
  /** comes back once it is on the disk; throws where the browser keeps nothing */
  readonly keep: (boat: KeptBoat) => Promise<void>;
  /** puts what is kept aside under another name, where nothing is written over it */
  readonly setAside: (key: string) => Promise<void>;
}

import { remember } from '../../core/boat/remember.ts';
import { boatLog } from '../../core/log/boat-log.ts';
import { readLog } from '../../core/log/read-log.ts';
import { doneJobs } from '../../core/work/ticks.ts';
import type { BoatText } from '../../node/boat-folder.ts';
import { contentHash } from '../../node/files/content-hash.ts';

/** What the sheet of a boat is made from; equal hashes give equal sheets. */
export interface SheetAsked {
  readonly text: string;
  /** the jobs that are done, each with its day: the rest is ordered from there, as on the laptop */
  readonly done: readonly (readonly [job: string, day: string])[];
  /** the day it is here */
  readonly today: string;
  readonly hash: string;
  /** of her file alone */
  readonly fileHash: string;
}

/** Phones ask for the sheet again and again; the log is taken apart once for each state of it. */
const doneIn = remember({
  most: 8,
  keyOf: (logText: string) => contentHash(logText),
  find: (logText) => [...doneJobs(boatLog(readLog(logText).entries))],
});

const dayOf = (now: Date): string =>
  new Date(now.getTime() - now.getTimezoneOffset() * 60_000).toISOString().slice(0, 10);

/** What is asked for the sheet of a boat, as her file and her log stand now. */
export const sheetAsked = ({ text, hash }: BoatText, logText: string, now: Date): SheetAsked => {
  const done = doneIn(logText);
  const today = dayOf(now);
  return { text, done, today, fileHash: hash, hash: contentHash(JSON.stringify([hash, done, today])) };
};

import { sentenceOf } from '../../src/core/boat/boat-problem.ts';
import { type Boat, boatSchema } from '../../src/core/boat/boat-schema.ts';
import { checkReferences } from '../../src/core/boat/check-references.ts';
import { placeInFile } from '../../src/core/boat/place-in-file.ts';
import { readBoat } from '../../src/core/boat/read-boat.ts';
import { writeBoat } from '../../src/core/boat/write-boat.ts';
import { faultOfRefusal, faultOfWords, leadsSomewhere } from './judge-refusal.ts';
import { misfitIn } from './misfit-in.ts';
import type { BoatData } from './small-boats.ts';

/** What became of a damaged boat file: the boat it still is, or nothing where it was refused as it should; else what is wrong. */
export interface Tried {
  readonly boat?: Boat;
  readonly fault?: string;
}

/** Longest that reading may take on a busy machine; what takes longer hangs. */
const longestMs = 4000;

/** Reads a damaged boat file and judges what comes of it. */
export const tryBoat = (text: string): Tried => {
  const startMs = performance.now();
  let boat: Boat;
  try {
    boat = readBoat(text);
  } catch (error) {
    const fault = faultOfRefusal(error, text);
    return fault === undefined ? {} : { fault };
  }
  const tookMs = performance.now() - startMs;
  if (tookMs > longestMs) return { fault: `took ${Math.round(tookMs)} ms` };
  return { boat };
};

const isReal = (data: unknown): data is BoatData => typeof data === 'object' && data !== null && !Array.isArray(data);

/**
 * Tries a damaged boat as parsed JSON: the schema of all that is otherwise than it was, then the references of the whole. As
 * `tryBoat`, but for what only a text can hold, at a fraction of the work.
 */
export const tryData = (good: BoatData, data: unknown): Tried => {
  // what is no object, or has a name that is none of a boat’s, is for the text to try
  if (!isReal(data) || Object.keys(data).some((name) => !Object.hasOwn(boatSchema.shape, name))) return {};
  try {
    const problem = misfitIn(good, data);
    // reason: every part fits its schema by now
    const boat = data as unknown as Boat;
    const [first] = problem === undefined ? checkReferences(boat) : [problem];
    if (first === undefined) return { boat };
    const fault = faultOfWords(sentenceOf(first), first.whatToDo);
    if (fault !== undefined) return { fault };
    return leadsSomewhere(data, first.path) ? {} : { fault: `a place that is not there: ${placeInFile(first.path)}` };
  } catch (error) {
    return { fault: faultOfRefusal(error, '') ?? `refused where nothing may be: ${String(error)}` };
  }
};

/** Whether a text has a name in it that is refused while it is read, before any schema is asked. */
const hasHarmfulName = (text: string): boolean => text.includes('"__proto__":');

/** Whether a boat that was read is written so that she is read the same again; else what is wrong. */
export const faultOfWriting = (boat: Boat): string | undefined => {
  const first = writeBoat(boat);
  // the value of a change may be any JSON, and data that was damaged was no text yet: no file and no edit can hold this
  if (hasHarmfulName(first)) return undefined;
  const second = writeBoat(readBoat(first));
  if (!boatSchema.safeParse(boat).success) return 'does not fit the schema';
  return first === second ? undefined : 'is written otherwise the second time';
};

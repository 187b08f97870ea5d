import type { EssentialFunction } from './essential-functions.ts';
import type { ReadingId } from './reading-ids.ts';
import type { SourceKey } from './sources.ts';

/** Functions that a reading gives. */
export const watchedReadings: {
  readonly source: SourceKey;
  readonly byFunction: Readonly<Partial<Record<EssentialFunction, ReadingId>>>;
} = {
  source: 'choice-watched-functions',
  byFunction: { depth: 'depth', position: 'position', heading: 'heading' },
};

/** Kinds of unit on which such a reading is read by somebody who steers; a radio shows it in small, and counts. */
export const watchedScreens: { readonly source: SourceKey; readonly kinds: readonly string[] } = {
  source: 'choice-watched-functions',
  kinds: ['computer', 'display', 'instrument', 'pilot-head', 'sounder', 'tablet', 'vhf-radio'],
};

/** Kinds that show a reading by themselves, with nothing between but the lead of their own sensor. */
export const shownAlone: { readonly source: SourceKey; readonly byKind: Readonly<Record<string, ReadingId>> } = {
  source: 'choice-watched-functions',
  byKind: { sounder: 'depth' },
};

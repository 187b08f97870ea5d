import type { BoatIndex } from '../../boat/boat-index.ts';
import type { FitEntry } from '../../fits-shape.ts';
import { unitName } from '../rule-words.ts';

/** Millimetres as a finding says them: to a tenth. */
export const mmWords = (mm: number): string => `${Number(mm.toFixed(1))} mm`;

/** An opening by its name. */
export const openingName = (index: BoatIndex, id: string): string =>
  index.boat.openings?.find((opening) => opening.id === id)?.name ?? id;

/** The unit that comes into an opening, by its name. */
export const comesHere = (index: BoatIndex, { unit }: FitEntry): string => unitName(index, unit ?? '');

/** What a finding on an opening is about: the opening, and the unit in it. */
export const aboutFit = ({ opening, unit }: FitEntry): string[] => [opening, ...(unit === undefined ? [] : [unit])];

/** Whether a unit is set in the opening, cut for or not. */
export const isSet = ({ unit, verdict }: FitEntry): boolean =>
  unit !== undefined && ['as-it-is', 'enlarge', 'plate'].includes(verdict);

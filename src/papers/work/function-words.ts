import type { EssentialFunction } from '../../core/facts/essential-functions.ts';
import { functionNames } from '../../core/facts/function-names.ts';

/** What each essential function is called, in the middle of a sentence. */
export const functionWords: Readonly<Record<EssentialFunction, string>> = {
  ...functionNames.byFunction,
  'bilge-pump': 'bilge pump',
  vhf: 'VHF with its antenna',
  'shore-charging': 'shore charging',
};

/** The same on a lane of the picture. */
export const briefFunction: Readonly<Record<EssentialFunction, string>> = {
  ...functionWords,
  'engine-stop': 'engine stop',
  'high-water-alarm': 'high water',
  'navigation-lights': 'nav. lights',
  vhf: 'VHF',
  'shore-charging': 'shore charge',
};

/** What is asked of each function that circuits or batteries give. */
export const askedFunction = (name: string): string => `What feeds the ${name}?`;

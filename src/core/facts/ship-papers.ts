import type { Figure } from './figure.ts';
import type { SourceKey } from './sources.ts';

/** Papers of radios and beacons that are started before anything is ordered. */
export const shipPaperIds = [
  'ship-number',
  'ship-radio-licence',
  'inland-identification',
  'beacon-registration',
] as const;
export type ShipPaperId = (typeof shipPaperIds)[number];

interface ShipPaper {
  /** in words, small letters */
  readonly name: string;
  /** kinds of unit that ask for it */
  readonly kinds: readonly string[];
  /** what to do, said to the owner */
  readonly does: string;
  /** how long it may take, to plan with until the office has said */
  readonly wait: Figure;
  readonly source: SourceKey;
}

const ownSets = ['vhf-radio', 'mfhf-radio', 'ais'] as const;

/** What each paper is for, how it is begun, and how long it may take. */
export const shipPapers: Readonly<Record<ShipPaperId, ShipPaper>> = {
  'ship-number': {
    name: 'ship’s number (MMSI)',
    kinds: ownSets,
    does: 'Ask for the number, or have the one she has put in your name. It goes with the vessel, one number in all her own sets.',
    wait: { value: 21, unit: 'days', source: 'memory-paper-waits' },
    source: 'practice-papers-first',
  },
  'ship-radio-licence': {
    name: 'ship radio licence',
    kinds: ownSets,
    does: 'Ask for the licence, or have the new sets entered in the one she has.',
    wait: { value: 28, unit: 'days', source: 'memory-paper-waits' },
    source: 'practice-papers-first',
  },
  'inland-identification': {
    name: 'inland identification (ATIS)',
    kinds: ['vhf-radio'],
    does: 'Ask whether her waters want it, and for the number if they do; such a set is switched to it there and off it at sea.',
    wait: { value: 28, unit: 'days', source: 'memory-paper-waits' },
    source: 'practice-papers-first',
  },
  'beacon-registration': {
    name: 'beacon registration',
    kinds: ['beacon'],
    does: 'Register the beacon with the ship’s number and somebody ashore who can be reached; tell the register of every change.',
    wait: { value: 14, unit: 'days', source: 'memory-paper-waits' },
    source: 'practice-papers-first',
  },
};

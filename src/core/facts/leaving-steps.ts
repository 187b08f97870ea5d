import type { SourceKey } from './sources.ts';

interface LeavingStep {
  readonly id: string;
  /** what is done to it before it leaves */
  readonly does: string;
  /** kinds of unit it is done to; absent where it is done to all */
  readonly kinds?: readonly string[];
  /** kinds of which only the maker or an authorised dealer can do it, since it is typed in once */
  readonly byMaker?: readonly string[];
  readonly source: SourceKey;
}

/** What is done to a unit that goes, in this order. */
export const leavingSteps: readonly LeavingStep[] = [
  {
    id: 'waypoints-saved',
    does: 'Waypoints, routes and tracks copied to a card, and the card read back',
    kinds: ['display', 'computer', 'tablet', 'recorder'],
    source: 'practice-leaving-kit',
  },
  {
    id: 'settings-noted',
    does: 'Its settings noted: offsets, alarms, limits, speeds',
    kinds: [
      'display',
      'computer',
      'instrument',
      'sounder',
      'pilot',
      'pilot-computer',
      'pilot-head',
      'heading-sensor',
      'radar',
      'battery-monitor',
      'tank-adapter',
      'converter',
      'multiplexer',
    ],
    source: 'practice-leaving-kit',
  },
  {
    id: 'accounts-unlinked',
    does: 'Accounts, chart licences and phones unlinked from it; its wifi names and passwords forgotten',
    kinds: ['display', 'computer', 'tablet', 'router', 'cellular-hub', 'satellite-terminal', 'recorder', 'camera'],
    source: 'practice-leaving-kit',
  },
  {
    id: 'home-wiped',
    does: 'Home port, routes, tracks and marks wiped: a set back as it came from the maker',
    kinds: ['display', 'computer', 'tablet', 'recorder', 'sounder'],
    source: 'practice-leaving-kit',
  },
  {
    id: 'ship-number-wiped',
    does: 'Ship’s number (MMSI) wiped',
    kinds: ['vhf-radio', 'mfhf-radio', 'ais', 'beacon', 'mob-unit'],
    byMaker: ['vhf-radio', 'mfhf-radio', 'ais', 'beacon'],
    source: 'practice-leaving-kit',
  },
  {
    id: 'call-sign-wiped',
    does: 'Name and call sign wiped',
    kinds: ['ais', 'vhf-radio', 'mfhf-radio', 'beacon'],
    byMaker: ['ais', 'beacon'],
    source: 'practice-leaving-kit',
  },
  {
    id: 'registrations-updated',
    does: 'The office, the register and the insurer told that it is no longer aboard',
    kinds: ['vhf-radio', 'mfhf-radio', 'ais', 'beacon', 'satellite-terminal', 'radar', 'mob-unit'],
    source: 'practice-leaving-kit',
  },
  {
    id: 'marked-dead',
    does: 'Name, serial number, what worked and what did not written on a tag tied to it',
    source: 'practice-leaving-kit',
  },
];

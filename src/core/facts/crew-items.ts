import type { SourceKey } from './sources.ts';

/** One thing that everybody aboard is shown before the first passage. */
interface CrewItem {
  readonly id: string;
  /** what the person does, not only hears */
  readonly does: string;
  /** kinds of unit it is shown at; absent where every boat has it */
  readonly kinds?: readonly string[];
}

export const crewSource: SourceKey = 'practice-crew-shown';

/** The round with the crew, in this order. Each does it with their own hand, and is ticked by name. */
export const crewItems: readonly CrewItem[] = [
  {
    id: 'distress',
    does: 'Show the distress key and what is said after it, without pressing it; make a call on a working channel',
    kinds: ['mfhf-radio', 'vhf-radio'],
  },
  {
    id: 'man-overboard',
    does: 'Mark the spot with the man overboard key, find back to it on the screen, and cancel it',
  },
  {
    id: 'pilot-off',
    does: 'Take the helm back from the pilot by every way there is, also with the network dark',
    kinds: ['pilot', 'pilot-computer', 'pilot-head'],
  },
  {
    id: 'chart',
    does: 'Find the boat on the chart, the depth under her, the heading and the speed; switch day and night',
    kinds: ['display'],
  },
  { id: 'alarms', does: 'Hear each alarm once, say what it means, and silence it' },
  {
    id: 'breakers',
    does: 'Find every panel in the dark; switch one circuit off and on again; know what is never switched off',
  },
  {
    id: 'dark',
    does: 'Say what to do when a screen goes dark, and what is left without it; find paper chart, compass and lead line',
  },
];

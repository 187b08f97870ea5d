const several = (count: number, one: string): string => `${count} ${count === 1 ? one : `${one}s`}`;
const megabytes = (bytes: number): string => `${(bytes / 1_000_000).toFixed(1)} MB`;

/** What is said of a recording held against the plan, in English. */
export const en = {
  heading: 'A recording, beside the plan',
  about:
    'Record the bus from the moment it is switched on, and drop it here: it is read in this page and goes nowhere. Several at once, of buses and of 0183 lines, are each given to the wire they fit.',
  pick: 'Choose recordings',
  drop: 'or drop them here',
  reading: (names: string) => `Reading ${names}.`,
  read: ({ readBytes, allBytes }: { readBytes: number; allBytes: number }) =>
    `${megabytes(readBytes)} of ${megabytes(allBytes)}`,
  stop: 'stop reading',
  units: 'Units',
  readings: 'Readings, where each leaves its source',
  messages: 'Messages not as planned',
  strangers: 'Not in the plan',
  findings: (level: string, count: number) => `${level}: ${count}`,
  noFindings: 'Nothing is otherwise than planned.',
  none: 'None.',
  aboard: 'Aboard:',
  seen: 'Seen:',
  rest: (count: number) => `${several(count, 'reading')} not watched or not to be told`,
  takeOver: 'Take over who the units are',
  takeOverHint:
    'NAME, numbers and intervals of every unit that is surely known come into the boat file; what stands there stays. One step, to be undone as one.',
  tookNothing: 'The boat file says it all: there is nothing to take over.',
  noteProved: (count: number) => `Note ${several(count, 'reading')} as proved`,
  save: 'Save as JSON',
  file: (boat: string) => `${boat || 'boat'}-proof.json`,
  again: 'Another recording',
  broke: 'The part of the program that reads recordings has stopped.',
  tryAgain: 'Drop the recording once more; if it stops again, a shorter one may do.',
  command: 'Hold a recording against the plan',
  foundBy: ['prove', 'recording', 'log', 'compare'],
} as const;

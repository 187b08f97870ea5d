const several = (count: number, one: string): string => `${count} ${count === 1 ? one : `${one}s`}`;
const megabytes = (bytes: number): string => `${(bytes / 1_000_000).toFixed(1)} MB`;

export const en = {
  heading: 'A recording of the bus',
  reading: (file: string) => `Reading ${file}.`,
  read: ({ readBytes, allBytes }: { readBytes: number; allBytes: number }) =>
    `${megabytes(readBytes)} of ${megabytes(allBytes)}`,
  stop: 'stop reading',
  shut: 'put it away',
  heard: ({ units, frames, durationS }: { units: number; frames: number; durationS: number | undefined }) =>
    `${several(units, 'unit')} heard, in ${several(frames, 'frame')}${durationS === undefined ? ', without times' : ` over ${durationS.toFixed(0)} s`}.`,
  broken: (lines: number) => `${several(lines, 'line')} could not be read.`,
  masked:
    'Serial numbers, makers’ texts and the numbers of ships are not shown. It is read in this page and goes nowhere.',
  unclaimed: 'did not say who it is: known by its address only',
  sends: 'sends',
  aboard: ({ units, boat }: { units: number; boat: string }) => `Put ${several(units, 'unit')} aboard ${boat}`,
  aboardHint:
    'Each comes to the place where such a unit usually stands, on her backbone; a unit she knows by its NAME is left as it is. One step, to be undone as one.',
  knowsAll: (known: number) =>
    `She knows ${known === 1 ? 'the unit' : `all ${known} units`} of this recording: nothing to add.`,
  newBoat: 'Choose the hull they are in',
  broke: 'The part of the program that reads recordings has stopped.',
  tryAgain: 'Drop the recording once more; if it stops again, a shorter one may do.',
} as const;

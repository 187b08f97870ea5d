const several = (count: number, one: string, many = `${one}s`): string => `${count} ${count === 1 ? one : many}`;

interface Place {
  readonly line?: number;
  readonly byte?: number;
}
const placeWords = ({ line, byte }: Place): string => (line === undefined ? `byte ${byte ?? 0}` : `line ${line}`);
const megabytes = (bytes: number): string => `${(bytes / 1_000_000).toFixed(1)} MB`;

export const en = {
  heading: 'A recording of the bus',
  reading: (file: string) => `Reading ${file}.`,
  read: ({ readBytes, allBytes }: { readBytes: number; allBytes: number }) =>
    `${megabytes(readBytes)} of ${megabytes(allBytes)}`,
  stop: 'stop reading',
  shut: 'put it away',
  heard: ({
    units,
    frames,
    joined,
    durationS,
  }: {
    units: number;
    frames: number;
    joined: number;
    durationS?: number;
  }) =>
    `${several(units, 'unit')} heard, in ${joined === 0 ? several(frames, 'frame') : several(frames + joined, 'frame and joined message', 'frames and joined messages')}${durationS === undefined ? ', without times' : ` over ${durationS.toFixed(0)} s`}.`,
  broken: ({ broken, brokenAt }: { broken: number; brokenAt: readonly Place[] }) =>
    `${several(broken, 'line')} could not be read (${brokenAt.map(placeWords).join(', ')}${broken > brokenAt.length ? ' …' : ''}).`,
  masked:
    'Serial numbers, makers’ texts and the numbers of ships are not shown. It is read in this page and goes nowhere.',
  unclaimed: 'did not say who it is: known by its address only',
  sends: 'sends',
  aboard: ({ units, boat }: { units: number; boat: string }) => `Put ${several(units, 'unit')} aboard ${boat}`,
  aboardHint:
    'Each comes to the place where such a unit usually stands, on her backbone; a unit she has already is known by its NAME or by what it sends, and gets the NAME, numbers and intervals heard where her file says none. One step, to be undone as one.',
  knowsAll: (known: number) =>
    `She knows ${known === 1 ? 'the unit' : `all ${known} units`} of this recording: nothing to add.`,
  newBoat: 'Choose the hull they are in',
  broke: 'The part of the program that reads recordings has stopped.',
  tryAgain: 'Drop the recording once more; if it stops again, a shorter one may do.',
} as const;

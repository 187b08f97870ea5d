import type { Fault } from '../../fault.ts';
import { atHelm, sentenceSheet, withPair } from '../../pair-units.ts';

/** A box that puts the radio’s line on a wifi, and takes back whatever a phone sends; nobody asked for that. */
export const remoteWritesWithoutNeed: Fault = {
  rule: 'remote/writes-without-need',
  about: ['free-mux'],
  plant: (boat) =>
    withPair(
      {
        ...boat,
        sheets: [
          ...boat.sheets,
          sentenceSheet('free-mux-sheet', {
            name: 'Multiplexer that writes, as its manual has it',
            kind: 'multiplexer',
            ports: [
              { id: 'air', role: 'both', protocol: 'wifi' },
              { id: 'out', role: 'talk', sends: [{ sentence: 'MTW', everyMs: 2000 }] },
            ],
          }),
          sentenceSheet('free-recorder-sheet', {
            name: 'Recorder of the free line, as its manual has it',
            kind: 'recorder',
            ports: [{ id: 'in', role: 'listen', hears: [{ sentence: 'MTW' }] }],
          }),
        ],
        kit: [
          ...boat.kit,
          {
            ...atHelm('free-mux', 'multiplexer that takes whatever comes', 'free-mux-sheet'),
            remote: { writes: 'may-write', mustWrite: false },
          },
          atHelm('free-recorder', 'recorder of the free line', 'free-recorder-sheet'),
        ],
      },
      'free-line',
      'free-mux.out',
      'free-recorder.in',
    ),
};

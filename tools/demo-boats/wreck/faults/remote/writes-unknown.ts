import type { Fault } from '../../fault.ts';
import { atHelm, sentenceSheet, withPair } from '../../pair-units.ts';

/** A multiplexer with wifi, whose settings nobody has opened, talks to a recorder. */
export const remoteWritesUnknown: Fault = {
  rule: 'remote/writes-unknown',
  about: ['open-mux'],
  plant: (boat) =>
    withPair(
      {
        ...boat,
        sheets: [
          ...boat.sheets,
          sentenceSheet('open-mux-sheet', {
            name: 'Multiplexer with wifi, as its manual has it',
            kind: 'multiplexer',
            ports: [
              { id: 'air', role: 'both', protocol: 'wifi' },
              { id: 'out', role: 'talk', sends: [{ sentence: 'MTW', everyMs: 2000 }] },
            ],
          }),
          sentenceSheet('open-recorder-sheet', {
            name: 'Recorder of one line, as its manual has it',
            kind: 'recorder',
            ports: [{ id: 'in', role: 'listen', hears: [{ sentence: 'MTW' }] }],
          }),
        ],
        kit: [
          ...boat.kit,
          atHelm('open-mux', 'multiplexer with wifi', 'open-mux-sheet'),
          atHelm('open-recorder', 'recorder of the line', 'open-recorder-sheet'),
        ],
      },
      'open-line',
      'open-mux.out',
      'open-recorder.in',
    ),
};

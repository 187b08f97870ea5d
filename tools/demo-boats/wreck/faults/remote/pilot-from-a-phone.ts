import type { Fault } from '../../fault.ts';
import { atHelm, sentenceSheet, withPair } from '../../pair-units.ts';

/** A wifi box as it came out of its carton is on the input of the tiller pilot in the locker. */
export const remotePilotFromAPhone: Fault = {
  rule: 'remote/pilot-from-a-phone',
  about: ['phone-box', 'phone-pilot'],
  plant: (boat) =>
    withPair(
      {
        ...boat,
        sheets: [
          ...boat.sheets,
          sentenceSheet('phone-box-sheet', {
            name: 'Box between wifi and one line, as its manual has it',
            kind: 'gateway',
            ports: [
              { id: 'air', role: 'both', protocol: 'wifi' },
              { id: 'out', role: 'talk', sends: [{ sentence: 'RMB', everyMs: 1000 }] },
            ],
          }),
          {
            ...sentenceSheet('phone-pilot-sheet', {
              name: 'Tiller pilot, as its manual has it',
              kind: 'pilot',
              ports: [{ id: 'in', role: 'listen', hears: [{ sentence: 'RMB' }] }],
            }),
            drive: {
              type: 'tiller',
              motorV: 12,
              runA: 1,
              peakA: 3,
              whenPowerIsLost: 'lets-go',
              needsRudderSensor: false,
              boatKg: 9000,
            },
          },
        ],
        kit: [
          ...boat.kit,
          atHelm('phone-box', 'wifi box of the pilot', 'phone-box-sheet'),
          atHelm('phone-pilot', 'pilot behind the wifi box', 'phone-pilot-sheet'),
        ],
      },
      'phone-line',
      'phone-box.out',
      'phone-pilot.in',
    ),
};

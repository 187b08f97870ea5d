import { taped } from '../../base.ts';
import { fillerSheet, withOwnBus } from '../../edits.ts';
import type { Fault } from '../../fault.ts';

const sheet = fillerSheet('far-tank', 'Tank sensor with a high number', 1);

/** A tank is numbered 9. */
export const identitiesTankNumberTooHigh: Fault = {
  rule: 'identities/tank-number-too-high',
  about: ['tank-nine'],
  plant: (boat) =>
    withOwnBus(boat, {
      id: 'tank-bus',
      name: 'Tank bus',
      sheet: {
        ...sheet,
        ports: sheet.ports.map((port) => ({ ...port, sends: [{ reading: 'fuel-level', everyMs: 2500 }] })),
      },
      kit: [
        {
          id: 'tank-nine',
          name: 'tank sensor numbered 9',
          place: 'aft-cabin',
          tail: taped(0.3),
          instances: [{ port: 'n2k', reading: 'fuel-level', instance: 9 }],
        },
      ],
      walk: [{ place: 'aft-cabin', tees: ['tank-nine.n2k', 'feed'] }],
    }),
};

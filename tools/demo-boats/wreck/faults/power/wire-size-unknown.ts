import { taped } from '../../base.ts';
import type { Fault } from '../../fault.ts';
import { withFedUnit } from '../../fed-unit.ts';

/** A lamp fed by a cable that has always been there. */
export const powerWireSizeUnknown: Fault = {
  rule: 'power/wire-size-unknown',
  about: ['berth-lamp.dc'],
  plant: (boat) => ({
    ...withFedUnit(boat, {
      kit: { id: 'berth-lamp', name: 'lamp over the berth', place: 'fore-cabin' },
      maxA: 0.5,
    }),
    cables: [
      ...boat.cables,
      {
        id: 'berth-lamp-lead',
        serves: 'c-berth-lamp',
        kind: 'feed',
        from: { place: 'panel-locker', at: 'switches.c-berth-lamp' },
        to: { place: 'fore-cabin', at: 'berth-lamp.supply' },
        ways: ['w5', 'w3', 'w2'],
        length: taped(6.3),
        diameterMm: 5,
        condition: 'good',
        fate: 'stays',
      },
    ],
  }),
};

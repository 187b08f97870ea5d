import { taped } from '../../base.ts';
import type { Fault } from '../../fault.ts';

/** An old cable ends male at the male plug of the display. */
export const plugsSameGenderMeets: Fault = {
  rule: 'plugs/same-gender-meets',
  about: ['turned-cable', 'display'],
  plant: (boat) => ({
    ...boat,
    cables: [
      ...boat.cables,
      {
        id: 'turned-cable',
        kind: 'drop',
        from: { place: 'helm-locker' },
        to: { place: 'helm', at: 'display.bus', gender: 'male' },
        ways: ['w4'],
        length: taped(2),
        diameterMm: 6,
        condition: 'good',
        fate: 'stays',
      },
    ],
  }),
};

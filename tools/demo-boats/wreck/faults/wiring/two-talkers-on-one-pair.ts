import type { Fault } from '../../fault.ts';

/**
 * The plotter is wired into the radio's input beside the position antenna. One join has one talker by the form of the
 * file, so the fault stands there as two joins that end at one input.
 */
export const wiringTwoTalkersOnOnePair: Fault = {
  rule: 'wiring/two-talkers-on-one-pair',
  about: ['radio.in', 'gps-old.out', 'plotter-old.out'],
  plant: (boat) => ({
    ...boat,
    joins: [
      ...boat.joins,
      {
        id: 'pair-second',
        kind: 'nmea0183',
        members: [
          { kit: 'plotter-old', port: 'out', as: 'talk' },
          { kit: 'radio', port: 'in', as: 'listen' },
        ],
        hold: 'fixed',
      },
    ],
  }),
};

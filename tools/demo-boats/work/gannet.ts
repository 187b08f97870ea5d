import type { Work } from '../../../src/core/boat/work.ts';

/** Two friends do the work at her berth in March, with one week ashore for the transducer; nothing of her is left to guess. */
export const gannetWork: Work = {
  starts: [{ phase: 1, on: '2027-03-03' }],
  hoursADay: 7,
  fromH: 9,
  restDays: ['sun'],
  hands: [
    { id: 'friend', name: 'the friend', is: 'helper', pace: 1.6 },
    { id: 'owner', name: 'the owner', is: 'owner', pace: 1.6, can: ['electrics', 'radio'] },
  ],
  ashore: [{ from: '2027-03-15', to: '2027-03-19' }],
  light: { fromH: 7, toH: 18 },
  aisWanted: true,
  essentials: [
    { function: 'bilge-pump', on: ['main.m10'] },
    { function: 'engine-start', on: ['start'] },
    { function: 'engine-stop', on: ['start'] },
    { function: 'gas-alarm', none: true },
    { function: 'high-water-alarm', on: ['main.m10'] },
    { function: 'horn', on: ['start'] },
    { function: 'navigation-lights', on: ['main.m9'] },
    { function: 'shore-charging', none: true },
    { function: 'steering', none: true },
  ],
  leaving: [
    { unit: 'old-depth-fly', to: 'recycle' },
    { unit: 'old-gps', to: 'recycle', with: ['gc13'] },
    { unit: 'old-plotter', to: 'sell' },
    { unit: 'old-radar', to: 'recycle', with: ['gc11'] },
    { unit: 'old-radar-screen', to: 'recycle' },
    { unit: 'old-sounder', to: 'spare', with: ['gc12'] },
  ],
};

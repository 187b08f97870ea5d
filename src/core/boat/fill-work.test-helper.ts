import type { Draft } from 'mutative';
import type { Boat } from './boat-schema.ts';

/** Who works when, what the calendar allows, what was settled of single jobs. */
export const fillWork = (boat: Draft<Boat>): void => {
  boat.work = {
    starts: [
      { phase: 2, on: '2027-09-06' },
      { phase: 1, on: '2027-04-05' },
    ],
    hoursADay: 7,
    fromH: 9,
    restDays: ['sun', 'sat'],
    hands: [
      { id: 'mate', name: 'the mate', is: 'helper', pace: 1.5, can: ['aloft'] },
      {
        id: 'owner',
        name: 'the owner',
        is: 'owner',
        can: ['electrics', 'aloft'],
        away: [
          { from: '2027-05-01', to: '2027-05-03' },
          { from: '2027-04-12', to: '2027-04-12' },
        ],
      },
    ],
    ashore: [{ from: '2027-04-19', to: '2027-04-23' }],
    mastDown: [{ from: '2027-04-19', to: '2027-04-22' }],
    foul: [
      { from: '2027-04-08', to: '2027-04-08' },
      { from: '2027-04-07', to: '2027-04-07' },
    ],
    moves: [{ from: '2027-04-05', to: '2027-04-09' }],
    left: [{ from: '2027-04-10', to: '2027-04-11' }],
    light: { fromH: 7, toH: 19 },
    doneBy: '2027-05-31',
    aisWanted: true,
    essentials: [
      { function: 'horn', none: true },
      { function: 'bilge-pump', on: ['main-panel.helm-circuit', 'house'] },
    ],
    jobs: [
      { job: 'take-out:radio', day: '2027-04-06', hand: 'owner', after: ['survey', 'label'] },
      { job: 'survey', hoursH: 3 },
      { job: 'as-built', leftOut: 'Somebody else draws it.', lockedOff: true },
    ],
    own: [
      {
        id: 'varnish',
        name: 'varnish the dash',
        hoursH: 4,
        phase: 1,
        place: 'helm',
        people: 1,
        after: ['take-out:radio'],
        state: 'afloat',
        outside: true,
        throughHull: true,
        takes: ['vhf', 'horn'],
      },
      { id: 'clean', name: 'clean the locker', hoursH: 1 },
    ],
    leaving: [
      { unit: 'radio', to: 'spare', with: ['old-pair', 'old-log'] },
      { unit: 'compass', to: 'sell' },
    ],
  };
};

import fc from 'fast-check';
import { essentialFunctions, suppliedFunctions } from '../../facts/essential-functions.ts';
import type { Boat } from '../boat-schema.ts';
import { idsOf, type Sketch, some } from './sketcher.test-helper.ts';

const jobs = ['survey', 'take-out:radio', 'as-built'];
const day = some(['2027-04-05', '2027-04-06', '2027-05-01']);
const spans = fc.constantFrom(
  [{ from: '2027-04-19', to: '2027-04-23' }],
  [{ from: '2027-04-07', to: '2027-04-07' }],
  [],
);

/** How the parts of edits of the work hang together. */
export const plausibleWorkEdits = {
  'set-work': () =>
    fc.record(
      {
        starts: fc.record({ phase: fc.constantFrom(1, 2), on: day }).map((start) => [start]),
        hoursADay: fc.constantFrom(6, 8),
        fromH: fc.constantFrom(7, 9),
        restDays: fc.subarray(['sat', 'sun']),
        ashore: spans,
        mastDown: spans,
        foul: spans,
        moves: spans,
        left: spans,
        doneBy: day,
        aisWanted: fc.boolean(),
        forget: fc.subarray(['starts', 'foul', 'doneBy', 'light'], { minLength: 1 }),
      },
      { requiredKeys: [] },
    ),
  'settle-job': ({ work }) =>
    fc.record(
      {
        job: some(jobs),
        day,
        hand: some(idsOf(work?.hands ?? [])),
        hoursH: fc.constantFrom(1, 2.5),
        leftOut: some(['Somebody else does it.']),
        after: fc.subarray(jobs, { minLength: 1 }),
        forget: fc.subarray(['day', 'hand', 'hoursH', 'leftOut', 'after'], { minLength: 1 }),
      },
      { requiredKeys: ['job'] },
    ),
  'set-hand': () =>
    fc.record(
      {
        id: some(['mate', 'owner', 'yard-hand']),
        name: some(['the mate', 'somebody of the yard']),
        is: some(['owner', 'professional', 'helper']),
        pace: fc.constantFrom(0.8, 1.5),
        can: fc.subarray(['aloft', 'electrics', 'radio', 'yard']),
        away: spans,
      },
      { requiredKeys: ['id', 'name', 'is'] },
    ),
  'remove-hand': ({ work }) => some(idsOf(work?.hands ?? [])).map((hand) => ({ hand })),
  'set-own-job': ({ places }) =>
    fc.record(
      {
        id: some(['varnish', 'clean', 'paint']),
        name: some(['varnish the dash', 'paint the locker']),
        hoursH: fc.constantFrom(1, 4),
        place: some(idsOf(places)),
        after: fc.subarray(jobs, { minLength: 1 }),
        state: some(['afloat', 'ashore']),
        takes: fc.subarray([...essentialFunctions], { minLength: 1, maxLength: 2 }),
      },
      { requiredKeys: ['id', 'name', 'hoursH'] },
    ),
  'remove-own-job': ({ work }) => some(idsOf(work?.own ?? [])).map((job) => ({ job })),
  'set-leaving': ({ kit, cables }) =>
    fc.record(
      {
        unit: some(idsOf(kit)),
        to: some(['sell', 'spare', 'recycle']),
        with: some(idsOf(cables)).map((cable) => [cable]),
      },
      { requiredKeys: ['unit'] },
    ),
  'set-essential': ({ supply }) =>
    fc
      .record({
        function: some(suppliedFunctions),
        none: fc.boolean(),
        on: some([
          ...idsOf(supply.banks),
          ...supply.panels.flatMap(({ id, circuits }) => circuits.map((one) => `${id}.${one.id}`)),
        ]),
      })
      .map(({ function: what, none, on }) => (none ? { function: what, none } : { function: what, on: [on] })),
} as const satisfies Readonly<Record<string, (boat: Boat) => Sketch>>;

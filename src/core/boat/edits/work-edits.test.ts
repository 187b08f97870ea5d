import { expect, test } from 'vitest';
import { aBoat } from '../a-boat.test-helper.ts';
import type { Boat } from '../boat-schema.ts';
import { applyEdit, applyEdits, type EditCall, undo } from '../history.ts';
import { startHistory } from '../start-history.ts';
import { refusalOf } from './refusal-of.test-helper.ts';

const tern = aBoat().boat;
const edited = (calls: readonly EditCall[], boat: Boat = tern): Boat => applyEdits(startHistory(boat), calls).boat;
const titleOf = (call: EditCall, boat: Boat = tern): string | undefined =>
  applyEdits(startHistory(boat), [call]).done.at(-1)?.title;

test('what is not said of the work stays, and a boat with nothing said has no work in her file', () => {
  const boat = edited([
    { edit: 'set-work', params: { starts: [{ phase: 1, on: '2027-04-05' }], hoursADay: 7 } },
    {
      edit: 'set-work',
      params: { starts: [{ phase: 2, on: '2027-09-06' }], foul: [{ from: '2027-04-07', to: '2027-04-07' }] },
    },
  ]);
  expect(boat.work?.starts?.map(({ phase }) => phase)).toEqual([1, 2]);
  expect(boat.work).toMatchObject({ hoursADay: 7, foul: [{ from: '2027-04-07' }] });
  const bare = edited([{ edit: 'set-work', params: { forget: ['starts', 'hoursADay'], foul: [] } }], boat);
  expect(bare.work).toBeUndefined();
});

test('a job held to a day is let go again, and undo brings the day back', () => {
  const held = applyEdit(startHistory(tern), 'settle-job', { job: 'survey', day: '2027-04-06' });
  expect(held.boat.work?.jobs).toEqual([{ job: 'survey', day: '2027-04-06' }]);
  const free = applyEdit(held, 'settle-job', { job: 'survey', forget: ['day'] });
  expect(free.boat.work).toBeUndefined();
  expect(undo(free).boat.work?.jobs).toEqual([{ job: 'survey', day: '2027-04-06' }]);
});

test('jobs given to somebody who goes are for whoever can', () => {
  const boat = edited([
    { edit: 'set-hand', params: { id: 'mate', name: 'the mate', is: 'helper' } },
    { edit: 'settle-job', params: { job: 'survey', hand: 'mate' } },
    { edit: 'settle-job', params: { job: 'label', hand: 'mate', hoursH: 2 } },
  ]);
  expect(edited([{ edit: 'remove-hand', params: { hand: 'mate' } }], boat).work).toEqual({
    jobs: [{ job: 'label', hoursH: 2 }],
  });
});

test('what nobody works with or nothing gives is refused', () => {
  expect(refusalOf('settle-job', { job: 'survey', hand: 'nobody' })?.says).toContain('nobody');
  expect(refusalOf('set-essential', { function: 'horn', on: ['no.where'] })?.says).toContain('no.where');
  expect(refusalOf('remove-own-job', { job: 'varnish' })?.says).toContain('varnish');
});

test('edits of the work say in words what they do', () => {
  expect(
    titleOf({
      edit: 'set-work',
      params: { restDays: ['sat', 'sun'], ashore: [{ from: '2027-04-19', to: '2027-04-23' }] },
    }),
  ).toBe('Work: rest on Saturdays, Sundays, ashore 2027-04-19 to 2027-04-23.');
  expect(titleOf({ edit: 'settle-job', params: { job: 'survey', leftOut: 'Somebody else does it.' } })).toBe(
    'Job survey: left out.',
  );
  expect(titleOf({ edit: 'set-essential', params: { function: 'bilge-pump', none: true } })).toBe(
    'She has no bilge pump.',
  );
  expect(titleOf({ edit: 'set-own-job', params: { id: 'varnish', name: 'varnish the dash', hoursH: 4 } })).toBe(
    'Reckon with the job “varnish the dash”, 4 h.',
  );
});

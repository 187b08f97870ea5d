import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { indexBoat } from '../../boat/boat-index.ts';
import { aJob } from '../../work/some-jobs.test-helper.ts';
import { jobName } from './job-name.ts';

const index = indexBoat(aBoat().boat);
const named = (...[id, own]: Parameters<typeof aJob>) => jobName(index, aJob(id, own));

test('a job is named by what is done and to what: a unit or a place by its name, all else by its id', () => {
  expect(named('take-out:radio', { kind: 'take-out' })).toBe('taking out Old radio');
  expect(named('mount:helm', { kind: 'mount' })).toBe('fitting helm dash');
  expect(named('power-up:bridge:radio', { kind: 'power-up' })).toBe('first power for bridge Old radio');
  expect(named('survey', { kind: 'survey' })).toBe('the survey');
  expect(named('sea-trial:heading', { kind: 'sea-trial' })).toBe('the sea trial (heading)');
  expect(named('sea-trial', { kind: 'sea-trial' })).toBe('the sea trial');
});

test('of a later phase it says which, and its number is no thing', () => {
  expect(named('connect:gnss:2', { kind: 'connect', phase: 2 })).toBe('connecting GNSS on the stern rail in phase 2');
  expect(named('survey:2', { kind: 'survey', phase: 2 })).toBe('the survey in phase 2');
});

test('a job a person put in has the name that person gave it', () => {
  expect(named('own:paint', { name: 'Paint the bilge', phase: 2 })).toBe('Paint the bilge');
  expect(named('own:paint')).toBe('own:paint');
});

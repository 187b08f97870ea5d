import { expect, test } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import { boatFromPattern } from '../../core/starting/boat-from-pattern.ts';
import { walkRoundPage } from './walk-round-page.ts';

const boat = boatFromPattern({ pattern: 'sloop-deck-stepped', name: 'Kittiwake <& mate>' });
const page = walkRoundPage(boat);

test('the form names every place and keeps what a name holds from becoming part of the page', () => {
  for (const { name } of boat.places) expect(page).toContain(name);
  expect(page).toContain('Kittiwake &lt;&amp; mate&gt;');
  expect(page).not.toContain('<& mate>');
  expect(page).not.toMatch(/<script|<img|https?:/);
});

test('it says the guess of each way in both units, and leaves room to write what the tape says', () => {
  expect(page).toMatch(/In the file: \d+\.\d\d m \(\d+ (ft|in)[^)]*\), guessed\./);
  expect(page).toContain('Length along the way, by tape');
  expect(page.match(/class="line"/g)?.length).toBeGreaterThan(boat.ways.length);
});

test('it warns where a battery is opened and where one climbs', () => {
  expect(page).toContain('Caution, battery short circuit.');
  expect(page).toContain('Caution, working aloft.');
});

test('there is a line for each setting to copy, and a radio’s own number is told by its last two digits only', () => {
  const tern = aBoat().boat;
  const radio = tern.kit.find(({ id }) => id === 'radio');
  if (radio !== undefined) radio.aboard = { settings: [{ name: 'MMSI', value: '002345678' }] };
  const noted = walkRoundPage(tern);
  for (const name of ['MMSI', 'group numbers']) expect(noted).toContain(`<span class="blank">${name}</span>`);
  expect(noted).toContain('In the file: MMSI •••••••78.');
  expect(noted).not.toContain('002345678');
});

test('of a unit that is aboard it asks for pictures, plugs and what to copy, and not of one that only comes', () => {
  const tern = aBoat().boat;
  const about = walkRoundPage(tern);
  const [staying] = tern.kit.filter(({ fate }) => fate === 'stays');
  expect(staying && about.includes(`<td class="of">${staying.name}</td><td class="asks">Photo of</td>`)).toBe(true);
  for (const { name } of tern.kit.filter(({ fate }) => fate === 'comes')) {
    expect(about).not.toContain(`<td class="of">${name}</td>`);
  }
});

import { expect, test } from 'vitest';
import { indexBoat } from '../../core/boat/boat-index.ts';
import { aCompassBoat } from '../../core/compass-boat.test-helper.ts';
import { plan } from '../../core/plan.ts';
import { compassRows } from './compass-rows.ts';

const rowsOf = (single: boolean) => {
  const boat = aCompassBoat({ aboveM: 0.3 }).change((draft) => {
    for (const { circuits } of draft.supply.panels)
      for (const circuit of circuits) circuit.laid = single ? 'single' : 'pair';
  }).boat;
  return compassRows(indexBoat(boat), plan(boat, new Map()));
};

test('a compass says what may turn it and what its feeds do together; the units near it follow', () => {
  const [head, ...near] = rowsOf(false);
  expect(head).toMatchObject({ what: 'steering compass', lights: ['card'] });
  expect(head?.fact).toMatch(
    /^may be turned 1\.2° where the Earth’s field is 15 µT; 3 feeds within 5 m turn it .+ should all add up$/,
  );
  expect(near.map(({ what }) => what)).toEqual(expect.arrayContaining(['Helm display', 'Old radio']));
  expect(near.find(({ what }) => what === 'Helm display')?.fact).toContain(
    'nobody has read its plate, 0.70 m is usual for its kind',
  );
});

test('a single wire stands first with its field, its deviation and how far it must keep', () => {
  const [, first] = rowsOf(true);
  expect(first?.what).toMatch(/^Feed of /);
  expect(first?.fact).toMatch(/A in a single wire at 0\.30 m: \d\.\d\d µT, \d+\.\d° of 1\.2°; keep it \d\.\d\d m off/);
});

test('a boat without a compass has no row', () => {
  const boat = aCompassBoat().unit('card', { fate: 'goes' }).boat;
  expect(compassRows(indexBoat(boat), plan(boat, new Map()))).toEqual([]);
});

test('units as far off as their sheets ask are told of together, with the nearest of them', () => {
  const boat = aCompassBoat({ aboveM: 0.3 }).change((draft) => {
    for (const sheet of draft.sheets) sheet.compassSafe = { valueM: 0.05, how: 'papers' };
  }).boat;
  const rows = compassRows(indexBoat(boat), plan(boat, new Map()));
  const last = rows.at(-1);
  expect(last?.what).toMatch(/^\d units? near it$/);
  expect(last?.fact).toMatch(/the nearest is .+, at \d\.\d\d m, its sheet asks for 0\.05 m$/);
});

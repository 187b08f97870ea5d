import { expect, test } from 'vitest';
import { aBoat } from '../a-boat.test-helper.ts';
import type { Boat } from '../boat-schema.ts';
import { applyEdit, applyEdits, type EditCall, undo } from '../history.ts';
import { startHistory } from '../start-history.ts';
import { writeBoat } from '../write-boat.ts';
import { edits } from './index.ts';
import { refusalOf } from './refusal-of.test-helper.ts';

const tern = aBoat().boat;
const [panel] = tern.supply.panels;
const [circuit] = panel?.circuits ?? [];
if (panel === undefined || circuit === undefined) throw new Error('The boat of the tests has no circuit.');

const edited = (calls: readonly EditCall[], boat: Boat = tern): Boat => applyEdits(startHistory(boat), calls).boat;
const more: EditCall = {
  edit: 'add-circuit',
  params: { panel: panel.id, circuit: { id: 'spare', ratingA: 5, kind: 'breaker', feeds: [] } },
};

test('what one circuit feeds from now on, no other does', () => {
  const [fed = ''] = panel.circuits.flatMap(({ feeds }) => feeds);
  const boat = edited([more, { edit: 'change-circuit', params: { panel: panel.id, circuit: 'spare', feeds: [fed] } }]);
  const feeding = boat.supply.panels
    .flatMap(({ circuits }) => circuits)
    .filter(({ feeds }) => feeds.includes(fed))
    .map(({ id }) => id);
  expect(feeding).toEqual(['spare']);
});

test('what is not said of a circuit stays, and it is taken out with what the file said of its fuse', () => {
  const boat = edited([{ edit: 'change-circuit', params: { panel: panel.id, circuit: circuit.id, ratingA: 3 } }]);
  expect(boat.supply.panels[0]?.circuits[0]).toEqual({ ...circuit, ratingA: 3 });
  const pinned: Boat = {
    ...tern,
    pins: { fuses: { [`${panel.id}.${circuit.id}`]: { ratingA: 3, state: 'fixed' } } },
  };
  const without = edited([{ edit: 'remove-circuit', params: { panel: panel.id, circuit: circuit.id } }], pinned);
  expect(without.supply.panels[0]?.circuits.some(({ id }) => id === circuit.id)).toBe(false);
  expect(without.pins?.fuses).toEqual({});
});

test('a panel more is fed from a bank, and neither goes while something hangs on it', () => {
  const history = applyEdits(startHistory(tern), [
    {
      edit: 'add-bank',
      params: {
        id: 'second',
        place: panel.place,
        chemistry: 'agm',
        nominalV: 12,
        capacityAh: 80,
        for: 'house',
      },
    },
    { edit: 'add-panel', params: { id: 'dash', place: panel.place, from: 'second', circuits: [] } },
    { edit: 'change-bank', params: { bank: 'second', capacityAh: 90, lowestV: 11.5 } },
    { edit: 'change-bank', params: { bank: 'second', forget: ['lowestV'] } },
    { edit: 'change-panel', params: { panel: 'dash', mainA: 30, freeWays: 4 } },
    { edit: 'change-panel', params: { panel: 'dash', forget: ['mainA'] } },
  ]);
  const { banks, panels } = history.boat.supply;
  expect(banks.at(-1)).toMatchObject({ id: 'second', capacityAh: 90 });
  expect(banks.at(-1)).not.toHaveProperty('lowestV');
  expect(panels.at(-1)).toEqual({ id: 'dash', place: panel.place, from: 'second', freeWays: 4, circuits: [] });
  expect(() => applyEdit(history, 'remove-bank', { bank: 'second' })).toThrow(/Panel dash is fed from bank second/);
  const gone = edited(
    [
      { edit: 'remove-panel', params: { panel: 'dash' } },
      { edit: 'remove-bank', params: { bank: 'second' } },
    ],
    history.boat,
  );
  expect(writeBoat(gone)).toBe(writeBoat(tern));
  expect(writeBoat(undo(history).boat)).toBe(writeBoat(tern));
});

test('a panel that feeds another stays', () => {
  const boat = edited([
    { edit: 'add-panel', params: { id: 'dash', place: panel.place, from: panel.id, circuits: [] } },
  ]);
  expect(() => edited([{ edit: 'remove-panel', params: { panel: panel.id } }], boat)).toThrow(
    /Panel dash is fed from panel/,
  );
});

test('what is found out of a bank, of a panel and of the negatives is said, and the rest stays', () => {
  const [bank, panel] = [tern.supply.banks[0], tern.supply.panels[0]];
  const main = { kind: 'fuse', ratingA: 80 } as const;
  const after = edits['change-bank'].apply(tern, { bank: bank?.id, main });
  expect(after.supply.banks[0]).toEqual({ ...bank, main });
  expect(edits['change-panel'].apply(tern, { panel: panel?.id, freeWays: 2 }).supply.panels[0]).toEqual({
    ...panel,
    freeWays: 2,
  });
  expect(edits['set-negative'].apply(tern, { place: 'mast-base' }).supply.negativeAt).toBe('mast-base');
  expect(refusalOf('set-negative', { place: 'nowhere' })?.says).toContain('nowhere');
});

test('a port is fed from another circuit, and from that one only', () => {
  const moved = edits['feed-port'].apply(tern, { port: 'radio.dc', circuit: 'main-panel.bus-circuit' });
  expect(moved.supply.panels[0]?.circuits.map(({ feeds }) => feeds)).toEqual([['nav', 'radio.dc'], ['display.dc']]);
  expect(refusalOf('feed-port', { port: 'radio.dc', circuit: 'main-panel.none' })?.says).toContain('none');
});

test('a circuit more takes one of the places that were counted free', () => {
  const circuit = { id: 'radar-circuit', ratingA: 5, kind: 'breaker', feeds: [] } as const;
  const counted = aBoat().change((boat) => {
    for (const panel of boat.supply.panels) panel.freeWays = 1;
  }).boat;
  const [panel] = edits['add-circuit'].apply(counted, { panel: 'main-panel', circuit }).supply.panels;
  expect([panel?.freeWays, panel?.circuits.at(-1)]).toEqual([0, circuit]);
  expect(edits['add-circuit'].apply(tern, { panel: 'main-panel', circuit }).supply.panels[0]?.freeWays).toBeUndefined();
});

import { expect, test } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import { plan } from '../../core/plan.ts';
import { cardBoat } from '../cards/card-boat.ts';
import { feedRows } from './feed-rows.ts';

const rowsOf = (boat: Boat) => feedRows(cardBoat(boat), plan(boat, new Map()));
const fedOf = (boat: Boat, unit: string) => {
  const row = rowsOf(boat).fed.find(({ lights }) => lights.includes(unit));
  if (row === undefined) throw new Error(`Nothing feeds ${unit}.`);
  return row;
};

test('every feed of the plan is a row with its panel, length, wire, fuse and volts, in the order of the panels', () => {
  const { boat } = aBoat();
  const { fed, unfed } = rowsOf(boat);
  const feeds = plan(boat, new Map()).lines.filter(({ kind }) => kind === 'feed');
  expect(fed).toHaveLength(feeds.length);
  expect(new Set(fed.map(({ key }) => key))).toEqual(new Set(feeds.map(({ id }) => id)));
  const circuits = boat.supply.panels.flatMap((panel) => panel.circuits.map(({ id }) => id));
  const at = fed.map(({ feed }) => circuits.indexOf(feed?.circuit ?? ''));
  expect(at).toEqual([...at].sort((one, other) => one - other));
  for (const { fact } of fed) {
    expect(fact).toMatch(/^from panel \S+, (about )?[\d.]+ m.*: [\d.]+ mm² \(\d+ AWG\), .*, [\d.]+ V at its end$/);
  }
  expect(unfed).toEqual([]);
});

test('why a size is as it is: what may be lost, what each reason asks for, what is lost, and the volts that arrive', () => {
  const row = fedOf(aBoat().boat, 'display');
  const { feed } = row;
  const all = row.why.join(' ');
  expect(all).toContain(`It may lose ${feed?.allowedV.toFixed(2)} V`);
  expect(all).toContain(`That asks for ${feed?.asked?.drop} mm²`);
  expect(all).toContain(`for ${feed?.asked?.ampacity} mm²`);
  expect(all).toContain(`${feed?.dropV?.toFixed(2)} V`);
  expect(all).toContain('in the cable itself');
  expect(all).toContain(`${feed?.atEndV?.toFixed(2)} V arrive; it needs 10.8 V`);
});

test('a fuse beside the panel says why it is there: the circuit has more than the maker wants', () => {
  const { fuse, why } = fedOf(aBoat().boat, 'display');
  expect(fuse).toBe('3 A fuse of its own');
  expect(why.join(' ')).toContain(
    'circuit helm-circuit has 15 A, and its maker asks for less. It must be at least 1.25 × the 1.8 A it draws',
  );
});

test('a wire that a person settled is called so, and asks for nothing', () => {
  const settled = aBoat().with({
    pins: { wires: { 'feed:display.supply~main-panel': { areaMm2: 6, state: 'fitted' } } },
  });
  const row = fedOf(settled.boat, 'display');
  expect(row.wire).toBe('6 mm² (8 AWG)');
  expect(row.why[0]).toBe('You settled its wire: 6 mm² (8 AWG).');
  expect(row.why.join(' ')).not.toContain('asks for 6 mm²');
});

test('a feed at whose end too few volts arrive is one to look at; a sound one is not', () => {
  expect(fedOf(aBoat().boat, 'display').isOpen).toBe(false);
  const needy = aBoat().sheet('small-display', (sheet) => {
    for (const power of sheet.power ?? []) if (power.port === 'dc') power.minV = 11.79;
  });
  expect(fedOf(needy.boat, 'display').isOpen).toBe(true);
});

test('a cable aboard of unknown copper is to be looked at, and says what to do', () => {
  const kept = aBoat()
    .with({
      cables: [
        {
          id: 'old-lead',
          kind: 'feed',
          from: { place: 'locker' },
          to: { place: 'helm' },
          serves: 'helm-circuit',
          ways: ['locker-helm'],
          length: { valueM: 2.9, how: 'taped' },
          diameterMm: 7,
          condition: 'good',
          fate: 'stays',
        },
      ],
    })
    .unit('radio', { fate: 'goes' });
  const row = fedOf(kept.boat, 'display');
  expect(row.wire).toBe('not known');
  expect(row.why[0]).toContain('nobody has said how thick it is');
  expect(row.isOpen).toBe(true);
});

test('what no circuit names is not fed: the bus first, then each unit with a DC port, but nothing that goes ashore', () => {
  const bare = aBoat().change((draft) => {
    for (const panel of draft.supply.panels) panel.circuits = [];
  });
  const names = rowsOf(bare.boat).unfed.map(({ what }) => what);
  expect(names[0]).toBe(bare.boat.buses[0]?.name);
  expect(names).toContain(bare.boat.kit.find(({ id }) => id === 'display')?.name);
  const gone = rowsOf(bare.unit('display', { fate: 'goes' }).boat).unfed.map(({ key }) => key);
  expect(gone.filter((key) => key.startsWith('display.'))).toEqual([]);
});

test('a feed that no way leads for is among those that are missing', () => {
  const { boat } = aBoat().change((draft) => {
    draft.ways = draft.ways.filter(({ ends }) => !ends.includes('helm'));
  });
  expect(rowsOf(boat).unfed.map(({ fact }) => fact)).toContainEqual(expect.stringMatching(/^no way leads there from /));
});

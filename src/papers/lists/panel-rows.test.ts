import { expect, test } from 'vitest';
import { anExample } from '../../../tests/an-example.test-helper.ts';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Panel } from '../../core/boat/supply.ts';
import { quickPlan } from '../../core/quick-plan.test-helper.ts';
import { cardBoat } from '../cards/card-boat.ts';
import { tableCsv } from '../table/table-csv.ts';
import { panelList } from './panel-list.ts';
import { panelRows } from './panel-rows.ts';
import { panelPaper, panelText } from './panel-text.ts';

const rowsOf = (boat: Boat) => panelRows(cardBoat(boat), quickPlan(boat));

const withPanel = (change: (panel: Panel) => void): Boat =>
  aBoat().change((draft) => {
    // reason: a draft is the boat itself, open to change
    for (const panel of draft.supply.panels) change(panel as Panel);
  }).boat;

test('a panel says where it hangs, what it gives, what its feeder stands and loses, and what is left on it', () => {
  const [row] = rowsOf(withPanel((panel) => Object.assign(panel, { freeWays: 3 })));
  expect(row?.what).toBe('panel main-panel');
  expect(row?.facts[0]).toBe('12 V from bank house; 30 A main fuse, not looked up.');
  expect(row?.facts).toContain(
    'Its feeder is 16 mm², 3.10 m at its longest, carries 100 A; at 30 A it loses 0.20 V (1.7 %); its own main guards it with 30 A.',
  );
  expect(row?.facts.at(-1)).toBe('2 circuits, 3 free.');
  expect(row).toMatchObject({ freeWays: 3, short: 0, isOpen: false, lights: ['main-panel', 'locker'] });
});

test('a circuit says what it feeds, its rating, its kind and what draws through it', () => {
  const [, helm] = rowsOf(aBoat().boat)[0]?.circuits ?? [];
  expect(helm).toMatchObject({
    key: 'main-panel.helm-circuit',
    feeds: ['Helm display', 'Old radio'],
    rating: '15 A',
    kind: 'breaker',
    isOver: false,
    isFree: false,
    lights: ['helm-circuit', 'display', 'radio'],
  });
  // 18 W at the lowest 10 V, and 6 A
  expect(helm?.load).toContain('7.8 A at most');
});

test('a circuit that draws more than it lets through, and one that is short, are to be looked at', () => {
  const over = withPanel((panel) => {
    for (const circuit of panel.circuits) circuit.ratingA = 7;
  });
  expect(rowsOf(over)[0]).toMatchObject({ isOpen: true, circuits: [{ isOver: false }, { isOver: true }] });
  expect(panelText(over, quickPlan(over)).join(' ')).toContain('more than it lets through');
  const short = withPanel((panel) => {
    panel.freeWays = 0;
    panel.circuits.splice(1);
  });
  const [row] = rowsOf(short);
  expect(row).toMatchObject({ isOpen: true, short: 2 });
  expect(row?.facts.at(-1)).toBe(
    '1 circuit, 0 free, 2 wanted: 2 short. A fuse block of 3 circuits would do, behind 10 A or more.',
  );
});

test('the table as CSV has a row for the main, for each circuit and for places with nothing in', () => {
  const boat = withPanel((panel) => {
    panel.freeWays = 1;
    for (const circuit of panel.circuits) circuit.name = '=cmd()';
  });
  const rows = tableCsv(panelList(boat, quickPlan(boat)))
    .trimEnd()
    .split('\r\n');
  expect(rows[0]).toBe(
    'panel,hangs on,volts,circuit,name,feeds,rating A,kind,typical A,most A,for moments A,must break A,breaks A,free',
  );
  expect(rows[1]).toMatch(/^main-panel,house,12,main,,the panel,30,not known,/);
  expect(rows[3]).toMatch(/^main-panel,house,12,helm-circuit,'=cmd\(\),Helm display; Old radio,15,breaker,/);
  expect(rows.at(-1)).toBe('main-panel,house,12,,,1 place with nothing in,,,,,,,,free');
  expect(new Set(rows.map((row) => row.split(',').length))).toEqual(new Set([14]));
});

test.each(['gannet', 'sandpiper', 'bonxie', 'wreck'])(
  'the panels of %s fit a terminal, with cautions first',
  (name) => {
    const boat = anExample(name);
    const paper = panelPaper(boat, quickPlan(boat));
    expect(paper.split('\n').filter((line) => [...line].length > 80)).toEqual([]);
    expect(paper).not.toMatch(/undefined|NaN|null|Infinity|\.\.(?!\d)/);
    expect(paper.indexOf('! Battery short circuit')).toBeLessThan(paper.indexOf('PANEL '));
    expect(paper).toContain('! Limits of the plan');
  },
);

test('mains aboard is named only to keep away from it, and the common negative by its place', () => {
  const boat = anExample('bonxie');
  const paper = panelPaper(boat, quickPlan(boat));
  expect(paper).toContain('Mains is aboard (mains-charger, beside 7 ways). It is planned nowhere here:');
  expect(paper).toContain('All negatives meet at one point: 24 V main panel, chartroom.');
});

test('a boat without panels has no table in the text', () => {
  const { boat } = aBoat().change((draft) => {
    draft.supply.panels = [];
  });
  expect(panelText(boat, quickPlan(boat))).toEqual([]);
});

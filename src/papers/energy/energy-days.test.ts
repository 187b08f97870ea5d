import { describe, expect, it } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import { checkedPlan } from '../../core/plan.ts';
import { tableCsv } from '../table/table-csv.ts';
import { energyDays, largestRows } from './energy-days.ts';
import { energyList } from './energy-list.ts';
import { energySays } from './energy-says.ts';
import { energyPaper, energyText } from './energy-text.ts';

const planned = (boat: Boat) => checkedPlan(boat, new Map());
const tern = aBoat().boat;

describe('the energy of a day in words', () => {
  it('names each day, what it takes and what the bank gives of it', () => {
    const [anchor, day] = energyDays(tern, planned(tern));
    // before: the radio alone, 0.6 A for 15 h and 6 A for 0.1 h
    expect(anchor?.takes).toMatch(/^9\.6 Ah before, /);
    expect(anchor?.says[0]).toBe('24 h at anchor.');
    expect(anchor?.says[1]).toContain('The bank house gives all');
    expect(anchor?.says[1]).toContain('55 Ah of its 110 Ah are for use.');
    expect(day?.says[0]).toBe('10 h under sail, 14 h at anchor.');
  });

  it('says what the engine carries, and what a bank gives when shore power fails', () => {
    const boat: Boat = { ...tern, hull: { ...tern.hull, kind: 'trawler' } };
    const days = energyDays(boat, planned(boat));
    expect(days.find(({ when }) => when === 'under-way-day')?.says[1]).toContain('the engine carries the rest;');
    const berth = aBoat().with({
      days: [{ id: 'berth', name: 'Berth', like: 'alongside', hours: [{ unit: 'radio', hours: 10 }] }],
    }).boat;
    const alongside = energyDays(berth, planned(berth)).find(({ when }) => when === 'berth');
    expect(alongside?.says[1]).toContain('the charger on shore power carries the rest; should that fail, it lasts');
  });

  it('lists the largest units first, with what switching off gains, and the smaller ones as one row', () => {
    const { units = [] } = energyDays(tern, planned(tern))[2] ?? {};
    // 12 W of its own feed and 0.04 A of the bus, for 24 h
    expect(units[0]).toMatchObject({ kit: 'display', afterWh: '300', hours: '24.0' });
    const short = largestRows(units, 3);
    expect(short.map(({ name }) => name)).toEqual([
      'Helm display',
      'Old radio',
      `${units.length - 2} smaller units together`,
    ]);
    const sum = (rows: typeof units) => rows.reduce((all, { afterWh }) => all + Number(afterWh), 0);
    expect(sum(short)).toBe(sum(units));
  });

  it('says what satellite internet is, and what is in no sum', () => {
    expect(energySays(tern, planned(tern))).toEqual([]);
    const { boat } = aBoat()
      .sheet('small-display', (sheet) => {
        sheet.kind = 'satellite-terminal';
      })
      .sheet('fixed-radio', (sheet) => {
        delete sheet.power;
      });
    const [internet, unknown] = energySays(boat, planned(boat));
    expect(internet).toMatch(/^Satellite internet \(Helm display\): left on it takes 300 Wh a day, 25 Ah, /);
    expect(unknown).toBe('What these draw nobody says, so they are in no sum: Old radio.');
  });

  it('stands in the text of the plan, on paper within 80 columns, and as CSV', () => {
    const plan = planned(tern);
    expect(energyText(tern, plan)[1]).toMatch(/^- At anchor: 9\.6 Ah before, .* house lasts/);
    expect(
      energyPaper(tern, plan)
        .split('\n')
        .filter((line) => line.length > 80),
    ).toEqual([]);
    const rows = tableCsv(energyList(tern, plan)).trimEnd().split('\r\n');
    expect(rows).toHaveLength(1 + plan.energy.flatMap(({ byKit }) => byKit).length);
    expect(rows[1]).toMatch(/^At anchor,/);
  });
});

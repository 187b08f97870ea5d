import { describe, expect, test } from 'vitest';
import { anExample } from '../../../tests/an-example.test-helper.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import { checkedPlan } from '../../core/plan.ts';
import { cardBoat } from '../cards/card-boat.ts';
import { paperRows } from './paper-rows.ts';
import { methodWords, seaRows } from './sea-rows.ts';
import { settingsSheetText } from './settings-sheet-text.ts';
import { signedDegrees } from './signed-degrees.ts';
import { typedList } from './typed-list.ts';
import { typedRows } from './typed-rows.ts';

const { measures: _, papers: __, sea: ___, ...gannet } = anExample('gannet');
const rowsOf = (boat: Boat) =>
  new Map(typedRows(cardBoat(boat), checkedPlan(boat, new Map())).map((row) => [row.key, row]));

describe('the settings sheet in words', () => {
  const rows = rowsOf(gannet);

  test('gives each value in the unit of its device and in the other, with what it is counted from', () => {
    expect(rows.get('depth-bus:depth-offset:depth-bus:keel')).toMatchObject({
      type: '−0.65 m',
      also: '−2.2 ft',
      note: 'from the keel; off the drawing, measure it',
    });
    expect(rows.get('radar:radar-heading-line')).toMatchObject({ type: '0°', also: '' });
  });

  test('says where a thing is set once and left alone, and what is missing', () => {
    expect(rows.get('mfd-fly:depth-offset:depth-bus:none')?.note).toMatch(/^leave at 0 for small digital depth sensor/);
    expect(rows.get('ais:ship-number')).toMatchObject({ type: '', isMissing: true });
    expect(rows.get('ais:ais-bow')?.who).toContain('say which');
    expect(rows.get('mfd-fly:screen-units')?.note).toContain('write them down');
  });

  test('warns that constants of an old log or wind head do not hold in a new one', () => {
    const { sea: ____, ...sandpiper } = anExample('sandpiper');
    expect(rowsOf(sandpiper).get('log-wheel:log-factor')?.note).toContain('does not hold in a new one');
  });

  test('has a box for each value, and in a file also who may enter it and what goes wrong', () => {
    const plan = checkedPlan(gannet, new Map());
    const list = typedList(gannet, plan);
    expect(list.rows).toHaveLength(plan.typed.length);
    expect(list.columns.filter(({ kind }) => kind === 'tick' || kind === 'blank').map(({ id }) => id)).toEqual([
      'stands',
      'done',
    ]);
    expect(list.columns.filter(({ printed }) => printed === false).map(({ id }) => id)).toContain('if-wrong');
  });

  test('tells in a plan’s text of the papers first, a line a unit, and never a digit of the ship’s number', () => {
    const papers = { number: { digits: '000123456', from: 'state' as const, readBackBy: 'the mate' } };
    const text = settingsSheetText({ ...gannet, papers }, checkedPlan({ ...gannet, papers }, new Map()));
    expect(text[0]).toBe('SETTINGS BY MEASURE');
    expect(text[1]).toMatch(/^- Paper: ship’s number/);
    expect(text.join(' ')).toContain('•••••••56');
    expect(text.join(' ')).not.toContain('000123');
    expect(text.every((line) => line.length <= 80)).toBe(true);
  });
});

test('a paper says what to do, how long it takes, and whose word that is', () => {
  const paperwork = [{ paper: 'ship-radio-licence' as const, state: 'asked' as const, on: '2027-02-01', waitDays: 30 }];
  const boat: Boat = { ...gannet, papers: { paperwork } };
  const [number, licence] = paperRows(cardBoat(boat).kit, checkedPlan(boat, new Map()));
  expect(number).toMatchObject({ stands: 'start it before you order', isOpen: true });
  expect(number?.waits).toContain('from memory: ask the office');
  expect(licence).toMatchObject({
    stands: 'asked for, 2027-02-01',
    waits: '30 days, as the office says; by 2027-03-03',
    isOpen: false,
  });
});

test('what was found at sea is said with its figures, and each calculator with its formula and its source', () => {
  const on = '2027-06-01';
  const points = [0, 45, 90, 135, 180, 225, 270, 315].map((magneticDeg) => ({
    magneticDeg,
    compassDeg: (magneticDeg + 358) % 360,
  }));
  const swing = { id: 's', on, unit: 'compass-helm', electronics: 'off' as const };
  const boat: Boat = {
    ...gannet,
    sea: {
      leads: [{ id: 'l', on, unit: 'depth-bus', leadM: 4.6, shownM: 4, offsetM: 0 }],
      swings: [
        { ...swing, points },
        { ...swing, id: 't', points: points.slice(0, 2) },
      ],
      bridges: [
        { id: 'a', on, name: 'road bridge', chartedM: 17, datum: 'hat', datumAboveM: 5.6 },
        { id: 'b', on, name: 'railway bridge', chartedM: 17 },
      ],
    },
  };
  const rows = seaRows(cardBoat(boat).kit, checkedPlan(boat, new Map()));
  expect(rows.map(({ found }) => found)).toEqual([
    '0.60 m below the water; offset 0.60 m to the surface, −0.55 m to the keel',
    'at most 2.0°; A +2.0°, B 0.0°, C 0.0°, D 0.0°, E 0.0°; the curve leaves 0.0°',
    '2 headings, too few or too far apart for a curve',
    expect.stringMatching(/^passes up to a tide of 14\.\d\d m; counted from highest astronomical tide/),
    'not computed: say which level its chart counts from',
  ]);
  expect(methodWords('log').formula).toContain('1 3 3 1');
  expect(methodWords('bridge').source).toMatch(/^common practice: /);
  expect(signedDegrees(-0.04)).toBe('0.0°');
});

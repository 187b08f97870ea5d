import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { Boat } from '../../boat/boat-schema.ts';
import { readBoat } from '../../boat/read-boat.ts';
import { checkedPlan } from '../../plan.ts';

const demo = (id: string): Boat => {
  const {
    measures: _,
    papers: __,
    sea: ___,
    ...boat
  } = readBoat(readFileSync(new URL(`../../../../examples/${id}/${id}.boat.json`, import.meta.url), 'utf8'));
  return boat;
};
const gannet = demo('gannet');
const sandpiper = demo('sandpiper');

const typedOf = (boat: Boat) => new Map(checkedPlan(boat, new Map()).typed.map((entry) => [entry.id, entry]));

describe('the settings sheet of a motorboat', () => {
  const typed = typedOf(gannet);

  test('has the keel offset once, in the sensor, with its minus, and nothing in the screens behind it (TD-01 worked for her)', () => {
    expect(typed.get('depth-bus:depth-offset:depth-bus:keel')).toMatchObject({
      shown: { figure: '−0.65', in: 'm' },
      also: { figure: '−2.2', in: 'ft' },
      how: 'drawn',
    });
    expect(typed.get('instr-helm:depth-offset:none')).toMatchObject({ is: 0, setElsewhere: true });
  });

  test('has the alarm below the keel where screens count from there, and the safety depth from the surface', () => {
    expect(typed.get('instr-fly:depth-alarm')).toMatchObject({ reference: 'keel', is: 0.8 });
    expect(typed.get('mfd-helm:safety-depth')).toMatchObject({ reference: 'surface', is: 1.95 });
  });

  test('has the size block from the antenna of the AIS, and asks for flag and number', () => {
    const sizes = ['bow', 'stern', 'port', 'starboard'].map((side) => typed.get(`ais:ais-${side}`)?.is);
    expect(sizes).toEqual([6, 6, 1, 3]);
    expect(typed.get('ais:ais-bow')).toMatchObject({ mayEnter: 'ask-flag' });
    expect(typed.get('ais:ship-number')).toMatchObject({ missing: 'ship-number' });
  });
});

test('what somebody measured counts before the drawing, and what a lead line said last before both', () => {
  const measured: Boat = {
    ...gannet,
    measures: { transducers: [{ unit: 'depth-bus', below: { valueM: 0.6, how: 'taped' } }] },
  };
  expect(typedOf(measured).get('depth-bus:depth-offset:depth-bus:keel')).toMatchObject({ is: -0.55, how: 'taped' });
  const lead = { id: 'l', unit: 'depth-bus', on: '2027-06-01', leadM: 4.7, shownM: 4, offsetM: 0 };
  const tried: Boat = { ...measured, sea: { leads: [lead, { ...lead, id: 'k', on: '2027-05-01', leadM: 9 }] } };
  expect(typedOf(tried).get('depth-bus:depth-offset:depth-bus:keel')).toMatchObject({ is: -0.45, how: 'at-sea' });
});

test('a screen in feet is given feet, with metres beside them, each rounded to the safe side', () => {
  const boat: Boat = {
    ...gannet,
    measures: { screens: [{ unit: 'mfd-fly', depth: 'ft', height: 'ft' }], wavesM: 0.5 },
  };
  const typed = typedOf(boat);
  expect(typed.get('mfd-fly:safety-depth')).toMatchObject({
    is: 2.15,
    shown: { figure: '7.1', in: 'ft' },
    also: { figure: '2.15', in: 'm' },
  });
  expect(typed.get('mfd-fly:screen-units')?.shown).toEqual({ figure: 'depth ft, height ft', in: '' });
  expect(typed.get('mfd-helm:safety-depth')?.shown).toEqual({ figure: '2.15', in: 'm' });
});

test('the number of the ship is covered but for its last two digits, and waits until it was read back', () => {
  const number = { digits: '000123456', from: 'state' as const };
  const sheet = checkedPlan({ ...gannet, papers: { flag: 'US', number } }, new Map());
  expect(JSON.stringify(sheet)).not.toContain('0001234');
  const typed = new Map(sheet.typed.map((entry) => [entry.id, entry]));
  expect(typed.get('vhf-1:ship-number')).toMatchObject({
    shown: { figure: '•••••••56', in: '' },
    missing: 'read-back',
  });
  expect(typed.get('ais:ais-bow')).toMatchObject({ mayEnter: 'radio-installer' });
  const read = typedOf({ ...gannet, papers: { number: { ...number, readBackBy: 'the mate' } } });
  expect(read.get('vhf-1:ship-number')).not.toHaveProperty('missing');
});

test('log and wind start from nothing, for what stood in the old heads does not hold; trials at sea set both', () => {
  const start = typedOf(sandpiper);
  expect(start.get('log-wheel:log-factor')).toMatchObject({ is: 1, how: 'guessed' });
  expect(start.get('wind-head:wind-offset')).toMatchObject({ is: 0, how: 'guessed' });
  const runs = [8, 8].map((trueKn) => ({ seconds: 3600 / trueKn, indicatedKn: 7.5 }));
  const on = '2027-06-01';
  const typed = typedOf({
    ...sandpiper,
    sea: {
      logs: [{ id: 'run', unit: 'log-wheel', on, distanceNm: 1, runs, factorBefore: 1.4 }],
      winds: [{ id: 'tacks', unit: 'wind-head', on, tacks: [{ onPortDeg: 35, onStarboardDeg: 25 }] }],
    },
  });
  expect(typed.get('log-wheel:log-factor')?.shown).toEqual({ figure: '1.49', in: 'factor' });
  expect(typed.get('wind-head:wind-offset')?.shown).toEqual({ figure: '5.0', in: '° to starboard' });
});

test('the air draft is the sum of its parts, with the new gear on top and what it was before', () => {
  const part = (id: string, valueM: number, unit?: string) => ({
    id,
    name: id,
    length: { valueM, how: 'taped' as const, lessM: 0, moreM: 0.01 },
    ...(unit === undefined ? {} : { unit }),
  });
  const parts = [part('deck', 1.1), part('mast', 11.8), part('old', 0.3, 'wind-head'), part('new', 1, 'vhf-antenna')];
  const kit = sandpiper.kit.map((unit) => (unit.id === 'vhf-antenna' ? { ...unit, fate: 'comes' as const } : unit));
  const { airDraft, typed } = checkedPlan({ ...sandpiper, kit, measures: { airDraftParts: parts } }, new Map());
  expect(airDraft).toMatchObject({ valueM: 13.9, mostM: 13.93, how: 'taped', beforeM: 13.2 });
  expect(typed.find(({ id }) => id === 'plotter:air-draft')?.shown).toEqual({ figure: '13.93', in: 'm' });
});

test('papers are to be started, are waited for from the day they were asked for, or are there', () => {
  const papers = (boat: Boat) => checkedPlan(boat, new Map()).shipPapers;
  expect(papers(gannet).map(({ paper, state, waitFrom }) => [paper, state, waitFrom])).toEqual([
    ['ship-number', 'to-start', 'memory'],
    ['ship-radio-licence', 'to-start', 'memory'],
    ['inland-identification', 'to-ask', 'memory'],
  ]);
  const asked = { paper: 'ship-number' as const, state: 'asked' as const, on: '2027-02-01', waitDays: 10 };
  const [number] = papers({ ...gannet, papers: { paperwork: [asked] } });
  expect(number).toMatchObject({
    state: 'asked',
    waitFrom: 'office',
    thereOn: '2027-02-11',
    for: ['ais', 'vhf-1', 'vhf-2'],
  });
});

test('what was read off a unit stands beside what should, and agrees or not', () => {
  const typed = typedOf({
    ...gannet,
    measures: {
      typed: [
        { unit: 'depth-bus', what: 'depth-offset', figure: -0.65, in: 'm' },
        { unit: 'instr-fly', what: 'depth-alarm', figure: 2.6, in: 'm' },
      ],
    },
  });
  expect(typed.get('depth-bus:depth-offset:depth-bus:keel')?.stands?.agrees).toBe(true);
  expect(typed.get('instr-fly:depth-alarm')?.stands).toEqual({ shown: { figure: '2.6', in: 'm' }, agrees: false });
});

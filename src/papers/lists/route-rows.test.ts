import { expect, test } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import { indexBoat } from '../../core/boat/boat-index.ts';
import { applyEdits } from '../../core/boat/history.ts';
import { startHistory } from '../../core/boat/start-history.ts';
import { plan } from '../../core/plan.ts';
import { busRouteRows, routeRows } from './route-rows.ts';

const { boat } = aBoat();
const radio = 'pair:converter.wires~radio.wires';
const rowOf = (of = boat) => routeRows(indexBoat(of), plan(of, new Map())).find(({ key }) => key === radio);

test('a pair says its route, and may be settled or led round by the mast', () => {
  const row = rowOf();
  expect(row?.fact).toMatch(/^3\.10 m, straight$/);
  expect(row?.acts.map(({ says }) => says)).toEqual([
    'settle this route',
    expect.stringMatching(/^lead it by .*, \d+\.\d\d m$/),
  ]);
});

test('led round, it is settled there, and may be let go again', () => {
  const other = rowOf()?.acts[1];
  if (other === undefined) throw new Error('There is no other way.');
  const led = applyEdits(startHistory(boat), other.edits, other.title).boat;
  const row = rowOf(led);
  expect(row?.fact).toMatch(/, settled$/);
  expect(row?.acts.map(({ says }) => says)).toEqual(['let the plan lead it again']);
  const back = applyEdits(startHistory(led), row?.acts[0]?.edits ?? []).boat;
  expect(rowOf(back)).toEqual(rowOf());
});

test('drops are listed by themselves, and no line stands in both lists', () => {
  const planned = plan(boat, new Map());
  const [others, ofBus] = [routeRows(indexBoat(boat), planned), busRouteRows(indexBoat(boat), planned)];
  const keys = (rows: typeof others): string[] => rows.map(({ key }) => key);
  expect(keys(ofBus)).toContain(planned.lines.find(({ kind }) => kind === 'drop')?.id);
  expect(keys(others).filter((key) => keys(ofBus).includes(key))).toEqual([]);
  const led = planned.lines.filter(({ kind, kept }) => kind !== 'trunk' && kept === undefined);
  expect(new Set([...keys(others), ...keys(ofBus)])).toEqual(new Set(led.map(({ id }) => id)));
});

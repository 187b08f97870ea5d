import { expect, test } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import { applyEdits } from '../../core/boat/history.ts';
import { startHistory } from '../../core/boat/start-history.ts';
import { firstSheets } from '../../core/facts/sheets/first-sheets.ts';
import { typicalSheets } from '../../core/facts/sheets/index.ts';
import { plan } from '../../core/plan.ts';
import { offeredToday, offeredUsual } from '../needs/offered-needs.ts';
import { foundUnits } from './found-units.ts';
import { needsWords } from './needs-words.ts';
import { offeredWiring } from './offered-wiring.ts';
import { sheetLine } from './sheet-line.ts';

const lineOf = (id: string): string => {
  const sheet = typicalSheets.find((one) => one.id === id);
  if (sheet === undefined) throw new Error(`no sheet ${id}`);
  return sheetLine(sheet);
};

test('a sheet says in one line what it says and hears, and by what', () => {
  expect(lineOf('heading-sensor-bus')).toBe('says heading, rate of turn, attitude; hears variation; by NMEA 2000');
  expect(lineOf('multifunction-display-12')).toBe(
    'says water temperature, route, cross-track error and 3 more; hears position, course and speed over ground, time and date and 37 more; by NMEA 2000, Ethernet',
  );
  expect(lineOf('compass-magnetic')).toBe('joined to nothing');
});

test('nothing typed offers what most boats get, own sheets first', () => {
  const [typical] = typicalSheets;
  if (typical === undefined) throw new Error('no sheets');
  const own = { ...typical, id: 'my-screen', name: 'my screen', source: 'manual' as const };
  const offered = foundUnits(' ', [own]);
  expect(offered.map(({ sheet }) => sheet.id)).toEqual(['my-screen', ...firstSheets]);
  expect(offered.map(({ isOwn }) => isOwn).filter(Boolean)).toHaveLength(1);
  expect(offered[0]?.name).toBe('My screen');
  expect(foundUnits('magnetic compass', [])[0]?.name).toBe('Magnetic steering compass');
});

test('needs are told a sentence a unit, musts before wishes', () => {
  const { boat } = aBoat();
  expect(
    needsWords(boat, [
      { reading: 'depth', at: 'display', must: false },
      { reading: 'heading', at: 'display', must: true },
      { reading: 'position', at: 'display', must: true },
      { reading: 'position', at: 'radio', must: true },
    ]),
  ).toEqual(['Helm display must have heading and position; had better have depth.', 'Old radio must have position.']);
});

test('usual needs and those of today are offered until they are taken in', () => {
  const { boat } = aBoat().with({ needs: [] });
  const usual = offeredUsual(boat);
  expect([usual?.title, usual?.count]).toEqual(['Take in the usual needs of every unit.', 6]);
  const after = applyEdits(startHistory(boat), usual?.edits ?? [], usual?.title).boat;
  expect(offeredUsual(after)).toBeUndefined();
  expect(offeredUsual(boat, 'radio')?.says).toEqual(['Old radio must have position; had better have time and date.']);
  const old = aBoat()
    .with({ needs: [] })
    .change((draft) => {
      for (const unit of draft.kit) unit.fate = 'stays';
    }).boat;
  const today = offeredToday(old, plan(old, new Map()));
  const asked = applyEdits(startHistory(old), today?.edits ?? []).boat;
  expect(asked.needs.length).toBe(today?.count);
  expect(offeredToday(asked, plan(asked, new Map()))).toBeUndefined();
});

test('what can be wired is told by count, and nothing is offered once it is done', () => {
  const loose = aBoat().with({ joins: [] }).boat;
  const offered = offeredWiring(loose, plan(loose, new Map()));
  expect(offered?.title).toBe('Wire her so: 4 ports on the backbone, 1 cable from unit to unit.');
  const wired = applyEdits(startHistory(loose), offered?.edits ?? [], offered?.title).boat;
  expect(offeredWiring(wired, plan(wired, new Map()))).toBeUndefined();
});

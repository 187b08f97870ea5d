import { describe, expect, test } from 'vitest';
import { anExample } from '../../../tests/an-example.test-helper.ts';
import { emptyPlan } from '../../core/empty-plan.test-helper.ts';
import { cautions } from '../../core/facts/cautions.ts';
import { boatLog } from '../../core/log/boat-log.ts';
import type { LogEntry } from '../../core/log/log-entry.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { quickPlan } from '../../core/quick-plan.test-helper.ts';
import { aFinding, aPlan } from '../lists/a-plan.test-helper.ts';
import type { ListTable } from '../table/list-table.ts';
import { binderOf } from './binder.ts';
import type { Chapter } from './binder-shape.ts';
import { briefBoat } from './brief-boat.ts';
import { boatCautions } from './chapters/cautions.ts';
import { findingsChapter } from './chapters/findings.ts';
import { sourcesUsed } from './chapters/sources-used.ts';
import { testTable } from './chapters/test-record.ts';
import { logEntries } from './log-entries.ts';

const boat = anExample('sandpiper');
const planned: Plan = quickPlan(boat);

const tablesOf = ({ blocks }: Chapter): ListTable[] =>
  blocks.flatMap((block) => (block.kind === 'table' ? [block.table] : []));

describe('the binder of a boat', () => {
  const binder = binderOf({ boat, plan: planned, paper: 'letter', dateIso: '2026-11-26', revision: 'B' });
  const chapter = (id: string): Chapter => {
    const found = binder.chapters.find((one) => one.id === id);
    if (found === undefined) throw new Error(`There is no chapter ${id}.`);
    return found;
  };

  test('says whose it is, of which day and revision, as planned', () => {
    expect(binder).toMatchObject({ boat: boat.name, dateIso: '2026-11-26', revision: 'B', standing: 'as planned' });
  });

  test('has chapters of different names, each with something in it, and every row a cell for each column', () => {
    expect(new Set(binder.chapters.map(({ id }) => id)).size).toBe(binder.chapters.length);
    for (const one of binder.chapters) {
      expect(one.blocks.length, one.id).toBeGreaterThan(0);
      for (const table of tablesOf(one))
        for (const row of table.rows) expect(row.length, table.id).toBe(table.columns.length);
    }
  });

  test('tells of every cable of the plan, and of every unit that is to be set', () => {
    const cables = tablesOf(chapter('cables')).find(({ id }) => id === 'cables');
    expect(cables?.rows.length).toBeGreaterThanOrEqual(planned.lines.length);
    const units = new Set(planned.settings.map(({ kit }) => kit));
    const ids = tablesOf(chapter('settings')).map(({ id }) => id);
    for (const unit of units) expect(ids).toContain(`settings-${unit}`);
  });

  test('expects of each bus and at each load what the plan reckons there', () => {
    for (const { id } of planned.buses) {
      const rows = tablesOf(chapter('tests')).find((table) => table.id === `test-${id}`)?.rows ?? [];
      const { right } = planned.tests.find((one) => one.id === `dock/data-ohm:${id}:end-1`) ?? {};
      expect(rows[0]?.[1]).toContain(`${Number(right?.least?.toFixed(1))} Ω to ${Number(right?.most?.toFixed(1))} Ω`);
      expect(rows).toHaveLength(planned.tests.filter(({ group, about }) => group === 'bus' && about[0] === id).length);
    }
    const feeds = tablesOf(chapter('tests')).find(({ id }) => id === 'test-feeds')?.rows ?? [];
    const volts = planned.feeds.flatMap(({ to, atEndV }) =>
      atEndV === undefined || planned.buses.some(({ id }) => id === to) ? [] : [Number(atEndV.toFixed(2))],
    );
    expect(feeds.map(([, expected]) => Number.parseFloat(`${expected}`)).sort()).toEqual(volts.sort());
  });

  test('fills the test record from the log: what was found, the day, who, and what is wrong with a bus', () => {
    const entry = (n: number, spot: string): LogEntry => ({
      kind: 'reading',
      id: `reading${n}0`,
      at: '2027-06-01T10:00:00Z',
      by: 'A',
      test: `dock/data-ohm:nav:${spot}`,
      value: 40,
    });
    const log = boatLog([entry(1, 'end-1'), entry(2, 'end-2')]);
    const { chapters } = binderOf({ boat, plan: planned, paper: 'a4', drawings: [], log });
    const blocks = chapters.find(({ id }) => id === 'tests')?.blocks ?? [];
    const table = blocks.flatMap((block) =>
      block.kind === 'table' && block.table.id === 'test-nav' ? [block.table] : [],
    );
    expect(table[0]?.rows[0]?.slice(2)).toEqual(['✗ 40 Ω, wrong', '2027-06-01', 'A']);
    const said = blocks.flatMap((block) => (block.kind === 'words' ? [block.text] : []));
    expect(said.some((text) => text.includes('terminator too many'))).toBe(true);
  });

  test('has a card for each compass that is aboard when the work is done', () => {
    const cards = tablesOf(chapter('deviation'));
    expect(cards.length).toBeGreaterThan(0);
    for (const { rows } of cards) expect(rows.flatMap((row) => [row[0], row[3]])).toContain(345);
  });
});

test('a unit is called by as much of its name as tells it from the others', () => {
  const brief = briefBoat(boat);
  expect(new Set(brief.kit.map(({ name }) => name)).size).toBe(new Set(boat.kit.map(({ name }) => name)).size);
  for (const [at, { name }] of boat.kit.entries()) expect(name.startsWith(brief.kit[at]?.name ?? '?')).toBe(true);
});

test('a caution stands once, those of every report are never left out, and each is one that is known', () => {
  const ids = boatCautions(boat, planned).map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
  expect(ids).toEqual(expect.arrayContaining(['limits', 'licence', 'stray', 'navsafe']));
  for (const id of ids) expect(cautions.map((one) => one.id)).toContain(id);
});

test('what was accepted stands with its reason, apart from what is open; a danger stays open', () => {
  const findings = [
    aFinding('one', { says: 'First.' }),
    aFinding('two', { says: 'Second.', accepted: 'it is short' }),
    aFinding('three', { says: 'Third.', level: 'danger', accepted: 'I dare' }),
  ];
  const [danger, fault, accepted] = tablesOf(findingsChapter(boat, aPlan({ findings })));
  expect(danger?.rows.map((row) => row[1])).toEqual(['Third.']);
  expect(fault?.rows.map((row) => row[1])).toEqual(['First.']);
  expect(accepted?.rows.map((row) => row.slice(0, 2))).toEqual([['Second.', 'it is short']]);
});

test('sources stand for what the plan has: without a bus none of its limits', () => {
  const bare = sourcesUsed({ ...boat, kit: [] }, { ...emptyPlan, findings: [] });
  const full = sourcesUsed(boat, planned);
  expect(full.length).toBeGreaterThan(bare.length);
  expect(bare).toContain('practice-cautions');
  expect(full).toEqual(expect.arrayContaining(bare));
});

test('a test that was done is shown with what was found, a blank one with room for it', () => {
  const { rows, columns } = testTable({ id: 'x', title: 'X' }, [
    { what: 'volts', expect: '12 V', result: { found: '12.4 V', day: '2026-11-26', by: 'A' } },
    { what: 'ohms', expect: '60 Ω' },
  ]);
  expect(rows).toEqual([
    ['volts', '12 V', '12.4 V', '2026-11-26', 'A'],
    ['ohms', '60 Ω', undefined, undefined, undefined],
  ]);
  expect(columns.slice(2).every(({ kind }) => kind === 'blank')).toBe(true);
});

test('the change log tells of revisions and of what was found otherwise, by day', () => {
  const [unit] = boat.kit;
  const entries = logEntries({
    ...boat,
    revisions: [{ mark: 'A', standing: 'planned', on: '2027-05-01', says: 'For the yard.', boat: '00' }],
    fitted: [{ id: 'f1', about: unit?.id ?? '', what: 'place', was: 'here', is: 'there', on: '2027-04-01' }],
  });
  expect(entries.map(({ dateIso, what }) => `${dateIso} ${what}`)).toEqual([
    `2027-04-01 ${unit?.name}: was here, is there`,
    '2027-05-01 Revision A, as planned: For the yard.',
  ]);
});

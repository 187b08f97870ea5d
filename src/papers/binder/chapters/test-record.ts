import { indexBoat } from '../../../core/boat/boat-index.ts';
import type { Boat } from '../../../core/boat/boat-schema.ts';
import { cautions } from '../../../core/facts/cautions.ts';
import { dockTests } from '../../../core/facts/dock-tests.ts';
import { type SourceKey, sources } from '../../../core/facts/sources.ts';
import { beforeClosing, beforeClosingSource, dockTrials, seaTrials } from '../../../core/facts/trial-tests.ts';
import type { BoatLog } from '../../../core/log/boat-log.ts';
import type { Plan } from '../../../core/plan-shape.ts';
import { seaTrial } from '../../../core/proof/trial/sea-trial.ts';
import type { TestEntry } from '../../../core/tests-shape.ts';
import { type CardBoat, cardBoat } from '../../cards/card-boat.ts';
import { busFaultWords } from '../../proof/bus-fault-words.ts';
import { type TestRow, testRows } from '../../proof/test-rows.ts';
import { trialStateWords } from '../../proof/trial-words.ts';
import type { ListTable } from '../../table/list-table.ts';
import type { Block, Chapter } from '../binder-shape.ts';
import { sourceLine } from '../source-words.ts';

const columns: ListTable['columns'] = [
  { id: 'what', head: 'test', share: 2 },
  { id: 'expect', head: 'expected', share: 1.4 },
  { id: 'found', head: 'found', kind: 'blank', share: 1.1 },
  { id: 'day', head: 'day', kind: 'blank', share: 0.85 },
  { id: 'by', head: 'by', kind: 'blank', share: 0.65 },
];

interface TableHead {
  readonly id: string;
  readonly title: string;
  readonly says?: string;
}

/** Tests as a table: blank to be filled in, or with what was found. */
export const testTable = (
  { id, title, says }: TableHead,
  rows: readonly Pick<TestRow, 'what' | 'expect' | 'result'>[],
): ListTable => ({
  id,
  title,
  ...(says === undefined ? {} : { says }),
  columns,
  rows: rows.map(({ what: tested, expect, result }) => [tested, expect, result?.found, result?.day, result?.by]),
  empty: 'Nothing is to be tested here.',
});

const isKey = (key: string): key is SourceKey => Object.hasOwn(sources, key);

const caution = (id: string): Block[] =>
  cautions
    .filter((own) => own.id === id)
    .map(({ hazard, text, deferTo }) => ({
      kind: 'caution',
      hazard,
      text,
      ...(deferTo === undefined ? {} : { deferTo }),
    }));

/** Which tests stand in a table of their own, what is said above each, and which caution goes with it. */
const groups: readonly (TableHead & { readonly group: TestEntry['group']; readonly caution?: string })[] = [
  {
    group: 'feed',
    id: 'test-feeds',
    title: 'Volts at each load',
    says: 'Measured at the plug with everything switched on. Expected is the least with the bank at its lowest. Less than nothing: red and black are swapped.',
    caution: 'battery-short',
  },
  { group: 'pair', id: 'test-pairs', title: 'Pairs and single wires' },
  {
    group: 'hull',
    id: 'test-hull',
    title: 'Metal hull: volts against the hull and of an anode',
    says: 'All off first, then one panel after the other. No figure is given: what changes as a panel comes on is a way for current into the hull, to be found there.',
    caution: 'stray',
  },
  { group: 'reading', id: 'test-readings', title: 'Every reading at every screen' },
  { group: 'source', id: 'test-sources', title: 'Each source pulled once' },
  { group: 'trial', id: 'test-dock', title: 'Tried at the dock' },
  {
    group: 'noise',
    id: 'test-noise',
    title: 'What disturbs the radios',
    says: 'A quiet VHF channel, squelch just silent, AIS targets on the screen; one thing at a time on and off.',
  },
];

const tableBlocks = (head: TableHead, rows: readonly TestRow[], own: readonly Block[] = []): Block[] =>
  rows.length === 0
    ? []
    : [
        ...own,
        { kind: 'table', table: testTable(head, rows) },
        { kind: 'words', isQuiet: true, text: sourceLine(rows.map(({ test }) => test.source).filter(isKey)) },
      ];

const busBlocks = (index: CardBoat, plan: Plan, rows: readonly TestRow[], log: BoatLog): Block[] =>
  plan.buses.flatMap((bus): Block[] => {
    const own = rows.filter(({ test }) => test.group === 'bus' && test.about[0] === bus.id);
    const title = `Bus: ${index.buses.get(bus.id)?.name ?? bus.id}`;
    return [
      ...tableBlocks({ id: `test-${bus.id}`, title }, own),
      ...busFaultWords(index, bus, log).map((text): Block => ({ kind: 'words', text })),
    ];
  });

const seaBlocks = (boat: Boat, log: BoatLog): Block[] => {
  const steps = seaTrial(indexBoat(boat), log);
  const rows = steps.map((step, at) => ({
    what: `${at + 1}. ${step.trial.does}`,
    expect: step.trial.expect,
    ...(step.on === undefined ? {} : { result: { found: trialStateWords(step), day: step.on, by: step.by ?? '' } }),
  }));
  return [
    {
      kind: 'table',
      table: testTable(
        { id: 'test-sea', title: 'At sea', says: 'In this order: each step needs the ones before it.' },
        rows,
      ),
    },
    { kind: 'words', isQuiet: true, text: sourceLine(steps.map(({ trial }) => trial.source)) },
  ];
};

/** Every source the tests name. */
export const testSources = (): SourceKey[] => [
  beforeClosingSource,
  ...dockTests.map(({ source }) => source),
  ...[...dockTrials, ...seaTrials].map(({ source }) => source),
];

/** The tests at the dock and at sea, with what is expected, and what was found as far as the log has it. */
export const testRecordChapter = (boat: Boat, plan: Plan, log: BoatLog): Chapter => {
  const index = cardBoat(boat);
  const rows = testRows(index, plan.tests, log);
  return {
    id: 'tests',
    title: 'Test record',
    blocks: [
      {
        kind: 'words',
        text: 'Write what you found, the day, and who measured. What is not as expected is mended before the next test.',
      },
      { kind: 'heading', text: 'Before a panel is shut, at each new cable' },
      { kind: 'ticks', ticks: beforeClosing.map((text) => ({ text })) },
      { kind: 'words', isQuiet: true, text: sourceLine([beforeClosingSource]) },
      ...busBlocks(index, plan, rows, log),
      ...groups.flatMap(({ group, caution: hazard, ...head }) =>
        tableBlocks(
          head,
          rows.filter(({ test }) => test.group === group),
          hazard === undefined ? [] : caution(hazard),
        ),
      ),
      ...seaBlocks(boat, log),
    ],
  };
};

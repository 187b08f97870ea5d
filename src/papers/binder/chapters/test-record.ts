import { expectedOhm } from '../../../core/backbone/expected-ohm.ts';
import type { Boat } from '../../../core/boat/boat-schema.ts';
import { dockTests } from '../../../core/facts/dock-tests.ts';
import type { SourceKey } from '../../../core/facts/sources.ts';
import {
  beforeClosing,
  beforeClosingSource,
  dockTrials,
  seaTrials,
  type TrialTest,
} from '../../../core/facts/trial-tests.ts';
import type { BusEntry, Plan } from '../../../core/plan-shape.ts';
import { cardBoat } from '../../cards/card-boat.ts';
import { feedRows } from '../../lists/feed-rows.ts';
import { printCount } from '../../lists/print-figure.ts';
import type { ListTable } from '../../table/list-table.ts';
import type { Block, Chapter } from '../binder-shape.ts';
import { sourceLine } from '../source-words.ts';

/** What was found at one test; absent while it is still to be done. */
interface TestResult {
  readonly found: string;
  readonly day: string;
  readonly by: string;
}

/** One test with what is expected, and what was found once somebody did it. */
export interface TestRow {
  readonly what: string;
  readonly expect: string;
  readonly result?: TestResult;
}

const columns: ListTable['columns'] = [
  { id: 'what', head: 'test', share: 2 },
  { id: 'expect', head: 'expected', share: 1.4 },
  { id: 'found', head: 'found', kind: 'blank', share: 1.1 },
  { id: 'day', head: 'day', kind: 'blank', share: 0.85 },
  { id: 'by', head: 'by', kind: 'blank', share: 0.65 },
];

/** Tests as a table: blank to be filled in, or with what was found. */
export const testTable = (
  { id, title, says }: { id: string; title: string; says?: string },
  rows: readonly TestRow[],
): ListTable => ({
  id,
  title,
  ...(says === undefined ? {} : { says }),
  columns,
  rows: rows.map(({ what: tested, expect, result }) => [tested, expect, result?.found, result?.day, result?.by]),
  empty: 'Nothing is to be tested here.',
});

const windowWords = ({ unit, expect, least, most, belowFeedMostV }: (typeof dockTests)[number]): string => {
  const big = (value: number): string => (value >= 1_000_000 ? `${value / 1_000_000} M` : `${value} `);
  const unitWord = unit === 'ohm' ? 'Ω' : unit;
  if (least !== undefined && most === undefined) return `over ${big(least)}${unitWord}`;
  const parts = [
    ...(expect === undefined ? [] : [`about ${expect} ${unitWord}`]),
    ...(least === undefined || most === undefined ? [] : [`${least} to ${most} ${unitWord} passes`]),
    ...(belowFeedMostV === undefined ? [] : [`at most ${belowFeedMostV} V under the feed`]),
  ];
  return parts.join('; ');
};

const busRows = (bus: BusEntry): TestRow[] =>
  dockTests.map((test) => {
    const what = `Power ${test.power}: ${test.measure}`;
    if (test.n === 6) return { what, expect: `${printCount(bus.devices, 'device')}, no errors` };
    if (test.n !== 1) return { what, expect: windowWords(test) };
    const { leastOhm, mostOhm } = expectedOhm({ terminators: 2, nodes: bus.devices });
    return {
      what,
      expect: `${leastOhm.toFixed(0)} to ${mostOhm.toFixed(0)} Ω with ${printCount(bus.devices, 'device')}; ${test.least} to ${test.most} Ω passes`,
    };
  });

const busBlocks = (boat: Boat, plan: Plan): Block[] =>
  plan.buses.flatMap((bus): Block[] => [
    {
      kind: 'table',
      table: testTable(
        {
          id: `test-${bus.id}`,
          title: `Bus: ${boat.buses.find(({ id }) => id === bus.id)?.name ?? bus.id}`,
        },
        busRows(bus),
      ),
    },
    { kind: 'words', isQuiet: true, text: sourceLine(dockTests.map(({ source }) => source)) },
  ]);

const feedBlock = (boat: Boat, plan: Plan): Block => {
  const { fed } = feedRows(cardBoat(boat), plan);
  return {
    kind: 'table',
    table: testTable(
      {
        id: 'test-feeds',
        title: 'Volts at each load',
        says: 'Measured at the plug with everything switched on. Expected is the least, with the bank at its lowest.',
      },
      fed.flatMap(({ what, panel, circuit, atEnd, fuse }) =>
        atEnd === ''
          ? []
          : [
              {
                what: `${what}, from ${panel} ${circuit}${fuse === '' ? '' : `, ${fuse}`}`,
                expect: `at least ${atEnd}`,
              },
            ],
      ),
    ),
  };
};

/** Trials of what is aboard: a boat without radar has none to align. */
const trialsFor = (boat: Boat, trials: readonly TrialTest[]): TrialTest[] => {
  const { kit } = cardBoat(boat);
  const kinds = new Set(
    [...kit.values()].filter(({ fate }) => fate !== 'goes').map(({ id }) => cardBoat(boat).sheetOf.get(id)?.kind),
  );
  return trials.filter(({ kinds: own }) => own === undefined || own.some((kind) => kinds.has(kind)));
};

const trialBlocks = (about: Parameters<typeof testTable>[0], trials: readonly TrialTest[]): Block[] => [
  {
    kind: 'table',
    table: testTable(
      about,
      trials.map(({ does, expect }, at) => ({ what: `${at + 1}. ${does}`, expect })),
    ),
  },
  { kind: 'words', isQuiet: true, text: sourceLine(trials.map(({ source }) => source)) },
];

/** Every source the tests name. */
export const testSources = (): SourceKey[] => [
  beforeClosingSource,
  ...dockTests.map(({ source }) => source),
  ...[...dockTrials, ...seaTrials].map(({ source }) => source),
];

/** The tests at the dock and at sea, with what is expected and room for what is found. */
export const testRecordChapter = (boat: Boat, plan: Plan): Chapter => ({
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
    ...busBlocks(boat, plan),
    feedBlock(boat, plan),
    ...trialBlocks({ id: 'test-dock', title: 'At the dock' }, trialsFor(boat, dockTrials)),
    ...trialBlocks(
      { id: 'test-sea', title: 'At sea', says: 'In this order: each step needs the ones before it.' },
      trialsFor(boat, seaTrials),
    ),
  ],
});

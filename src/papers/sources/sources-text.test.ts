import { expect, test } from 'vitest';
import { anExample } from '../../../tests/an-example.test-helper.ts';
import { applyEdits } from '../../core/boat/history.ts';
import { startHistory } from '../../core/boat/start-history.ts';
import { quickPlan } from '../../core/quick-plan.test-helper.ts';
import { cardBoat } from '../cards/card-boat.ts';
import { tableCsv } from '../table/table-csv.ts';
import { numberEdit, numberRows } from './number-rows.ts';
import { pairList } from './pair-list.ts';
import { pairRows } from './pair-rows.ts';
import { settingList } from './setting-list.ts';
import { settingSentence, settingUnits } from './setting-rows.ts';
import { sourceList } from './source-list.ts';
import { chooseEdit, sourceRows, sourceSentence } from './source-rows.ts';
import { pairsPaper, settingsPaper, sourcesPaper, sourcesText } from './sources-text.ts';

const gannet = anExample('gannet');
const planned = quickPlan(gannet);
const index = cardBoat(gannet);
const rows = sourceRows({ ...index, boat: gannet }, planned);

test('every reading at every screen stands in one row', () => {
  const told = rows.flatMap(({ reading, instance, screens }) =>
    screens.map(({ kit }) => `${reading} ${instance ?? ''} ${kit}`),
  );
  const planRows = planned.sources.map(({ reading, instance, at }) => `${reading} ${instance ?? ''} ${at}`);
  expect(told.toSorted()).toEqual(planRows.toSorted());
});

test('a source is told with its reason and what stands by', () => {
  const position = rows.find(({ reading, isChoice }) => reading === 'position' && isChoice);
  if (position === undefined) return expect.unreachable();
  expect(sourceSentence(position)).toBe(
    'position for 9-inch multifunction display and 12-inch multifunction display: from 10 Hz position antenna (number 0, every 100 ms), proposed for the whole boat: it is made to measure this; stands by: 9-inch multifunction display.',
  );
});

test('another source is chosen for the boat in one step of undo, and the plan holds to it', () => {
  const depth = rows.find(({ reading, isChoice }) => reading === 'depth' && isChoice);
  const [other] = depth?.standBy ?? [];
  if (depth === undefined || other === undefined) return expect.unreachable();
  const { edits, title } = chooseEdit(index, depth, { from: other.from });
  const history = applyEdits(startHistory(gannet), edits, title);
  expect(history.done.map((step) => step.title)).toEqual([
    'Take depth from bronze through-hull depth and temperature transducer for the module.',
  ]);
  const after = quickPlan(history.boat);
  const chosen = after.sources.filter(({ chosen: how }) => how === 'owner-boat');
  expect(chosen.map(({ primary }) => primary.from)).toEqual([other.from, other.from]);
  // the way told with each need is that of the source that was chosen
  const ways = after.readings.filter(({ reading, at }) => reading === 'depth' && chosen.some((one) => one.at === at));
  expect(ways.map(({ by }) => by[0])).toEqual([other.from, other.from]);
  expect(after.findings.filter(({ id }) => /several-for-one-need.*:depth$/.test(id))).toEqual([]);
  const back = chooseEdit(index, depth, {});
  expect(applyEdits(history, back.edits, back.title).boat).toEqual(gannet);
});

test('what to set stands unit by unit, each setting once', () => {
  const units = settingUnits(index, planned);
  expect(units.flatMap((unit) => unit.rows.map(({ key }) => key)).toSorted()).toEqual(
    planned.settings.map(({ id }) => id).toSorted(),
  );
  const converter = units.find(({ kit }) => kit === 'conv-pilot');
  expect(converter?.rows.map(settingSentence)).toContain(
    'out: RMC (minimum navigation information: time, date, position, SOG, COG, variation): on, every 2 s; course and speed over ground, variation for old pilot computer.',
  );
});

test('where depth below the transducer is wanted its offset is left at nothing', () => {
  const sandpiper = anExample('sandpiper');
  const units = settingUnits(cardBoat(sandpiper), quickPlan(sandpiper));
  const offset = units.find(({ kit }) => kit === 'plotter')?.rows.find(({ what }) => what.startsWith('offset'));
  expect(offset).toMatchObject({ to: 'leave at 0', more: 'depth below the transducer is wanted' });
});

test('numbers that clash are given free ones in one step, after which nothing is left to number', () => {
  const clash = applyEdits(startHistory(gannet), [
    { edit: 'set-instance', params: { port: 'eng-gw-stbd.n2k', reading: 'engine', instance: 0 } },
  ]).boat;
  const before = quickPlan(clash);
  expect(numberEdit(planned)).toBeUndefined();
  expect(
    numberRows(index, before)
      .filter(({ isOpen }) => isOpen)
      .map(({ fact }) => fact),
  ).toEqual(['now 0, better 1: another has this number; set it in engine gateway, starboard']);
  const proposed = numberEdit(before);
  if (proposed === undefined) return expect.unreachable();
  const history = applyEdits(startHistory(clash), proposed.edits, proposed.title);
  expect(history.done).toHaveLength(1);
  expect(numberEdit(quickPlan(history.boat))).toBeUndefined();
});

test('a pair is told wire by wire by the marks of both ends, with what stays open and the one end of its shield', () => {
  const [pair] = pairRows(index, planned);
  expect(pair).toMatchObject({
    talker: 'small converter (data)',
    listener: 'old fixed VHF with DSC (data)',
    speed: '4800 baud',
    wires: [
      { from: 'A: out A', to: 'A: in A' },
      { from: 'B: out B', to: 'B: in B' },
    ],
    open: ['old fixed VHF with DSC: out A', 'old fixed VHF with DSC: out B'],
    shield: 'earthed only at small converter; cut back and insulated at the other end',
  });
});

test('every paper keeps to 80 columns, and every table has as many cells in each row as in its head', () => {
  const papers = [sourcesPaper, settingsPaper, pairsPaper].map((paper) => paper(gannet, planned));
  for (const line of [...papers.join('\n').split('\n'), ...sourcesText(gannet, planned)])
    expect(line.length, line).toBeLessThanOrEqual(80);
  for (const csv of [sourceList, settingList, pairList].map((list) => tableCsv(list(gannet, planned)))) {
    const [head = '', ...lines] = csv.trimEnd().split('\r\n');
    expect(lines.length).toBeGreaterThan(5);
    const cells = (line: string): number => line.replaceAll(/"(?:[^"]|"")*"/g, '').split(',').length;
    for (const line of lines) expect(cells(line), line).toBe(cells(head));
  }
  expect(papers[1]?.match(/^\[ \] /gm)).toHaveLength(planned.settings.length);
});

test('a boat without needs has nothing to say of sources', () => {
  const bare = { ...gannet, needs: [] };
  expect(sourcesText(bare, quickPlan(bare))).toEqual([]);
});

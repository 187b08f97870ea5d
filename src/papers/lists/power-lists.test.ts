import { expect, test } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import { plan } from '../../core/plan.ts';
import { tableCsv } from '../table/table-csv.ts';
import { feedList } from './feed-list.ts';
import { loadList } from './load-list.ts';
import { powerPaper, powerText } from './power-text.ts';

const { boat } = aBoat();
const planned = plan(boat, new Map());
const rows = (text: string): string[][] =>
  text
    .trimEnd()
    .split('\r\n')
    .map((line) => (line.match(/("([^"]|"")*"|[^,]*)(,|$)/g) ?? []).map((cell) => cell.replace(/,$/, '')));

test('feeds.csv has every feed with its figures under their heads', () => {
  const [head = [], ...body] = rows(tableCsv(feedList(boat, planned)));
  expect(body).toHaveLength(planned.feeds.length);
  for (const feed of planned.feeds) {
    const row = body.find((cells) => cells[head.indexOf('line id')] === feed.line) ?? [];
    expect(row[head.indexOf('wire mm2')]).toBe(String(Number(feed.areaMm2?.toFixed(2))));
    expect(row[head.indexOf('at its end V')]).toBe(feed.atEndV?.toFixed(2));
    expect(row[head.indexOf('fuse A')]).toBe(String(feed.fuseA));
  }
});

test('what has no feed stands under the others, with the reason where the others say why', () => {
  const bare = aBoat().change((draft) => {
    for (const panel of draft.supply.panels) panel.circuits = [];
  }).boat;
  const [head = [], ...body] = rows(tableCsv(feedList(bare, plan(bare, new Map()))));
  expect(body.length).toBeGreaterThan(1);
  for (const row of body) {
    expect(row.length).toBeGreaterThanOrEqual(head.length);
    expect(row[head.indexOf('why')]).toBe('no circuit feeds it yet');
  }
});

test('loads.csv ends with what the bank gives', () => {
  const [head = [], ...body] = rows(tableCsv(loadList(boat, planned)));
  const last = body.at(-1) ?? [];
  const sum = planned.loadSums.find(({ phase }) => phase === 1);
  expect(last[0]).toBe('all on bank house');
  expect(last[head.indexOf('most after A')]).toBe(String(Number(sum?.mostA.toFixed(2))));
});

test('the plan’s text names the feed on whose way most is lost', () => {
  const worst = [...planned.feeds].sort((one, other) => (other.lostPct ?? 0) - (one.lostPct ?? 0))[0];
  const text = powerText(boat, planned).join(' ').replaceAll('\u00A0', ' ');
  expect(text).toContain(`${worst?.atEndV?.toFixed(2)} V arrive`);
});

test('no line of power.txt is longer than 80 columns', () => {
  for (const line of powerPaper(boat, planned).split('\n')) expect(line.length).toBeLessThanOrEqual(80);
});

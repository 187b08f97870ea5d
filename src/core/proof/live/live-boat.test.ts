import { expect, test } from 'vitest';
import type { RecordedFrame } from '../../../../tests/recordings/invented-bus.ts';
import { recordBus } from '../../../../tests/recordings/invented-bus.ts';
import { plannedBoat, plannedDevices } from '../../../../tests/recordings/planned-boat.ts';
import { recordLine } from '../../../../tests/recordings/planned-line.ts';
import { type LiveBoat, startLiveBoat } from './live-boat.ts';
import type { LiveNews } from './live-snapshot.ts';
import { liveTable } from './live-table.ts';

const gannet = plannedBoat('gannet');
const names = new Map(gannet.index.boat.kit.map(({ id, name }) => [id, name]));
const devices = plannedDevices(gannet, 'nav');
const busOf = (seconds: number) => recordBus({ devices: [...devices.values()], seconds });
const tickMs = 500;

const lineOf = ({ id, data }: RecordedFrame): Uint8Array => {
  const hex = Array.from(data, (byte) => byte.toString(16).padStart(2, '0')).join('');
  return new TextEncoder().encode(`can0 ${id.toString(16).padStart(8, '0')}#${hex}\n`.toUpperCase());
};

const start = (news: LiveNews[] = []): LiveBoat => {
  const { index, plan } = gannet;
  const live = startLiveBoat({
    boat: index.boat,
    plan,
    sourceSays: 'a test',
    startMs: 0,
    onNews: (one) => news.push(one),
  });
  live.link({ kind: 'open' }, 0);
  return live;
};

/** Lets a boat hear frames at their time, with a tick each half second; gives the time of the last. */
const hear = (live: LiveBoat, frames: readonly RecordedFrame[]): number => {
  const firstUs = frames[0]?.timeUs ?? 0;
  let tickedMs = 0;
  let nowMs = 0;
  for (const frame of frames) {
    nowMs = (frame.timeUs - firstUs) / 1000;
    for (; tickedMs + tickMs <= nowMs; tickedMs += tickMs) live.tick(tickedMs + tickMs);
    live.bytes(lineOf(frame), nowMs);
  }
  return nowMs;
};

test('on a boat that is as planned every unit speaks, nothing is found, and readings stand at their units', () => {
  const news: LiveNews[] = [];
  const live = start(news);
  const nowMs = hear(live, busOf(12));
  const { units, findings, readings, source } = live.snapshot(nowMs);
  expect(source.words).toBe('Data flows.');
  expect(units.filter(({ state }) => state === 'speaking').length).toBe(devices.size);
  expect(findings).toEqual([]);
  expect(news.filter(({ of }) => of === 'finding')).toEqual([]);
  expect(readings.find(({ reading }) => reading === 'position')?.says).toBe('54°06.000′ N 010°12.000′ W');
  const depth = readings.find(({ reading }) => reading === 'depth');
  expect(depth?.says).toContain('8.20 m');
  expect(devices.has(depth?.unit ?? '')).toBe(true);
  expect(live.curve(depth?.id ?? -1, nowMs)).toMatchObject({ unit: 'm' });
});

test('a unit whose plug is pulled is told of within seconds, and told again when it is put back', () => {
  const news: LiveNews[] = [];
  const live = start(news);
  const depthUnit = [...devices].find(([, { sends }]) => sends.some(({ pgn }) => pgn === 128_267));
  const address = depthUnit?.[1].address;
  const frames = busOf(30);
  const firstUs = frames[0]?.timeUs ?? 0;
  const isOut = ({ timeUs, id }: RecordedFrame): boolean =>
    (id & 0xff) === address && timeUs - firstUs > 10e6 && timeUs - firstUs < 20e6;
  hear(
    live,
    frames.filter((frame) => !isOut(frame)),
  );
  const name = names.get(depthUnit?.[0] ?? '') ?? '';
  const about = news.filter(({ of, says }) => of === 'unit' && says.startsWith(`${name} `));
  expect(about.map(({ says }) => says)).toEqual([
    `${name} speaks.`,
    `${name} has fallen silent.`,
    `${name} speaks again.`,
  ]);
  expect(about[1]?.atMs).toBeLessThan(16_000);
});

test('a unit that is not there is found missing, once enough was heard', () => {
  const news: LiveNews[] = [];
  const live = start(news);
  const [[off = ''] = []] = devices;
  const left = [...devices].filter(([unit]) => unit !== off).map(([, device]) => device);
  const nowMs = hear(live, recordBus({ devices: left, seconds: 15 }));
  expect(live.snapshot(nowMs).findings.map(({ about }) => about)).toContainEqual(expect.arrayContaining([off]));
  expect(news.find(({ of }) => of === 'finding')?.atMs).toBeGreaterThanOrEqual(6000);
  expect(live.report().findings.map(({ check }) => check)).toEqual(['unit-silent']);
});

test('noise is told with the share that makes no line, and lines after it are read', () => {
  const live = start();
  live.bytes(new Uint8Array(4000).fill(0xf3), 100);
  expect(live.snapshot(100).source.state).toMatchObject({ kind: 'garbage', lostPct: 100 });
  const frames = busOf(2);
  for (const frame of frames.slice(0, 400)) live.bytes(lineOf(frame), 8000);
  expect(live.snapshot(8000)).toMatchObject({ frames: 399, source: { state: { kind: 'flowing' } } });
});

test('sentences of a line are given to the one unit that says them', () => {
  const [line] = gannet.plan.traffic.lines;
  const live = start();
  let nowMs = 0;
  for (const { text, timeUs } of recordLine(gannet, line?.talker ?? '')) {
    nowMs = timeUs / 1000;
    live.bytes(new TextEncoder().encode(`${text}\r\n`), nowMs);
    live.tick(nowMs);
  }
  const snapshot = live.snapshot(nowMs);
  expect(snapshot.sentences).toBeGreaterThan(3);
  expect(snapshot.units).toMatchObject([{ unit: line?.talker.split('.')[0], state: 'speaking' }]);
});

test('the table for a terminal keeps to its width and height, whatever was heard', () => {
  const live = start();
  const nowMs = hear(live, busOf(3));
  live.note('sent', 'Sent on can0: 18EAFFFE#00EE00, asks everyone.', nowMs);
  for (const [columns, rows] of [
    [80, 24],
    [40, 8],
    [200, 80],
  ] as const) {
    const lines = liveTable(live.snapshot(nowMs), { boatName: 'Gannet', names, columns, rows });
    expect(lines.length).toBeLessThanOrEqual(rows);
    expect(Math.max(...lines.map(({ length }) => length))).toBeLessThanOrEqual(Math.max(columns, 46));
    expect(lines[0]).toContain('Gannet by a test');
    if (rows > 8) expect(lines.join('\n')).toContain('Sent on can0');
  }
});

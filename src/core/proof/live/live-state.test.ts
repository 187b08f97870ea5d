import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { recordBus } from '../../../../tests/recordings/invented-bus.ts';
import type { RecordedFrame } from '../readers/recorded-frame.ts';
import { type LiveState, startLiveState } from './live-state.ts';
import { startSampleRing } from './sample-ring.ts';

const asRead = ({ id, data }: { id: number; data: Uint8Array }): RecordedFrame => {
  const eight = new Uint8Array(8);
  eight.set(data);
  return { timeUs: undefined, id, extended: true, error: false, remote: false, length: data.length, data: eight };
};

/** A state that has heard the invented bus for some seconds; gives the time of its last frame. */
const afterHearing = (seconds: number): { state: LiveState; nowMs: number } => {
  const state = startLiveState();
  let nowMs = 0;
  for (const frame of recordBus({ seconds })) {
    nowMs = frame.timeUs / 1000;
    state.frame(asRead(frame), nowMs);
  }
  return { state, nowMs };
};

test('each sender that spoke is there, named where it claimed its address', () => {
  const { state, nowMs } = afterHearing(5);
  const { senders } = state.heard(nowMs);
  expect(senders.map(({ address, named }) => [address, named])).toContainEqual([35, true]);
  expect(senders.map(({ address, named }) => [address, named])).toContainEqual([77, false]);
});

test('a reading tells its value in words, its sender and its age', () => {
  const { state, nowMs } = afterHearing(5);
  state.know(new Map([[36, { unit: 'triducer', how: 'sure' }]]));
  const { readings } = state.heard(nowMs + 2000);
  const depth = readings.find(({ reading, unit }) => reading === 'depth' && unit === 'triducer');
  expect(depth?.says).toContain('12.34 m below the transducer');
  expect(depth?.ageMs).toBeGreaterThanOrEqual(2000);
  expect(depth?.ageMs).toBeLessThan(3100);
});

test('a message that comes without a value is no reading', () => {
  const { state, nowMs } = afterHearing(5);
  state.know(new Map([[37, { unit: 'second', how: 'sure' }]]));
  const depth = state.heard(nowMs).readings.find(({ reading, unit }) => reading === 'depth' && unit === 'second');
  expect(depth).toMatchObject({ empty: true });
  expect(depth).not.toHaveProperty('says');
  expect(depth).not.toHaveProperty('curve');
});

test('the last minutes of a reading can be drawn, in the unit a person reads', () => {
  const { state, nowMs } = afterHearing(30);
  const heading = state.heard(nowMs).readings.find(({ reading }) => reading === 'heading');
  const curve = state.curve(heading?.id ?? -1, nowMs);
  expect(curve).toMatchObject({ unit: '°', round: true });
  expect(curve?.points.length).toBeGreaterThan(50);
  // MS-62: 2.3154 rad is 132.663 degrees
  expect(curve?.points[0]?.[1]).toBeCloseTo(132.663, 2);
  expect(state.curve(10_000, nowMs)).toBeUndefined();
});

test('a device that takes another address stays the same sender', () => {
  const claim = (address: number) => asRead({ id: 0x18ee_ff00 + address, data: new Uint8Array(8).fill(7) });
  const state = startLiveState();
  state.frame(claim(35), 0);
  state.frame(claim(40), 1000);
  expect(state.heard(1000).senders).toMatchObject([{ id: 0, address: 40, messages: 2 }]);
});

test('two that fight over an address are two senders, and the one driven off has none', () => {
  const claim = (byte: number) => asRead({ id: 0x18ee_ff23, data: new Uint8Array(8).fill(byte) });
  const state = startLiveState();
  state.frame(claim(7), 0);
  state.frame(claim(6), 1000);
  const { senders } = state.heard(1000);
  expect(senders.map(({ id, address }) => [id, address])).toEqual([
    [0, undefined],
    [1, 35],
  ]);
});

test('a sender and its readings are silent when they should have spoken again, by their own pace', () => {
  const { state, nowMs } = afterHearing(30);
  const silentAt = (laterMs: number) => state.heard(nowMs + laterMs).senders.filter(({ silent }) => silent);
  expect(silentAt(2500)).toEqual([]);
  expect(silentAt(3500).map(({ address }) => address)).toContain(35);
  // the tank sender speaks every 2.5 s
  expect(silentAt(3500).map(({ address }) => address)).not.toContain(52);
  expect(silentAt(10_500).map(({ address }) => address)).toContain(52);
});

test('sentences are told by talker, and one that was damaged counts as that only', () => {
  const state = startLiveState((_talker, formatter) => (formatter === 'DPT' ? 'sounder' : undefined));
  state.sentence({ text: '$SDDPT,12.3,-1.5*4E', checksum: 'right' }, 0);
  state.sentence({ text: '$SDDPT,12.3,-1.5*00', checksum: 'wrong' }, 0);
  state.sentence({ text: '$IIHDT,,T*0C', checksum: 'right' }, 0);
  const { damaged, sentences, readings, senders } = state.heard(0);
  expect({ damaged, sentences }).toEqual({ damaged: 1, sentences: 2 });
  expect(senders.map(({ talker, unit }) => [talker, unit])).toEqual([
    ['SD', 'sounder'],
    ['II', undefined],
  ]);
  expect(readings.map(({ reading, empty }) => [reading, empty])).toEqual([
    ['depth', undefined],
    ['heading', true],
  ]);
});

test('equal frames at equal times give equal snapshots, whatever the frames hold', () => {
  const frame = fc.record({
    id: fc.integer({ min: 0, max: 0x1fff_ffff }),
    data: fc.uint8Array({ maxLength: 8 }),
    nowMs: fc.integer({ min: -1e6, max: 1e12 }),
  });
  fc.assert(
    fc.property(fc.array(frame), (frames) => {
      const [one, other] = [startLiveState(), startLiveState()];
      for (const state of [one, other]) for (const each of frames) state.frame(asRead(each), each.nowMs);
      expect(one.heard(1e12)).toEqual(other.heard(1e12));
    }),
  );
});

test('a curve keeps the last five minutes and no more, in the order of time', () => {
  const ring = startSampleRing();
  for (let atMs = 0; atMs < 1_000_000; atMs += 100) ring.add({ atMs, value: atMs });
  const samples = ring.all();
  expect(samples).toHaveLength(600);
  expect(samples.at(-1)?.atMs).toBe(999_500);
  expect(samples.every(({ atMs }, at) => at === 0 || atMs - (samples[at - 1]?.atMs ?? 0) === 500)).toBe(true);
});

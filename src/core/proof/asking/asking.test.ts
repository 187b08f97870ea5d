import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { readName } from '../decode/name-field.ts';
import { splitCanId } from '../readers/can-id.ts';
import { type Asking, askingWords, startAsking } from './asking.ts';
import { ownName } from './own-name.ts';
import { addressClaim, claimFrame, frameText, isoRequest, type SentFrame } from './sent-frame.ts';

const name = ownName(1);
const strong = '0000000000000001';
const weak = 'ffffffffffffffff';

const heard = ({ id, data }: Pick<SentFrame, 'id' | 'data'>) => ({ id, length: data.length, data });
const claimOf = (from: number, by: string) => heard(claimFrame({ name: by, from, says: '' }));

/** Drives an asking on a bus of units that answer, and gives all it sent, with when. */
const drive = (
  asking: Asking,
  { forMs, hear = () => [] }: { forMs: number; hear?: (nowMs: number) => readonly ReturnType<typeof heard>[] },
): { atMs: number; text: string; frame: SentFrame }[] => {
  const sent: { atMs: number; text: string; frame: SentFrame }[] = [];
  for (let nowMs = 0; nowMs <= forMs; nowMs += 50) {
    const now = [...hear(nowMs).flatMap((frame) => asking.take(frame, nowMs)), ...asking.step(nowMs)];
    sent.push(...now.map((frame) => ({ atMs: nowMs, text: frameText(frame), frame })));
  }
  return sent;
};

test('the NAME it asks under is that of a marine tool which takes any free address', () => {
  const bytes = Uint8Array.from((name.match(/../g) ?? []).reverse(), (byte) => Number.parseInt(byte, 16));
  expect(readName(bytes)).toEqual({
    hex: name,
    unique: 1,
    makerCode: 2046,
    deviceInstance: 0,
    functionCode: 130,
    classCode: 10,
    systemInstance: 0,
    industryGroup: 4,
    arbitraryAddress: true,
  });
});

test('a request for claims is the one frame a program without an address sends', () => {
  const asking = startAsking({ name, isThorough: false });
  const sent = drive(asking, { forMs: 5000, hear: (nowMs) => (nowMs === 100 ? [claimOf(35, weak)] : []) });
  expect(sent.map(({ text }) => text)).toEqual(['18EAFFFE#00EE00']);
  expect(asking.isDone()).toBe(true);
});

test('thorough asking claims a free address, waits, and asks each unit in turn, a fifth of a second apart', () => {
  const asking = startAsking({ name, isThorough: true });
  const sent = drive(asking, {
    forMs: 6000,
    hear: (nowMs) => (nowMs === 100 ? [claimOf(251, weak), claimOf(3, weak)] : []),
  });
  expect(sent.map(({ frame }) => frame.says)).toEqual([
    'asks everyone to claim its address again',
    'claims address 250',
    'asks address 3 for its product information',
    'asks address 3 for the lists of what it sends and hears',
    'asks address 251 for its product information',
    'asks address 251 for the lists of what it sends and hears',
  ]);
  expect(sent.map(({ atMs }, at) => atMs - (sent[at - 1]?.atMs ?? 0)).slice(2)).toEqual([450, 200, 200, 200]);
  expect(splitCanId(sent[2]?.frame.id ?? 0)).toEqual({ priority: 6, pgn: isoRequest, destination: 3, source: 250 });
  expect(asking.isDone()).toBe(true);
});

test('an address that a stronger NAME wants is given up for another', () => {
  const asking = startAsking({ name, isThorough: true });
  const sent = drive(asking, { forMs: 3000, hear: (nowMs) => (nowMs === 1400 ? [claimOf(251, strong)] : []) });
  expect(sent.map(({ frame }) => frame.says).slice(1, 3)).toEqual(['claims address 251', 'claims address 250']);
  expect(sent.slice(3).every(({ frame }) => splitCanId(frame.id).source === 250)).toBe(true);
});

test('an address that a weaker NAME wants is kept', () => {
  const asking = startAsking({ name, isThorough: true });
  const sent = drive(asking, { forMs: 3000, hear: (nowMs) => (nowMs === 1400 ? [claimOf(251, weak)] : []) });
  expect(sent.map(({ frame }) => frame.says)[2]).toBe('keeps address 251, which a weaker NAME claims');
});

test('on a bus where every claim is lost it says so from the null address and falls silent', () => {
  const asking = startAsking({ name, isThorough: true });
  const sent: SentFrame[] = [];
  let answer: ReturnType<typeof heard>[] = [];
  for (let nowMs = 0; nowMs < 10_000; nowMs += 50) {
    const now = [...answer.flatMap((frame) => asking.take(frame, nowMs)), ...asking.step(nowMs)];
    sent.push(...now);
    answer = now
      .filter(({ id }) => splitCanId(id).pgn === addressClaim)
      .map(({ id }) => claimOf(splitCanId(id).source, strong));
  }
  const last = sent.at(-1);
  expect(last?.says).toBe('cannot claim an address: gives up');
  expect(splitCanId(last?.id ?? 0).source).toBe(254);
  expect(sent).toHaveLength(7);
  expect(asking.isDone()).toBe(true);
});

test('whatever is heard, nothing is sent but requests and claims, and requests of units only from an address held', () => {
  const frame = fc.record({
    id: fc.oneof(
      fc.integer({ min: 0, max: 0x1fff_ffff }),
      fc.integer({ min: 0, max: 255 }).map((from) => 0x18ee_ff00 + from),
    ),
    data: fc.uint8Array({ minLength: 8, maxLength: 8 }),
    atMs: fc.integer({ min: 0, max: 5000 }),
  });
  fc.assert(
    fc.property(fc.array(frame, { maxLength: 60 }), (frames) => {
      const asking = startAsking({ name, isThorough: true });
      const sent = drive(asking, {
        forMs: 6000,
        hear: (nowMs) => frames.filter(({ atMs }) => atMs > nowMs - 50 && atMs <= nowMs).map(heard),
      });
      for (const { frame: one } of sent) expect([isoRequest, addressClaim]).toContain(splitCanId(one.id).pgn);
      const claimed = new Set<number>();
      for (const { frame: one } of sent) {
        const { pgn, source, destination } = splitCanId(one.id);
        if (pgn === addressClaim) claimed.add(source);
        else expect(source === 254 ? destination === 255 : claimed.has(source)).toBe(true);
      }
    }),
  );
});

test('a person is told all that will be sent before it is', () => {
  expect(askingWords('can0', false)).toContain('sends on can0');
  expect(askingWords('can0', false)).not.toContain('126996');
  expect(askingWords('can0', true)).toContain('126996, 126464');
});

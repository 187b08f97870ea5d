import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { longestWait } from './longest-wait.ts';
import type { WaitingMessage } from './waiting-message.ts';
import { waitingSet } from './waiting-set.test-helper.ts';

const waits = (set: Parameters<typeof waitingSet>[0]) => waitingSet(set).map(longestWait);
const inUs = (ms: readonly number[]): readonly number[] => ms.map((one) => Math.round(one * 1000));

describe('longest wait', () => {
  it('MS-42: of three messages the last waits longest in its second sending, 3.5 ms (Davis et al. 2007)', () => {
    const set = { takesUs: inUs([1, 1, 1]), everyUs: inUs([2.5, 3.5, 3.5]), bitUs: 8 };
    expect(waits(set)).toEqual(inUs([2, 3, 3.5]));
    expect(waits(set).map((us, at) => (us ?? 0) <= ([2500, 3250, 3250][at] ?? 0))).toEqual([true, true, false]);
  });

  it('MS-44: five messages at 500 kbit/s, 14 % full, still wait 0.42 to 1.23 ms (public CAN timing tutorial, 2026)', () => {
    const everyUs = inUs([10, 5, 5, 20, 100]);
    expect(waits({ takesUs: [150, 270, 270, 270, 270], everyUs, bitUs: 2 })).toEqual([420, 690, 960, 1230, 1230]);
  });

  it('MS-45: seventeen messages at 125 kbit/s (set of Tindell and Burns 1994)', () => {
    const takes = [0.52, 0.6, 0.52, 0.6, 0.52, 0.6, 0.92, 0.52, 0.6, 0.68, 0.52, 0.76, 0.52, 0.52, 0.68, 0.52, 0.52];
    const every = [50, 5, 5, 5, 5, 5, 10, 10, 10, 10, 50, 100, 100, 100, 1000, 1000, 1000];
    const waited = [
      1.44, 2.04, 2.56, 3.16, 3.68, 4.28, 5.04, 8.4, 9, 9.68, 10.2, 19.28, 19.8, 20.32, 29.24, 29.76, 29.76,
    ];
    expect(waits({ takesUs: inUs(takes), everyUs: inUs(every), bitUs: 8 })).toEqual(inUs(waited));
  });

  it('MS-48: four frames at 250 kbit/s on a bus 78.1 % full (Davis et al. 2007, method)', () => {
    const set = { takesUs: [640, 640, 640, 450], everyUs: inUs([2, 2.5, 4, 10]), bitUs: 4 };
    expect(waits(set)).toEqual([1280, 1920, 2370, 2370]);
  });

  it('has no bound where more is sent than the bus carries', () => {
    expect(waits({ takesUs: [640, 640], everyUs: [1000, 1500], bitUs: 4 })).toEqual([1280, undefined]);
  });

  const anyMessage = fc.record({
    frameUs: fc.integer({ min: 320, max: 640 }),
    frames: fc.integer({ min: 1, max: 22 }),
    everyUs: fc.integer({ min: 50_000, max: 1_000_000 }),
    blockingUs: fc.integer({ min: 0, max: 640 }),
    winning: fc.array(
      fc.record({ takesUs: fc.integer({ min: 320, max: 5000 }), everyUs: fc.integer({ min: 50_000, max: 500_000 }) }),
      { maxLength: 10 },
    ),
    bitUs: fc.constant(4),
  });

  const orLonger = (message: WaitingMessage): number => longestWait(message) ?? Number.POSITIVE_INFINITY;

  it('is never shorter for more, longer or more frequent messages, nor for frames fed singly', () => {
    fc.assert(
      fc.property(anyMessage, fc.integer({ min: 1, max: 640 }), (message, us) => {
        const wait = orLonger(message);
        const [first, ...rest] = message.winning;
        const harder: WaitingMessage[] = [
          { ...message, winning: [...message.winning, { takesUs: us, everyUs: 100_000 }] },
          { ...message, frameUs: message.frameUs + us },
          { ...message, frames: message.frames + 1 },
          { ...message, blockingUs: message.blockingUs + us },
          { ...message, fedSingly: true },
          ...(first === undefined
            ? []
            : [{ ...message, winning: [{ ...first, everyUs: first.everyUs - us }, ...rest] }]),
        ];
        for (const one of harder) expect(orLonger(one)).toBeGreaterThanOrEqual(wait);
      }),
    );
  });
});

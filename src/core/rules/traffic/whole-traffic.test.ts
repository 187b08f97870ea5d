import { expect, test } from 'vitest';
import type { BusTraffic, SentEntry } from '../../traffic-shape.ts';
import { told } from '../told.test-helper.ts';
import { trafficRules } from './index.ts';

const heading: SentEntry = {
  ...{ pgn: 127250, count: 1, everyMs: 100, rate: 'sheet', frames: 1, framesPerS: 10, worstPct: 0.64 },
};
const busWith = (
  messages: readonly SentEntry[],
  worstPct = 26,
): { plan: { traffic: { waters: 'quiet'; buses: BusTraffic[]; lines: [] } } } => {
  const sender = { port: 'compass.n2k', framesPerS: 4, averagePct: 1, worstPct: 1, messages: [...messages] };
  const bus = { bus: 'nav', units: 1, averagePct: 1, worstPct, shipsPct: 0, senders: [sender], bursts: [] };
  return { plan: { traffic: { waters: 'quiet', buses: [bus], lines: [] } } };
};

test('a full bus is told with its load at the worst and as a rule, and the mark it is over', () => {
  expect(
    told(trafficRules, 'traffic/bus-too-full', { bus: { traffic: { averagePct: 45.04, worstPct: 51.25 } } }),
  ).toEqual([
    'doubt nav: Navigation bus is 51.3 % full at the worst, 45.0 % as a rule, by what its units send; the mark is 50 %. [51.25 % / 50] Look for a unit that repeats what others say, or a sensor set to send far more often than anybody needs.',
  ]);
});

test('a message that may wait is told by name, number, unit and time, up to the stop mark of the bus itself', () => {
  const late = (own: Partial<SentEntry>[], worstPct?: number) =>
    told(
      trafficRules,
      'traffic/message-waits-past-its-turn',
      busWith(
        own.map((one) => ({ ...heading, waitMs: 150, ...one })),
        worstPct,
      ),
    );
  const said = (messages: string, ms: number, every: number) => [
    `doubt nav: At the worst a message on Navigation bus is not through when its next is due: ${messages}. [${ms} ms / ${every}] Let long messages that nobody reads (satellites in view above all) be sent less often or by one unit only, or send this one less often.`,
  ];
  const first = 'Vessel Heading (127250) of Heading sensor at the mast, every 100 ms, waits up to 150 ms';
  expect(late([{}])).toEqual(said(first, 150, 100));
  expect(late([{}], 70)).toEqual(said(first, 150, 100));
  const rest = [1, 2].map(
    (pgn) => `a message (${pgn}) of Heading sensor at the mast, every 1000 ms, waits up to 1100 ms`,
  );
  const three = [1, 2].map((pgn) => ({ pgn, everyMs: 1000, waitMs: 1100 }));
  expect(late([...three, {}])).toEqual(said([first, ...rest].join('; '), 150, 100));
});

test('a unit that sends too often is told with the usual of each message', () => {
  const fast = { ...heading, everyMs: 100, usualMs: 1000 };
  expect(told(trafficRules, 'traffic/sensor-left-fast', busWith([{ ...fast, pgn: 1, usualMs: 600 }, fast]))).toEqual([
    'advice compass.n2k: Heading sensor at the mast sends Vessel Heading (127250) every 100 ms, usually 1000 ms: 0.64 % of Navigation bus; a message (1) every 100 ms, usually 600 ms: 0.64 % of Navigation bus. [10 times as often as usual / 5] Unless something aboard needs it so often, set it to the usual 1000 ms.',
  ]);
});

import { describe, expect, test } from 'vitest';
import { indexBoat } from '../../src/core/boat/boat-index.ts';
import { joinsOf } from '../../src/core/joins/joins-of.ts';
import type { Arrival } from '../../src/core/readings/arrivals.ts';
import { arrivals } from '../../src/core/readings/arrivals.ts';
import { refitOf } from '../../src/core/readings/refit.ts';
import { bonxie } from './bonxie.ts';

const index = indexBoat(bonxie());
const refit = refitOf(index, (phase) => joinsOf(index, phase));
const inPhase = (phase: number): Arrival[] => arrivals(refit, phase);
const missing = (phase: number): string[] =>
  inPhase(phase)
    .filter((entry) => !entry.arrives)
    .map(({ reading, at }) => `${reading} at ${at}`);
const last = inPhase(2);
const wayOf = (reading: string, at: string, instance?: number): string | undefined =>
  last.find((entry) => entry.reading === reading && entry.at === at && entry.instance === instance)?.by.join(' > ');

describe("Bonxie's readings", () => {
  test('in the first phase only what comes in the autumn is missing: cameras, weather, sonar, switching', () => {
    expect(missing(1)).toEqual([
      'camera at mfd-aft',
      'camera at mfd-wh-2',
      'pressure at mfd-chart',
      'sonar-picture at mfd-chart',
      'sonar-picture at mfd-wh-1',
      'switching at ship-wh',
    ]);
  });

  test('and each of them is said to come with the units that come then, not to break at one that is aboard', () => {
    const away = inPhase(1).filter((entry) => !entry.arrives);
    expect(away.map(({ whyNot }) => whyNot?.link.broken)).toEqual(away.map(() => 'comes-later'));
    expect(away.find(({ reading }) => reading === 'sonar-picture')?.whyNot).toMatchObject({
      says: 'forward-looking sonar module, which brings it, comes aboard in phase 2.',
    });
  });

  test('in the second phase all 102 arrive', () => {
    expect(missing(2)).toEqual([]);
    expect(last).toHaveLength(102);
  });

  test.each([
    ['heading', 'pilot-computer', 0, 'sat-compass.n2k > pilot-computer.n2k'],
    ['heading', 'mfd-wh-1', 2, 'heading-2.n2k > mfd-wh-1.n2k'],
    ['radar-picture', 'mfd-chart', undefined, 'radar-2.eth > switch-chart.p6 > switch-chart.p4 > mfd-chart.eth'],
    ['wind-apparent', 'instr-wh-2', 0, 'wind-main.signal > conv-wind-main.head > conv-wind-main.n2k > instr-wh-2.n2k'],
    ['position', 'navtex', undefined, 'gnss-1.n2k > conv-log.n2k > conv-log.out > navtex.in'],
    ['position', 'lab-logger', undefined, 'gnss-1.n2k > bridge-gw.side-a > bridge-gw.side-b > lab-logger.n2k'],
    [
      'engine',
      'mfd-aft',
      0,
      'main-engine.engine-bus > eng-gw.engine-bus > eng-gw.n2k > bridge-gw.side-b > bridge-gw.side-a > mfd-aft.n2k',
    ],
    ['charging', 'ship-er', 0, 'charger.wire > charger-gw.wire > charger-gw.n2k > ship-er.n2k'],
    ['fuel-level', 'ship-er', 2, 'sender-fuel-day.signal > tank-lab.in-1 > tank-lab.n2k > ship-er.n2k'],
    ['transmission', 'ship-er', 0, 'gear-senders.signal > gear-box.gear > gear-box.n2k > ship-er.n2k'],
  ])('%s reaches %s (instance %s) by %s', (reading, at, instance, way) => {
    expect(wayOf(reading, at, instance)).toBe(way);
  });

  test('nothing but the engine comes back over the bridge: a battery on the ship bus is not seen on the aft helm', () => {
    const boat = bonxie();
    const curious = indexBoat({
      ...boat,
      needs: [{ reading: 'battery', instance: 0, at: 'mfd-aft', must: false }],
    });
    expect(
      arrivals(
        refitOf(curious, (phase) => joinsOf(curious, phase)),
        2,
      ).map(({ arrives }) => arrives),
    ).toEqual([false]);
  });
});

import { describe, expect, test } from 'vitest';
import { indexBoat } from '../../src/core/boat/boat-index.ts';
import { nmea0183 } from '../../src/core/facts/nmea0183.ts';
import { sampleSentences } from '../../src/core/facts/sample-sentences.ts';
import { joinsOf } from '../../src/core/joins/joins-of.ts';
import type { Arrival } from '../../src/core/readings/arrivals.ts';
import { arrivals } from '../../src/core/readings/arrivals.ts';
import { refitOf } from '../../src/core/readings/refit.ts';
import { sandpiper } from './sandpiper.ts';

const index = indexBoat(sandpiper());
const refit = refitOf(index, (phase) => joinsOf(index, phase));
const inPhase = (phase: number): Arrival[] => arrivals(refit, phase);
const named = ({ reading, at }: Arrival): string => `${reading} at ${at}`;
const missing = (phase: number): string[] =>
  inPhase(phase)
    .filter((entry) => !entry.arrives)
    .map(named);
const wayOf = (phase: number, reading: string, at: string): string | undefined =>
  inPhase(phase)
    .find((entry) => entry.reading === reading && entry.at === at)
    ?.by.join(' > ');

describe("Sandpiper's readings", () => {
  test('in the first phase everything arrives but the ships and the heading, whose units come next winter', () => {
    expect(missing(1)).toEqual(['ais-targets at plotter', 'heading at plotter']);
  });

  test('and both are said to come with their units, not to break at the masthead antenna', () => {
    const away = inPhase(1).filter((entry) => !entry.arrives);
    expect(away.map(({ reading, whyNot }) => [reading, whyNot?.link])).toEqual([
      ['ais-targets', { broken: 'comes-later', from: 'ais-whip.rf', to: 'ais.vhf-rf' }],
      ['heading', { broken: 'comes-later', from: 'heading.n2k', to: 'plotter.n2k' }],
    ]);
  });

  test('in the second phase all 23 arrive', () => {
    expect(missing(2)).toEqual([]);
    expect(inPhase(2)).toHaveLength(23);
  });

  test.each([
    ['depth', 'plotter', 'depth-element.echo > log-depth.echo > log-depth.out > mux.in-1 > mux.n2k > plotter.n2k'],
    ['depth', 'log-depth', 'depth-element.echo > log-depth.echo'],
    [
      'wind-apparent',
      'pilot',
      'wind-head.signal > wind-display.head > wind-display.out > mux.in-2 > mux.out > pilot.in',
    ],
    ['route', 'pilot', 'plotter.n2k > mux.n2k > mux.out > pilot.in'],
    ['variation', 'pilot', 'plotter.n2k > mux.n2k > mux.out > pilot.in'],
    ['position', 'vhf', 'plotter.n2k > mux.n2k > mux.out > vhf.in'],
  ])('in the first phase %s reaches %s by %s', (reading, at, way) => {
    expect(wayOf(1, reading, at)).toBe(way);
  });

  test('before the refit the radio has its position straight from the old plotter', () => {
    expect(wayOf(0, 'position', 'vhf')).toBe('old-plotter.out > vhf.in');
    expect(wayOf(0, 'route', 'pilot')).toBe('old-plotter.out > pilot.in');
  });

  test('true wind is lost with the paddle wheel: it is worked out from speed through the water', () => {
    const boat = sandpiper();
    const without = indexBoat({
      ...boat,
      joins: boat.joins.filter(({ id }) => id !== 'lead-log'),
    });
    const entries = arrivals(
      refitOf(without, (phase) => joinsOf(without, phase)),
      2,
    );
    expect(entries.filter((entry) => !entry.arrives).map(named)).toContain('wind-true at plotter');
  });

  test('the output to pilot and radio is 46 % full: about 220 of 480 characters a second, as her table says', () => {
    const chars = new Map(Object.entries(sampleSentences).map(([letters, sample]) => [letters, sample.chars]));
    const out = index.sheetOf.get('mux')?.ports.find(({ id }) => id === 'out');
    const charsPerS = (out?.sends ?? []).reduce(
      (sum, { sentence = '', everyMs = 1000 }) => sum + ((chars.get(sentence) ?? 0) * 1000) / everyMs,
      0,
    );
    expect(charsPerS).toBe(219.5);
    const share = charsPerS / (nmea0183.baud.value / nmea0183.bitsPerChar.value);
    expect(share).toBeCloseTo(0.46, 2);
    expect(share).toBeLessThan(nmea0183.planShare.value);
  });
});

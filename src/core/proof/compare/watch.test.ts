import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { recordBus } from '../../../../tests/recordings/invented-bus.ts';
import { plannedBoat, plannedDevices, recordPlanned, watchFrames } from '../../../../tests/recordings/planned-boat.ts';
import { recordLine } from '../../../../tests/recordings/planned-line.ts';
import type { Planned } from './planned-sends.ts';
import { startWatch, type Watch } from './watch.ts';

const gannet = plannedBoat('gannet');
const sandpiper = plannedBoat('sandpiper');

const watchOf = ({ index, plan }: Planned, more: { bus?: string; talker?: string } = {}): Watch =>
  startWatch({ boat: index.boat, plan, ...more });

describe('watching a boat that is as planned', () => {
  test('finds nothing on the bus of Gannet', () => {
    const watch = watchOf(gannet);
    watchFrames(watch, recordPlanned(gannet, 'nav'));
    const report = watch.report();
    expect(report.findings).toEqual([]);
    expect(report.wires).toMatchObject([{ id: 'nav', kind: 'bus', known: 'only' }]);
    expect(report.units.map(({ state }) => state)).not.toContain('silent');
    expect(report.messages.filter(({ state }) => state !== 'right' && state !== 'not-due')).toEqual([]);
    expect(report.readings.filter(({ state }) => state === 'silent')).toEqual([]);
    expect(report.readings.filter(({ state }) => state === 'heard').length).toBeGreaterThan(10);
  });

  test('finds nothing on the bus of Sandpiper', () => {
    const watch = watchOf(sandpiper);
    watchFrames(watch, recordPlanned(sandpiper, 'nav'));
    expect(watch.report().findings).toEqual([]);
  });

  test('finds nothing on any of Sandpiper’s and Gannet’s 0183 lines, and knows whose they are', () => {
    for (const planned of [gannet, sandpiper]) {
      for (const { talker } of planned.plan.traffic.lines) {
        const watch = watchOf(planned);
        for (const { text, timeUs } of recordLine(planned, talker)) watch.takeSentence(text, timeUs);
        const { findings, wires, units } = watch.report();
        expect(findings, talker).toEqual([]);
        expect(wires).toMatchObject([{ id: talker, kind: 'line' }]);
        expect(units).toMatchObject([{ state: 'found' }]);
      }
    }
  });

  test('a unit taken off, whichever it is, is missed, and nothing else is', () => {
    const devices = plannedDevices(gannet, 'nav');
    fc.assert(
      fc.property(fc.constantFrom(...devices.keys()), (off) => {
        const watch = watchOf(gannet);
        const left = [...devices].filter(([unit]) => unit !== off).map(([, device]) => device);
        watchFrames(watch, recordBus({ devices: left, seconds: 8 }));
        const { findings } = watch.report();
        expect(findings.map(({ check }) => check)).toEqual(['unit-silent']);
        expect(findings[0]?.about).toContain(off);
      }),
      { numRuns: devices.size },
    );
  });

  test('the report is the same whenever else it was asked for, and may be asked at any time', () => {
    const frames = recordPlanned(gannet, 'nav', 4);
    const [once, often] = [watchOf(gannet), watchOf(gannet)];
    watchFrames(once, frames);
    for (let at = 0; at < frames.length; at += 200) {
      often.report();
      watchFrames(often, frames.slice(at, at + 200));
    }
    expect(often.report()).toEqual(once.report());
  });

  test('nothing heard at all is a bus that is silent', () => {
    expect(watchOf(gannet).report().findings).toMatchObject([{ id: 'wire-silent:nav', level: 'fault' }]);
  });
});

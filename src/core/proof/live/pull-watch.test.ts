import { describe, expect, test } from 'vitest';
import { plannedBoat } from '../../../../tests/recordings/planned-boat.ts';
import type { LiveReading, LiveSnapshot, LiveUnit } from './live-snapshot.ts';
import { type PullTest, pullTestsOf, startPullWatch } from './pull-watch.ts';

const pulled: PullTest = {
  test: 'dock/pulled:compass',
  unit: 'compass',
  readings: [{ reading: 'heading', backups: [{ unit: 'spare', onBus: true }], at: ['display'] }],
};

const heading = (unit: string, more: Partial<LiveReading> = {}): LiveReading => ({
  id: 0,
  reading: 'heading',
  sender: 0,
  unit,
  message: 127_250,
  says: `heading of ${unit}`,
  ageMs: 100,
  ...more,
});

const seen = (atMs: number, state: LiveUnit['state'], readings: readonly LiveReading[]): LiveSnapshot => ({
  atMs,
  source: { says: 'a test', state: { kind: 'flowing' }, words: '' },
  frames: 1,
  sentences: 0,
  damaged: 0,
  senders: [],
  units: [
    { unit: 'compass', state },
    { unit: 'spare', state: 'speaking' },
  ],
  readings,
  findings: [],
  news: [],
});

describe('a source that is pulled once', () => {
  test('is out, another gives its reading, and it is put back', () => {
    const watch = startPullWatch(pulled);
    expect(watch.step(seen(0, 'speaking', [heading('compass'), heading('spare')])).kind).toBe('pull it now');
    const stale = heading('compass', { silent: true });
    expect(watch.step(seen(5000, 'silent', [stale, heading('spare')]))).toEqual({
      kind: 'put it back',
      taken: [{ reading: 'heading', at: ['display'], by: 'spare', says: 'heading of spare' }],
    });
    expect(watch.step(seen(9000, 'speaking', [heading('compass'), heading('spare')]))).toMatchObject({
      kind: 'over',
      right: true,
    });
  });

  test('whose reading nobody takes over within ten seconds has failed', () => {
    const watch = startPullWatch(pulled);
    watch.step(seen(0, 'speaking', [heading('compass')]));
    const lost = [heading('compass', { silent: true }), heading('spare', { empty: true })];
    expect(watch.step(seen(1000, 'silent', lost))).toMatchObject({ kind: 'out', leftMs: 10_000 });
    expect(watch.step(seen(10_900, 'silent', lost))).toMatchObject({ kind: 'out', leftMs: 100 });
    expect(watch.step(seen(11_000, 'silent', lost)).kind).toBe('put it back');
    // what takes over later has come too late
    expect(watch.step(seen(20_000, 'speaking', [heading('spare')]))).toMatchObject({ kind: 'over', right: false });
  });

  test('whose stand-by says it on another wire is left to the eyes of a person', () => {
    const elsewhere = {
      ...pulled,
      readings: [{ reading: 'heading' as const, backups: [{ unit: 'spare', onBus: false }], at: ['display'] }],
    };
    const watch = startPullWatch(elsewhere);
    watch.step(seen(0, 'speaking', [heading('compass')]));
    expect(watch.step(seen(1000, 'silent', [heading('compass', { silent: true })]))).toEqual({
      kind: 'put it back',
      taken: [{ reading: 'heading', at: ['display'], unheard: ['spare'] }],
    });
  });

  test('that does not speak cannot be pulled', () => {
    expect(startPullWatch(pulled).step(seen(0, 'unheard', [])).kind).toBe('not speaking');
  });

  test('stands in the tests of the plan, with its readings and who stands by', () => {
    const { plan } = plannedBoat('gannet');
    const tests = pullTestsOf(plan);
    expect(tests.length).toBeGreaterThan(0);
    for (const { test: id, unit, readings } of tests) {
      expect(plan.tests.map((one) => one.id)).toContain(id);
      for (const { backups } of readings) {
        expect(backups.map((backup) => backup.unit)).not.toContain(unit);
        expect(backups.length).toBeGreaterThan(0);
      }
    }
  });
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { indexBoat } from '../../boat/boat-index.ts';
import { seaTrials } from '../../facts/trial-tests.ts';
import { boatLog, emptyLog } from '../../log/boat-log.ts';
import type { LogEntry } from '../../log/log-entry.ts';
import { crewOf, crewRound, crewTickId } from './crew-round.ts';
import { seaTrial, trialId } from './sea-trial.ts';

const kinds = [
  'heading-sensor',
  'speed-sensor',
  'wind-sensor',
  'steering-compass',
  'depth-sensor',
  'pilot-computer',
  'radar',
];
const base = aBoat();
const rigged = base.add({
  sheets: kinds.map((kind) => ({
    id: `${kind}-sheet`,
    name: kind,
    kind,
    source: 'manual' as const,
    plugs: [],
    ports: [],
  })),
  kit: kinds.map((kind) => ({
    id: `own-${kind}`,
    name: kind,
    sheet: `${kind}-sheet`,
    fate: 'stays' as const,
    place: 'helm',
  })),
}).boat;
const at = (day: number): string => `2027-06-${String(day).padStart(2, '0')}T10:00:00Z`;
const tried = (trial: string, day: number, right = true): LogEntry => ({
  kind: 'reading',
  id: `trial${trial.replaceAll('-', '')}${day}`.padEnd(8, '0'),
  at: at(day),
  by: 'mate',
  test: trialId(trial),
  right,
});
const states = (boat: typeof rigged, ...entries: LogEntry[]) =>
  new Map(seaTrial(indexBoat(boat), boatLog(entries)).map((step) => [step.trial.id, step]));

describe('the trials at sea', () => {
  test('ST-09: come with heading before log, and log before wind, and wind waits for both (practice)', () => {
    const steps = states(rigged);
    expect([...steps.keys()].filter((id) => ['heading', 'log', 'wind'].includes(id))).toEqual([
      'heading',
      'log',
      'wind',
    ]);
    expect(steps.get('heading')?.state).toBe('ready');
    expect(steps.get('wind')).toMatchObject({ state: 'waits', waitsFor: ['heading', 'log'], calculator: 'wind' });
  });

  test('go on as those before them are done, by the log or by a calculator', () => {
    const log = {
      id: 'log-1',
      on: '2027-06-02',
      unit: 'own-speed-sensor',
      distanceNm: 1,
      factorBefore: 1,
      runs: [
        { seconds: 600, indicatedKn: 6 },
        { seconds: 600, indicatedKn: 6 },
      ],
    };
    const steps = states({ ...rigged, sea: { logs: [log] } }, tried('heading', 1));
    expect(steps.get('heading')).toMatchObject({ state: 'done', on: '2027-06-01', by: 'mate' });
    expect(steps.get('log')).toMatchObject({ state: 'done', on: '2027-06-02' });
    expect(steps.get('wind')?.state).toBe('ready');
  });

  test('are to be done again where one they build on was done later, and tell what did not come out', () => {
    const steps = states(rigged, tried('heading', 5), tried('log', 2), tried('radar', 6, false));
    expect(steps.get('log')?.state).toBe('again');
    expect(steps.get('radar')?.state).toBe('not-right');
    expect(steps.get('wind')?.state).toBe('ready');
  });

  test('leave out what is not aboard, and wait for nothing that is', () => {
    const bare = states({ ...rigged, kit: rigged.kit.filter(({ sheet }) => !/heading|compass/.test(sheet)) });
    expect(bare.has('heading')).toBe(false);
    expect(bare.get('log')?.state).toBe('ready');
  });

  test('need only trials that come before them', () => {
    const ids = seaTrials.map(({ id }) => id);
    for (const [turn, { needs = [] }] of seaTrials.entries())
      for (const need of needs) expect(ids.slice(0, turn)).toContain(need);
  });

  test('never wait for what is done, whatever was tried in whatever order', () => {
    const entry = fc.record({
      trial: fc.constantFrom(...seaTrials.map(({ id }) => id)),
      day: fc.integer({ min: 1, max: 28 }),
    });
    fc.assert(
      fc.property(fc.array(entry, { maxLength: 12 }), (entries) => {
        const steps = states(rigged, ...entries.map(({ trial, day }) => tried(trial, day)));
        for (const { state, waitsFor } of steps.values()) {
          expect(waitsFor.length > 0).toBe(state === 'waits');
          for (const id of waitsFor) expect(['waits', 'ready', 'not-right']).toContain(steps.get(id)?.state);
        }
      }),
    );
  });
});

describe('the round with the crew', () => {
  const tick = (item: string, person: string, day: number, done = true): LogEntry => ({
    kind: 'tick',
    id: `${item.replace(/[^a-z]/g, '')}${person.toLowerCase()}${day}`.padEnd(8, '0'),
    at: at(day),
    of: crewTickId(item, person),
    done,
  });

  test('is ticked by name, and taken back by name', () => {
    const log = boatLog([
      tick('alarms', 'Ann', 1),
      tick('alarms', 'Bo', 2),
      tick('alarms', 'Bo', 3, false),
      tick('dark', 'Bo', 2),
    ]);
    expect(crewOf(log)).toEqual(['Ann', 'Bo']);
    const items = new Map(crewRound(indexBoat(rigged), log).map((item) => [item.id, item]));
    expect([...(items.get('alarms')?.shown ?? [])]).toEqual([['Ann', '2027-06-01']]);
    expect([...(items.get('dark')?.shown.keys() ?? [])]).toEqual(['Bo']);
  });

  test('shows the pilot where there is one, and no radio where there is none', () => {
    const ids = crewRound(indexBoat(rigged), emptyLog).map(({ id }) => id);
    expect(ids).toContain('pilot-off');
    expect(crewRound(indexBoat({ ...rigged, kit: [] }), emptyLog).map(({ id }) => id)).toEqual([
      'man-overboard',
      'alarms',
      'breakers',
      'dark',
    ]);
  });
});

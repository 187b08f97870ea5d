import fc from 'fast-check';
import { expect, test } from 'vitest';
import { boatLog } from './boat-log.ts';
import type { LogEntry } from './log-entry.ts';
import { readLog } from './read-log.ts';

const at = (second: number): string => `2027-03-31T09:30:${String(second).padStart(2, '0')}Z`;
const reading = (id: string, second: number, value: number): LogEntry => ({
  kind: 'reading',
  id,
  at: at(second),
  test: 'dock/ohm:nav',
  value,
});

const entryArb: fc.Arbitrary<LogEntry> = fc
  .record({ id: fc.integer({ min: 0, max: 30 }), second: fc.nat(59) })
  .chain(({ id, second }) => {
    const common = { id: `entry${String(id).padStart(4, '0')}`, at: at(second) };
    return fc.oneof(
      fc.record({
        kind: fc.constant('reading' as const),
        test: fc.constantFrom('one', 'two', 'three'),
        value: fc.integer({ min: -100, max: 100 }),
        ...Object.fromEntries(Object.entries(common).map(([key, value]) => [key, fc.constant(value)])),
      }) as unknown as fc.Arbitrary<LogEntry>,
      fc
        .record({ of: fc.constantFrom('a', 'b'), done: fc.boolean() })
        .map((tick): LogEntry => ({ ...common, kind: 'tick', ...tick })),
      fc
        .integer({ min: 0, max: 30 })
        .map((entry): LogEntry => ({ ...common, kind: 'withdrawn', entry: `entry${String(entry).padStart(4, '0')}` })),
    );
  });

test('the latest reading of a test counts, whenever its line came', () => {
  const lines = [reading('entry-late'.replace('-', ''), 20, 61), reading('entryearly', 10, 120)];
  expect(boatLog(lines).readings.get('dock/ohm:nav')).toMatchObject({ value: 61 });
});

test('an entry taken back leaves the one before it standing', () => {
  const lines: LogEntry[] = [
    reading('entry0001', 1, 60),
    reading('entry0002', 2, 40),
    { kind: 'withdrawn', id: 'entry0003', at: at(3), entry: 'entry0002' },
  ];
  expect(boatLog(lines).readings.get('dock/ohm:nav')).toMatchObject({ value: 60 });
});

test('lines that came late, twice or in another order come to the same', () => {
  fc.assert(
    fc.property(
      fc.array(entryArb, { maxLength: 40 }).chain((lines) =>
        fc.record({
          lines: fc.constant(lines),
          // every line at least once, some of them again, in any order
          sent: fc
            .shuffledSubarray(lines)
            .chain((twice) => fc.shuffledSubarray([...lines, ...twice], { minLength: lines.length + twice.length })),
        }),
      ),
      ({ lines, sent }) => {
        const distinct = [...new Map(lines.map((line) => [line.id, line])).values()];
        const kept = sent.filter((line) => distinct.includes(line));
        expect(boatLog(kept)).toEqual(boatLog(distinct));
      },
    ),
  );
});

test('what is no entry is told of by its line, and the rest is read', () => {
  const good = JSON.stringify(reading('entry0001', 1, 60));
  const { entries, broken } = readLog(
    [
      good,
      '',
      '{"kind":"tick"}',
      'noise',
      good.replace('"value":60', '"value":60,"right":true'),
      good.slice(0, 20),
    ].join('\n'),
  );
  expect(entries).toEqual([reading('entry0001', 1, 60)]);
  expect(broken.map(({ line }) => line)).toEqual([3, 4, 5, 6]);
  expect(broken[2]?.says).toContain('either a value');
});

test('nothing that is written in a log can stop it from being read', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary', maxLength: 400 }), (text) => {
      const { entries, broken } = readLog(text);
      expect(entries).toHaveLength(0);
      expect(broken.length).toBeLessThanOrEqual(text.split('\n').length);
    }),
  );
});

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { boatLog } from './boat-log.ts';
import type { LogEntry } from './log-entry.ts';
import { type NewEntry, stampEntry } from './new-entry.ts';
import { checkEntry, readLog } from './read-log.ts';

const at = (second: number): string => `2027-03-31T09:30:${String(second).padStart(2, '0')}Z`;
const reading = (id: string, second: number, value: number): LogEntry => ({
  kind: 'reading',
  id,
  at: at(second),
  test: 'dock/ohm:nav',
  value,
});

const someThing = fc.constantFrom('one', 'two', 'three');
const picture = { hash: 'ab'.repeat(32), type: 'jpeg', widthPx: 20, heightPx: 10 } as const;

const newEntryArb: fc.Arbitrary<NewEntry> = fc.oneof(
  fc.record({ kind: fc.constant('reading' as const), test: someThing, value: fc.integer({ min: -100, max: 100 }) }),
  fc.record({ kind: fc.constant('tick' as const), of: someThing, done: fc.boolean() }),
  fc.record({
    kind: fc.constant('measure' as const),
    of: someThing,
    valueM: fc.integer({ min: 0, max: 100 }),
    how: fc.constant('taped' as const),
  }),
  fc.record({ kind: fc.constant('seen' as const), of: someThing, is: fc.constantFrom('so', 'pulled', 'not') }),
  fc.record({ kind: fc.constant('aboard' as const), of: someThing, serial: fc.constantFrom('A1', 'B2') }),
  fc.record({
    kind: fc.constant('photo' as const),
    of: someThing,
    shows: fc.constantFrom('front', 'label'),
    picture: fc.constant(picture),
  }),
  fc.record({
    kind: fc.constant('note' as const),
    about: fc.constant<string[]>([]),
    text: fc.constantFrom('wet', 'dry'),
  }),
  fc.record({
    kind: fc.constant('withdrawn' as const),
    entry: fc.integer({ min: 0, max: 30 }).map((entry) => `entry${String(entry).padStart(4, '0')}`),
  }),
);

const entryArb: fc.Arbitrary<LogEntry> = fc
  .record({ id: fc.integer({ min: 0, max: 30 }), second: fc.nat(59), entry: newEntryArb, isFine: fc.boolean() })
  .map(({ id, second, entry, isFine }): LogEntry => {
    const moment = isFine ? at(second).replace('Z', '.000Z') : at(second);
    // reason: an entry with its id and moment is one of the kinds whole
    return { ...entry, id: `entry${String(id).padStart(4, '0')}`, at: moment } as LogEntry;
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

test('every kind of entry is read back as it was written', () => {
  fc.assert(
    fc.property(entryArb, (entry) => {
      expect(checkEntry(entry)).toEqual(entry);
    }),
  );
});

test('a length of nothing known, a picture without its hash and a plate with nothing on it are no entries', () => {
  const common = { id: 'entry0001', at: at(1) };
  expect(checkEntry({ ...common, kind: 'measure', of: 'w1', valueM: 2 })).toContain('how');
  expect(checkEntry({ ...common, kind: 'measure', of: 'w1', valueM: 1e9, how: 'taped' })).toContain('valueM');
  expect(
    checkEntry({ ...common, kind: 'photo', of: 'radio', shows: 'front', picture: { ...picture, hash: 'x' } }),
  ).toContain('SHA-256');
  expect(checkEntry({ ...common, kind: 'aboard', of: 'radio' })).toContain('serial number');
  expect(checkEntry({ ...common, kind: 'seen', of: 'w1', is: 'perhaps' })).toContain('is:');
});

test('a moment with its milliseconds comes after the same second without them', () => {
  const [early, late] = ['2027-03-31T09:30:01Z', '2027-03-31T09:30:01.400Z'];
  const lines = [reading('entry0009', 1, 60), reading('entry0001', 1, 120)];
  const [one, other] = lines.map((line, which) => ({ ...line, at: which === 0 ? early : late }) as LogEntry);
  if (one === undefined || other === undefined) throw new Error('There are two.');
  expect(boatLog([one, other]).readings.get('dock/ohm:nav')).toMatchObject({ value: 120 });
});

test('what is written on seeing what stands counts over it, whatever the clock of the writer says', () => {
  const clock = fc.integer({ min: 0, max: Date.UTC(2100, 0, 1) });
  fc.assert(
    fc.property(fc.array(entryArb, { maxLength: 20 }), newEntryArb, clock, (lines, entry, nowMs) => {
      fc.pre(entry.kind !== 'withdrawn');
      const before = boatLog(lines);
      const written = stampEntry(before, entry, { id: 'zzzzzzzzzz', nowMs });
      const after = boatLog([...before.entries, written]);
      const standing = [after.readings, after.ticks, after.measures, after.seen, after.aboard].flatMap((one) => [
        ...one.values(),
      ]);
      expect([...standing, ...after.photos, ...after.notes]).toContain(written);
      expect(checkEntry(written)).toEqual(written);
    }),
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

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Boat, boatSchema } from '../boat/boat-schema.ts';
import { numberedReadings } from '../facts/numbered-readings.ts';
import { planDraftSchema } from '../plan-shape.ts';
import { smallBoats } from '../readings/small-boats.test-helper.ts';
import { type UnitSketch, wired } from '../readings/wired.test-helper.ts';
import type { SourceEntry } from '../sources-shape.ts';
import { sourcesOn } from './source-sketch.test-helper.ts';

const keyOf = ({ reading, instance, at }: SourceEntry): string => `${reading} ${instance ?? ''} ${at}`;

test('adding a unit never takes the source away from a reading that had one', () => {
  fc.assert(
    fc.property(smallBoats, fc.nat(3), (boat, which) => {
      const added = boat.kit[which % boat.kit.length]?.id;
      const before: Boat = {
        ...boat,
        kit: boat.kit.filter(({ id }) => id !== added),
        joins: boat.joins.map((join) => ({ ...join, members: join.members.filter(({ kit }) => kit !== added) })),
      };
      const after = new Set(sourcesOn(boat).sources.map(keyOf));
      for (const entry of sourcesOn(before).sources) expect(after.has(keyOf(entry))).toBe(true);
    }),
    { numRuns: 100 },
  );
});

test('the source plan is the same however the file is shuffled, and has the shape of a plan', () => {
  const shuffle = <Value>(values: readonly Value[]): Value[] => [...values].reverse();
  let chosen = 0;
  fc.assert(
    fc.property(smallBoats, fc.boolean(), (boat, isOwned) => {
      const [first] = sourcesOn(boat).sources.filter(({ backups }) => backups.length > 0);
      const backup = first?.backups[0];
      const owned: Boat =
        !isOwned || first === undefined || backup === undefined
          ? boat
          : { ...boat, sources: [{ reading: first.reading, primary: backup.from }] };
      const other: Boat = {
        ...owned,
        kit: shuffle(owned.kit),
        needs: shuffle(owned.needs),
        joins: shuffle(owned.joins).map((join) => ({ ...join, members: shuffle(join.members) })),
        sheets: shuffle(owned.sheets).map((sheet) => ({
          ...sheet,
          ports: shuffle(sheet.ports).map((port) => ({
            ...port,
            ...(port.sends === undefined ? {} : { sends: shuffle(port.sends) }),
            ...(port.hears === undefined ? {} : { hears: shuffle(port.hears) }),
          })),
        })),
      };
      const planned = sourcesOn(owned);
      expect(JSON.stringify(sourcesOn(other))).toBe(JSON.stringify(planned));
      expect(
        planDraftSchema.pick({ sources: true, numbers: true, settings: true, pairs: true }).parse(planned),
      ).toEqual(planned);
      expect(new Set(planned.settings.map(({ id }) => id)).size).toBe(planned.settings.length);
      chosen += planned.sources.filter(({ backups }) => backups.length > 0).length;
    }),
    { numRuns: 200, seed: 7 },
  );
  // The boats are worth trying only while some screen has a choice.
  expect(chosen).toBeGreaterThan(30);
});

const level = fc.constantFrom('fuel-level' as const, 'water-level' as const);
const sender = fc.record({ reading: level, instance: fc.option(fc.nat(9), { nil: undefined }) });
const tanks = fc.array(fc.array(sender, { minLength: 1, maxLength: 3 }), { minLength: 1, maxLength: 6 });

test('proposed numbers are unique for each reading, and none that stands well is changed', () => {
  let clashes = 0;
  fc.assert(
    fc.property(tanks, (units) => {
      const boxes = units.map((senders, at): [string, UnitSketch] => [
        `box-${at}`,
        {
          ports: {
            n2k: {
              protocol: 'nmea2000',
              sends: senders.map(({ reading, instance }) => ({
                reading,
                ...(instance === undefined ? {} : { instance }),
              })),
            },
          },
        },
      ]);
      const boat = wired({
        units: Object.fromEntries(boxes),
        joins: { nav: boxes.map(([id]) => `${id}.n2k`) },
      });
      expect(() => boatSchema.parse(boat)).not.toThrow();
      const { numbers } = sourcesOn(boat);
      for (const reading of numberedReadings) {
        const own = numbers.filter((entry) => entry.reading === reading);
        expect(new Set(own.map(({ proposed }) => proposed)).size).toBe(own.length);
        for (const entry of own) {
          const same = own.filter(({ now }) => now === entry.now);
          if (same.length === 1 && entry.now !== undefined && entry.now <= 5) expect(entry.why).toBe('stands');
          clashes += entry.why === 'clash' ? 1 : 0;
        }
      }
    }),
    { numRuns: 200, seed: 5 },
  );
  expect(clashes).toBeGreaterThan(50);
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { indexBoat } from '../boat/boat-index.ts';
import type { Boat } from '../boat/boat-schema.ts';
import type { Sheet } from '../boat/sheet.ts';
import { plainAnswer } from './plain-answer.test-helper.ts';
import { needKey, smallBoats } from './small-boats.test-helper.ts';
import { arriving } from './wired.test-helper.ts';

describe('what arrives on any small boat', () => {
  it('is what trying every row of ports finds, with the same ways and backups', () => {
    let arrived = 0;
    let relayed = 0;
    fc.assert(
      fc.property(smallBoats, (boat) => {
        const entries = new Map(arriving(boat).map((entry) => [needKey(entry), entry]));
        for (const need of boat.needs) {
          const entry = entries.get(needKey(need));
          const plain = plainAnswer({ ...boat, sheets: [...sheetsAsFitted(boat)] }, need);
          expect({ by: entry?.by, backups: entry?.backups }).toEqual(plain);
          arrived += plain.by.length > 0 ? 1 : 0;
          relayed += plain.by.length > 2 ? 1 : 0;
        }
      }),
      { numRuns: 200, seed: 20 },
    );
    // The boats are worth trying only while much arrives, and some of it by way of another unit.
    expect(arrived).toBeGreaterThan(100);
    expect(relayed).toBeGreaterThan(20);
  });

  it('never grows less when a unit is added', () => {
    fc.assert(
      fc.property(smallBoats, fc.nat(3), (boat, which) => {
        const added = boat.kit[which % boat.kit.length]?.id;
        const before: Boat = {
          ...boat,
          kit: boat.kit.filter(({ id }) => id !== added),
          joins: boat.joins.map((join) => ({ ...join, members: join.members.filter(({ kit }) => kit !== added) })),
        };
        const after = new Map(arriving(boat).map((entry) => [needKey(entry), entry]));
        for (const entry of arriving(before)) if (entry.arrives) expect(after.get(needKey(entry))?.arrives).toBe(true);
      }),
      { numRuns: 100 },
    );
  });

  it('always has either a way or a reason, and the reason says so in a sentence', () => {
    fc.assert(
      fc.property(smallBoats, (boat) => {
        for (const entry of arriving(boat)) {
          expect(entry.arrives).toBe(entry.by.length > 0);
          expect(entry.arrives).toBe(entry.whyNot === undefined);
          expect(entry.arrives).toBe(entry.rests !== undefined);
          if (entry.whyNot !== undefined) expect(entry.whyNot.says).toMatch(/^\S.*\.$/);
        }
      }),
      { numRuns: 100 },
    );
  });

  it('is the same however the file is shuffled', () => {
    const shuffle = <Value>(values: readonly Value[]): Value[] => [...values].reverse();
    fc.assert(
      fc.property(smallBoats, (boat) => {
        const other: Boat = {
          ...boat,
          kit: shuffle(boat.kit),
          needs: shuffle(boat.needs),
          joins: shuffle(boat.joins).map((join) => ({ ...join, members: shuffle(join.members) })),
          sheets: shuffle(boat.sheets).map((sheet) => ({
            ...sheet,
            ports: shuffle(sheet.ports).map((port) => ({
              ...port,
              ...(port.sends === undefined ? {} : { sends: shuffle(port.sends) }),
              ...(port.hears === undefined ? {} : { hears: shuffle(port.hears) }),
            })),
            ...(sheet.turns === undefined ? {} : { turns: shuffle(sheet.turns) }),
          })),
        };
        expect(JSON.stringify(arriving(other))).toBe(JSON.stringify(arriving(boat)));
      }),
      { numRuns: 100 },
    );
  });
});

/** The sheets with each unit's own numbers in them, as the boat is indexed. */
const sheetsAsFitted = (boat: Boat): Iterable<Sheet> => indexBoat(boat).sheetOf.values();

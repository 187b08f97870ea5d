import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { aBoat } from '../boat/a-boat.test-helper.ts';
import { indexBoat } from '../boat/boat-index.ts';
import type { Boat } from '../boat/boat-schema.ts';
import { joinsOf } from './joins-of.ts';

const membersOf = (boat: Boat, phase: number): Record<string, string[]> =>
  Object.fromEntries(
    joinsOf(indexBoat(boat), phase).map((join) => [join.id, join.members.map((member) => member.kit)]),
  );

describe('the joins that stand', () => {
  it('are those of the file, sorted, with their members sorted', () => {
    expect(membersOf(aBoat().boat, 1)).toEqual({
      'nav-join': ['compass', 'converter', 'display', 'gnss'],
      'radio-position': ['converter', 'radio'],
    });
    const [nav] = joinsOf(indexBoat(aBoat().boat), 1);
    expect(nav).toMatchObject({ kind: 'nmea2000', bus: 'nav', from: 'file' });
  });

  it('take a unit in from the phase it comes in, and leave it out from the phase it goes in', () => {
    const boat = aBoat().unit('compass', { phase: 2 }).unit('radio', { fate: 'goes', phase: 2 }).boat;
    expect(membersOf(boat, 1)).toEqual({
      'nav-join': ['converter', 'display', 'gnss'],
      'radio-position': ['converter', 'radio'],
    });
    expect(membersOf(boat, 2)).toEqual({
      'nav-join': ['compass', 'converter', 'display', 'gnss'],
      'radio-position': ['converter'],
    });
  });

  it('do not hold a join that the file forbids', () => {
    const boat = aBoat().change((draft) => {
      for (const join of draft.joins) if (join.id === 'radio-position') join.hold = 'never';
    }).boat;
    expect(Object.keys(membersOf(boat, 1))).toEqual(['nav-join']);
  });

  it('are the same however the file lists them', () => {
    const { boat } = aBoat();
    const plain = joinsOf(indexBoat(boat), 1);
    const shuffled = fc
      .shuffledSubarray(boat.joins, { minLength: boat.joins.length })
      .chain((joins) =>
        fc.tuple(
          ...joins.map((join) =>
            fc
              .shuffledSubarray(join.members, { minLength: join.members.length })
              .map((members) => ({ ...join, members })),
          ),
        ),
      );
    fc.assert(
      fc.property(shuffled, (joins) => {
        expect(joinsOf(indexBoat({ ...boat, joins }), 1)).toEqual(plain);
      }),
      { numRuns: 30 },
    );
  });
});

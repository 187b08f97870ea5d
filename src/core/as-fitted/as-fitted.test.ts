import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { aBoat } from '../boat/a-boat.test-helper.ts';
import { aFullBoat } from '../boat/full-boat.test-helper.ts';
import { applyEdit, applyEdits, undo } from '../boat/history.ts';
import { packText, unpackText } from '../boat/packed-text.ts';
import { startHistory } from '../boat/start-history.ts';
import { UserError } from '../boat/user-error.ts';
import { writeBoat } from '../boat/write-boat.ts';
import { plan } from '../plan.ts';
import { boatOfRevision } from './boat-of-revision.ts';
import { type FoundOtherwise, fittedEdits } from './fitted-edits.ts';
import { nextMark } from './next-mark.ts';
import { revisionThatStands, standingOf } from './standing.ts';

const { boat } = aBoat();
const planned = plan(boat, new Map());
const by = { on: '2027-05-02', by: 'the yard' };

const boatWith = (found: FoundOtherwise) => {
  const { boat: fitted } = applyEdits(startHistory(boat), fittedEdits({ boat, plan: planned }, found, by));
  return { fitted, replanned: plan(fitted, new Map()), noted: fitted.fitted?.[0] };
};

describe('what was found otherwise', () => {
  test('a unit at another place stands there in the plan, and the note says where it was meant to be', () => {
    const { fitted, noted } = boatWith({ what: 'place', unit: 'display', place: 'locker' });
    expect(fitted.kit.find(({ id }) => id === 'display')?.place).toBe('locker');
    expect(noted).toEqual({
      id: 'd1',
      about: 'display',
      what: 'place',
      was: 'helm dash',
      is: 'electrical locker',
      ...by,
    });
  });

  test('another fuse is the fuse of the plan', () => {
    const feed = planned.feeds.find(({ fuseBy }) => fuseBy === 'circuit');
    const circuit = `${feed?.panel}.${feed?.circuit}`;
    const { replanned, noted } = boatWith({ what: 'fuse', circuit, ratingA: 2 });
    expect(replanned.feeds.find(({ line }) => line === feed?.line)?.fuseA).toBe(2);
    expect(noted).toMatchObject({ about: circuit, was: `${feed?.fuseA} A`, is: '2 A' });
  });

  test('another wire is the wire of the plan', () => {
    const [feed] = planned.feeds;
    const { replanned, noted } = boatWith({ what: 'wire', line: feed?.line ?? '', areaMm2: 16 });
    expect(replanned.feeds[0]).toMatchObject({ areaMm2: 16, wire: 'settled' });
    expect(noted).toMatchObject({ was: `${feed?.areaMm2} mm²`, is: '16 mm²' });
  });

  test('another length is what the line is made of', () => {
    const line = planned.lines.find(({ kind, pieces }) => kind === 'drop' && pieces !== undefined);
    const { fitted, noted } = boatWith({ what: 'length', line: line?.id ?? '', lengthM: 9.25 });
    expect(fitted.pins?.pieces?.[line?.id ?? '']).toEqual({ pieces: [{ mm: 9250 }], state: 'fitted' });
    expect(noted).toMatchObject({ was: `${line?.lengthM.toFixed(2)} m`, is: '9.25 m' });
  });

  test('another route is the route of the plan', () => {
    const line = planned.lines.find(({ other }) => other !== undefined);
    const { replanned, noted } = boatWith({ what: 'route', line: line?.id ?? '', ways: line?.other?.ways ?? [] });
    const led = replanned.lines.find(({ id }) => id === line?.id);
    expect(new Set(led?.ways)).toEqual(new Set(line?.other?.ways));
    expect(led?.pinned).toBe('fitted');
    expect(noted?.is).toMatch(/ to /);
  });

  test('what no plan knows of is noted in words', () => {
    const { fitted, noted } = boatWith({ what: 'other', about: 'locker', is: 'a second grommet in its back' });
    expect(noted).toMatchObject({ about: 'locker', is: 'a second grommet in its back' });
    const { fitted: _, ...rest } = fitted;
    expect(rest).toEqual(boat);
  });

  test('a second difference has a number of its own', () => {
    const edits = fittedEdits({ boat, plan: planned }, { what: 'other', about: 'helm', is: 'it is' }, by);
    const twice = applyEdits(startHistory(boat), [...edits, ...edits]);
    expect(twice.boat.fitted?.map(({ id }) => id)).toEqual(['d1', 'd2']);
    expect(writeBoat(undo(twice).boat)).toBe(writeBoat(boat));
  });
});

describe('a difference that is taken back', () => {
  const takenBack = (found: FoundOtherwise, id = 'd1') => {
    const noted = applyEdits(startHistory(boat), fittedEdits({ boat, plan: planned }, found, by));
    return writeBoat(applyEdit(noted, 'take-back-fitted', { id }).boat);
  };
  const [feed] = planned.feeds;
  const [line] = planned.lines.filter(({ other }) => other !== undefined);
  const cases: readonly FoundOtherwise[] = [
    { what: 'place', unit: 'display', place: 'locker' },
    { what: 'fuse', circuit: `${feed?.panel}.${feed?.circuit}`, ratingA: 2 },
    { what: 'wire', line: feed?.line ?? '', areaMm2: 16 },
    { what: 'length', line: feed?.line ?? '', lengthM: 9.25 },
    { what: 'route', line: line?.id ?? '', ways: line?.other?.ways ?? [] },
    { what: 'other', about: 'locker', is: 'a second grommet in its back' },
  ];

  test.each(cases)('leaves the file as it was before: $what', (found) => {
    expect(takenBack(found)).toBe(writeBoat(boat));
  });

  test('leaves what another difference of the same thing says', () => {
    const first = fittedEdits({ boat, plan: planned }, { what: 'wire', line: feed?.line ?? '', areaMm2: 16 }, by);
    const noted = applyEdits(applyEdits(startHistory(boat), first), first);
    const { boat: after } = applyEdit(noted, 'take-back-fitted', { id: 'd2' });
    expect(after.pins?.wires?.[feed?.line ?? '']).toEqual({ areaMm2: 16, state: 'fitted' });
    expect(after.fitted?.map(({ id }) => id)).toEqual(['d1']);
  });

  test('is refused in words where there is none', () => {
    expect(() => takenBack({ what: 'other', about: 'helm', is: 'it is' }, 'd9')).toThrow(UserError);
  });
});

describe('revisions', () => {
  const given = { mark: 'A', standing: 'planned', on: '2027-03-01', says: 'For the yard.' } as const;

  test('give the boat back as she stood, whatever happened to her since', () => {
    const full = aFullBoat();
    const { revisions: _, ...bare } = full;
    const first = applyEdit(startHistory(bare), 'issue-revision', given);
    const later = applyEdits(first, [
      { edit: 'move-unit', params: { unit: 'display', place: 'locker' } },
      { edit: 'issue-revision', params: { ...given, mark: 'B' } },
    ]);
    const [a, b] = later.boat.revisions ?? [];
    expect(a === undefined ? '' : writeBoat(boatOfRevision(a))).toBe(writeBoat(bare));
    expect(b === undefined ? undefined : boatOfRevision(b).kit.find(({ id }) => id === 'display')?.place).toBe(
      'locker',
    );
  });

  test('are never given out twice under one mark', () => {
    const first = applyEdit(startHistory(boat), 'issue-revision', given);
    expect(() => applyEdit(first, 'issue-revision', given)).toThrow(UserError);
    expect(nextMark(['A'])).toBe('B');
    expect(nextMark([...'ABCDEFGHIJKLMNOPQRSTUVWXYZ'])).toBe('AA');
  });

  test('stand until anything of the boat is changed', () => {
    const { boat: issued } = applyEdit(startHistory(boat), 'issue-revision', given);
    expect(revisionThatStands(issued)?.mark).toBe('A');
    const { boat: moved } = applyEdit(startHistory(issued), 'move-unit', { unit: 'display', place: 'locker' });
    expect(revisionThatStands(moved)).toBeUndefined();
    expect(revisionThatStands(boat)).toBeUndefined();
  });

  test('are as fitted once a difference was found', () => {
    expect(standingOf(boat)).toBe('planned');
    expect(boatWith({ what: 'other', about: 'helm', is: 'it is' }).fitted).toSatisfy(
      (fitted: typeof boat) => standingOf(fitted) === 'fitted',
    );
  });

  test('that were tampered with are refused in words', () => {
    expect(() => boatOfRevision({ mark: 'A', boat: '00ff' })).toThrow(/cannot be unpacked/);
    expect(() => boatOfRevision({ mark: 'A', boat: packText('{}') })).toThrow(UserError);
  });
});

test('a text is packed and unpacked letter for letter, and never beyond the limit', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme' }), (text) => {
      expect(unpackText(packText(text), 1_000_000)).toBe(text);
    }),
  );
  expect(unpackText(packText('a'.repeat(5000)), 4999)).toBeUndefined();
});

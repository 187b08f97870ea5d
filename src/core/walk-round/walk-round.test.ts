import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { aBoat } from '../boat/a-boat.test-helper.ts';
import type { Boat } from '../boat/boat-schema.ts';
import { applyEdits } from '../boat/history.ts';
import { startHistory } from '../boat/start-history.ts';
import { cautions } from '../facts/cautions.ts';
import { plan } from '../plan.ts';
import { boatFromPattern } from '../starting/boat-from-pattern.ts';
import { boatPatterns } from '../starting/patterns/index.ts';
import { answerEdit, type WalkAnswer } from './answer-edits.ts';
import type { WalkKind } from './walk-question.ts';
import { walkRound } from './walk-round.ts';

const ids = boatPatterns.map(({ id }) => id);
const kindsAbout = (boat: Boat, about: string): WalkKind[] =>
  walkRound(boat).flatMap(({ questions }) => questions.filter((one) => one.about === about).map(({ kind }) => kind));
const isKnown = (boat: Boat, about: string, kind: WalkKind): boolean | undefined =>
  walkRound(boat)
    .flatMap(({ questions }) => questions)
    .find((one) => one.about === about && one.kind === kind)?.known;
const withAnswers = (boat: Boat, ...answers: WalkAnswer[]): Boat =>
  applyEdits(startHistory(boat), answers.map(answerEdit)).boat;

describe.each(ids)('the walk round a new %s', (pattern) => {
  const boat = boatFromPattern({ pattern, name: 'New boat' });
  const stops = walkRound(boat);

  test('comes to every place once, from the bow aft, and goes aloft last', () => {
    expect(new Set(stops.map(({ place }) => place)).size).toBe(boat.places.length);
    const walked = stops.map((stop) => boat.places.find(({ id }) => id === stop.place));
    const firstAloft = walked.findIndex((place) => place?.reach === 'aloft');
    if (firstAloft >= 0) expect(walked.slice(firstAloft).every((place) => place?.reach === 'aloft')).toBe(true);
    const below = walked.filter((place) => place?.reach !== 'aloft').map((place) => place?.xM ?? 0);
    expect([...below].sort((a, b) => b - a)).toEqual(below);
  });

  test('asks about the length of every way once, and about both banks and every panel', () => {
    for (const { id } of boat.ways) {
      expect(kindsAbout(boat, id).filter((kind) => kind === 'way-length')).toEqual(['way-length']);
    }
    for (const { id } of boat.supply.banks) expect(kindsAbout(boat, id)).toContain('bank-fuse');
    for (const { id } of boat.supply.panels) expect(kindsAbout(boat, id)).toContain('panel-circuits');
  });

  test('says the caution of a battery where there is one, and of work aloft where one climbs', () => {
    const known = new Set(cautions.map(({ id }) => id));
    for (const { place, cautions: said } of stops) {
      for (const id of said) expect(known.has(id)).toBe(true);
      if (boat.supply.banks.some((bank) => bank.place === place)) expect(said).toContain('battery-short');
      if (boat.places.find(({ id }) => id === place)?.reach === 'aloft') expect(said).toContain('aloft');
    }
  });
});

describe('a unit that is aboard', () => {
  const tern = aBoat().boat;

  test('is photographed whether it stays or goes, and asked for its plugs only where it stays', () => {
    for (const { id, fate } of tern.kit) {
      const kinds = kindsAbout(tern, id);
      if (fate === 'comes') expect([id, kinds]).toEqual([id, []]);
      else expect([id, kinds.slice(0, 2)]).toEqual([id, ['photos', 'serial']]);
      if (fate === 'goes') expect([id, kinds.includes('plugs')]).toEqual([id, false]);
    }
  });
});

test('a unit is pictured once front, back and label are, and not before', () => {
  const tern = aBoat().boat;
  const [unit] = tern.kit.filter(({ fate }) => fate !== 'comes');
  const photoOf = (shows: 'front' | 'back' | 'label', digits: string): WalkAnswer => ({
    kind: 'photos',
    photo: {
      of: unit?.id ?? '',
      shows,
      picture: { hash: digits.repeat(32), type: 'jpeg', widthPx: 20, heightPx: 10 },
    },
  });
  const two = withAnswers(tern, photoOf('front', 'ab'), photoOf('label', 'cd'));
  expect(isKnown(two, unit?.id ?? '', 'photos')).toBe(false);
  expect(isKnown(withAnswers(two, photoOf('back', 'ef')), unit?.id ?? '', 'photos')).toBe(true);
});

describe('an answer found aboard', () => {
  const boat = boatFromPattern({ pattern: 'sloop-deck-stepped', name: 'New boat' });
  const gland = boat.ways.find(({ kind }) => kind === 'gland')?.id ?? '';

  test('comes into the boat, and its question is known from then on', () => {
    const answered = withAnswers(
      boat,
      { kind: 'way-seen', way: gland, known: 'seen' },
      { kind: 'way-length', way: gland, valueM: 0.65 },
      { kind: 'way-bore', way: gland, mm: 22 },
      { kind: 'bank-fuse', bank: 'house', of: 'fuse', ratingA: 100 },
      { kind: 'bank-switch', bank: 'house', has: true },
      { kind: 'bank-parted', bank: 'start', by: 'switch' },
      { kind: 'negative', place: 'battery-box' },
      { kind: 'panel-circuits', panel: 'main-panel', free: 2 },
    );
    const asked: readonly (readonly [string, WalkKind])[] = [
      [gland, 'way-seen'],
      [gland, 'way-length'],
      [gland, 'way-bore'],
      ['house', 'bank-fuse'],
      ['house', 'bank-switch'],
      ['start', 'bank-parted'],
      ['house', 'negative'],
      ['main-panel', 'panel-circuits'],
    ];
    for (const [about, kind] of asked) {
      expect([about, kind, isKnown(boat, about, kind), isKnown(answered, about, kind)]).toEqual([
        about,
        kind,
        false,
        true,
      ]);
    }
    expect(answered.ways.find(({ id }) => id === gland)).toMatchObject({
      known: 'seen',
      length: { valueM: 0.65, how: 'taped' },
      bore: { mm: 22, how: 'taped' },
    });
  });

  test('settles the doubts that a new boat has about her supply', () => {
    const doubts = (one: Boat): number => plan(one, new Map()).findings.filter(({ level }) => level === 'doubt').length;
    const answered = withAnswers(
      boat,
      { kind: 'bank-fuse', bank: 'house', of: 'fuse', ratingA: 100 },
      { kind: 'bank-parted', bank: 'start', by: 'switch' },
      { kind: 'negative', place: 'battery-box' },
    );
    expect(doubts(answered)).toBeLessThan(doubts(boat));
  });

  test('leaves the order of the walk as it was, whichever ways are taped', () => {
    const way = fc.constantFrom(...boat.ways.map(({ id }) => id));
    fc.assert(
      fc.property(fc.array(way, { maxLength: 6 }), fc.double({ min: 0.2, max: 9, noNaN: true }), (ways, valueM) => {
        const taped = withAnswers(boat, ...ways.map((id) => ({ kind: 'way-length', way: id, valueM }) as const));
        expect(walkRound(taped).map(({ place }) => place)).toEqual(walkRound(boat).map(({ place }) => place));
      }),
      { numRuns: 20 },
    );
  });
});

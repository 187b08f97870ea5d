import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { aBoat } from '../boat/a-boat.test-helper.ts';
import type { Boat } from '../boat/boat-schema.ts';
import { applyEdits } from '../boat/history.ts';
import { readBoat } from '../boat/read-boat.ts';
import { startHistory } from '../boat/start-history.ts';
import { UserError } from '../boat/user-error.ts';
import { writeBoat } from '../boat/write-boat.ts';
import { cautions } from '../facts/cautions.ts';
import { plan } from '../plan.ts';
import { boatFromPattern } from '../starting/boat-from-pattern.ts';
import { boatPatterns } from '../starting/patterns/index.ts';
import { answerEdit, type WalkAnswer } from './answer-edits.ts';
import { cablesInWay } from './cables-in-way.ts';
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

  test('is photographed and asked for its plugs whether it stays or goes, and one that comes is not aboard yet', () => {
    for (const { id, fate } of tern.kit) {
      const kinds = kindsAbout(tern, id);
      if (fate === 'comes') expect([id, kinds]).toEqual([id, []]);
      else expect([id, kinds.slice(0, 2)]).toEqual([id, ['photos', 'serial']]);
      expect([id, kinds.includes('plugs')]).toEqual([id, fate !== 'comes']);
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

test('what is read off an old unit, and how its plugs and wires are, is known from then on', () => {
  const tern = aBoat().boat;
  const read = withAnswers(
    tern,
    { kind: 'serial', unit: 'radio', serial: 'X99-1', software: '1.04' },
    { kind: 'settings', unit: 'radio', settings: [{ name: 'MMSI', value: '002345678' }] },
    { kind: 'plugs', unit: 'radio', plug: 'supply', connector: 'leads', gender: 'none' },
    { kind: 'plugs', unit: 'radio', plug: 'wires', connector: 'leads', gender: 'none' },
  );
  const known = (boat: Boat) =>
    (['serial', 'plugs', 'wire-colours', 'settings'] as const).map((kind) => isKnown(boat, 'radio', kind));
  expect(known(tern)).toEqual([false, false, false, false]);
  // a setting that is noted is not yet all that is set in it
  expect(known(read)).toEqual([true, true, false, false]);
  const whole = withAnswers(
    read,
    { kind: 'all-copied', unit: 'radio' },
    { kind: 'plugs', unit: 'radio', plug: 'wires', colours: [{ label: 'A', colour: 'brown' }] },
  );
  expect(known(whole)).toEqual([true, true, true, true]);
  expect(whole.kit.find(({ id }) => id === 'radio')?.aboard).toEqual({
    serial: 'X99-1',
    software: '1.04',
    settings: [{ name: 'MMSI', value: '002345678' }],
    copied: true,
  });
});

test('cables found in a way are in the boat, each under an id of its own, and fill it', () => {
  const tern = aBoat().boat;
  const [way] = tern.ways;
  if (way === undefined) throw new Error('The Tern has ways.');
  const found = { kind: 'coax', diameterMm: 6, count: 3 } as const;
  const once = applyEdits(startHistory(tern), cablesInWay(tern, way, found)).boat;
  const twice = applyEdits(startHistory(once), cablesInWay(once, way, { ...found, count: 1 })).boat;
  expect(twice.cables.filter(({ ways }) => ways.includes(way.id))).toHaveLength(4);
  expect(readBoat(writeBoat(twice))).toEqual(twice);
});

test('a place where nothing stands can be none at all', () => {
  const boat = boatFromPattern({ pattern: 'sloop-deck-stepped', name: 'New boat' });
  const isNone = (place: string): boolean => {
    try {
      const gone = withAnswers(boat, { kind: 'no-such-place', place });
      expect(walkRound(gone)).toHaveLength(boat.places.length - 1);
      return true;
    } catch (error) {
      if (error instanceof UserError) return false;
      throw error;
    }
  };
  expect(isNone('battery-box')).toBe(false);
  expect(boat.places.filter(({ id }) => isNone(id)).length).toBeGreaterThan(3);
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
      { kind: 'bank-plate', bank: 'house', chemistry: 'lifepo4', capacityAh: 200 },
      { kind: 'bank-fuse', bank: 'house', main: { kind: 'fuse', ratingA: 100 } },
      { kind: 'bank-switch', bank: 'house', has: true },
      { kind: 'bank-parted', bank: 'start', by: 'switch' },
      { kind: 'negative', place: 'battery-box' },
      { kind: 'panel-circuits', panel: 'main-panel', free: 2 },
      {
        kind: 'panel-feeder',
        panel: 'main-panel',
        feeder: { length: { valueM: 2.4, how: 'taped' }, areaMm2: 16 },
        mainA: 80,
      },
      { kind: 'place-is-so', place: 'battery-box', exposure: 'bilge' },
      { kind: 'other-boxes', place: 'battery-box' },
      { kind: 'way-holds', way: gland },
    );
    const asked: readonly (readonly [string, WalkKind])[] = [
      [gland, 'way-seen'],
      [gland, 'way-length'],
      [gland, 'way-bore'],
      ['house', 'bank-plate'],
      ['house', 'bank-fuse'],
      ['house', 'bank-switch'],
      ['start', 'bank-parted'],
      ['house', 'negative'],
      ['main-panel', 'panel-circuits'],
      ['main-panel', 'panel-feeder'],
      ['battery-box', 'place-is-so'],
      ['battery-box', 'other-boxes'],
      [gland, 'way-holds'],
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
    expect(answered.places.find(({ id }) => id === 'battery-box')).toMatchObject({ exposure: 'bilge', seen: true });
    expect(answered.supply.banks.find(({ id }) => id === 'house')).toMatchObject({
      chemistry: 'lifepo4',
      capacityAh: 200,
    });
    expect(answered.supply.panels.find(({ id }) => id === 'main-panel')).toMatchObject({ mainA: 80 });
  });

  test('settles the doubts that a new boat has about her supply', () => {
    const doubts = (one: Boat): number => plan(one, new Map()).findings.filter(({ level }) => level === 'doubt').length;
    const answered = withAnswers(
      boat,
      { kind: 'bank-fuse', bank: 'house', main: { kind: 'fuse', ratingA: 100 } },
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

import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Boat } from './boat-schema.ts';
import { canonicalBoat } from './canonical-boat.ts';
import { aFullBoat } from './full-boat.test-helper.ts';
import { readBoat } from './read-boat.ts';
import { writeBoat } from './write-boat.ts';

/** Lists whose order says something: changes apply one after the other, a walk is walked, an outline is drawn, terms are read, runs follow one another. */
const ordered = new Set([
  'changes',
  'walk',
  'side',
  'top',
  'exclusions',
  'outlineMm',
  'atMm',
  'airDraftParts',
  'runs',
  'tacks',
  'points',
]);

const shuffled = <Entry>(list: readonly Entry[], draw: (below: number) => number): Entry[] => {
  const left = [...list];
  return list.flatMap(() => left.splice(draw(left.length), 1));
};

/** JSON with every name and every list that has no order of its own shuffled. */
const shaken = (value: unknown, draw: (below: number) => number, inOrder = false): unknown => {
  if (typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value)) {
    const entries = value.map((entry) => shaken(entry, draw, Array.isArray(entry) && inOrder));
    return inOrder ? entries : shuffled(entries, draw);
  }
  return Object.fromEntries(
    shuffled(Object.entries(value), draw).map(([key, entry]) => [key, shaken(entry, draw, ordered.has(key))]),
  );
};

test('however the lists and names of a boat file are shuffled, its canonical boat is the same to the byte', () => {
  const boat = aFullBoat();
  const canonical = JSON.stringify(canonicalBoat(boat));
  fc.assert(
    fc.property(fc.infiniteStream(fc.nat()), (draws) => {
      const draw = (below: number): number => Number(draws.next().value) % below;
      const shuffledBoat = readBoat(JSON.stringify(shaken(boat, draw)));
      expect(JSON.stringify(canonicalBoat(shuffledBoat))).toBe(canonical);
    }),
    { numRuns: 50 },
  );
});

test('a canonical boat stays as it is when it is made canonical again', () => {
  const once = canonicalBoat(aFullBoat());
  expect(canonicalBoat(once)).toEqual(once);
  expect(readBoat(writeBoat(once))).toEqual(once);
});

test('nothing is lost when a boat is made canonical', () => {
  const sorted = (value: unknown): unknown =>
    Array.isArray(value)
      ? value.map((entry) => JSON.stringify(sorted(entry))).sort()
      : typeof value === 'object' && value !== null
        ? Object.entries(value)
            .map(([key, entry]) => [key, sorted(entry)])
            .sort()
        : value;
  expect(sorted(canonicalBoat(aFullBoat()))).toEqual(sorted(aFullBoat()));
});

const waysOf = (boat: Boat, id: string): readonly string[] | undefined =>
  canonicalBoat(boat).cables.find((cable) => cable.id === id)?.ways;

test('the ways of a kept cable are put in the order they are walked in', () => {
  expect(waysOf(aFullBoat(), 'old-pair')).toEqual(['locker-stern', 'locker-helm', 'helm-mast']);
  const turned = aFullBoat();
  const cables = turned.cables.map((cable) => ({ ...cable, from: cable.to, to: cable.from }));
  expect(waysOf({ ...turned, cables }, 'old-pair')).toEqual(['helm-mast', 'locker-helm', 'locker-stern']);
});

test('ways of a cable that make no path are put in the order of their ids', () => {
  const boat = aFullBoat();
  const cables = boat.cables.map((cable) => ({ ...cable, ways: ['locker-stern', 'helm-mast'] }));
  expect(waysOf({ ...boat, cables }, 'old-pair')).toEqual(['helm-mast', 'locker-stern']);
});

test('the ways of a settled route are put in the order they are walked in, from the end that comes first by its id', () => {
  const boat = aFullBoat();
  const routeOf = (ways: string[]): readonly string[] | undefined =>
    canonicalBoat({ ...boat, pins: { routes: { line: { ways, state: 'fixed' } } } }).pins?.routes?.line?.ways;
  const walked = ['helm-mast', 'locker-helm', 'battery-locker'].toReversed();
  for (const ways of [walked, walked.toReversed(), ['locker-helm', 'helm-mast', 'battery-locker']]) {
    expect(routeOf(ways)).toEqual(walked);
  }
  // Ways that hang apart, and ways that lead back to where they start, have no such order.
  expect(routeOf(['locker-stern', 'helm-mast'])).toEqual(['helm-mast', 'locker-stern']);
  expect(routeOf(['locker-mast', 'locker-helm', 'helm-mast'])).toEqual(['helm-mast', 'locker-helm', 'locker-mast']);
});

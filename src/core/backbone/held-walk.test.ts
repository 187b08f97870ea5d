import { expect, test } from 'vitest';
import { aBoat } from '../boat/a-boat.test-helper.ts';
import type { Boat } from '../boat/boat-schema.ts';
import { fullWork } from './full-work.ts';
import { layoutProblems } from './layout-problems.ts';
import type { LayoutStep } from './problem.ts';
import { solveLayout } from './solve-layout.ts';

const trunkCable = (id: string, ends: readonly [string, string], ways: string[]): Boat['cables'][number] => ({
  id,
  kind: 'trunk',
  from: { place: ends[0] },
  to: { place: ends[1] },
  serves: 'nav',
  ways,
  length: { valueM: 2, how: 'taped' },
  diameterMm: 6.5,
  condition: 'good',
  fate: 'stays',
});

const boatWith = (...cables: Boat['cables']): Boat => aBoat().change((boat) => void boat.cables.push(...cables)).boat;
const heldOf = (boat: Boat): readonly LayoutStep[] | undefined => layoutProblems(boat)[0]?.held;

const toMast = trunkCable('a-cable', ['mast-base', 'helm'], ['helm-mast']);
const toHelm = trunkCable('b-cable', ['locker', 'helm'], ['locker-helm']);

test('a boat without kept trunk holds none', () => {
  expect(heldOf(boatWith())).toBeUndefined();
});

test('kept trunk cables that meet are one walk, whichever end each was entered from', () => {
  expect(heldOf(boatWith(toHelm, toMast))).toEqual([
    { place: 'mast-base', tees: [] },
    { place: 'helm', via: 'helm-mast', tees: [] },
    { place: 'locker', via: 'locker-helm', tees: [] },
  ]);
});

test('trunk that goes, serves another bus or cannot be placed is not held', () => {
  const cables = [
    { ...toMast, fate: 'goes' as const },
    { ...toHelm, serves: 'old-bus' },
  ];
  expect(heldOf(boatWith(...cables, trunkCable('c-cable', ['locker', 'mast-base'], ['helm-mast'])))).toBeUndefined();
});

test('cables that both start at the place where they meet, and a third beyond, are one walk', () => {
  const cables = [
    trunkCable('a-cable', ['helm', 'mast-base'], ['helm-mast']),
    trunkCable('b-cable', ['helm', 'locker'], ['locker-helm']),
    trunkCable('c-cable', ['stern-rail', 'locker'], ['locker-stern']),
  ];
  expect(heldOf(boatWith(...cables))).toStrictEqual([
    { place: 'mast-base', tees: [] },
    { place: 'helm', via: 'helm-mast', tees: [] },
    { place: 'locker', via: 'locker-helm', tees: [] },
    { place: 'stern-rail', via: 'locker-stern', tees: [] },
  ]);
});

test('a cable through several ways meets the next at its end, not where it passes', () => {
  const long = trunkCable('a-cable', ['mast-base', 'locker'], ['helm-mast', 'locker-helm']);
  const beyond = trunkCable('b-cable', ['locker', 'stern-rail'], ['locker-stern']);
  const passed = trunkCable('b-cable', ['helm', 'locker'], ['locker-helm']);
  const vias = (boat: Boat) => heldOf(boat)?.map(({ via }) => via);
  expect(vias(boatWith(long, beyond))).toEqual([undefined, 'helm-mast', 'locker-helm', 'locker-stern']);
  expect(heldOf(boatWith(long, passed))?.at(-1)?.place).toBe('helm');
});

test('a cable of which no way is known, or whose way takes neither trunk nor drop, is not held', () => {
  expect(heldOf(boatWith(trunkCable('a-cable', ['helm', 'locker'], [])))).toBeUndefined();
  const shut = aBoat().change((boat) => {
    for (const way of boat.ways) if (way.id === 'locker-helm') way.allows = ['feed'];
    boat.cables.push(toHelm, toMast);
  });
  expect(heldOf(shut.boat)?.map(({ via }) => via)).toEqual([undefined, 'helm-mast']);
});

test('of kept trunk that does not meet the longest run is held', () => {
  const far = trunkCable('c-cable', ['locker', 'stern-rail'], ['locker-stern']);
  expect(heldOf(boatWith(toMast, far))?.map(({ via }) => via)).toEqual([undefined, 'locker-stern']);
});

test('the new trunk runs through the kept one and is cheaper by its metres', () => {
  const costOf = (boat: Boat): number => {
    const [problem] = layoutProblems(boat);
    const layout = problem && [...solveLayout(problem, fullWork)].at(-1);
    expect(layout?.status).toBe('proven');
    return layout?.cost ?? 0;
  };
  expect(costOf(boatWith(toHelm))).toBeLessThan(costOf(boatWith()));
});

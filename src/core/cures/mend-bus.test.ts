import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { layoutProblems } from '../backbone/layout-problems.ts';
import type { Layout } from '../backbone/problem.ts';
import { keptLayout, solveLayout } from '../backbone/solve-layout.ts';
import { withWarnLimits } from '../backbone/warn-limits.ts';
import type { Boat } from '../boat/boat-schema.ts';
import { applyEdits, type EditCall } from '../boat/history.ts';
import { readBoat } from '../boat/read-boat.ts';
import { startHistory } from '../boat/start-history.ts';
import { checkedPlan, plan } from '../plan.ts';
import type { Cure, Plan } from '../plan-shape.ts';

const gannet = readBoat(readFileSync(new URL('../../../examples/gannet/gannet.boat.json', import.meta.url), 'utf8'));

/** Gannet in light cable, every unit on her bus drawing five times what it does. */
const hungry: Boat = {
  ...gannet,
  buses: gannet.buses.map((bus) => ({ ...bus, grade: 'light' as const })),
  sheets: gannet.sheets.map((sheet) => ({
    ...sheet,
    ports: sheet.ports.map((port) => (port.len === undefined ? port : { ...port, len: 5 * port.len })),
  })),
};

/** Gannet without tees in the flybridge and over the helm, so that some drops are too long. */
const withoutTees: Boat = {
  ...gannet,
  places: gannet.places.map((place) =>
    ['fly-console', 'headliner-fwd', 'arch-foot'].includes(place.id) ? { ...place, tees: false } : place,
  ),
};

/** Gannet by an owner who wants no more than twelve units on a bus. */
const crowded: Boat = { ...gannet, limits: { 'nmea2000-devices': { value: 12, reason: 'as her builder asks' } } };

const budget = { work: 6000 };

const planned = (boat: Boat, planOf: typeof plan = plan): Plan => {
  const layouts = new Map<string, Layout>();
  for (const problem of layoutProblems(boat)) {
    for (const layout of solveLayout(problem, { work: 12_000 })) layouts.set(problem.hash, layout);
  }
  return planOf(boat, layouts);
};
const arriving = ({ readings }: Plan): string[] =>
  readings.filter(({ arrives }) => arrives).map(({ reading, at }) => `${reading} ${at}`);

/** The boat with a cure in it, made as the app makes it. */
const cured = (boat: Boat, { edits }: Cure): Boat =>
  // reason: cures carry their edits as plain values
  applyEdits(startHistory(boat), edits as unknown as readonly EditCall[]).boat;

describe.each([
  ['too much current for light cable', hungry, ['current'], /^Lay Navigation bus in industrial thick cable\.$/],
  ['a flybridge without tees', withoutTees, ['one-drop', 'tee-places'], /^Let tees stand at/],
  ['more units than may be on one bus', crowded, ['device-count'], /^Part the bus in two: /],
])('%s', (_, boat, clash, first) => {
  const before = planned(boat);
  const mend = before.buses.find(({ id }) => id === 'nav')?.mend;

  test('names the limits that clash, and the least change first', () => {
    expect(mend?.clashes[0]?.map(({ limit }) => limit)).toEqual(clash);
    expect(mend?.cures[0]?.says).toMatch(first);
    const costs = (mend?.cures ?? []).map(({ cost = 0 }) => cost);
    expect(costs).toEqual([...costs].sort((one, other) => one - other));
  });

  test('every change gives each bus a layout that holds, and loses no reading', () => {
    for (const cure of (mend?.cures ?? []).filter(({ edits }) => edits.length > 0)) {
      const after = planned(cured(boat, cure), checkedPlan);
      expect([cure.says, after.buses.map(({ layout }) => layout.broken)]).toEqual([
        cure.says,
        after.buses.map(() => []),
      ]);
      expect(after.buses.every(({ layout }) => layout.status !== 'infeasible')).toBe(true);
      expect(arriving(after)).toEqual(expect.arrayContaining(arriving(before)));
    }
  });

  test('its finding carries the changes', () => {
    const finding = before.findings.find(({ rule }) => rule === 'bus/no-layout-found');
    expect(finding?.cures).toEqual(mend?.cures);
  });
});

/** Gannet in light cable by an owner who wants to lose no more than 0.35 V where 1.67 V may be lost. */
const thrifty: Boat = {
  ...gannet,
  buses: gannet.buses.map((bus) => ({ ...bus, grade: 'light' as const })),
  limits: { 'nmea2000-lost-volts-warn': { value: 0.35, reason: 'as she was once' } },
};

test('a bus that holds only beyond its warn limits is told what would bring it back, with the doubt', () => {
  const before = planned(thrifty);
  const [bus] = before.buses;
  expect(bus?.layout.status).not.toBe('infeasible');
  expect(bus?.mend?.says).toMatch(/ 0\.35 V is what one should keep to\.$/);
  expect(bus?.mend?.cures[0]?.says).toBe('Lay Navigation bus in mid cable.');
  const doubt = before.findings.find(({ rule }) => rule === 'bus/volts-too-low');
  expect(doubt?.level).toBe('doubt');
  expect(doubt?.cures).toEqual(bus?.mend?.cures);
  for (const cure of doubt?.cures?.filter(({ edits }) => edits.length > 0) ?? []) {
    const kept = layoutProblems(cured(thrifty, cure)).map((problem) => keptLayout(withWarnLimits(problem), budget));
    expect(kept.every(({ layout }) => layout !== undefined)).toBe(true);
  }
});

test('a bus that has a layout is not mended', () => {
  expect(planned(gannet).buses[0]).not.toHaveProperty('mend');
});

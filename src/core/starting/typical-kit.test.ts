import { describe, expect, test } from 'vitest';
import { checkLayout } from '../backbone/check-layout.ts';
import { fullWork } from '../backbone/full-work.ts';
import { layoutProblems } from '../backbone/layout-problems.ts';
import type { Layout } from '../backbone/problem.ts';
import { solveLayout } from '../backbone/solve-layout.ts';
import { indexBoat } from '../boat/boat-index.ts';
import type { Boat, Kit } from '../boat/boat-schema.ts';
import { typicalSheets } from '../facts/sheets/index.ts';
import { likelyPlaces } from '../kit/likely-places.ts';
import { plan } from '../plan.ts';
import { lineJoints } from '../shopping/line-joints.ts';
import { boatFromPattern } from './boat-from-pattern.ts';
import { boatPatterns } from './patterns/index.ts';

/** Units somebody would buy: what each is, and the places it would stand at, the first that the boat has; none of them, and it stays ashore. */
const wanted: readonly (readonly [id: string, sheet: string, places: readonly string[], circuit?: string])[] = [
  ['screen', 'multifunction-display-9', ['helm'], 'screens'],
  ['instrument', 'instrument-4', ['helm']],
  ['gnss', 'gnss-antenna-bus', ['stern-rail', 'arch-port', 'arch-top']],
  ['heading', 'heading-sensor-bus', ['fore-cabin', 'fore-locker']],
  ['depth', 'sensor-depth-bus', ['sensor-well']],
  ['wind', 'wind-sensor-bus', ['masthead']],
  ['ais', 'ais-class-b', ['chart-table', 'headliner', 'elec-panel'], 'instruments'],
  ['ais-whip', 'vhf-whip-1m', ['stern-rail', 'arch-port', 'arch-top']],
  ['vhf', 'vhf-dsc-bus', ['chart-table', 'headliner', 'helm-back'], 'radio'],
  ['vhf-whip', 'vhf-whip-1m', ['masthead', 'arch-stbd', 'arch-top']],
  ['shunt', 'battery-shunt-bus', ['battery-box']],
  ['rudder', 'rudder-sensor-bus', ['steering-gear', 'sensor-well']],
];

/** With its set comes an antenna on a lead of its own, which stands where it is offered first. */
const withAntenna = (boat: Boat): Boat => {
  const [sheet] = typicalSheets.filter(({ id }) => id === 'gnss-antenna-coax');
  const [place] = sheet === undefined ? [] : likelyPlaces(boat, sheet);
  if (sheet === undefined || place === undefined) return expect.unreachable();
  const unit: Kit = { id: 'ais-gnss', name: 'ais-gnss', sheet: sheet.id, fate: 'comes', place: place.id };
  return { ...boat, sheets: [...boat.sheets, sheet], kit: [...boat.kit, unit] };
};

/** What is to be seen at each; wind only where there is a mast for it. */
const seen: readonly (readonly [at: string, reading: Boat['needs'][number]['reading']])[] = [
  ['screen', 'position'],
  ['screen', 'heading'],
  ['screen', 'depth'],
  ['screen', 'wind-apparent'],
  ['screen', 'ais-targets'],
  ['screen', 'battery'],
  ['screen', 'rudder'],
  ['screen', 'dsc-calls'],
  ['instrument', 'depth'],
  ['instrument', 'wind-apparent'],
  ['vhf', 'position'],
];

const withKit = (bare: Boat): Boat => {
  const kit = wanted.flatMap(([id, sheet, places]): Kit[] => {
    const place = places.find((one) => bare.places.some((there) => there.id === one));
    return place === undefined ? [] : [{ id, name: id, sheet, fate: 'comes', place }];
  });
  const hasWind = kit.some(({ id }) => id === 'wind');
  const fedBy = (circuit: string): string[] =>
    wanted.filter(([, , , own]) => own === circuit).map(([id]) => `${id}.dc`);
  return {
    ...bare,
    sheets: typicalSheets.filter(({ id }) => kit.some(({ sheet }) => sheet === id)),
    kit,
    needs: seen
      .filter(([, reading]) => hasWind || reading !== 'wind-apparent')
      .map(([at, reading]) => ({ reading, at, must: true })),
    supply: {
      ...bare.supply,
      panels: bare.supply.panels.map((panel) => ({
        ...panel,
        circuits: panel.circuits.map((circuit) => ({ ...circuit, feeds: [...circuit.feeds, ...fedBy(circuit.id)] })),
      })),
    },
  };
};

describe.each(boatPatterns.map(({ id }) => id))('a usual kit aboard a new %s', (pattern) => {
  const boat = withAntenna(withKit(boatFromPattern({ pattern, name: 'New boat' })));
  const layouts = new Map<string, Layout>();
  for (const problem of layoutProblems(boat)) {
    for (const layout of solveLayout(problem, fullWork)) layouts.set(problem.hash, layout);
  }
  const planned = plan(boat, layouts);

  test('has a layout of the bus that the checker agrees to', () => {
    const problems = layoutProblems(boat);
    expect(problems.length).toBe(1);
    for (const problem of problems) {
      expect(problem.devices.length).toBeGreaterThanOrEqual(7);
      const layout = layouts.get(problem.hash);
      expect(layout && checkLayout(problem, layout).broken).toEqual([]);
    }
  });

  test('shows what was asked for, without a danger or a fault in what the pattern guessed', () => {
    expect(planned.readings.filter(({ arrives }) => !arrives)).toEqual([]);
    const bad = planned.findings.filter(({ level }) => level === 'danger' || level === 'fault');
    expect(bad.map(({ id, says }) => [id, says])).toEqual([]);
    expect(planned.lines.map(({ id }) => id)).toContain('coax:ais-gnss.coax~ais.gnss');
  });

  test('joins no pieces of the trunk in the wet, nor up a mast', () => {
    const up = planned.lines.filter(({ kind, places }) => kind === 'trunk' && places.includes('masthead'));
    const wet = up.flatMap((line) => lineJoints(indexBoat(boat), line)).filter(({ isWet }) => isWet);
    expect(wet).toEqual([]);
    // a low mast is reached by a drop
    const drops = planned.lines.filter(({ kind, places }) => kind === 'drop' && places.includes('masthead'));
    expect(up.length + drops.length > 0).toBe(boat.kit.some(({ id }) => id === 'wind'));
  });
});

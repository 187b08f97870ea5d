import { expect, test } from 'vitest';
import { need, type Sketch, type UnitSketch, wired } from '../../readings/wired.test-helper.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { severalForOneNeed } from './several-for-one-need.ts';

const sender = (pgn: number, instance?: number): UnitSketch => ({
  ports: { n2k: { protocol: 'nmea2000', sends: [{ pgn, ...(instance === undefined ? {} : { instance }) }] } },
});
const screen: UnitSketch = { ports: { n2k: { protocol: 'nmea2000', hears: [127488, 128267, 129025, 129285] } } };
const found = (units: Sketch['units'], needs: Sketch['needs'], more: Sketch['joins'] = {}) => {
  const all = { ...units, helm: screen, fly: screen };
  const onShip = new Set(Object.values(more).flat());
  const nav = Object.keys(all)
    .map((id) => `${id}.n2k`)
    .filter((port) => !onShip.has(port));
  return findingsOf(severalForOneNeed, {
    boat: wired({ units: all, joins: { nav, ...more }, ...(needs === undefined ? {} : { needs }) }),
  });
};
const engines = { 'engine-port': sender(127488, 0), 'engine-stbd': sender(127488, 1) };

test('one engine passes, and so do two of which the need says which', () => {
  expect(found({ engine: sender(127488, 0) }, [need('engine', 'helm')])).toEqual([]);
  expect(found(engines, [need('engine', 'helm', { instance: 1 })])).toEqual([]);
});

test('two engines for a need that names none are a doubt about the screen and both', () => {
  expect(found(engines, [need('engine', 'helm')])).toMatchObject([
    {
      id: 'readings/several-for-one-need:engine-port,engine-stbd,helm:engine',
      level: 'doubt',
      says: 'Engine for helm may come from engine-port, or from engine-stbd, and no number says which. A screen takes either, and may change over on its own.',
    },
  ]);
});

test('two depth sensors with a number each are one doubt for all screens that want depth', () => {
  const sensors = { keel: sender(128267, 0), bow: sender(128267, 1) };
  expect(found(sensors, [need('depth', 'helm'), need('depth', 'fly')])).toMatchObject([
    { about: ['bow', 'fly', 'helm', 'keel'], measured: { value: 2 } },
  ]);
});

test('two senders alike on one bus are told where they are, not once more at each screen', () => {
  expect(found({ a: sender(129025), b: sender(129025) }, [need('position', 'helm')])).toEqual([]);
});

test('a screen knows its own antenna from the one outside', () => {
  const own: UnitSketch = { ports: { n2k: { protocol: 'nmea2000', sends: [129025], hears: [129025] } } };
  expect(found({ own, gnss: sender(129025, 1) }, [need('position', 'own')])).toEqual([]);
});

test('what several units have by nature, an alert or a route, passes', () => {
  expect(found({ a: sender(129285, 0), b: sender(129285, 1) }, [need('route', 'helm')])).toEqual([]);
});

test('a need whose source the owner has named passes', () => {
  const units = { keel: sender(128267, 0), bow: sender(128267, 1), helm: screen, fly: screen };
  const boat = wired({
    units,
    joins: { nav: Object.keys(units).map((id) => `${id}.n2k`) },
    needs: [need('depth', 'helm'), need('depth', 'fly')],
  });
  const settled = (at?: string) => ({
    ...boat,
    sources: [{ reading: 'depth' as const, primary: 'keel.n2k', ...(at === undefined ? {} : { at }) }],
  });
  expect(findingsOf(severalForOneNeed, { boat: settled('helm') })).toMatchObject([{ about: ['bow', 'fly', 'keel'] }]);
  expect(findingsOf(severalForOneNeed, { boat: settled() })).toEqual([]);
});

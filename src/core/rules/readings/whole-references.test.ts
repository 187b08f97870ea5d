import { expect, test } from 'vitest';
import type { Hears } from '../../boat/sheet.ts';
import { need, type Sketch, type UnitSketch, wired } from '../../readings/wired.test-helper.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { told } from '../told.test-helper.ts';
import { readingsRules } from './index.ts';
import { onBus, talker } from './talkers.test-helper.ts';

/** What one rule says on a boat of a sketch. */
const of = (rule: string, sketch: Sketch) => told(readingsRules, `readings/${rule}`, { boat: wired(sketch) });

/** What tells the findings of a rule apart beside whom they are about. */
const idsOf = (id: string, sketch: Sketch): string[] =>
  readingsRules
    .filter((rule) => rule.id === `readings/${id}`)
    .flatMap((rule) => findingsOf(rule, { boat: wired(sketch) }).map((finding) => finding.id));

test('the reference of a heading is unknown only where every way leaves it open, and of headings only', () => {
  const screen = {
    ports: { in: { protocol: 'nmea0183', hears: ['HDT'] }, n2k: { protocol: 'nmea2000', hears: [127250] } },
  } as const;
  const sketch = (instance?: number): Sketch => ({
    units: {
      fluxgate: onBus([
        { pgn: 127250, instance: 0 },
        { pgn: 127250, instance: 1 },
      ]),
      gyro: talker('HDT'),
      screen,
    },
    joins: { nav: ['fluxgate.n2k', 'screen.n2k'] },
    needs: [need('heading', 'screen', { reference: 'true', ...(instance === undefined ? {} : { instance }) })],
  });
  expect(of('reference-unknown', sketch())).toEqual([
    'doubt fluxgate.n2k screen screen.n2k: Screen wants heading as true. fluxgate sends it, but nothing says whether as true or as magnetic, and no variation reaches screen to make one from the other. [ / ] Bring variation to screen: many position antennas send it. Or look the sensor up: most give magnetic heading, a gyro or a satellite compass gives true.',
  ]);
  const joins = { ...sketch().joins, wire: ['gyro.out', 'screen.in'] };
  expect(of('reference-unknown', { ...sketch(), joins })).toEqual([]);
  expect(idsOf('reference-unknown', { ...sketch(), needs: [0, 1].flatMap((n) => sketch(n).needs ?? []) })).toEqual([
    'readings/reference-unknown:fluxgate.n2k,screen,screen.n2k:true:0',
    'readings/reference-unknown:fluxgate.n2k,screen,screen.n2k:true:1',
  ]);
  const wind = { vane: onBus(['wind-true']), plotter: onBus([], [{ reading: 'wind-true' }]) };
  expect(
    of('reference-unknown', {
      units: wind,
      joins: { nav: ['vane.n2k', 'plotter.n2k'] },
      needs: [need('wind-true', 'plotter', { reference: 'water' })],
    }),
  ).toEqual([]);
});

test('true wind: one way by the water is enough, and a screen that asks for a kind has chosen it', () => {
  const plotter = (...hears: (number | Hears)[]): UnitSketch => onBus(['wind-true'], hears);
  const repeater = (wants?: 'ground'): UnitSketch =>
    onBus([], [{ reading: 'wind-true', ...(wants === undefined ? {} : { wants: { reference: wants } }) }]);
  const units = {
    vane: onBus([130306]),
    gnss: onBus([129026]),
    log: onBus([128259]),
    ground: plotter(130306, 129026),
    water: plotter(130306, 128259),
    screen: repeater(),
  };
  const joins = { nav: Object.keys(units).map((id) => `${id}.n2k`) };
  const needs = [need('wind-true', 'screen')];
  expect(of('true-wind-from-ground', { units, joins, needs })).toEqual([]);
  const alone = { nav: joins.nav.filter((port) => port !== 'water.n2k') };
  expect(of('true-wind-from-ground', { units, joins: alone, needs })).toEqual([
    'doubt ground.n2k screen screen.n2k: True wind at screen is worked out by ground with speed over the ground; no speed through the water reaches ground. In a stream it is wrong by the stream. [ / ] Add a log, or bring the one aboard to ground. Without one, read it as wind over the ground.',
  ]);
  expect(of('true-wind-from-ground', { units: { ...units, screen: repeater('ground') }, joins: alone, needs })).toEqual(
    [],
  );
  const course = { gnss: onBus([129026]), screen: onBus([], [129026]) };
  expect(
    of('true-wind-from-ground', {
      units: course,
      joins: { nav: ['gnss.n2k', 'screen.n2k'] },
      needs: [need('course-speed-ground', 'screen')],
    }),
  ).toEqual([]);
});

test('variation: for what it is missing, whence it comes, and where nothing asks for it', () => {
  const screen = {
    ports: {
      a: { protocol: 'nmea0183', hears: ['HDM', 'HDG', 'HDT', 'VTG'] },
      b: { protocol: 'nmea0183', hears: ['HDM', 'HDG', 'HDT', 'VTG', 'RMC'] },
    },
  } as const;
  const sketch = (one: string[], other: string[], ...needs: NonNullable<Sketch['needs']>): Sketch => ({
    units: { a: talker(...one), b: talker(...other), screen },
    joins: { 'wire-a': ['a.out', 'screen.a'], 'wire-b': ['b.out', 'screen.b'] },
    needs,
  });
  const course = need('course-speed-ground', 'screen');
  const heading = need('heading', 'screen');
  expect(of('variation-missing', sketch(['HDG'], ['RMC'], heading, course))).toEqual([
    'doubt a.out b.out screen: A gives heading as magnetic, and variation comes to screen only in RMC or HDG, whose field for it is often empty, to lay heading beside course over ground. Some take an empty field for zero, and all is off by the variation. [ / ] Bring variation from a position antenna by message 127258, or enter it on the screen and set it again each season.',
  ]);
  expect(
    of('variation-missing', sketch(['HDM'], ['VTG'], need('heading', 'screen', { reference: 'magnetic' }), course)),
  ).toEqual([]);
  expect(of('variation-missing', sketch(['HDM'], ['VTG'], heading))).toEqual([]);
  expect(of('variation-missing', sketch(['HDM'], ['VTG'], heading, need('course-speed-ground', 'a')))).toEqual([]);
  expect(of('variation-missing', sketch(['HDM'], ['VTG'], heading, need('position', 'screen')))).toEqual([]);
  expect(of('variation-missing', sketch(['HDM'], ['HDT', 'VTG'], heading, course))).toEqual([]);
  expect(of('variation-missing', sketch(['VTG'], ['VTG'], heading, course))).toEqual([]);
  // what a screen has itself is as good
  const own = { ...screen.ports, n2k: { protocol: 'nmea2000', sends: [127258] } } as const;
  const bare = sketch(['HDM'], ['VTG'], heading, course);
  expect(of('variation-missing', { ...bare, units: { ...bare.units, screen: { ports: own } } })).toEqual([]);
  const itself = { ...screen.ports, out: { protocol: 'nmea0183', sends: ['HDG'] } } as const;
  expect(of('variation-missing', { ...bare, units: { ...bare.units, screen: { ports: itself } } })).toEqual([
    'doubt screen screen.out: Screen gives heading as magnetic, and variation comes to screen only in RMC or HDG, whose field for it is often empty, to lay heading beside course over ground. Some take an empty field for zero, and all is off by the variation. [ / ] Bring variation from a position antenna by message 127258, or enter it on the screen and set it again each season.',
  ]);
});

test('wind by the compass is told of whoever sends it beside other things, on a wire that goes somewhere', () => {
  const units = {
    wind: talker('MWV', 'MWD'),
    screen: { ports: { in: { protocol: 'nmea0183', hears: ['MWD'] } } },
  } as const;
  expect(of('wind-direction-without-heading', { units, joins: { wire: ['wind.out', 'screen.in'] } })).toEqual([
    'doubt wind.out: Wind sends wind direction by the compass (MWD), and no heading reaches it to reckon that from. What it sends is empty, or counts from the bow. [ / ] Bring heading to wind, or switch MWD off and use MWV, which counts from the bow.',
  ]);
  expect(of('wind-direction-without-heading', { units, joins: {} })).toEqual([]);
});

import { expect, test } from 'vitest';
import { need, type Sketch, turn, type UnitSketch, wired } from '../../readings/wired.test-helper.ts';
import { told } from '../told.test-helper.ts';
import { readingsRules } from './index.ts';
import { onBus, talker } from './talkers.test-helper.ts';

/** What one rule says on a boat of a sketch. */
const of = (rule: string, sketch: Sketch) => told(readingsRules, `readings/${rule}`, { boat: wired(sketch) });

const box = (inner: string, outer: string): UnitSketch => ({
  ports: { in: { protocol: 'nmea0183', hears: [inner] }, out: { protocol: 'nmea0183', sends: [outer] } },
  turns: [turn('in', 'out', 'depth')],
});

test('an offset is told of who sends it in the depth, not of who is first on the way, and by whichever way it comes', () => {
  const toBus: UnitSketch = {
    ports: { in: { protocol: 'nmea0183', hears: ['DBK'] }, n2k: { protocol: 'nmea2000', sends: [128267] } },
    turns: [turn('in', 'n2k', 'depth')],
  };
  const screen = {
    ports: { in: { protocol: 'nmea0183', hears: ['DBT', 'DBK'] }, n2k: { protocol: 'nmea2000', hears: [128267] } },
  } as const;
  const chain = {
    units: { sounder: talker('DBT'), box: box('DBT', 'DBK'), toBus, screen },
    needs: [need('depth', 'screen')],
  };
  expect(
    of('offset-twice', {
      ...chain,
      joins: { a: ['sounder.out', 'box.in'], b: ['box.out', 'toBus.in'], nav: ['toBus.n2k', 'screen.n2k'] },
    }),
  ).toEqual([
    'doubt box.out screen toBus: Box sends DBK, depth from the keel with the offset in it. toBus passes it on in a message with an offset of its own: set there, or on screen, it is added again, and the depth is wrong by it. [ / ] Let box send DPT, or leave the offset at nothing in every unit behind it and prove it with a lead line.',
  ]);
  // a message with room for an offset before the one that holds it takes none
  const before = { sounder: talker('DPT'), box: box('DPT', 'DBK'), screen };
  expect(
    of('offset-twice', {
      units: before,
      joins: { a: ['sounder.out', 'box.in'], b: ['box.out', 'screen.in'] },
      needs: chain.needs,
    }),
  ).toEqual([]);
  // the plain way is the shorter one
  const both = { plain: talker('DBT'), keel: talker('DBK'), toBus, screen };
  expect(
    of('offset-twice', {
      units: both,
      joins: { a: ['plain.out', 'screen.in'], b: ['keel.out', 'toBus.in'], nav: ['toBus.n2k', 'screen.n2k'] },
      needs: chain.needs,
    }),
  ).toHaveLength(1);
});

test('numbers that a converter takes together are told as they are, and one without any', () => {
  const rudder = (...instances: (number | undefined)[]): UnitSketch =>
    onBus(instances.map((instance) => (instance === undefined ? 127245 : { pgn: 127245, instance })));
  expect(
    of('one-of-two-lost', {
      units: {
        sensor: rudder(undefined, 1, 2),
        converter: {
          ports: { n2k: { protocol: 'nmea2000', hears: [127245] }, out: { protocol: 'nmea0183', sends: ['RSA'] } },
          turns: [turn('n2k', 'out', 'rudder')],
        },
        dial: { ports: { in: { protocol: 'nmea0183', hears: ['RSA'] } } },
        gauge: { ports: { in: { protocol: 'nmea0183', hears: ['RSA'] } } },
      },
      joins: { nav: ['sensor.n2k', 'converter.n2k'], pair: ['converter.out', 'dial.in', 'gauge.in'] },
    }),
  ).toEqual([
    'doubt converter.out dial gauge: Converter is given rudder angle 1 and 2 and without a number and passes on one of them to dial and gauge: the others are not there, or read as the first. [1 numbers / ] Bring it to dial and gauge over the bus, or let only the one that is wanted there reach the converter.',
  ]);
});

test('several sources of one need: what is open of each reading, screens by name or by count', () => {
  const hears = [127488, 128267, 129285];
  const heard = { protocol: 'nmea2000', hears } as const;
  const twoBuses: UnitSketch = { ports: { n2k: heard, other: heard } };
  const screens = { fly: onBus([], hears), helm: onBus([], hears), nav: onBus([], hears) };
  const sketch = (units: Sketch['units'], needs: Sketch['needs'], joins: Sketch['joins'] = {}): Sketch => {
    const all = { ...units, ...screens };
    const apart = new Set(Object.values(joins).flat());
    const nav = Object.keys(all)
      .map((id) => `${id}.n2k`)
      .filter((port) => !apart.has(port));
    return { units: all, joins: { nav, ...joins }, needs: needs ?? [] };
  };
  const engines = { stbd: onBus([{ pgn: 127488, instance: 1 }]), port: onBus([{ pgn: 127488, instance: 0 }]) };
  const depths = { bow: onBus([{ pgn: 128267, instance: 0 }]), aft: onBus([{ pgn: 128267, instance: 1 }]) };
  expect(
    of(
      'several-for-one-need',
      sketch({ ...engines, ...depths }, [need('engine', 'nav'), need('depth', 'helm'), need('engine', 'helm')]),
    ),
  ).toEqual([
    'doubt aft bow helm: Depth for helm may come from aft, or from bow, and no number says which. A screen takes either, and may change over on its own. [2 sources / ] Say in the source plan which one counts, and choose it on each screen.',
    'doubt helm nav port stbd: Engine for helm and for nav may come from port, or from stbd, and no number says which. A screen takes either, and may change over on its own. [2 sources / ] Say in the source plan which one counts, and choose it on each screen.',
  ]);
  expect(
    of(
      'several-for-one-need',
      sketch(
        engines,
        ['fly', 'helm', 'nav'].map((at) => need('engine', at)),
      ),
    )[0],
  ).toContain('Engine for 3 units may come');
  // a number leaves nothing open, nor does a reading of which many may come
  const apart = {
    units: { bow: onBus([{ pgn: 128267, instance: 1 }]), aft: onBus([{ pgn: 128267, instance: 1 }]), screen: twoBuses },
    joins: { nav: ['bow.n2k', 'screen.n2k'], ship: ['aft.n2k', 'screen.other'] },
  };
  expect(of('several-for-one-need', { ...apart, needs: [need('depth', 'screen')] })).toHaveLength(1);
  expect(of('several-for-one-need', { ...apart, needs: [need('depth', 'screen', { instance: 1 })] })).toEqual([]);
  const routes = { a: onBus([{ pgn: 129285, instance: 0 }]), b: onBus([{ pgn: 129285, instance: 1 }]) };
  expect(of('several-for-one-need', sketch(routes, [need('route', 'helm')]))).toEqual([]);
  // two alike are told where they are; with a third of another number it is open which counts
  const alike = { a: onBus([128267]), b: onBus([128267]) };
  expect(
    of('several-for-one-need', sketch({ ...alike, c: onBus([{ pgn: 128267, instance: 1 }]) }, [need('depth', 'helm')])),
  ).toHaveLength(1);
  const other = { a: onBus([{ pgn: 128267, instance: 0 }, 127250]), b: onBus([{ pgn: 128267, instance: 1 }, 127250]) };
  expect(of('several-for-one-need', sketch(other, [need('depth', 'helm')]))).toHaveLength(1);
});

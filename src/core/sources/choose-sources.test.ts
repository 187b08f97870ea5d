import { describe, expect, it } from 'vitest';
import type { Boat } from '../boat/boat-schema.ts';
import { need, type Sketch, turn, type UnitSketch, wired } from '../readings/wired.test-helper.ts';
import type { SourceEntry } from '../sources-shape.ts';
import { sourcesOn } from './source-sketch.test-helper.ts';

const bus = (sends: UnitSketch['ports'][string]['sends'], hears: (number | string)[] = []): UnitSketch['ports'] => ({
  n2k: { protocol: 'nmea2000', ...(sends === undefined ? {} : { sends }), hears },
});
const screen: UnitSketch = { ports: bus([], [129025, 128267, 127250, 127245, 127258, 126983]) };

/** The boat with the kind of each unit’s sheet as given; others are things. */
const ofKinds = (boat: Boat, kinds: Readonly<Record<string, string>>): Boat => ({
  ...boat,
  sheets: boat.sheets.map((sheet) => ({ ...sheet, kind: kinds[sheet.id.replace('sheet-', '')] ?? sheet.kind })),
});

const told = ({ chosen, because, primary, backups }: SourceEntry) => [
  chosen,
  because,
  primary.from,
  backups.map(({ from }) => from),
];
const one = (boat: Boat) => {
  const [entry, ...more] = sourcesOn(boat).sources;
  expect(more).toEqual([]);
  return entry === undefined ? undefined : told(entry);
};

const sounder = (sentence: string): UnitSketch => ({
  ports: { out: { protocol: 'nmea0183', sends: [{ sentence, everyMs: 1000 }] } },
});
const converter = (sentence: string): UnitSketch => ({
  ports: { in: { protocol: 'nmea0183', hears: [sentence] }, ...bus([128267]) },
  turns: [turn('in', 'n2k', 'depth')],
});

describe('the source of a reading', () => {
  it('is the only one there is', () => {
    const boat = wired({
      units: { gnss: { ports: bus([129025]) }, screen },
      joins: { nav: ['gnss.n2k', 'screen.n2k'] },
      needs: [need('position', 'screen')],
    });
    expect(one(boat)).toEqual(['only', undefined, 'gnss.n2k', []]);
  });

  it('is absent where the reading does not arrive', () => {
    const boat = wired({ units: { screen }, joins: {}, needs: [need('position', 'screen')] });
    expect(sourcesOn(boat).sources).toEqual([]);
  });

  it('is the one that comes more often', () => {
    const boat = wired({
      units: {
        slow: { ports: bus([{ pgn: 127245, everyMs: 1000 }]) },
        zealous: { ports: bus([{ pgn: 127245, everyMs: 100 }]) },
        screen,
      },
      joins: { nav: ['slow.n2k', 'zealous.n2k', 'screen.n2k'] },
      needs: [need('rudder', 'screen')],
    });
    expect(one(boat)).toEqual(['better', 'rate', 'zealous.n2k', ['slow.n2k']]);
  });

  it('is the one that passes fewer converters, where both come as often and as whole', () => {
    const boat = wired({
      units: { a: sounder('DPT'), box: converter('DPT'), z: { ports: bus([128267]) }, screen },
      joins: { wire: ['a.out', 'box.in'], nav: ['box.n2k', 'z.n2k', 'screen.n2k'] },
      needs: [need('depth', 'screen')],
    });
    expect(one(boat)).toEqual(['better', 'converters', 'z.n2k', ['a.out']]);
  });

  it('is the depth that brings its offset before the one that lost it: DPT before DBT (MS-84, field lists)', () => {
    const boat = wired({
      units: { a: sounder('DBT'), 'box-a': converter('DBT'), b: sounder('DPT'), 'box-b': converter('DPT'), screen },
      joins: {
        'wire-a': ['a.out', 'box-a.in'],
        'wire-b': ['b.out', 'box-b.in'],
        nav: ['box-a.n2k', 'box-b.n2k', 'screen.n2k'],
      },
      needs: [need('depth', 'screen')],
    });
    expect(one(boat)).toEqual(['better', 'offset', 'b.out', ['a.out']]);
  });

  it('is the heading in the reference that is wanted before one that has to be turned', () => {
    const compass = (sentence: string): UnitSketch => ({ ports: { out: { protocol: 'nmea0183', sends: [sentence] } } });
    const box = (sentence: string): UnitSketch => ({
      ports: { in: { protocol: 'nmea0183', hears: [sentence] }, ...bus([127250]) },
      turns: [turn('in', 'n2k', 'heading')],
    });
    const boat = wired({
      units: {
        a: compass('HDM'),
        'box-a': box('HDM'),
        b: compass('HDT'),
        'box-b': box('HDT'),
        gnss: { ports: bus([127258]) },
        screen,
      },
      joins: {
        'wire-a': ['a.out', 'box-a.in'],
        'wire-b': ['b.out', 'box-b.in'],
        nav: ['box-a.n2k', 'box-b.n2k', 'gnss.n2k', 'screen.n2k'],
      },
      needs: [need('heading', 'screen', { reference: 'true' })],
    });
    expect(one(boat)).toEqual(['better', 'reference', 'b.out', ['a.out']]);
  });

  it('is the unit made to measure before what is built into a screen, and a screen before nothing', () => {
    const own: UnitSketch = { ports: bus([129025], [129025]) };
    const boat = wired({
      units: { gnss: { ports: bus([129025]) }, screen: own },
      joins: { nav: ['gnss.n2k', 'screen.n2k'] },
      needs: [need('position', 'screen')],
    });
    const kinds = { gnss: 'position-antenna', screen: 'display' };
    expect(one(ofKinds(boat, kinds))).toEqual(['better', 'sensor', 'gnss.n2k', ['screen.n2k']]);
  });

  it('rests on a manual before it rests on a typical sheet', () => {
    const gnss = (source: 'typical' | 'manual'): UnitSketch => ({ ports: bus([129025]), source });
    const boat = wired({
      units: { a: gnss('typical'), b: gnss('manual'), screen },
      joins: { nav: ['a.n2k', 'b.n2k', 'screen.n2k'] },
      needs: [need('position', 'screen')],
    });
    expect(one(boat)).toEqual(['better', 'rests', 'b.n2k', ['a.n2k']]);
  });

  it('is every sender of alerts: none of them is one too many', () => {
    const alarm: UnitSketch = { ports: bus([126983]) };
    const boat = wired({
      units: { a: alarm, b: alarm, screen },
      joins: { nav: ['a.n2k', 'b.n2k', 'screen.n2k'] },
      needs: [need('alerts', 'screen')],
    });
    expect(one(boat)).toEqual(['all', undefined, 'a.n2k', ['b.n2k']]);
    expect(sourcesOn(boat).settings.filter(({ does }) => does === 'choose')).toEqual([]);
  });
});

const twoScreens: Sketch = {
  units: {
    a: { ports: bus([{ pgn: 127245, everyMs: 1000 }]) },
    b: { ports: bus([{ pgn: 127245, everyMs: 1000 }]) },
    helm: screen,
    fly: screen,
  },
  joins: { nav: ['a.n2k', 'b.n2k', 'helm.n2k', 'fly.n2k'] },
  needs: [need('rudder', 'helm'), need('rudder', 'fly')],
};

describe('one source for the whole boat', () => {
  it('is proposed where several screens take a reading from several', () => {
    expect(sourcesOn(wired(twoScreens)).sources.map(told)).toEqual([
      ['boat', 'name', 'a.n2k', ['b.n2k']],
      ['boat', 'name', 'a.n2k', ['b.n2k']],
    ]);
  });

  it('is not the one that reaches one screen more but is worse at all others', () => {
    const boat = wired({
      units: {
        good: { ports: bus([{ pgn: 127245, everyMs: 100 }]) },
        poor: { ports: { ...bus([{ pgn: 127245, everyMs: 1000 }]), out: { protocol: 'nmea0183', sends: ['RSA'] } } },
        helm: screen,
        fly: screen,
        old: { ports: { in: { protocol: 'nmea0183', hears: ['RSA'] } } },
      },
      joins: { nav: ['good.n2k', 'poor.n2k', 'helm.n2k', 'fly.n2k'], wire: ['poor.out', 'old.in'] },
      needs: [need('rudder', 'helm'), need('rudder', 'fly'), need('rudder', 'old')],
    });
    expect(sourcesOn(boat).sources.map((entry) => [entry.at, ...told(entry)])).toEqual([
      ['fly', 'boat', 'rate', 'good.n2k', ['poor.n2k']],
      ['helm', 'boat', 'rate', 'good.n2k', ['poor.n2k']],
      ['old', 'only', undefined, 'poor.out', []],
    ]);
  });

  it('gives way to what a person chose, at one screen and for the boat', () => {
    const boat: Boat = {
      ...wired(twoScreens),
      sources: [
        { reading: 'rudder', primary: 'b.n2k' },
        { reading: 'rudder', at: 'fly', primary: 'a.n2k' },
      ],
    };
    expect(sourcesOn(boat).sources.map((entry) => [entry.at, ...told(entry)])).toEqual([
      ['fly', 'owner-here', undefined, 'a.n2k', ['b.n2k']],
      ['helm', 'owner-boat', undefined, 'b.n2k', ['a.n2k']],
    ]);
  });

  it('is what to choose on each screen where two arrive', () => {
    const rows = sourcesOn(wired(twoScreens)).settings.filter(({ does }) => does === 'choose');
    expect(rows).toEqual(
      ['fly', 'helm'].map((kit) => ({
        id: `choose:${kit}:rudder`,
        kit,
        does: 'choose',
        readings: ['rudder'],
        at: [kit],
        source: 'a.n2k',
        backups: ['b.n2k'],
      })),
    );
  });
});

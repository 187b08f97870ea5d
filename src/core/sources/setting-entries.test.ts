import { describe, expect, it } from 'vitest';
import type { Boat } from '../boat/boat-schema.ts';
import { need, turn, type UnitSketch, wired } from '../readings/wired.test-helper.ts';
import type { SettingEntry } from '../sources-shape.ts';
import { sourcesOn } from './source-sketch.test-helper.ts';

const said = ({ does, port, kit, pgn, sentence, everyMs, enoughMs, why }: SettingEntry): string =>
  [does, port ?? kit, pgn ?? sentence, everyMs, enoughMs === undefined ? undefined : `(${enoughMs})`, why]
    .filter((part) => part !== undefined)
    .join(' ');
const rowsOf = (boat: Boat, ...does: SettingEntry['does'][]): string[] =>
  sourcesOn(boat)
    .settings.filter((row) => does.includes(row.does))
    .map(said);

const talker = (...sends: string[]): UnitSketch => ({ ports: { out: { protocol: 'nmea0183', sends } } });
const old = (...hears: string[]): UnitSketch => ({ ports: { in: { protocol: 'nmea0183', hears } } });
const onOneLine = (sends: string[], hears: string[], ...needs: Boat['needs']): Boat =>
  wired({
    units: { sensor: talker(...sends), screen: old(...hears) },
    joins: { wire: ['sensor.out', 'screen.in'] },
    needs,
  });

describe('a line of sentences', () => {
  it('has those switched on that somebody relies on, and the speed of both ends', () => {
    const boat = onOneLine(['DPT', 'MTW'], ['DPT', 'MTW'], need('depth', 'screen', { everyMs: 2000 }));
    expect(rowsOf(boat, 'send', 'stop')).toEqual(['send sensor.out DPT 1000 (2000)']);
    const speeds = sourcesOn(boat).settings.filter(({ does }) => does === 'speed');
    expect(speeds.map(({ port, baud }) => [port, baud])).toEqual([
      ['screen.in', 4800],
      ['sensor.out', 4800],
    ]);
  });

  it('takes DPT before DBT, MWV before VWR, HDG before HDM and VTG before RMC (MS-87, one converter handbook)', () => {
    const all = ['DBS', 'DBT', 'DPT', 'VWR', 'MWV', 'HDM', 'HDG', 'RMC', 'VTG'];
    const readings = ['depth', 'wind-apparent', 'heading', 'course-speed-ground'] as const;
    const boat = onOneLine(all, all, ...readings.map((reading) => need(reading, 'screen')));
    expect(rowsOf(boat, 'send').map((row) => row.split(' ')[2])).toEqual(['DPT', 'HDG', 'MWV', 'VTG']);
    const doubled = rowsOf(boat, 'stop').filter((row) => row.endsWith('doubled'));
    expect(doubled.map((row) => row.split(' ').slice(2).join(' '))).toEqual([
      'DBS doubled',
      'DBT doubled',
      'HDM doubled',
      'VWR doubled',
    ]);
  });

  it('that would be 83.5 % full is told to leave out what nobody needs, and no more than that (MS-78, 80 % to plan for)', () => {
    const sends = ['HDG', 'MWV', 'VHW', 'DPT', 'RMC'];
    const needs = [
      need('heading', 'screen', { everyMs: 100 }),
      need('wind-apparent', 'screen'),
      need('depth', 'screen'),
    ];
    const boat = onOneLine(sends, sends, ...needs, need('speed-water', 'screen'));
    expect(rowsOf(boat, 'stop')).toEqual(['stop sensor.out RMC line-full']);
  });

  it('that all is needed of and that is too full sends no faster than is enough', () => {
    const sends = ['HDG', 'MWV', 'VHW', 'DPT', 'RMC'];
    const others = (['wind-apparent', 'depth', 'speed-water', 'position'] as const).map((id) => need(id, 'screen'));
    const boat = onOneLine(sends, sends, need('heading', 'screen', { everyMs: 500 }), ...others);
    expect(rowsOf(boat, 'send')[1]).toBe('send sensor.out HDG 500 (500)');
    expect(rowsOf(boat, 'stop')).toEqual([]);
  });

  it('brings a pilot APB and RMB both, however much one of them says (practice-pilot-sentences)', () => {
    const sends = ['APB', 'RMB', 'XTE'];
    const boat = onOneLine(sends, sends, need('cross-track', 'screen'), need('route', 'screen'));
    expect(rowsOf(boat, 'send').map((row) => row.split(' ')[2])).toEqual(sends);
    expect(rowsOf(boat, 'stop')).toEqual([]);
  });

  it('keeps a sentence that some listener takes the reading in by alone, though it has no need entered', () => {
    const boat = (...hears: string[]): Boat =>
      wired({
        units: { sensor: talker('HDG', 'HDM'), screen: old('HDG', 'HDM'), radar: old(...hears) },
        joins: { wire: ['sensor.out', 'screen.in', 'radar.in'] },
        needs: [need('heading', 'screen')],
      });
    const doubled = (one: Boat) => rowsOf(one, 'stop').filter((row) => row.endsWith('doubled'));
    expect(doubled(boat('HDM', 'HDG'))).toEqual(['stop sensor.out HDM doubled']);
    expect(doubled(boat('HDM'))).toEqual([]);
  });

  it('is spared the satellites in view (practice-satellite-sentences)', () => {
    const boat = onOneLine(['GGA', 'GSA', 'GSV'], ['GGA'], need('position', 'screen'));
    expect(rowsOf(boat, 'stop')).toEqual(['stop sensor.out GSA satellites', 'stop sensor.out GSV satellites']);
  });
});

const bus = (sends: UnitSketch['ports'][string]['sends'], hears: number[] = []): UnitSketch['ports'] => ({
  n2k: { protocol: 'nmea2000', ...(sends === undefined ? {} : { sends }), hears },
});

describe('what to set on a bus', () => {
  it('is every message that brings the reading the chosen way; a second sender stands by', () => {
    const boat = wired({
      units: {
        a: { ports: bus([129025, 129029]) },
        b: { ports: bus([129025]) },
        screen: { ports: bus([], [129025, 129029]) },
      },
      joins: { nav: ['a.n2k', 'b.n2k', 'screen.n2k'] },
      needs: [need('position', 'screen', { everyMs: 1000 })],
    });
    expect(rowsOf(boat, 'send', 'stop', 'stand-by')).toEqual([
      'send a.n2k 129025 100 (1000)',
      'send a.n2k 129029 1000 (1000)',
      'send b.n2k 129025 100 (1000)',
      'stand-by b.n2k doubled',
    ]);
  });

  it('is nothing through a 0183 output for engines, tanks and a second rudder (MS-86, practice)', () => {
    const sender: UnitSketch = {
      ports: bus([{ pgn: 127245, instance: 0 }, { pgn: 127245, instance: 1 }, { pgn: 127488, instance: 0 }, 127505]),
    };
    const box: UnitSketch = {
      ports: { ...bus([], [127245, 127488, 127505]), out: { protocol: 'nmea0183', sends: ['RSA', 'RPM'] } },
      turns: [turn('n2k', 'out', 'rudder', 'engine', 'fuel-level')],
    };
    const boat = wired({
      units: { sender, box, screen: old('RSA', 'RPM') },
      joins: { nav: ['sender.n2k', 'box.n2k'], wire: ['box.out', 'screen.in'] },
      needs: [
        need('rudder', 'screen'),
        need('rudder', 'screen', { instance: 1 }),
        need('engine', 'screen'),
        need('fuel-level', 'screen'),
      ],
    });
    expect(sourcesOn(boat).sources.map(({ reading, instance }) => [reading, instance])).toEqual([
      ['rudder', undefined],
    ]);
    expect(rowsOf(boat, 'send').map((row) => row.split(' ')[2])).toEqual(['RSA', '127245']);
  });

  it('is the names of other ships too, which come in messages of their own (practice-ais-static)', () => {
    const boat = wired({
      units: {
        ais: { ports: bus([129038, 129039, 129794, 129809]) },
        screen: { ports: bus([], [129038, 129039, 129794]) },
      },
      joins: { nav: ['ais.n2k', 'screen.n2k'] },
      needs: [need('ais-targets', 'screen')],
    });
    expect(rowsOf(boat, 'send').map((row) => row.split(' ')[2])).toEqual(['129038', '129039', '129794', '129809']);
  });

  it('enters the offset of a depth once: at the sender whose message brings it, else at the screen (MS-84, field lists)', () => {
    const chain = (sentence: string): Boat =>
      wired({
        units: {
          sounder: talker(sentence),
          box: {
            ports: { in: { protocol: 'nmea0183', hears: [sentence] }, ...bus([128267]) },
            turns: [turn('in', 'n2k', 'depth')],
          },
          screen: { ports: bus([], [128267]) },
        },
        joins: { wire: ['sounder.out', 'box.in'], nav: ['box.n2k', 'screen.n2k'] },
        needs: [need('depth', 'screen')],
      });
    expect(rowsOf(chain('DPT'), 'offset', 'no-offset')).toEqual([
      'no-offset box',
      'no-offset screen',
      'offset sounder.out',
    ]);
    expect(rowsOf(chain('DBT'), 'offset', 'no-offset')).toEqual(['offset screen']);
  });

  it('is true or magnetic at a screen that wants one, and at a sensor that may send either while all agree', () => {
    const boat = (...references: ('true' | 'magnetic')[]): Boat =>
      wired({
        units: {
          compass: { ports: bus([127250, 127258]) },
          ...Object.fromEntries(references.map((_, at) => [`screen-${at}`, { ports: bus([], [127250, 127258]) }])),
        },
        joins: { nav: ['compass.n2k', ...references.map((_, at) => `screen-${at}.n2k`)] },
        needs: references.map((reference, at) => need('heading', `screen-${at}`, { reference })),
      });
    expect(rowsOf(boat('true', 'true'), 'reference')).toEqual([
      'reference compass.n2k',
      'reference screen-0',
      'reference screen-1',
    ]);
    expect(rowsOf(boat('true', 'magnetic'), 'reference')).toEqual(['reference screen-0', 'reference screen-1']);
  });
});

describe('a converter', () => {
  it('passes on what is relied on, and gives a unit nothing back that it has from it', () => {
    const twoWay: UnitSketch = {
      ports: {
        in: { protocol: 'nmea0183', hears: ['VHW'] },
        out: { protocol: 'nmea0183', sends: ['VHW'] },
        ...bus([128259], [128259]),
      },
      turns: [turn('in', 'n2k', 'speed-water'), turn('n2k', 'out', 'speed-water')],
    };
    const display: UnitSketch = {
      ports: { talks: { protocol: 'nmea0183', sends: ['VHW'] }, hears: { protocol: 'nmea0183', hears: ['VHW'] } },
    };
    const boat = wired({
      units: { display, box: twoWay, screen: { ports: bus([], [128259]) } },
      joins: { to: ['display.talks', 'box.in'], back: ['box.out', 'display.hears'], nav: ['box.n2k', 'screen.n2k'] },
      needs: [need('speed-water', 'screen')],
    });
    const rows = sourcesOn(boat).settings.filter(({ does }) => does === 'pass' || does === 'no-echo');
    expect(rows.map(({ does, port, to, readings }) => [does, port, to, readings])).toEqual([
      ['pass', 'box.in', 'box.n2k', ['speed-water']],
      ['no-echo', 'box.in', 'box.out', ['speed-water']],
    ]);
  });

  it('makes no heading of what a log without a compass says (practice-log-headings)', () => {
    const box: UnitSketch = {
      ports: { in: { protocol: 'nmea0183', hears: ['VHW', 'HDM'] }, ...bus([127250, 128259]) },
      turns: [turn('in', 'n2k', 'speed-water', 'heading')],
    };
    const boat = (...sends: string[]): Boat =>
      wired({
        units: { log: talker(...sends), box, screen: { ports: bus([], [127250, 128259]) } },
        joins: { wire: ['log.out', 'box.in'], nav: ['box.n2k', 'screen.n2k'] },
        needs: [need('speed-water', 'screen')],
      });
    expect(rowsOf(boat('VHW'), 'no-heading')).toEqual(['no-heading box.in VHW']);
    expect(rowsOf(boat('VHW', 'HDM'), 'no-heading')).toEqual([]);
  });
});

it('numbers to set are those the file gives at a bus, and those proposed in place of what stands', () => {
  const tank = (instance: number): UnitSketch => ({
    ports: bus([{ reading: 'fuel-level' }]),
    kit: { instances: [{ port: 'n2k', reading: 'fuel-level', instance }] },
  });
  const boat = wired({ units: { a: tank(1), b: tank(1) }, joins: { nav: ['a.n2k', 'b.n2k'] } });
  const rows = sourcesOn(boat).settings.filter(({ does }) => does === 'number');
  expect(rows.map(({ port, instance, was }) => [port, instance, was])).toEqual([
    ['a.n2k', 1, undefined],
    ['b.n2k', 0, 1],
  ]);
});

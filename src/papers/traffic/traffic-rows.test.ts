import { expect, test } from 'vitest';
import { indexBoat } from '../../core/boat/boat-index.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import { joinsOf } from '../../core/joins/joins-of.ts';
import { planTraffic } from '../../core/plan-traffic.ts';
import { turn, wired } from '../../core/readings/wired.test-helper.ts';
import { tableCsv } from '../table/table-csv.ts';
import { trafficList } from './traffic-list.ts';
import { trafficRows, waitCaution } from './traffic-rows.ts';
import { trafficPaper, trafficText } from './traffic-text.ts';

const path = 'ports.n2k.sends.127250.everyMs';
const boat: Boat = {
  ...wired({
    units: {
      compass: {
        ports: { n2k: { protocol: 'nmea2000', sends: [127250, { pgn: 127257, everyMs: 100 }] } },
        kit: { name: 'Compass', changes: [{ path, value: 200, how: 'seen' }] },
      },
      ais: { ports: { n2k: { protocol: 'nmea2000', sends: [129038, 129794] } }, kit: { name: 'AIS' } },
      wind: { ports: { out: { protocol: 'nmea0183', sends: ['MWV'] } }, kit: { name: 'Wind' } },
      mux: {
        ports: {
          in: { protocol: 'nmea0183', hears: ['MWV'] },
          spare: { protocol: 'nmea0183', hears: ['MWV'] },
          out: { protocol: 'nmea0183', role: 'talk' },
        },
        turns: [turn('in', 'out', 'wind-apparent'), turn('spare', 'out', 'wind-apparent')],
        kit: { name: 'Multiplexer' },
      },
      ear: { ports: { in: { protocol: 'nmea0183', hears: ['MWV'] } } },
    },
    joins: { nav: ['compass.n2k', 'ais.n2k'], first: ['wind.out', 'mux.in'], second: ['mux.out', 'ear.in'] },
  }),
  waters: 'coast',
};
const index = indexBoat(boat);
const plan = planTraffic({ index, joins: joinsOf(index, 1) });
const rows = trafficRows(boat, plan);

test('a bus is told with its load, its ships and whose choice its marks are; its senders the fullest first', () => {
  const [nav] = rows.buses;
  expect(nav?.senders.map(({ name, share }) => [name, share === 1])).toEqual([
    ['Compass', true],
    ['AIS', false],
  ]);
  expect(nav?.fact).toMatch(/^\d+\.\d % expected, \d+\.\d % at the worst$/);
  expect(nav?.marksPct).toEqual([30, 50, 70]);
  expect(nav?.says.join(' ')).toContain('as in a coast');
  expect(nav?.says.join(' ')).toContain('They are our choice');
  expect(nav?.isOver).toBe(false);
});

test('a message says how often it comes and by whom; one changed for its unit says so, and the unit too', () => {
  const [compass, ais] = rows.buses[0]?.senders ?? [];
  expect(compass?.isChanged).toBe(true);
  expect(compass?.messages.map(({ code, rate }) => [code, rate.says])).toEqual([
    ['PGN 127250', 'every 200 ms, changed for this unit; usually every 100 ms'],
    ['PGN 127257', 'every 100 ms; usually every 1 s'],
  ]);
  expect(ais?.messages.map(({ rate }) => [rate.says, rate.isOwn])).toEqual([
    ['50.4 a minute, of other ships', false],
    ['4.4 a minute, of other ships', false],
  ]);
  expect(compass?.messages[0]?.wait).toMatch(/^\d\.\d ms$/);
});

test('a 0183 line is told by its talkers, and what is passed on by where it begins', () => {
  const mux = rows.lines.find(({ talker }) => talker === 'mux.out');
  expect(mux?.fact).toBe('6 % of 4800 baud, 27 characters a second, 2 inputs together; plan 80 % at most');
  expect(mux?.messages[0]?.rate).toMatchObject({ says: 'every 1 s, passed on from Wind', isOwn: false });
});

test('the text keeps to 80 columns, and the paper says when waits do not hold', () => {
  const [text, paper] = [trafficText(boat, plan).join('\n'), trafficPaper(boat, plan)];
  expect(text).toContain('TRAFFIC');
  expect(paper.replaceAll(/\s+/g, ' ')).toContain(waitCaution);
  for (const line of [...text.split('\n'), ...paper.split('\n')]) expect(line.length).toBeLessThanOrEqual(80);
});

test('a boat without a bus or a line has nothing to say', () => {
  expect(trafficText(boat, { traffic: { waters: 'quiet', buses: [], lines: [] } })).toEqual([]);
});

test('the CSV has a row a message and a row a sentence', () => {
  const [header, ...lines] = tableCsv(trafficList(boat, plan)).trimEnd().split(/\r?\n/);
  expect(header).toContain('wait fed singly ms');
  expect(lines).toHaveLength(4 + 2);
  const columns = header?.split(',').length ?? 0;
  expect(lines.filter((line) => line.split(',').length < columns)).toEqual([]);
});

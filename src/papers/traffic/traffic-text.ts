import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { textLines } from '../../core/units/text-lines.ts';
import { keepUnits } from '../lists/print-figure.ts';
import { type BusRows, type LineRows, type MessageRow, trafficRows, waitCaution } from './traffic-rows.ts';

const width = 80;

/** Senders the plan's text names; the paper has them all. */
const mostNamed = 3;

const lines = (words: string, lead = ''): string[] => textLines(keepUnits(words), { width, lead });

const fullest = ({ senders }: BusRows): string =>
  senders
    .slice(0, mostNamed)
    .map(({ name, load }) => `${name} ${load}`)
    .join('; ');

const past = (isOver: boolean): string => (isOver ? '  <- past its mark' : '');

/** What the plan's text says of traffic: each bus with those who send most, each 0183 line. */
export const trafficText = (boat: Boat, plan: Pick<Plan, 'traffic'>): string[] => {
  const { buses, lines: talkers } = trafficRows(boat, plan);
  if (buses.length === 0 && talkers.length === 0) return [];
  return [
    'TRAFFIC',
    ...buses.flatMap((bus) => lines(`${bus.name}: ${bus.fact}. Most: ${fullest(bus)}.${past(bus.isOver)}`, '- ')),
    ...talkers.flatMap(({ name, fact, isOver }) => lines(`${name}: ${fact}.${past(isOver)}`, '- ')),
  ];
};

const messageLines = ({ what, code, rate, load, wait }: MessageRow): string[] =>
  lines(
    `${what === code ? what : `${code}, ${what}`}: ${rate.says}. ${load}${wait === undefined ? '' : `, waits ${wait}`}.`,
    '    ',
  );

const busLines = ({ name, fact, says, senders }: BusRows): string[] => [
  `BUS ${name}`,
  ...lines(`${fact}.`),
  ...says.flatMap((words) => lines(words)),
  ...senders.flatMap((sender) => [
    '',
    ...lines(`${sender.name}: ${sender.load}`),
    ...sender.messages.flatMap(messageLines),
  ]),
];

const talkerLines = ({ name, fact, messages }: LineRows): string[] => [
  ...lines(`${name}: ${fact}.`),
  ...messages.flatMap(messageLines),
];

/** Everything there is to say of traffic as text of 80 columns: each bus by sender and message, each 0183 line by sentence. */
export const trafficPaper = (boat: Boat, plan: Pick<Plan, 'traffic'>): string => {
  const { buses, lines: talkers } = trafficRows(boat, plan);
  const parts = [
    [`TRAFFIC, ${boat.name}`],
    ...(buses.length === 0 ? [] : [lines(waitCaution)]),
    ...buses.map(busLines),
    ...(talkers.length === 0 ? [] : [['NMEA 0183', ...talkers.flatMap((talker) => ['', ...talkerLines(talker)])]]),
  ];
  return `${parts
    .map((part) => part.join('\n'))
    .join('\n\n')
    .trimEnd()}\n`;
};

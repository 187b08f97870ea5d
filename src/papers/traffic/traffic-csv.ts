import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { messageName } from '../cards/form-words.ts';
import { csvText } from '../lists/csv.ts';

const header = [
  'on',
  'sent by',
  'port',
  'message',
  'name',
  'begins at',
  'how many',
  'every ms',
  'rate by',
  'usual ms',
  'frames',
  'frames a second',
  'characters',
  'characters a second',
  'worst %',
  'wait ms',
  'wait fed singly ms',
] as const;

const figure = (value: number | undefined): string => (value === undefined ? '' : String(Number(value.toFixed(4))));

/** Every message on every bus and every sentence on every 0183 line, as CSV; of a sentence `worst %` is its share of the line. */
export const trafficCsv = (boat: Boat, { traffic }: Pick<Plan, 'traffic'>): string => {
  const names = new Map(boat.kit.map(({ id, name }) => [id, name]));
  const nameOf = (port: string): string => names.get(port.split('.')[0] ?? '') ?? port;
  const buses = traffic.buses.flatMap(({ bus, senders }) =>
    senders.flatMap(({ port, messages }) =>
      messages.map((sent) => [
        bus,
        nameOf(port),
        port,
        String(sent.pgn),
        messageName(sent) ?? '',
        sent.from ?? port,
        String(sent.count),
        figure(sent.everyMs),
        sent.rate,
        figure(sent.usualMs),
        String(sent.frames),
        figure(sent.framesPerS),
        '',
        '',
        figure(sent.worstPct),
        figure(sent.waitMs),
        figure(sent.waitFedSinglyMs),
      ]),
    ),
  );
  const lines = traffic.lines.flatMap(({ talker, joins, charsPerS, sharePct, sentences }) =>
    sentences.map((said) => [
      joins.join(' '),
      nameOf(talker),
      talker,
      said.sentence,
      messageName(said) ?? '',
      said.from,
      '1',
      figure(said.everyMs),
      said.rate,
      '',
      '',
      '',
      String(said.chars),
      figure(said.charsPerS),
      figure((sharePct * said.charsPerS) / charsPerS),
      '',
      '',
    ]),
  );
  return csvText([header, ...buses, ...lines]);
};

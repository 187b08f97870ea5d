import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { messageName } from '../cards/form-words.ts';
import type { ListTable } from '../table/list-table.ts';

const columns: ListTable['columns'] = [
  { id: 'on', head: 'on', kind: 'label', share: 0.9, once: true },
  { id: 'by', head: 'sent by', share: 2, once: true },
  { id: 'port', head: 'port', kind: 'label', printed: false },
  { id: 'message', head: 'message', kind: 'label', share: 0.9 },
  { id: 'name', head: 'name', share: 2.4 },
  { id: 'from', head: 'begins at', kind: 'label', printed: false },
  { id: 'count', head: 'how many', kind: 'figure', share: 0.7 },
  { id: 'every', head: 'every', unit: 'ms', kind: 'figure' },
  { id: 'rate-by', head: 'rate by', printed: false },
  { id: 'usual', head: 'usual', unit: 'ms', kind: 'figure', printed: false },
  { id: 'frames', head: 'frames', kind: 'figure', share: 0.8 },
  { id: 'frames-per-s', head: 'frames a second', kind: 'figure' },
  { id: 'chars', head: 'characters', kind: 'figure' },
  { id: 'chars-per-s', head: 'characters a second', kind: 'figure' },
  { id: 'worst', head: 'worst', unit: '%', kind: 'figure', share: 0.8 },
  { id: 'wait', head: 'wait', unit: 'ms', kind: 'figure', share: 0.8 },
  { id: 'wait-singly', head: 'wait fed singly', unit: 'ms', kind: 'figure', printed: false },
];

/** Every message on every bus and every sentence on every 0183 line; of a sentence `worst` is its share of the line. */
export const trafficList = (boat: Boat, { traffic }: Pick<Plan, 'traffic'>): ListTable => {
  const names = new Map(boat.kit.map(({ id, name }) => [id, name]));
  const nameOf = (port: string): string => names.get(port.split('.')[0] ?? '') ?? port;
  const buses = traffic.buses.flatMap(({ bus, senders }) =>
    senders.flatMap(({ port, messages }) =>
      messages.map((sent) => [
        bus,
        nameOf(port),
        port,
        String(sent.pgn),
        messageName(sent),
        sent.from ?? port,
        sent.count,
        sent.everyMs,
        sent.rate,
        sent.usualMs,
        sent.frames,
        sent.framesPerS,
        undefined,
        undefined,
        sent.worstPct,
        sent.waitMs,
        sent.waitFedSinglyMs,
      ]),
    ),
  );
  const lines = traffic.lines.flatMap(({ talker, joins, charsPerS, sharePct, sentences }) =>
    sentences.map((said) => [
      joins.join(' '),
      nameOf(talker),
      talker,
      said.sentence,
      messageName(said),
      said.from,
      1,
      said.everyMs,
      said.rate,
      undefined,
      undefined,
      undefined,
      said.chars,
      said.charsPerS,
      (sharePct * said.charsPerS) / charsPerS,
      undefined,
      undefined,
    ]),
  );
  return {
    id: 'traffic',
    title: 'Traffic',
    says: 'Every message on every bus and every sentence on every line, how often it comes and how long it may wait.',
    columns,
    rows: [...buses, ...lines],
    empty: 'Nothing is known to be sent.',
  };
};

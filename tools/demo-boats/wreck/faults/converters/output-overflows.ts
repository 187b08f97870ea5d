import type { Port, Sheet } from '../../../../../src/core/boat/sheet.ts';
import type { Fault } from '../../fault.ts';

const read = { source: 'manual', sourceNote: 'Read aboard in its manual, chapter on connections.' } as const;
const plugs: Sheet['plugs'] = [{ id: 'wires', connector: 'leads', gender: 'none' }];
const inputs = ['in-1', 'in-2', 'in-3', 'in-4'];
const line = (id: string, role: Port['role'], more: Partial<Port> = {}): Port => ({
  id,
  onPlug: 'wires',
  protocol: 'nmea0183',
  baud: 4800,
  role,
  ...more,
});
const sheets: Sheet[] = [
  {
    ...read,
    id: 'slow-mux',
    name: 'Multiplexer with a slow output, as its manual has it',
    kind: 'multiplexer',
    plugs,
    ports: [...inputs.map((id) => line(id, 'listen')), line('out', 'talk')],
    turns: inputs.map((fromPort) => ({ fromPort, toPort: 'out', carries: [{ reading: 'heading' }] })),
  },
  {
    ...read,
    id: 'half-full',
    name: 'Sensor that fills half a line, as its manual has it',
    kind: 'sensor',
    plugs,
    ports: [line('out', 'talk', { sends: [{ sentence: 'HDG', everyMs: 104 }] })],
  },
  {
    ...read,
    id: 'funnel-ear-sheet',
    name: 'Repeater, as its manual has it',
    kind: 'repeater',
    plugs,
    ports: [line('in', 'listen')],
  },
];

/** Four inputs at half load through an output of 4800 baud. */
export const convertersOutputOverflows: Fault = {
  rule: 'converters/output-overflows',
  about: ['funnel.out'],
  plant: (boat) => ({
    ...boat,
    sheets: [...boat.sheets, ...sheets],
    kit: [
      ...boat.kit,
      { id: 'funnel', name: 'multiplexer with a slow output', sheet: 'slow-mux', fate: 'stays', place: 'helm' },
      { id: 'funnel-ear', name: 'repeater behind it', sheet: 'funnel-ear-sheet', fate: 'stays', place: 'helm' },
      ...inputs.map((id) => ({
        id: `half-${id}`,
        name: `sensor on ${id}`,
        sheet: 'half-full',
        fate: 'stays' as const,
        place: 'helm',
      })),
    ],
    joins: [
      ...boat.joins,
      ...[
        ...inputs.map((id) => ({ id: `pair-half-${id}`, from: `half-${id}`, to: 'funnel', input: id })),
        { id: 'pair-funnel', from: 'funnel', to: 'funnel-ear', input: 'in' },
      ].map(({ id, from, to, input }) => ({
        id,
        kind: 'nmea0183' as const,
        members: [
          { kit: from, port: 'out', as: 'talk' as const },
          { kit: to, port: input, as: 'listen' as const },
        ],
        hold: 'fixed' as const,
      })),
    ],
  }),
};

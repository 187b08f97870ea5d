import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { indexBoat } from '../../boat/boat-index.ts';
import type { Port } from '../../boat/sheet.ts';
import { joinsOf } from '../../joins/joins-of.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { outputOverflows } from './output-overflows.ts';

const plugs = [{ id: 'wires', connector: 'leads', gender: 'none' as const }];
const inputs = ['in-1', 'in-2', 'in-3', 'in-4'];
const line = (id: string, role: Port['role'], more: Partial<Port> = {}): Port => ({
  id,
  onPlug: 'wires',
  protocol: 'nmea0183',
  baud: 4800,
  role,
  ...more,
});

/** Four talkers, each at about half of a 4800 line, into a multiplexer whose output has the speed given. */
const found = (outBaud: number) => {
  const boat = aBoat().add({
    sheets: [
      {
        id: 'mux',
        name: 'Multiplexer',
        kind: 'multiplexer',
        source: 'typical',
        plugs,
        ports: [...inputs.map((id) => line(id, 'listen')), line('out', 'talk', { baud: outBaud })],
        turns: inputs.map((fromPort) => ({ fromPort, toPort: 'out', carries: [{ reading: 'heading' as const }] })),
      },
      {
        id: 'talker',
        name: 'Talker',
        kind: 'sensor',
        source: 'typical',
        plugs,
        ports: [line('out', 'talk', { sends: [{ sentence: 'HDG', everyMs: 104 }] })],
      },
      { id: 'ear', name: 'Ear', kind: 'repeater', source: 'typical', plugs, ports: [line('in', 'listen')] },
    ],
    kit: [
      { id: 'the-mux', name: 'The multiplexer', sheet: 'mux', fate: 'comes', place: 'helm' },
      { id: 'the-ear', name: 'The repeater', sheet: 'ear', fate: 'comes', place: 'helm' },
      ...inputs.map((id) => ({ id: `talker-${id}`, name: id, sheet: 'talker', fate: 'stays' as const, place: 'helm' })),
    ],
    joins: [
      ...inputs.map((id) => ({ id: `pair-${id}`, from: `talker-${id}`, to: 'the-mux', input: id })),
      { id: 'pair-out', from: 'the-mux', to: 'the-ear', input: 'in' },
    ].map(({ id, from, to, input }) => ({
      id,
      kind: 'nmea0183' as const,
      members: [
        { kit: from, port: 'out', as: 'talk' as const },
        { kit: to, port: input, as: 'listen' as const },
      ],
      hold: 'fixed' as const,
    })),
  }).boat;
  const joins = joinsOf(indexBoat(boat), 1).map((join) => ({ ...join, lines: [] }));
  return findingsOf(outputOverflows, { boat, plan: { joins } });
};

test('four 4800 inputs at half load overflow a 4800 output: 200 per cent (BB-49, computed from the formula)', () => {
  const [finding] = found(4800);
  expect(finding).toMatchObject({ level: 'fault', about: ['the-mux.out'], limit: { value: 80 } });
  expect(finding?.measured?.value).toBeCloseTo(200, -1);
});

test('the same inputs fill a quarter of a 38400 output and pass (BB-49)', () => {
  expect(found(38_400)).toEqual([]);
});

import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import type { Boat } from '../../boat/boat-schema.ts';
import type { Port } from '../../boat/sheet.ts';
import type { JoinEntry } from '../../plan-shape.ts';
import { told } from '../told.test-helper.ts';
import { wiringRules } from './index.ts';

const of = (id: string, joins: JoinEntry[], boat: Boat = aBoat().boat) =>
  told(wiringRules, `wiring/${id}`, { boat, plan: { joins } });

type Member = JoinEntry['members'][number];
const member = (port: string, as: Member['as']): Member => {
  const [kit = '', own = ''] = port.split('.');
  return { kit, port: own, as };
};
/** A join in which the listeners stand before the talkers, so that a rule that takes the first it meets is found out. */
const pair = (talkers: string[], listeners: string[], kind: JoinEntry['kind'] = 'nmea0183'): JoinEntry => ({
  ...{ id: 'pair', kind, from: 'file', lines: [] },
  members: [
    ...listeners.map((port) => member(port, 'listen')),
    member('compass.n2k', 'both'),
    ...talkers.map((port) => member(port, 'talk')),
  ],
});
const withPorts = (own: (id: string) => Partial<Port>) =>
  aBoat().change((draft) => {
    for (const sheet of draft.sheets) for (const port of sheet.ports) Object.assign(port, own(port.id));
  });

test('speeds that differ are told of listeners of a 0183 pair, with both', () => {
  const { boat } = withPorts((id) => (id === 'out' ? { baud: 38_400 } : {}));
  const joins = (kind?: JoinEntry['kind']) => [pair(['converter.out'], ['radio.gps-in', 'display.gone'], kind)];
  const said = (listener: string, name: string) =>
    `fault converter.out ${listener}: Converter for the old radio talks at 38400 baud and ${name} listens at 4800; nothing is heard, and no error is shown. [4800 baud / 38400] Set both to the same speed, or put a converter between them.`;
  expect(of('baud-differs', joins(), boat)).toEqual([
    said('display.gone pair', 'Helm display'),
    said('pair radio.gps-in', 'Old radio'),
  ]);
  expect(of('baud-differs', joins('single-wire'), boat)).toEqual([]);
  expect(of('baud-differs', [pair([], ['radio.gps-in'])], boat)).toEqual([]);
});

test('lines of two kinds are told of the two units that meet, and a port nobody describes is none', () => {
  const lines = (talks: Port['line'], listens: Port['line']) =>
    withPorts((id) => ({
      ...(id === 'n2k' && { line: 'rs232' as const }),
      ...(id === 'out' && talks && { line: talks }),
      ...(id === 'gps-in' && listens && { line: listens }),
    })).boat;
  const found = (talks: Port['line'], listens: Port['line'], kind?: JoinEntry['kind'], talkers = ['converter.out']) =>
    of('line-kinds-meet', [pair(talkers, ['radio.gps-in', 'display.gone'], kind)], lines(talks, listens));
  const units = 'converter.out pair radio.gps-in: Converter for the old radio and Old radio';
  const bare = [
    `fault ${units} are joined bare, one an RS-232 port, the other not. That it works is luck, and it can hurt the port. [ / ] Put an isolator or a proper converter between the two.`,
  ];
  expect(found('rs232', 'differential')).toEqual(bare);
  expect(found('single-ended', 'rs232')).toEqual(bare);
  const meet = `advice ${units} meet with different lines: one a pair, the other a single wire. There is one right way to join them. [ / ]`;
  expect(found('differential', 'single-ended')[0]).toContain(meet);
  expect(found('single-ended', 'differential')[0]).toContain(meet);
  expect([...found('rs232', 'rs232'), ...found('rs232', 'differential', 'analog')]).toEqual([]);
  expect([
    ...found('rs232', 'differential', 'nmea0183', []),
    ...found('rs232', 'differential', 'nmea0183', ['gnss.gone']),
  ]).toEqual([]);
});

test('a full line is told of its talker by characters and share: at 80 % not yet, at 100 % not yet a fault', () => {
  const full = (everyMs: number, kind?: JoinEntry['kind']) => {
    const { boat } = withPorts((id) => (id === 'out' ? { baud: 1000, sends: [{ sentence: 'HDG', everyMs }] } : {}));
    return of('line-too-full', [pair(['converter.out'], ['radio.gps-in'], kind)], boat);
  };
  const said = (level: string, chars: number) => [
    `${level} converter.out: Converter for the old radio sends ${chars} characters a second on a line of 1000 baud: ${chars} % of what it carries; plan for 80 % at most. [${chars} % / 80] Switch off sentences nobody on this line needs, send them less often, or use a faster line if the listener can.`,
  ];
  expect(full(312.5)).toEqual([]);
  expect(full(250)).toEqual(said('doubt', 100));
  expect(full(125)).toEqual(said('fault', 200));
  expect(full(125, 'single-wire')).toEqual([]);
});

test('a listener that sends elsewhere is no talker of the line, and one output of two inputs is told by another rule', () => {
  const { boat } = withPorts((id) =>
    id === 'out' || id === 'gps-in' ? { baud: 1000, sends: [{ sentence: 'HDG', everyMs: 125 }] } : {},
  );
  expect(of('line-too-full', [pair([], ['radio.gps-in'])], boat)).toEqual([]);
  const inputs = (...ids: string[]) =>
    aBoat()
      .with(boat)
      .sheet('converter-0183', (sheet) => {
        const [, out] = sheet.ports;
        if (out === undefined) return;
        sheet.ports.push(...ids.map((id): typeof out => ({ ...out, id, role: 'listen', sends: [] })));
        sheet.turns = ids.map((fromPort) => ({ fromPort, toPort: 'out', carries: [{ reading: 'position' }] }));
      }).boat;
  const found = (...ids: string[]) => of('line-too-full', [pair(['converter.out'], ['radio.gps-in'])], inputs(...ids));
  expect([found('in-a').length, found('in-a', 'in-b').length]).toEqual([1, 0]);
});

test('listeners of one output are told with their number, those of other lines not counted', () => {
  const listeners = ['a.in', 'b.in', 'c.in', 'd.in'];
  const found = (kind?: JoinEntry['kind']) => of('too-many-listeners', [pair(['converter.out'], listeners, kind)]);
  expect(found()).toEqual([
    'doubt converter.out: Converter for the old radio feeds 4 listeners from one output; where its manual is silent, 3 is what one bears. The last of them may drop out. [4 listeners / 3] Put a buffer or a multiplexer between, or look the number up in its manual and set the limit with that page as the reason.',
  ]);
  expect(found('single-wire')).toEqual([]);
});

test('two talkers at one input are told by all units, also on a single wire, and not on other lines', () => {
  const found = (kind?: JoinEntry['kind']) =>
    of('two-talkers-on-one-pair', [
      {
        ...pair(['gnss.out'], ['radio.in'], kind),
        members: [member('radio.in', 'listen'), member('gnss.out', 'talk')],
      },
      { ...pair(['b.out'], ['radio.in'], kind), members: [member('b.out', 'talk'), member('radio.in', 'listen')] },
    ]);
  const said = [
    'fault b.out gnss.out radio.in: GNSS on the stern rail and b both talk into the same input of Old radio; both arrive garbled. [ / ] Use a second input, or a multiplexer that joins the two.',
  ];
  expect([found(), found('single-wire'), found('analog')]).toEqual([said, said, []]);
  expect(of('two-talkers-on-one-pair', [pair(['gnss.out', 'converter.out'], [])])).toEqual([]);
});

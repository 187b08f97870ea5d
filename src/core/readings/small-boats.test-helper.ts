import fc from 'fast-check';
import type { Boat, Need } from '../boat/boat-schema.ts';
import type { Sends, Turn } from '../boat/sheet.ts';
import { type PortSketch, type Sketch, type UnitSketch, wired } from './wired.test-helper.ts';

const mostly = <Plain, Value>(plain: Plain, seldom: fc.Arbitrary<Value>) =>
  fc.oneof({ weight: 3, arbitrary: fc.constant(plain) }, { weight: 2, arbitrary: seldom });
const sentences = ['DBT', 'DPT', 'HDM', 'HDT', 'RSA'];
const some = <Value>(values: Value[]) => fc.subarray(values, { minLength: 2 });
const baud = mostly(4800, fc.constantFrom(4800, 38400));
const line = fc
  .tuple(baud, mostly('differential' as const, fc.constantFrom('differential' as const, 'rs232' as const)))
  .map(([speed, wires]) => ({ baud: speed, line: wires }));
const busSends = fc
  .tuple(fc.constantFrom(undefined, 0, 1), fc.constantFrom(undefined, 100, 1000))
  .chain(([instance, everyMs]) =>
    some<Sends>([
      { pgn: 128267 },
      { pgn: 127250, ...(everyMs === undefined ? {} : { everyMs }) },
      { pgn: 127245, ...(instance === undefined ? {} : { instance }) },
      { pgn: 127245, instance: 1 },
    ]),
  );
const busPort = fc.record({ sends: busSends, hears: some([128267, 127250, 127245]) });
const portOf = fc.oneof(
  busPort.map((said): PortSketch => ({ protocol: 'nmea2000', ...said })),
  fc.tuple(some(sentences), line).map(([sends, wires]): PortSketch => ({ protocol: 'nmea0183', sends, ...wires })),
  fc.tuple(some(sentences), line).map(([hears, wires]): PortSketch => ({ protocol: 'nmea0183', hears, ...wires })),
);
const reading = fc.constantFrom('depth' as const, 'heading' as const, 'rudder' as const);
const partly = fc.record(
  {
    instance: fc.constantFrom(0, 1),
    asInstance: fc.constantFrom(0, 1),
    loses: fc.subarray(['instance', 'reference', 'offset', 'rate'] as const, { maxLength: 2 }).map((list) => [...list]),
  },
  { requiredKeys: [] },
);
const asCarried = mostly({}, partly);
const carry = fc.tuple(reading, asCarried).map(([name, more]) => ({ reading: name, ...more }));
const letters = ['a', 'b', 'c'] as const;
const letter = fc.constantFrom(...letters);
const turnOf = fc.record({
  fromPort: letter,
  toPort: letter,
  carries: fc.array(carry, { minLength: 1, maxLength: 3 }),
});

/** Anything at all on one to three ports. */
const wild = fc
  .tuple(
    fc.array(portOf, { minLength: 1, maxLength: 3 }),
    fc.array(turnOf, { maxLength: 4 }),
    fc.nat(9),
    fc.option(fc.tuple(reading, fc.constantFrom(0, 1)), { nil: undefined, freq: 4 }),
  )
  .map(([ports, turns, luck, own]): UnitSketch => {
    const named = Object.fromEntries(ports.map((port, at) => [letters[at] ?? 'a', port]));
    const isTurn = ({ fromPort, toPort }: Turn): boolean =>
      fromPort !== toPort && named[fromPort] !== undefined && named[toPort] !== undefined;
    const isBusThrough = luck < 5 && ports[0]?.protocol === 'nmea2000' && ports[1]?.protocol === 'nmea2000';
    return {
      ports: named,
      turns: turns.filter(isTurn),
      ...(isBusThrough ? { inLine: ['a', 'b'] } : {}),
      ...(own === undefined ? {} : { kit: { instances: [{ port: 'a', reading: own[0], instance: own[1] }] } }),
    };
  });
/** A sensor with a few things to say. */
const source = fc.oneof(
  fc
    .tuple(some(sentences), baud)
    .map(([sends, speed]): UnitSketch => ({ ports: { a: { protocol: 'nmea0183', sends, baud: speed } } })),
  busSends.map((sends): UnitSketch => ({ ports: { a: { protocol: 'nmea2000', sends } } })),
);
/** A converter that hears and sends everything and carries it more or less whole. */
const converter = fc
  .tuple(fc.constantFrom('in', 'out', 'in', 'out', 'copy', 'bridge'), asCarried, asCarried, asCarried)
  .map(([way, depth, heading, rudder]): UnitSketch => {
    const isFromBus = way === 'out' || way === 'bridge';
    const isToBus = way === 'in' || way === 'bridge';
    const bus = [128267, 127250, 127245];
    return {
      ports: {
        a: { protocol: isFromBus ? 'nmea2000' : 'nmea0183', hears: isFromBus ? bus : sentences },
        b: { protocol: isToBus ? 'nmea2000' : 'nmea0183', sends: isToBus ? bus : sentences },
      },
      turns: [
        {
          fromPort: 'a',
          toPort: 'b',
          carries: [
            { reading: 'depth', ...depth },
            { reading: 'heading', ...heading },
            { reading: 'rudder', ...rudder },
          ],
        },
      ],
    };
  });
const screen = fc.constantFrom<UnitSketch>(
  { ports: { a: { protocol: 'nmea2000', hears: [128267, 127250, 127245] } } },
  { ports: { a: { protocol: 'nmea0183', hears: sentences } } },
);
const units = fc
  .tuple(
    fc.array(source, { minLength: 1, maxLength: 2 }),
    fc.array(converter, { minLength: 1, maxLength: 3 }),
    fc.array(screen, { minLength: 1, maxLength: 2 }),
    fc.array(wild, { maxLength: 1 }),
  )
  .map((parts) => parts.flat());

const asked = fc.record(
  {
    instance: fc.constantFrom(0, 1),
    everyMs: fc.constantFrom(100, 1000),
    reference: fc.constantFrom('true' as const, 'magnetic' as const, 'keel' as const),
    withOffset: fc.boolean(),
  },
  { requiredKeys: [] },
);
const wanted = fc.tuple(reading, mostly({}, asked)).map(([name, more]) => ({ reading: name, ...more }));

/** Small boats in which much is joined to much. */
const sketchOf: fc.Arbitrary<Sketch> = fc
  .tuple(
    units,
    fc.array(fc.nat(11), { minLength: 18, maxLength: 18 }),
    fc.array(wanted, { minLength: 2, maxLength: 4 }),
  )
  .map(([parts, nets, wants]): Sketch => {
    const named = Object.fromEntries(parts.map((entry, at) => [`u${at}`, entry]));
    const all = Object.entries(named).flatMap(([kit, { ports }]) =>
      Object.entries(ports).map(([port, { protocol, sends }]) => ({ id: `${kit}.${port}`, protocol, sends })),
    );
    const picks = (id: string): number => nets[all.findIndex((port) => port.id === id)] ?? 0;
    const onBus = (bus: number): string[] =>
      all
        .filter((port) => port.protocol === 'nmea2000' && (picks(port.id) % 4 === 0 ? 1 : 0) === bus)
        .map(({ id }) => id);
    const wired0183 = all.filter((port) => port.protocol === 'nmea0183');
    const talkers = wired0183.filter(({ sends }) => sends !== undefined).map(({ id }) => id);
    const listeners = wired0183.filter(({ sends }) => sends === undefined).map(({ id }) => id);
    const wires = talkers.map((talker, at) => [
      `wire-${at}`,
      [talker, ...listeners.filter((id) => picks(id) % talkers.length === at)],
    ]);
    const joins: Record<string, string[]> = { nav: onBus(0), ship: onBus(1), ...Object.fromEntries(wires) };
    return {
      units: named,
      joins: Object.fromEntries(
        Object.entries(joins).filter(([id, members]) => members.length > (id.startsWith('wire') ? 1 : 0)),
      ),
      needs: Object.entries(named).flatMap(([at, { ports, turns }]) => {
        const isScreen = turns === undefined || turns.length !== 1;
        const isDeaf = Object.values(ports).every(({ hears }) => hears === undefined);
        return isDeaf || !isScreen ? [] : wants.map((want) => ({ ...want, at, must: true }));
      }),
    };
  });

/** What tells one need from another in the plan. */
export const needKey = ({
  reading: what,
  instance,
  at,
}: Pick<Need, 'reading' | 'at'> & { instance?: number }): string => [what, instance, at].join(' ');

/** Small boats in which much is joined to much, each need once. */
export const smallBoats: fc.Arbitrary<Boat> = sketchOf.map((sketch) => {
  const boat = wired(sketch);
  return { ...boat, needs: [...new Map(boat.needs.map((need) => [needKey(need), need])).values()] };
});

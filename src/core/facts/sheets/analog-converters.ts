import type { Signal } from '../../boat/sensor.ts';
import type { Plug, Port, Sheet } from '../../boat/sheet.ts';
import type { ReadingId } from '../reading-ids.ts';
import {
  analogIn,
  busPlug,
  busPort,
  busPower,
  leads,
  readings,
  safeFromCompass,
  sends,
  typicalSheet,
} from './parts.ts';

interface Input {
  readonly port: string;
  readonly plug: string;
  readonly of: readonly ReadingId[];
  /** what it takes, and feeds it with */
  readonly takes?: Omit<Signal, 'port'>;
}

interface Converter {
  readonly id: string;
  readonly name: string;
  readonly len: number;
  readonly pgns: readonly number[];
  readonly inputs: readonly Input[];
}

const signalsOf = (inputs: readonly Input[]): Pick<Sheet, 'sensor'> => {
  const signals = inputs.flatMap(({ port, takes }) => (takes === undefined ? [] : [{ port, ...takes }]));
  return signals.length === 0 ? {} : { sensor: { signals } };
};

/** A box that makes messages of what bare sensors measure; its sheet must match the sensor's, else nothing is read. */
const converter = ({ id, name, len, pgns, inputs }: Converter): Sheet =>
  typicalSheet(['practice-sent-messages', 'memory-sensor-signals', 'practice-sheet-gaps'], {
    id,
    name,
    kind: 'converter',
    plugs: [busPlug, ...inputs.map(({ plug }): Plug => leads(plug))],
    ports: [
      busPort(len, { sends: sends(...pgns) }),
      ...inputs.map(({ port, plug, of }): Port => analogIn(port, plug, ...of)),
    ],
    turns: inputs.map(({ port, of }) => ({ fromPort: port, toPort: 'n2k', carries: readings(...of) })),
    power: [busPower({ typicalA: (len * 4) / 100, maxA: (len * 5) / 100 })],
    compassSafe: safeFromCompass(0.08),
    ...signalsOf(inputs),
  });

/** Converters from analog sensors to the bus. */
export const analogConverters: readonly Sheet[] = [
  converter({
    id: 'converter-analog-dst',
    name: 'Converter from an analog depth and log transducer to the bus, typical',
    len: 3,
    pgns: [128259, 128267, 128275, 130316],
    inputs: [
      { port: 'echo', plug: 'element', of: ['depth'], takes: { frequenciesKHz: [200], powerW: 100 } },
      {
        port: 'log',
        plug: 'wheel',
        of: ['speed-water', 'log-distance', 'water-temperature'],
        takes: { feed: { leastV: 5, mostV: 8 }, pulses: { least: 4, most: 7 } },
      },
    ],
  }),
  converter({
    id: 'converter-analog-wind',
    name: 'Converter from an analog masthead unit to the bus, typical',
    len: 2,
    pgns: [130306],
    inputs: [
      {
        port: 'head',
        plug: 'vane',
        of: ['wind-apparent'],
        takes: { feed: { leastV: 8, mostV: 8 }, vanes: ['sine-cosine'] },
      },
    ],
  }),
  converter({
    id: 'converter-analog-rudder',
    name: 'Converter from a rudder potentiometer to the bus, typical',
    len: 2,
    pgns: [127245],
    inputs: [{ port: 'signal', plug: 'potentiometer', of: ['rudder'] }],
  }),
  converter({
    id: 'converter-analog-engine',
    name: 'Converter from the senders of an older engine or gearbox to the bus, typical',
    len: 2,
    pgns: [127488, 127489, 127493],
    inputs: [
      { port: 'engine', plug: 'engine-senders', of: ['engine'] },
      { port: 'gear', plug: 'gear-senders', of: ['transmission'] },
    ],
  }),
  // Metres of wire or chain are none of the readings, so its messages are its maker's own.
  converter({
    id: 'converter-pulse',
    name: 'Pulse counter for the bus: metres of wire or chain, typical',
    len: 2,
    pgns: [65_280],
    inputs: [{ port: 'pulses', plug: 'counter', of: [] }],
  }),
];

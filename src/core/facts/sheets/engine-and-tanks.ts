import type { Sheet } from '../../boat/sheet.ts';
import { busPlug, busPort, busPower, readings, safeFromCompass, sends, signalPlug, typicalSheet } from './parts.ts';

const engineGateway = typicalSheet(['practice-sent-messages', 'practice-sheet-gaps'], {
  id: 'engine-gateway',
  name: 'Engine gateway, engine bus to navigation bus, typical',
  kind: 'gateway',
  plugs: [
    busPlug,
    {
      id: 'engine',
      connector: 'engine-plug',
      gender: 'male',
      conductors: [
        { label: 'CAN high', colour: 'as marked', ports: ['engine-bus'], role: 'can-high' },
        { label: 'CAN low', colour: 'as marked', ports: ['engine-bus'], role: 'can-low' },
      ],
    },
  ],
  ports: [
    busPort(2, { sends: sends(127488, 127489, 127493) }),
    {
      id: 'engine-bus',
      onPlug: 'engine',
      protocol: 'engine-can',
      isolated: true,
      role: 'listen',
      hears: readings('engine', 'transmission'),
    },
  ],
  turns: [{ fromPort: 'engine-bus', toPort: 'n2k', carries: readings('engine', 'transmission') }],
  power: [busPower({ typicalA: 0.1, maxA: 0.1 })],
  compassSafe: safeFromCompass(0.08),
  ipCode: 'IP67',
});

const engineCanSource = typicalSheet(['practice-sheet-gaps'], {
  id: 'engine-can-source',
  name: 'Diesel engine with its own engine bus, typical',
  kind: 'engine',
  plugs: [{ id: 'loom', connector: 'engine-plug', gender: 'female' }],
  ports: [
    {
      id: 'engine-bus',
      onPlug: 'loom',
      protocol: 'engine-can',
      role: 'talk',
      sends: readings('engine', 'transmission').map((sent) => ({ ...sent, everyMs: 100 })),
    },
  ],
});

const inputs = ['in-1', 'in-2', 'in-3'] as const;

const tankAdapter = typicalSheet(['practice-sent-messages', 'practice-sheet-gaps'], {
  id: 'tank-adapter',
  name: 'Tank adapter for three resistive senders (two fuel, one water), typical',
  kind: 'tank-adapter',
  plugs: [busPlug, ...inputs.map((port) => signalPlug(`leads-${port}`, port))],
  ports: [
    busPort(2, { sends: sends(127505) }),
    ...inputs.map((id) => ({
      id,
      onPlug: `leads-${id}`,
      protocol: 'analog' as const,
      role: 'listen' as const,
      hears: readings('fuel-level', 'water-level'),
    })),
  ],
  turns: [
    { fromPort: 'in-1', toPort: 'n2k', carries: [{ reading: 'fuel-level', asInstance: 0 }] },
    { fromPort: 'in-2', toPort: 'n2k', carries: [{ reading: 'fuel-level', asInstance: 1 }] },
    { fromPort: 'in-3', toPort: 'n2k', carries: [{ reading: 'water-level', asInstance: 0 }] },
  ],
  power: [busPower({ typicalA: 0.1, maxA: 0.1 })],
  compassSafe: safeFromCompass(0.08),
});

const tankSenderResistive = typicalSheet(['practice-sheet-gaps'], {
  id: 'tank-sender-resistive',
  name: 'Tank sender, 10 to 180 ohm, typical',
  kind: 'tank-sender',
  plugs: [signalPlug('lead', 'signal')],
  ports: [{ id: 'signal', onPlug: 'lead', protocol: 'analog', role: 'talk', sends: readings('fuel-level') }],
});

const batteryShuntBus = typicalSheet(['practice-sent-messages', 'practice-sheet-gaps'], {
  id: 'battery-shunt-bus',
  name: 'Battery monitor with a bus port, typical',
  kind: 'battery-monitor',
  plugs: [busPlug],
  ports: [busPort(1, { sends: sends(127506, 127508) })],
  power: [busPower({ typicalA: 0.05, maxA: 0.05 })],
});

/** Engines with their gateway, tanks with their adapter, the battery monitor. */
export const engineAndTanks: readonly Sheet[] = [
  engineGateway,
  engineCanSource,
  tankAdapter,
  tankSenderResistive,
  batteryShuntBus,
];

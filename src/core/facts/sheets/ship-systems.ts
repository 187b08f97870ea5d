import type { Hears, Port, Sends, Sheet } from '../../boat/sheet.ts';
import { shown } from './display-parts.ts';
import {
  busPlug,
  busPort,
  busPower,
  hears,
  leads,
  netPlug,
  netPort,
  ownPower,
  ownWatts,
  readings,
  safeFromCompass,
  sends,
  supplyPlug,
  supplyPort,
  typicalSheet,
} from './parts.ts';

const systemSources = ['practice-sent-messages', 'practice-sheet-gaps'] as const;

interface BusBox {
  readonly id: string;
  readonly name: string;
  readonly kind: string;
  readonly len: number;
  readonly sends?: Sends[];
  readonly hears?: Hears[];
}

/** A small box that lives on the bus alone. */
const busBox = ({ id, name, kind, len, ...more }: BusBox): Sheet =>
  typicalSheet(systemSources, {
    id,
    name,
    kind,
    plugs: [busPlug],
    ports: [busPort(len, more)],
    power: [busPower({ typicalA: (len * 4) / 100, maxA: (len * 5) / 100 })],
    compassSafe: safeFromCompass(0.3),
  });

/** The maker's own wire between a charger or an inverter and its gateway. */
const ownWire: Pick<Port, 'id' | 'onPlug' | 'protocol' | 'dialect'> = {
  id: 'wire',
  onPlug: 'link',
  protocol: 'single-wire',
  dialect: 'maker-b/1',
};
const wirePlug = { id: 'link', connector: 'maker-b-4', gender: 'female' } as const;

const chargerGateway = typicalSheet(systemSources, {
  id: 'charger-gateway',
  name: 'Gateway of a charger or an inverter to the bus, isolated, typical',
  kind: 'gateway',
  plugs: [busPlug, wirePlug],
  ports: [
    busPort(2, { sends: sends(127503, 127504, 127506, 127507, 127508, 127509) }),
    { ...ownWire, isolated: true, role: 'listen', hears: readings('charging', 'battery', 'ac-power') },
  ],
  turns: [{ fromPort: 'wire', toPort: 'n2k', carries: readings('charging', 'battery', 'ac-power') }],
  power: [busPower({ typicalA: 0.08, maxA: 0.1 })],
  compassSafe: safeFromCompass(0.3),
});

const charger = typicalSheet(['practice-sheet-gaps'], {
  id: 'charger-mains',
  name: "Battery charger with its maker's own wire, fed by the mains, typical",
  kind: 'charger',
  plugs: [wirePlug, { ...supplyPlug, id: 'output' }],
  ports: [
    { ...supplyPort, onPlug: 'output', role: 'talk' },
    { ...ownWire, role: 'talk', sends: readings('charging', 'battery') },
  ],
});

const inverter = typicalSheet(['practice-sheet-gaps'], {
  id: 'inverter-3kw',
  name: "Inverter 3 kW, 24 V, with its maker's own wire, typical",
  kind: 'inverter',
  plugs: [wirePlug, supplyPlug],
  ports: [supplyPort, { ...ownWire, role: 'talk', sends: readings('ac-power') }],
  power: [{ port: 'dc', typical: 15, max: 3300, unit: 'W', behaves: 'power', minV: 21, maxV: 32, fuseA: 200 }],
});

const inverterChargerBus = typicalSheet(systemSources, {
  id: 'inverter-charger-bus',
  name: 'Inverter and charger in one, 12 V, 2 kW, with a bus plug, typical',
  kind: 'charger',
  plugs: [busPlug, supplyPlug],
  ports: [supplyPort, busPort(1, { sends: sends(127503, 127504, 127506, 127507, 127508, 127509) })],
  power: [{ port: 'dc', typical: 15, max: 2200, unit: 'W', behaves: 'power', minV: 10.5, maxV: 16, fuseA: 300 }],
});

const solarChargerBus = typicalSheet(systemSources, {
  id: 'solar-charger-bus',
  name: 'Solar charge controller with a bus plug, typical',
  kind: 'charger',
  plugs: [busPlug, { ...supplyPlug, id: 'output' }],
  ports: [{ ...supplyPort, onPlug: 'output', role: 'talk' }, busPort(1, { sends: sends(127507, 127508) })],
});

const switchingModule = typicalSheet(systemSources, {
  id: 'switching-module',
  name: 'Digital switching module, eight outputs, 12 or 24 V, typical',
  kind: 'power-control',
  plugs: [busPlug, supplyPlug, leads('outputs')],
  ports: [supplyPort, busPort(1, { sends: sends(127501), hears: hears(127502) })],
  // Its own electronics only: what its outputs feed is counted where it is used.
  power: [ownWatts({ typicalW: 1.2, maxW: 2.4, minV: 10, fuseA: 30 })],
});

const dataRecorderBus = typicalSheet(['practice-sheet-gaps'], {
  id: 'data-recorder-bus',
  name: 'Recorder of everything on the bus, listens only, typical',
  kind: 'recorder',
  plugs: [busPlug, netPlug, supplyPlug],
  ports: [supplyPort, { ...busPort(1, { hears: shown }), role: 'listen' }, netPort({})],
  power: [ownPower({ typicalA: 0.3, maxA: 0.5, minV: 10, maxV: 32, fuseA: 1 })],
});

/** Power, switching, alarms and recording. */
export const shipSystems: readonly Sheet[] = [
  chargerGateway,
  charger,
  inverter,
  inverterChargerBus,
  solarChargerBus,
  switchingModule,
  dataRecorderBus,
  busBox({
    id: 'ac-monitor-bus',
    name: 'Monitor of the mains aboard, isolated input, typical',
    kind: 'power-monitor',
    len: 2,
    sends: sends(127503, 127504),
  }),
  busBox({
    id: 'switch-keypad-bus',
    name: 'Keypad for digital switching, typical',
    kind: 'switch-panel',
    len: 1,
    sends: sends(127502),
    hears: hears(127501),
  }),
  busBox({
    id: 'bilge-monitor-bus',
    name: 'Bilge level alarm for the bus, typical',
    kind: 'alarm',
    len: 1,
    sends: sends(126983, 126985),
  }),
  busBox({
    id: 'mob-receiver-bus',
    name: 'Receiver of man-overboard alarms, typical',
    kind: 'mob-unit',
    len: 2,
    sends: sends(127233),
  }),
  busBox({
    id: 'alarm-buzzer-bus',
    name: 'Alarm sounder for the bus, typical',
    kind: 'alarm',
    len: 1,
    hears: hears(126983, 126985, 127233),
  }),
];

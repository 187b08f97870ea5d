import type { RecordedFrame } from '../../../../../../tests/recordings/invented-bus.ts';
import { type InventedName, namePayload } from '../../../../../../tests/recordings/payloads.ts';
import { nameOfKind, plannedDevice } from '../../../../../../tests/recordings/planned-bus.ts';
import {
  addressOf,
  devicesBut,
  framesOf,
  otherwise,
  type Planted,
  reportOf,
  reportOn,
} from './on-gannet.test-helper.ts';

const monitor = (address: number) =>
  plannedDevice({
    kind: 'battery-monitor',
    address,
    sends: [{ pgn: 127_508, everyMs: 1500, numbers: [{ reading: 'battery', instance: 0 }] }],
  });

const claim = (address: number, name: InventedName, timeUs: number): RecordedFrame => ({
  timeUs: 1_700_000_000_000_000 + timeUs,
  id: 0x18_ee_ff_00 + address,
  data: namePayload(name),
});

const shunt = (): { address: number; name: InventedName } => {
  const address = addressOf('shunt');
  return { address, name: nameOfKind('battery-monitor', address) };
};

const withFrames = (more: readonly RecordedFrame[]): RecordedFrame[] =>
  [...framesOf(devicesBut()), ...more].sort((a, b) => a.timeUs - b.timeUs);

/** Faults of who is on the bus, under which address and number. */
export const plantedUnits: Readonly<Record<string, Planted>> = {
  'unit-silent': {
    report: () => reportOn(devicesBut().filter(({ address }) => address !== addressOf('depth-bus'))),
    finds: ['unit-silent'],
  },
  'unit-doubtful': {
    report: () =>
      reportOn(
        ['eng-gw-port', 'eng-gw-stbd'].reduce(
          (devices, unit) =>
            devices.map((device) =>
              device.address === addressOf(unit)
                ? plannedDevice({
                    kind: 'gateway',
                    address: device.address,
                    sends: [127_488, 127_489, 127_493].map((pgn) => ({
                      pgn,
                      everyMs: pgn === 127_489 ? 500 : 100,
                      numbers: [{ reading: 'engine', instance: 0 }],
                    })),
                  })
                : device,
            ),
          devicesBut(),
        ),
      ),
    finds: ['instance-shared', 'unit-doubtful', 'wrong-instance'],
  },
  'unit-unknown': {
    report: () =>
      reportOn([
        ...devicesBut(),
        plannedDevice({ kind: 'wind-sensor', address: 200, sends: [{ pgn: 130_306, everyMs: 100 }] }),
      ]),
    finds: ['unit-unknown'],
  },
  'wrong-instance': {
    report: () =>
      reportOn(
        devicesBut('shunt', (sends) =>
          sends.map((one) => ({ ...one, numbers: [{ reading: 'battery', instance: 3 }] })),
        ),
      ),
    finds: ['wrong-instance'],
  },
  'instance-shared': {
    report: () => reportOn([...devicesBut(), monitor(200)]),
    finds: ['instance-shared', 'unit-unknown'],
  },
  'address-fought': {
    report: () => {
      const { address, name } = shunt();
      const other = { ...name, unique: 999 };
      return reportOf(withFrames([claim(address, other, 4_000_000), claim(address, name, 4_001_000)]));
    },
    finds: ['address-fought', 'unit-unknown'],
  },
  'address-claimed-again': {
    report: () => {
      const { address, name } = shunt();
      return reportOf(withFrames([1, 2, 3, 4].map((second) => claim(address, name, second * 1_000_000))));
    },
    finds: ['address-claimed-again'],
  },
  'address-out-of-range': {
    report: () =>
      reportOn(
        devicesBut().map((device) => (device.address === addressOf('shunt') ? { ...device, address: 253 } : device)),
      ),
    finds: ['address-out-of-range'],
  },
  'sender-unclaimed': {
    report: () =>
      reportOn(
        devicesBut().map((device) => {
          const { name: _unclaimed, ...rest } = device;
          return device.address === addressOf('heading') ? rest : device;
        }),
      ),
    finds: ['sender-unclaimed'],
  },
  'depth-offset-wrong': {
    report: () => reportOn(devicesBut('depth-bus', otherwise(128_267, { values: { offset: 0 } }))),
    finds: ['depth-offset-wrong'],
  },
  'depth-offset-doubled': {
    report: () => reportOn(devicesBut('depth-bus', otherwise(128_267, { values: { offset: -1.3 } }))),
    finds: ['depth-offset-doubled'],
  },
};

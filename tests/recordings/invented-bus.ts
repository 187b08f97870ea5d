import { isFastPacket } from '../../src/core/facts/pgns.ts';
import { buildCanId } from '../../src/core/proof/readers/can-id.ts';
import { fastPacketFrames, type InventedName, littleEndian, namePayload, productPayload } from './payloads.ts';

export interface RecordedFrame {
  readonly timeUs: number;
  readonly id: number;
  readonly data: Uint8Array;
}

interface Sending {
  readonly pgn: number;
  readonly priority: number;
  readonly everyMs: number;
  /** bytes of the message, by how often it was sent before */
  readonly payload: (count: number) => Uint8Array;
}

export interface InventedDevice {
  readonly address: number;
  readonly name?: InventedName;
  readonly product?: { readonly model: string; readonly len: number };
  readonly sends: readonly Sending[];
}

const none16 = [0xffff, 2] as const;
const none8 = [0xff, 1] as const;

const sending = (pgn: number, priority: number, everyMs: number, payload: Sending['payload']): Sending => ({
  pgn,
  priority,
  everyMs,
  payload,
});

const gnss: InventedDevice = {
  address: 20,
  name: { unique: 11, makerCode: 2001, functionCode: 145, classCode: 60 },
  product: { model: 'POSITION SENSOR', len: 3 },
  sends: [
    sending(129_025, 2, 100, (n) => littleEndian([543_215_678 + n, 4], [2 ** 32 - 101_234_567 + n, 4])),
    sending(129_026, 2, 250, (n) => littleEndian([n & 0xff, 1], [0xfc, 1], [31_416, 2], [350, 2], none16)),
    sending(129_029, 3, 1000, () => new Uint8Array(43).fill(1)),
    sending(129_540, 6, 1000, () => new Uint8Array(3 + 12 * 12).fill(12)),
  ],
};

const compass: InventedDevice = {
  address: 35,
  name: { unique: 12, makerCode: 2002, functionCode: 140, classCode: 60 },
  product: { model: 'COMPASS', len: 2 },
  sends: [
    sending(127_250, 2, 100, (n) =>
      littleEndian([0xff, 1], [23_154 + (n % 50), 2], [0x7fff, 2], [0x7fff, 2], [0xfd, 1]),
    ),
    sending(127_251, 2, 100, (n) => littleEndian([0xff, 1], [n * 32, 4], [0xffffff, 3])),
  ],
};

const triducer = (address: number, unique: number, depth: number): InventedDevice => ({
  address,
  name: { unique, makerCode: 2003, functionCode: 136, classCode: 60 },
  product: { model: 'DEPTH SPEED', len: 1 },
  sends: [
    sending(128_267, 3, 1000, (n) => littleEndian([n & 0xff, 1], [depth, 4], [64_086, 2], none8)),
    sending(128_259, 2, 1000, (n) => littleEndian([n & 0xff, 1], [314, 2], none16, [0, 1], none16)),
    sending(130_316, 5, 2000, (n) => littleEndian([n & 0xff, 1], [0, 1], [0, 1], [288_150, 3], none16)),
  ],
});

const battery = (address: number, unique: number): InventedDevice => ({
  address,
  name: { unique, makerCode: 2004, functionCode: 170, classCode: 35 },
  product: { model: 'BATTERY MONITOR', len: 1 },
  sends: [sending(127_508, 6, 1500, () => littleEndian([1, 1], [1278, 2], [65_411, 2], none16, none8))],
});

const tanks: InventedDevice = {
  address: 52,
  name: { unique: 19, makerCode: 2004, functionCode: 150, classCode: 75 },
  sends: [0, 1].map((instance) =>
    sending(127_505, 6, 2500, () => littleEndian([instance, 1], [12_500, 2], [1200, 4], none8)),
  ),
};

const display: InventedDevice = {
  address: 3,
  name: { unique: 20, makerCode: 2001, functionCode: 130, classCode: 120 },
  product: { model: 'DISPLAY', len: 255 },
  sends: [
    sending(130_822, 3, 250, (n) => new Uint8Array(24).fill(n & 0x7f)),
    sending(126_993, 7, 60_000, () => littleEndian([60_000, 2], [0, 1], [255, 1], [2 ** 32 - 1, 4])),
  ],
};

const windWithoutClaim: InventedDevice = {
  address: 77,
  sends: [sending(130_306, 2, 100, (n) => littleEndian([n & 0xff, 1], [772, 2], [48_869, 2], [0xfa, 1], none16))],
};

/** Nine devices: two depth senders (one without echo), two battery monitors on one instance, one device without a claim. */
export const inventedDevices: readonly InventedDevice[] = [
  gnss,
  compass,
  triducer(36, 13, 1234),
  triducer(37, 14, 0xffff_ffff),
  battery(50, 17),
  battery(51, 18),
  tanks,
  display,
  windWithoutClaim,
];

const gapUs = 700;

interface Queued {
  readonly timeUs: number;
  readonly address: number;
  readonly pgn: number;
  readonly priority: number;
  readonly destination?: number;
  readonly payload: Uint8Array;
}

const requestOf = (pgn: number): Uint8Array => littleEndian([pgn, 3]);

const atPowerUp = (devices: readonly InventedDevice[]): Queued[] => {
  const asker = { address: display.address, pgn: 59_904, priority: 6, destination: 255 };
  const claims = devices.flatMap(({ address, name }): Queued[] =>
    name === undefined ? [] : [{ timeUs: 20_000, address, pgn: 60_928, priority: 6, payload: namePayload(name) }],
  );
  const products = devices.flatMap(({ address, product }): Queued[] =>
    product === undefined
      ? []
      : [{ timeUs: 320_000, address, pgn: 126_996, priority: 6, payload: productPayload(product) }],
  );
  return [
    { ...asker, timeUs: 10_000, payload: requestOf(60_928) },
    ...claims,
    { ...asker, timeUs: 310_000, payload: requestOf(126_996) },
    ...products,
  ];
};

const periodic = (devices: readonly InventedDevice[], seconds: number): Queued[] =>
  devices.flatMap(({ address, sends }) =>
    sends.flatMap(({ pgn, priority, everyMs, payload }, at) => {
      const times = Math.floor((seconds * 1000 - 500) / everyMs) + 1;
      return Array.from({ length: times }, (_unused, count) => ({
        timeUs: 500_000 + at * 1300 + address * 90 + count * everyMs * 1000,
        address,
        pgn,
        priority,
        payload: payload(count),
      }));
    }),
  );

/** Records the bus for some seconds from a given time: claims, product information when asked, then everything at its interval. */
export const recordBus = ({
  devices = inventedDevices,
  seconds,
  startUs = 1_700_000_000_000_000,
}: {
  devices?: readonly InventedDevice[];
  seconds: number;
  startUs?: number;
}): RecordedFrame[] => {
  const queue = [...atPowerUp(devices), ...periodic(devices, seconds)].sort((a, b) => a.timeUs - b.timeUs);
  const sequences = new Map<string, number>();
  let freeAtUs = 0;
  return queue.flatMap((message) => {
    const { pgn, priority, address, destination = 255, payload } = message;
    const key = `${pgn}/${address}`;
    const sequence = sequences.get(key) ?? 0;
    sequences.set(key, sequence + 1);
    const id = buildCanId({ priority, pgn, destination, source: address });
    return (isFastPacket(pgn) ? fastPacketFrames({ payload, sequence }) : [payload]).map((data) => {
      freeAtUs = Math.max(message.timeUs, freeAtUs + gapUs);
      return { timeUs: startUs + freeAtUs, id, data };
    });
  });
};

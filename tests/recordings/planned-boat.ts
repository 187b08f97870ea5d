import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { indexBoat } from '../../src/core/boat/boat-index.ts';
import { readBoat } from '../../src/core/boat/read-boat.ts';
import { plan } from '../../src/core/plan.ts';
import { unitsOnBus } from '../../src/core/proof/compare/match-senders.ts';
import type { Planned } from '../../src/core/proof/compare/planned-sends.ts';
import type { Watch } from '../../src/core/proof/compare/watch.ts';
import { emptyFrame } from '../../src/core/proof/readers/recorded-frame.ts';
import { type InventedDevice, type RecordedFrame, recordBus } from './invented-bus.ts';
import { type PlannedMessage, plannedDevice, type Values } from './planned-bus.ts';

const known = new Map<string, Planned>();

/** A demo boat with her plan; planned once for all tests of a file. */
export const plannedBoat = (name: string): Planned => {
  const before = known.get(name);
  if (before !== undefined) return before;
  const file = resolve(import.meta.dirname, '../../examples', name, `${name}.boat.json`);
  const boat = readBoat(readFileSync(file, 'utf8'));
  const planned = { index: indexBoat(boat), plan: plan(boat, new Map()) };
  known.set(name, planned);
  return planned;
};

/** The depth offset that is to be set in a unit, where the settings sheet has one for it. */
const depthOffset = ({ plan: { typed } }: Planned, unit: string): Values => {
  const due = typed.find(({ kit, what, of }) => kit === unit && what === 'depth-offset' && of === undefined);
  return due?.is === undefined ? {} : { offset: due.is };
};

/** What each unit of a bus sends where everything is as planned, with the kind of unit it is. */
export const plannedMessages = (
  planned: Planned,
  bus: string,
): Map<string, { readonly kind: string; readonly address: number; readonly sends: readonly PlannedMessage[] }> =>
  new Map(
    unitsOnBus(planned, bus).map(({ unit, kind, sends }, at) => {
      const due = sends.flatMap(({ message, numbers, everyMs }): PlannedMessage[] => {
        if (everyMs === undefined || typeof message === 'string') return [];
        const values = message === 128_267 ? { values: depthOffset(planned, unit) } : {};
        return [{ pgn: message, numbers, everyMs, ...values }];
      });
      return [unit, { kind, address: 10 + at, sends: due }];
    }),
  );

/** Invented devices that do on a bus exactly what the plan says, by unit. */
export const plannedDevices = (planned: Planned, bus: string): Map<string, InventedDevice> =>
  new Map([...plannedMessages(planned, bus)].map(([unit, said]) => [unit, plannedDevice(said)]));

/** What a recorder sees on a bus where everything is as planned. */
export const recordPlanned = (planned: Planned, bus: string, seconds = 12): RecordedFrame[] =>
  recordBus({ devices: [...plannedDevices(planned, bus).values()], seconds });

/** Feeds frames to a watch. */
export const watchFrames = (watch: Watch, frames: readonly RecordedFrame[]): void => {
  const taken = emptyFrame();
  for (const { timeUs, id, data } of frames) {
    Object.assign(taken, { timeUs, id, length: data.length });
    taken.data.set(data);
    watch.takeFrame(taken);
  }
};

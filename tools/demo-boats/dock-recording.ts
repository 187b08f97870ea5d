import { recordBus } from '../../tests/recordings/invented-bus.ts';
import { plannedBoat, plannedMessages } from '../../tests/recordings/planned-boat.ts';
import { type PlannedMessage, plannedDevice } from '../../tests/recordings/planned-bus.ts';
import { candumpBytes } from '../../tests/recordings/write-recording.ts';

const bus = 'nav';
const seconds = 8;
/** The battery monitor was never plugged in again. */
const silent = 'shunt';
/** Nobody set the starboard gateway to engine 1. */
const withOtherNumber = 'eng-gw-stbd';
/** The depth sensor still has the offset it came with. */
const withOtherOffset = 'depth-bus';
const offsetM = 0;
/** An old wind sensor hangs on the bus that the plan knows nothing of. */
const stranger = { kind: 'wind-sensor', address: 60, sends: [{ pgn: 130_306, everyMs: 100 }] };

const asFound = (unit: string, sends: readonly PlannedMessage[]): readonly PlannedMessage[] => {
  if (unit === withOtherNumber)
    return sends.map((one) => ({ ...one, numbers: one.numbers?.map((number) => ({ ...number, instance: 0 })) ?? [] }));
  if (unit === withOtherOffset) return sends.map((one) => ({ ...one, values: { ...one.values, offset: offsetM } }));
  return sends;
};

/**
 * Gannet’s bus as it was recorded at the dock on the first evening, with four things on it that are not as planned: to try out
 * what a recording tells. Invented, as she is.
 */
export const dockRecording = (): Uint8Array => {
  const planned = [...plannedMessages(plannedBoat('gannet'), bus)].filter(([unit]) => unit !== silent);
  const devices = planned.map(([unit, { sends, ...device }]) =>
    plannedDevice({ ...device, sends: asFound(unit, sends) }),
  );
  return candumpBytes(recordBus({ devices: [...devices, plannedDevice(stranger)], seconds }));
};

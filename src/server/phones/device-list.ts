import { createHash, randomBytes, randomInt, timingSafeEqual } from 'node:crypto';
import { UserError } from '../../core/boat/user-error.ts';
import { type Device, type DeviceFile, mostDevices } from './device-file.ts';

/** A paired phone as the laptop shows it. */
export type ShownDevice = Omit<Device, 'tokenHash'>;

/** The phones that may write into the boats of one folder. */
export interface DeviceList {
  readonly list: () => Promise<readonly ShownDevice[]>;
  /** adds a phone under a name of its own, and gives the token, which is kept nowhere here */
  readonly pair: (name: string) => Promise<{ readonly token: string; readonly device: ShownDevice }>;
  /** the phone that holds a token; undefined where none does, or does no longer */
  readonly holderOf: (token: string) => Promise<ShownDevice | undefined>;
  /** from the next request on the phone is a stranger; false where there is none of that id */
  readonly revoke: (id: string) => Promise<boolean>;
}

const tokenBytes = 32;
/** When a phone was seen is written down so often at most. */
const writeSeenEveryMs = 300_000;

const hashOf = (token: string): Buffer => createHash('sha256').update(token).digest();

const idLetters = 'abcdefghijkmnpqrstuvwxyz23456789';
const newId = (): string => Array.from({ length: 8 }, () => idLetters[randomInt(idLetters.length)]).join('');

/** The name, or the name with the least number that no other phone has. */
const freeName = (name: string, devices: readonly Device[]): string => {
  const taken = new Set(devices.map((device) => device.name));
  if (!taken.has(name)) return name;
  let number = 2;
  while (taken.has(`${name} ${number}`)) number += 1;
  return `${name} ${number}`;
};

const shown = ({ id, name, pairedAtMs, lastSeenMs }: Device, seenMs: number | undefined): ShownDevice => ({
  id,
  name,
  pairedAtMs,
  lastSeenMs: Math.max(lastSeenMs, seenMs ?? 0),
});

const tooMany = new UserError({
  says: `There are ${mostDevices} paired phones already.`,
  whatToDo: 'Revoke one that is no longer used.',
});

/** Looked through to the end whatever is found, so that the time tells nothing. */
const found = (devices: readonly Device[], token: string): Device | undefined => {
  const hash = hashOf(token);
  let holder: Device | undefined;
  for (const device of devices) if (timingSafeEqual(Buffer.from(device.tokenHash, 'hex'), hash)) holder = device;
  return holder;
};

/** The paired phones in a file. `nowMs` is the day’s clock, in milliseconds since 1970. */
export const deviceList = (file: DeviceFile, nowMs: () => number): DeviceList => {
  const seenMs = new Map<string, number>();
  let seenWrittenMs = nowMs();
  let turn: Promise<unknown> = Promise.resolve();

  const seenWritten = (devices: readonly Device[]): Device[] =>
    devices.map((device) => ({ ...device, lastSeenMs: shown(device, seenMs.get(device.id)).lastSeenMs }));

  /** One change after the other, each made of what the file then holds. */
  const change = <Result>(made: (devices: readonly Device[]) => readonly [readonly Device[], Result]) => {
    const done = turn.then(async () => {
      const [devices, result] = made(await file.read());
      await file.write(seenWritten(devices));
      return result;
    });
    turn = done.catch(() => undefined);
    return done;
  };

  const noteSeen = (id: string): void => {
    seenMs.set(id, nowMs());
    if (nowMs() - seenWrittenMs < writeSeenEveryMs) return;
    seenWrittenMs = nowMs();
    // that it was seen is worth no failed request
    change((devices) => [devices, undefined]).catch(() => undefined);
  };

  return {
    list: async () => (await file.read()).map((device) => shown(device, seenMs.get(device.id))),
    pair: (wished) => {
      const token = randomBytes(tokenBytes).toString('base64url');
      return change((devices) => {
        if (devices.length >= mostDevices) throw tooMany;
        const now = nowMs();
        const device = { id: newId(), name: freeName(wished, devices), pairedAtMs: now, lastSeenMs: now };
        const tokenHash = hashOf(token).toString('hex');
        return [[...devices, { ...device, tokenHash }], { token, device }];
      });
    },
    holderOf: async (token) => {
      const device = found(await file.read(), token);
      if (device === undefined) return undefined;
      noteSeen(device.id);
      return shown(device, seenMs.get(device.id));
    },
    revoke: (id) =>
      change((devices) => {
        seenMs.delete(id);
        const kept = devices.filter((device) => device.id !== id);
        return [kept, kept.length < devices.length];
      }),
  };
};

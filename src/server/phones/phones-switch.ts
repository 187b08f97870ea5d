import { UserError } from '../../core/boat/user-error.ts';
import type { BoatFolder } from '../../node/boat-folder.ts';
import type { StaticFile } from '../static-files.ts';
import { bodySlots } from './body-slots.ts';
import { deviceFile } from './device-file.ts';
import { deviceList, type ShownDevice } from './device-list.ts';
import { ownAddresses } from './own-addresses.ts';
import { pairingCodes } from './pairing-codes.ts';
import type { PhoneDesk } from './phone-desk.ts';
import { rateLimit } from './rate-limit.ts';
import { type Patience, type PhoneListener, servePhones } from './serve-phones.ts';
import { type MakeSheet, sheetShelf } from './sheet-shelf.ts';

/** How phones stand, for the laptop. */
export interface PhonesTold {
  readonly on: boolean;
  /** of the listener for phones; absent while off */
  readonly port?: number;
  /** where a phone opens the page, an address for each network; empty while off, or in no network */
  readonly addresses: readonly string[];
  /** the code that pairs the next phone, while one stands */
  readonly code?: { readonly code: string; readonly leftMs: number };
  readonly devices: readonly ShownDevice[];
  /** connections of phones: how many stand, and how many were turned away since phones are let in */
  readonly connections: { readonly open: number; readonly turnedAway: number };
}

/** Phones let in or not, at the laptop’s wish. */
export interface PhonesSwitch {
  /** @throws UserError when the port is taken, or the page for phones is not built */
  readonly turnOn: () => Promise<void>;
  readonly turnOff: () => Promise<void>;
  readonly told: () => Promise<PhonesTold>;
  /** false while phones are not let in */
  readonly giveCode: () => Promise<boolean>;
  readonly revoke: (id: string) => Promise<boolean>;
  /** lets phones in no more, and ends whatever was begun for them */
  readonly close: () => Promise<void>;
}

/** What phones are served from. */
export interface PhonesParts {
  readonly boats: BoatFolder;
  /** the folder that holds the boats, in which the paired phones are kept */
  readonly folder: string;
  readonly port: number;
  readonly files: () => Promise<ReadonlyMap<string, StaticFile>>;
  readonly makeSheet: MakeSheet;
  readonly patience?: Patience;
}

const hourMs = 3_600_000;
const bodiesAtOnce = 6;

const clock = (): number => performance.now();

const newDesk = ({ boats, folder, makeSheet }: PhonesParts): PhoneDesk => ({
  boats,
  devices: deviceList(deviceFile(folder), Date.now),
  codes: pairingCodes({ nowMs: clock }),
  sheets: sheetShelf(makeSheet, { nowMs: clock }),
  entryBytes: rateLimit({ perSender: 2_000_000, inAll: 8_000_000, spanMs: hourMs, nowMs: clock }),
  pictures: rateLimit({ perSender: 400, inAll: 1500, spanMs: hourMs, nowMs: clock }),
  beginBody: bodySlots(bodiesAtOnce),
});

const portTaken = (port: number): UserError =>
  new UserError({
    says: `Port ${port}, at which phones would be let in, is taken by another program.`,
    whatToDo: `Stop that program, or choose another port: npm start -- --lan-port ${port + 1}.`,
  });

const notBuilt = new UserError({
  says: 'The page for phones is not built.',
  whatToDo: 'Build the app again: npm start does it.',
});

/** Starts with no phone let in. */
export const phonesSwitch = (parts: PhonesParts): PhonesSwitch => {
  const desk = newDesk(parts);
  const own = ownAddresses(clock);
  let listener: PhoneListener | undefined;
  let turn: Promise<unknown> = Promise.resolve();

  const inTurn = (change: () => Promise<void>): Promise<void> => {
    const done = turn.then(change);
    turn = done.catch(() => undefined);
    return done;
  };

  const begin = async (): Promise<void> => {
    if (listener !== undefined) return;
    const files = await parts.files();
    if (!files.has('/')) throw notBuilt;
    // a damaged list of phones is told of now, not to the first phone
    await desk.devices.list();
    try {
      const { port, patience } = parts;
      const waits = patience === undefined ? {} : { patience };
      listener = await servePhones({ files, desk, own, port, nowMs: clock, ...waits });
    } catch (cause) {
      if ((cause as NodeJS.ErrnoException).code === 'EADDRINUSE') throw portTaken(parts.port);
      throw cause;
    }
  };

  const end = async (): Promise<void> => {
    desk.codes.drop();
    await listener?.close();
    listener = undefined;
  };

  return {
    turnOn: () => inTurn(begin),
    turnOff: () => inTurn(end),
    told: async () => {
      const code = desk.codes.standing();
      const port = listener?.port;
      return {
        on: port !== undefined,
        ...(port === undefined ? {} : { port }),
        addresses: port === undefined ? [] : own().addresses.map((address) => `http://${address}:${port}`),
        ...(code === undefined ? {} : { code }),
        devices: await desk.devices.list(),
        connections: listener?.told() ?? { open: 0, turnedAway: 0 },
      };
    },
    giveCode: async () => {
      if (listener !== undefined) desk.codes.give();
      return listener !== undefined;
    },
    revoke: (id) => desk.devices.revoke(id),
    close: () => inTurn(end),
  };
};

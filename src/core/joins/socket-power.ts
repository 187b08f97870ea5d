import type { BoatIndex } from '../boat/boat-index.ts';
import { supplyDefaults } from '../facts/defaults.ts';
import { poeClasses } from '../facts/ethernet.ts';
import type { Network, NetworkPort } from './networks.ts';

/** A unit that lives on its network cable, and the socket it hangs on. `sourceW` is what its class reserves at the socket. */
export interface SocketLoad {
  readonly port: string;
  readonly kit: string;
  readonly deviceW: number;
  /** absent where it draws more than any class gives */
  readonly sourceW?: number;
  readonly socket: NetworkPort;
}

/** Types of power over Ethernet a socket may give, and the largest class of each (source: ieee-poe). */
const largestClass = { af: 3, at: 4, bt: 8 } as const;

/** What a unit needs at its network port, W; absent where it does not live on it. */
const deviceWatts = (index: BoatIndex, { kit, port }: NetworkPort): number | undefined => {
  const power = index.sheetOf.get(kit)?.power?.find((entry) => entry.port === port.id);
  if (power === undefined) return undefined;
  return power.unit === 'W' ? power.max : power.max * (power.atV ?? supplyDefaults.nominalV.value);
};

/** The smallest class that leaves a unit what it needs, W reserved at the socket: class 1 leaves 3.84 W of 4, class 3 12.95 W of 15.4. */
export const reservedW = (deviceW: number): number | undefined =>
  [...poeClasses].sort((one, other) => one.deviceW - other.deviceW).find((row) => row.deviceW >= deviceW)?.sourceW;

/** The most a socket gives, W at the socket; 0 where it gives none. */
export const socketGivesW = ({ port: { poe } }: NetworkPort): number =>
  poe === undefined ? 0 : (poeClasses.find(({ cls }) => cls === largestClass[poe])?.sourceW ?? 0);

/** The units of a network that live on their cable, each with the socket at its other end. Sorted as the links are. */
export const socketLoads = (index: BoatIndex, { links }: Network): SocketLoad[] =>
  links.flatMap(({ ends: [one, other] }) =>
    [
      [one, other],
      [other, one],
    ].flatMap(([device, socket]): SocketLoad[] => {
      const deviceW = device === undefined ? undefined : deviceWatts(index, device);
      if (device === undefined || socket === undefined || deviceW === undefined) return [];
      const sourceW = reservedW(deviceW);
      return [{ port: device.id, kit: device.kit, deviceW, ...(sourceW === undefined ? {} : { sourceW }), socket }];
    }),
  );

/**
 * What the sockets of a hub may give together, W: the most it draws less what it draws for itself. Absent where its sheet
 * does not say, or has no socket that gives power: then something else in the line feeds them.
 */
export const hubBudgetW = (index: BoatIndex, kit: string): number | undefined => {
  const own = index.boat.sheets.find(({ id }) => id === index.kit.get(kit)?.sheet);
  if (own?.ports.some(({ poe }) => poe !== undefined) !== true) return undefined;
  const power = index.sheetOf.get(kit)?.power?.find(({ unit, behaves }) => unit === 'W' && behaves === 'power');
  return power === undefined ? undefined : power.max - power.typical;
};

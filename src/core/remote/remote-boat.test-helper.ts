import { indexBoat } from '../boat/boat-index.ts';
import type { Boat, Kit } from '../boat/boat-schema.ts';
import type { Sheet } from '../boat/sheet.ts';
import { joinsOf } from '../joins/joins-of.ts';
import { refitOf } from '../readings/refit.ts';
import { type Sketch, wired } from '../readings/wired.test-helper.ts';
import type { RemoteEntry } from '../remote-shape.ts';
import { planRemote } from './plan-remote.ts';

/** What a sketch leaves out of a unit: its kind, whether it steers, what is said of its wifi. */
export interface RemoteSaid {
  readonly kind?: string;
  readonly steers?: boolean;
  readonly sheet?: NonNullable<Sheet['remote']>;
  readonly owner?: NonNullable<Kit['remote']>;
}

const sheetWith = (sheet: Sheet, { kind, steers = false, sheet: remote }: RemoteSaid): Sheet => ({
  ...sheet,
  ...(kind === undefined ? {} : { kind }),
  ...(remote === undefined ? {} : { remote }),
  ...(steers
    ? { drive: { type: 'wheel', motorV: 12, runA: 2, peakA: 5, whenPowerIsLost: 'holds', needsRudderSensor: false } }
    : {}),
});

/** A boat of a sketch with what is said of each unit. */
export const remoteBoat = (sketch: Sketch, said: Readonly<Record<string, RemoteSaid>>): Boat => {
  const boat = wired(sketch);
  return {
    ...boat,
    sheets: boat.sheets.map((sheet) => sheetWith(sheet, said[sheet.id.replace('sheet-', '')] ?? {})),
    kit: boat.kit.map((unit) => {
      const remote = said[unit.id]?.owner;
      return remote === undefined ? unit : { ...unit, remote };
    }),
  };
};

/** Her ways in. */
export const remoteOf = (boat: Boat): RemoteEntry[] => {
  const index = indexBoat(boat);
  return planRemote(refitOf(index, (at) => joinsOf(index, at)).reachesIn(1).network).remote;
};

/** A gateway between wifi and a bus with a pilot that takes orders there. */
export const gatewayAndPilot: Sketch = {
  units: {
    gate: {
      ports: {
        air: { protocol: 'wifi', role: 'both' },
        n2k: { protocol: 'nmea2000', role: 'both', hears: [127250] },
      },
    },
    pilot: { ports: { n2k: { protocol: 'nmea2000', role: 'both', hears: ['pilot-command', 129283] } } },
  },
  joins: { nav: ['gate.n2k', 'pilot.n2k'] },
};

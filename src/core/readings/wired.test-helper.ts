import { aBoat } from '../boat/a-boat.test-helper.ts';
import { indexBoat } from '../boat/boat-index.ts';
import type { Boat, Join, Kit, Need } from '../boat/boat-schema.ts';
import type { Hears, Port, Protocol, Sends, Sheet, Turn } from '../boat/sheet.ts';
import type { ReadingId } from '../facts/reading-ids.ts';
import { joinsOf } from '../joins/joins-of.ts';

import { type Arrival, arrivals } from './arrivals.ts';
import { refitOf } from './refit.ts';

/** One port in short: a PGN, a sentence or a bare reading for each thing it sends or hears. */
export interface PortSketch {
  readonly protocol: Protocol;
  readonly sends?: readonly (number | string | Sends)[];
  readonly hears?: readonly (number | string | Hears)[];
  readonly baud?: number;
  readonly dialect?: string;
  /** absent: by what it sends and hears */
  readonly role?: Port['role'];
  readonly line?: NonNullable<Port['line']>;
}

export interface UnitSketch {
  readonly ports: Readonly<Record<string, PortSketch>>;
  readonly turns?: Turn[];
  readonly together?: string[][];
  readonly inLine?: [string, string];
  readonly source?: Sheet['source'];
  readonly kit?: Partial<Kit>;
}

export interface Sketch {
  readonly units: Readonly<Record<string, UnitSketch>>;
  /** by id: `unit.port` of each member, the talker first; a bus is named by the id `nav` or `ship` */
  readonly joins: Readonly<Record<string, readonly string[]>>;
  readonly needs?: readonly Need[];
  readonly confirmed?: readonly string[];
}

// A capital letter first is a sentence, a small one a reading: both checked by the schema when a boat is read.
const formOf = (said: number | string | Sends | Hears): Sends => {
  if (typeof said === 'number') return { pgn: said };
  if (typeof said !== 'string') return said;
  return /^[A-Z]/.test(said) ? { sentence: said } : { reading: said as ReadingId };
};

const portOf = (id: string, { protocol, sends, hears, role, baud, dialect, line }: PortSketch): Port => ({
  id,
  protocol,
  role: role ?? (sends !== undefined && hears === undefined ? 'talk' : sends === undefined ? 'listen' : 'both'),
  ...(sends === undefined ? {} : { sends: sends.map(formOf) }),
  ...(hears === undefined ? {} : { hears: hears.map(formOf) }),
  ...(baud === undefined ? {} : { baud }),
  ...(dialect === undefined ? {} : { dialect }),
  ...(line === undefined ? {} : { line }),
});

const sheetOf = (id: string, sketch: UnitSketch): Sheet => ({
  id: `sheet-${id}`,
  name: id,
  kind: 'thing',
  source: sketch.source ?? 'manual',
  plugs: Object.entries(sketch.ports).flatMap(([port, { protocol }]) =>
    protocol === 'wifi' ? [] : [{ id: `plug-${port}`, connector: 'leads', gender: 'none' as const }],
  ),
  ports: Object.entries(sketch.ports).map(([port, said]) => ({
    ...portOf(port, said),
    ...(said.protocol === 'wifi' ? {} : { onPlug: `plug-${port}` }),
  })),
  ...(sketch.turns === undefined ? {} : { turns: sketch.turns }),
  ...(sketch.together === undefined ? {} : { together: sketch.together }),
  ...(sketch.inLine === undefined ? {} : { inLine: sketch.inLine }),
});

const twoWay: readonly Protocol[] = ['nmea2000', 'ethernet', 'usb', 'wifi'];

const joinOf = (id: string, members: readonly string[], sketch: Sketch): Join => {
  const parts = members.map((member) => member.split('.'));
  const [[kit = '', port = ''] = []] = parts;
  const kind = sketch.units[kit]?.ports[port]?.protocol ?? 'nmea0183';
  if (kind === 'dc') throw new Error('a supply is no join');
  const isBus = kind === 'nmea2000';
  return {
    id: isBus ? `join-${id}` : id,
    kind,
    ...(isBus ? { bus: id } : {}),
    members: parts.map(([unit = '', own = ''], at) => ({
      kit: unit,
      port: own,
      as: twoWay.includes(kind) ? 'both' : at === 0 ? 'talk' : 'listen',
    })),
    hold: 'fixed',
    ...(sketch.confirmed?.includes(id) ? { confirmed: { by: 'owner', source: 'letter', version: '1' } } : {}),
  };
};

/** A boat that has nothing but units and what joins them, from a sketch. */
export const wired = (sketch: Sketch): Boat =>
  aBoat().with({
    supply: { banks: [], panels: [], dcdc: [] },
    sheets: Object.entries(sketch.units).map(([id, unit]) => sheetOf(id, unit)),
    kit: Object.entries(sketch.units).map(([id, unit]) => ({
      id,
      name: id,
      sheet: `sheet-${id}`,
      fate: 'stays',
      place: 'helm',
      ...unit.kit,
    })),
    needs: [...(sketch.needs ?? [])],
    buses: ['nav', 'ship'].map((id) => ({ id, name: id, protocol: 'nmea2000' })),
    joins: Object.entries(sketch.joins).map(([id, members]) => joinOf(id, members, sketch)),
  }).boat;

/** What arrives on a boat in a phase, with the joins of its file. */
export const arriving = (boat: Boat, phase = 1): Arrival[] => {
  const index = indexBoat(boat);
  return arrivals(
    refitOf(index, (at) => joinsOf(index, at)),
    phase,
  );
};

export const need = (reading: ReadingId, at: string, more: Partial<Need> = {}): Need => ({
  reading,
  at,
  must: true,
  ...more,
});

export const turn = (fromPort: string, toPort: string, ...carries: (ReadingId | Turn['carries'][number])[]): Turn => ({
  fromPort,
  toPort,
  carries: carries.map((carry) => (typeof carry === 'string' ? { reading: carry } : carry)),
});

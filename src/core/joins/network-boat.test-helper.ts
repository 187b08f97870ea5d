import { aBoat } from '../boat/a-boat.test-helper.ts';
import { type BoatIndex, indexBoat } from '../boat/boat-index.ts';
import type { Boat, Kit } from '../boat/boat-schema.ts';
import type { Port, Power, Sheet } from '../boat/sheet.ts';
import type { NetworkEntry, StandingJoin } from '../plan-shape.ts';
import { makeRouter } from '../ways/routes.ts';
import { joinsOf } from './joins-of.ts';
import { networkEntries } from './network-entries.ts';
import { type Network, networksOf } from './networks.ts';

/** A unit with network sockets; all of them are one network inside it where `isHub`. */
export interface NetUnit {
  readonly place: string;
  readonly sockets: readonly (Pick<Port, 'id'> & Partial<Port>)[];
  readonly isHub?: boolean;
  readonly power?: readonly Power[];
  readonly fate?: Kit['fate'];
}

/** A boat with some network units, and everything that is computed of her networks. */
export interface NetBoat {
  readonly boat: Boat;
  readonly index: BoatIndex;
  readonly joins: readonly StandingJoin[];
  readonly networks: readonly Network[];
  readonly entries: readonly NetworkEntry[];
}

const sheetOf = (id: string, { sockets, isHub = false, power }: NetUnit): Sheet => {
  const ports = sockets.map((own): Port => ({ protocol: 'ethernet', role: 'both', onPlug: `plug-${own.id}`, ...own }));
  return {
    id: `sheet-${id}`,
    name: id,
    kind: 'network-part',
    source: 'typical',
    plugs: ports.map(({ id: port }) => ({ id: `plug-${port}`, connector: 'rj45', gender: 'female' })),
    ports,
    ...(isHub ? { together: [ports.map(({ id: port }) => port)] } : {}),
    ...(power === undefined ? {} : { power: [...power] }),
  };
};

/** The small boat with network units by id, and cables between their sockets: `netBoat({ eye: … }, ['hub.p1 eye.eth'])`. */
export const netBoat = (units: Readonly<Record<string, NetUnit>>, cables: readonly string[]): NetBoat => {
  const tern = aBoat().boat;
  const all = Object.entries(units);
  const { boat } = aBoat().with({
    sheets: [...tern.sheets, ...all.map(([id, unit]) => sheetOf(id, unit))],
    kit: [
      ...tern.kit,
      ...all.map(
        ([id, { place, fate = 'stays' }]): Kit => ({ id, name: `the ${id}`, sheet: `sheet-${id}`, fate, place }),
      ),
    ],
    joins: [
      ...tern.joins,
      ...cables.map((cable, n): Boat['joins'][number] => ({
        id: `cable-${n}`,
        kind: 'ethernet',
        members: cable.split(' ').map((end) => {
          const [kit = '', port = ''] = end.split('.');
          return { kit, port, as: 'both' };
        }),
        hold: 'fixed',
      })),
    ],
  });
  const index = indexBoat(boat);
  const joins = joinsOf(index, 1);
  return {
    boat,
    index,
    joins,
    networks: networksOf(index, 1, joins),
    entries: networkEntries({ index, router: makeRouter(index), joins }),
  };
};

/** A switch with sockets p1 to p3, or as many as told. */
export const aSwitch = (place: string, count = 3, more: Partial<Port> = {}): NetUnit => ({
  place,
  sockets: Array.from({ length: count }, (_, n) => ({ id: `p${n + 1}`, ...more })),
  isHub: true,
});

/** A unit with one socket that lives on its cable where it draws watts. */
export const anEye = (place: string, watts?: number, more: Partial<Port> = {}): NetUnit => ({
  place,
  sockets: [{ id: 'eth', ...more }],
  ...(watts === undefined
    ? {}
    : {
        power: [{ port: 'eth', typical: watts, max: watts, unit: 'W', behaves: 'power', minV: 37, maxV: 57 }] as const,
      }),
});

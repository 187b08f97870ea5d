import type { Boat, Kit } from '../../../src/core/boat/boat-schema.ts';
import type { Port, Power, Sheet } from '../../../src/core/boat/sheet.ts';

/** A sheet with network sockets, read in a manual as all of the Wreck's. */
export const netSheet = (
  id: string,
  { ports, together, power }: { ports: readonly Port[]; together?: string[][]; power?: Power[] },
): Sheet => ({
  id,
  name: `Network ${id}, as its manual has it`,
  kind: 'network-part',
  source: 'manual',
  sourceNote: 'Read aboard in its manual, chapter on connections.',
  plugs: ports.flatMap(({ onPlug }) =>
    onPlug === undefined ? [] : [{ id: onPlug, connector: 'rj45', gender: 'female' }],
  ),
  ports: [...ports],
  ...(together === undefined ? {} : { together }),
  ...(power === undefined ? {} : { power }),
});

/** A network socket. */
export const socket = (id: string, more: Partial<Port> = {}): Port => ({
  id,
  onPlug: `socket-${id}`,
  protocol: 'ethernet',
  role: 'both',
  ...more,
});

/** A plain switch of three sockets. */
export const plainSwitch = (id: string): Sheet =>
  netSheet(id, { ports: [socket('p1'), socket('p2'), socket('p3')], together: [['p1', 'p2', 'p3']] });

/** The boat with some network units more, and cables between their sockets. */
export const withNetwork = (
  boat: Boat,
  {
    sheets,
    kit,
    links,
  }: {
    sheets: readonly Sheet[];
    kit: readonly Omit<Kit, 'fate'>[];
    links: readonly [id: string, one: string, other: string][];
  },
): Boat => ({
  ...boat,
  sheets: [...boat.sheets, ...sheets],
  kit: [...boat.kit, ...kit.map((unit): Kit => ({ ...unit, fate: 'stays' }))],
  joins: [
    ...boat.joins,
    ...links.map(([id, ...ends]): Boat['joins'][number] => ({
      id,
      kind: 'ethernet',
      members: ends.map((end) => {
        const [kit = '', port = ''] = end.split('.');
        return { kit, port, as: 'both' };
      }),
      hold: 'fixed',
    })),
  ],
});

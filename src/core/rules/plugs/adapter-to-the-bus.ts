import { busConnectors } from '../../facts/plugs.ts';
import type { Rule } from '../rule.ts';
import { busName, unitName } from '../rule-words.ts';

const ofTheBus: ReadonlySet<string> = new Set(busConnectors.connectors);

/** A maker's own plug on the same bus: everything arrives, once somebody has bought the adapter. */
export const adapterToTheBus: Rule = {
  id: 'plugs/adapter-to-the-bus',
  level: 'advice',
  title: 'A unit joins the bus by a plug of its maker’s own and needs an adapter.',
  sources: ['practice-own-plugs', 'practice-bus-pins'],
  check: ({ index, plan }) =>
    plan.joins.flatMap(({ bus, members }) =>
      members.flatMap(({ kit, port }) => {
        if (bus === undefined) return [];
        const sheet = index.sheetOf.get(kit);
        const onPlug = sheet?.ports.find((entry) => entry.id === port)?.onPlug;
        const plug = sheet?.plugs.find((entry) => entry.id === onPlug);
        if (plug === undefined || ofTheBus.has(plug.connector)) return [];
        const id = `${kit}.${port}`;
        return [
          {
            about: [id, bus],
            says: `${unitName(index, id)} joins ${busName(index, bus)} by a plug of its own (${plug.connector}). An adapter makes it the same bus, and its lead counts as drop.`,
            cure: 'Order the adapter with the unit, and count its lead into the tail of the unit.',
          },
        ];
      }),
    ),
};

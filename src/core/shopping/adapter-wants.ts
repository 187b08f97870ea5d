import { splitDotted } from '../boat/ids.ts';
import { smallPartPrices } from '../facts/buying.ts';
import type { BusEntry } from '../plan-shape.ts';
import { busPlugOf, ofTheBus } from './bus-plug.ts';
import { opposite } from './cable-wants.ts';
import type { OrderInput } from './line-cutter.ts';
import type { Want } from './want.ts';

/**
 * What stands between the female end of a drop and a unit whose plug it does not fit: a plug for bare leads, or an adapter
 * from the maker’s own plug, of the other gender there and male toward the drop. None where the unit’s own plug is male and
 * of the bus; a drop that lies aboard has what it needs.
 */
export const adapterWants = (input: OrderInput, bus: BusEntry, newDrops: ReadonlySet<string>): Want[] =>
  bus.drops.flatMap(({ port }): Want[] => {
    const { kit, part } = splitDotted(port);
    const sheet = input.index.sheetOf.get(kit);
    const onPlug = sheet?.ports.find(({ id }) => id === part)?.onPlug;
    const plug = sheet?.plugs.find(({ id }) => id === onPlug);
    if (plug === undefined || !newDrops.has(`${kit}.${plug.id}`)) return [];
    const family = busPlugOf(bus.grade);
    const doubt = sheet?.source === 'typical' ? { other: 'the maker’s own sheet shows another plug' } : undefined;
    const shared = { by: 'piece', count: 1, for: [port, bus.id], doubt } as const;
    if (plug.connector === 'leads') {
      const id = `${family}-field-plug-male`;
      const each = input.prices.each(id, smallPartPrices.busFieldPlug);
      const why = 'The unit has bare leads: a plug is fitted to them, so that the drop can be unplugged.';
      return [{ ...shared, id, item: `${family} plug, male, to be fitted aboard`, kind: 'plug', each, why }];
    }
    if (ofTheBus.has(plug.connector) && plug.gender !== 'female') return [];
    const id = `adapter-${plug.connector.replace(/[^a-z0-9]+/g, '-')}-${opposite[plug.gender]}-to-${family}-male`;
    const item = `adapter, ${plug.connector} ${opposite[plug.gender]} to ${family} male`;
    const each = input.prices.each(id, smallPartPrices.busAdapter);
    const why = 'The plug of the unit is not that of the drop; the adapter joins them, and its lead counts as drop.';
    return [{ ...shared, id, item, kind: 'adapter', each, why }];
  });

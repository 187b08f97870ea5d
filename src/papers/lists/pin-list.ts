import type { Boat } from '../../core/boat/boat-schema.ts';
import { byCodeUnit } from '../../core/boat/ids.ts';
import type { Plug } from '../../core/boat/sheet.ts';
import { ethernetPlugs } from '../../core/facts/ethernet-plugs.ts';
import { busPins, screwTerminalPins } from '../../core/facts/plugs.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { type CardBoat, cardBoat } from '../cards/card-boat.ts';
import { connectorWords } from '../cards/connector-words.ts';
import type { ListCell, ListTable } from '../table/list-table.ts';
import { someWords } from './order-words.ts';

/** One plug of the plan with the units it is on, as their names. */
interface UsedPlug {
  readonly plug: Plug;
  readonly units: readonly string[];
}

/** Pins that a standard gives: number, signal, colour, and what the same signal has on a screw terminal or an RJ45 plug. */
type StandardPin = readonly [pin: number, signal: string, colour: string | undefined, elsewhere: string];

const busRows: readonly StandardPin[] = busPins.pins.map(({ pin, signal, colour }) => {
  const screw = screwTerminalPins.pins.find((other) => other.signal === signal);
  return [pin, signal, colour, screw === undefined ? '' : `screw terminal ${screw.pin}`];
});

const networkRows = (coding: keyof typeof ethernetPlugs): readonly StandardPin[] =>
  ethernetPlugs[coding].toRj45.map((pin) => [
    pin.m12,
    'signal' in pin ? pin.signal : `pair wire ${pin.rj45}`,
    undefined,
    `RJ45 pin ${pin.rj45}`,
  ]);

const standards: ReadonlyMap<string, readonly StandardPin[]> = new Map([
  ['n2k-micro', busRows],
  ['n2k-mini', busRows],
  ['m12-d', networkRows('m12-d')],
  ['m12-x', networkRows('m12-x')],
]);

/** Plugs at the ends of the lines, those with the same connector and the same conductors together. */
const usedPlugs = ({ kit, sheetOf }: CardBoat, { lines }: Plan): UsedPlug[] => {
  const used = new Map<string, { plug: Plug; units: string[] }>();
  const ends = new Set(lines.flatMap(({ from, to }) => [from, to]).map((end) => end.split('#')[0] ?? end));
  for (const end of [...ends].sort(byCodeUnit)) {
    const [unit = '', id = ''] = end.split('.');
    const plug = sheetOf.get(unit)?.plugs.find((own) => own.id === id);
    const name = kit.get(unit)?.name;
    if (plug === undefined || name === undefined) continue;
    const own = standards.has(plug.connector) ? '' : JSON.stringify(plug.conductors ?? []);
    const key = `${plug.connector} ${plug.gender} ${own}`;
    const entry = used.get(key) ?? { plug, units: [] };
    used.set(key, { ...entry, units: [...entry.units, name] });
  }
  return [...used.values()];
};

const rowsOf = ({ plug, units }: UsedPlug): ListCell[][] => {
  const head = [connectorWords(plug), someWords(units, 3)];
  const pins = standards.get(plug.connector);
  if (pins !== undefined)
    return pins.map(([pin, signal, colour, elsewhere]) => [...head, String(pin), signal, colour, elsewhere]);
  return (plug.conductors ?? []).map(({ label, colour, role }) => [
    ...head,
    label,
    role.replaceAll('-', ' '),
    colour === 'as marked' ? undefined : colour,
    undefined,
  ]);
};

/**
 * Pins and wires of every plug that the plan uses: those of a standard by their numbers, those of a maker by its marks. A plug
 * that comes moulded on its cable and has no wires on its sheet has no row.
 */
export const pinList = (boat: Boat, plan: Plan): ListTable => ({
  id: 'pins',
  title: 'Pins and wires of the plugs',
  says: 'A screw terminal counts otherwise than a plug: never carry its numbers over to the pins. Some moulded leads have colours of their own: meter, never trust a colour.',
  columns: [
    { id: 'plug', head: 'plug', share: 1.8, once: true },
    { id: 'units', head: 'on', share: 2.4, once: true },
    { id: 'pin', head: 'pin or mark', kind: 'label' },
    { id: 'signal', head: 'signal' },
    { id: 'colour', head: 'colour' },
    { id: 'elsewhere', head: 'the same elsewhere', share: 1.2 },
  ],
  rows: usedPlugs(cardBoat(boat), plan)
    .toSorted((one, other) => byCodeUnit(one.plug.connector, other.plug.connector))
    .flatMap(rowsOf),
  empty: 'No line is planned yet.',
});

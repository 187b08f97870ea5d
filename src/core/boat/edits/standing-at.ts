import type { Draft } from 'mutative';
import type { Boat } from '../boat-schema.ts';
import { shortName } from '../short-name.ts';

const named = (list: readonly { readonly place: string; readonly name: string }[], place: string): string[] =>
  list.flatMap((entry) => (entry.place === place ? [shortName(entry.name)] : []));

const supplyAt = ({ supply }: Draft<Boat>, place: string): string[] => [
  ...supply.banks.filter((bank) => bank.place === place).map(({ id }) => `the bank ${id}`),
  ...supply.panels.filter((panel) => panel.place === place).map(({ id }) => `the panel ${id}`),
  ...supply.dcdc.filter((one) => one.place === place).map(({ id }) => `the converter ${id}`),
  ...(supply.chargers ?? []).filter((charger) => charger.place === place).map(({ id }) => `the charger ${id}`),
  ...(supply.negativeAt === place ? ['the point where all negatives meet'] : []),
];

type Walk = readonly { readonly place: string; readonly via?: string; readonly tees: readonly string[] }[];

/** Whether a trunk only goes past a place: no tee, no end, and out by another way than it came. */
const goesPast = (walk: Walk, place: string): boolean =>
  walk.every((step, at) => {
    const next = walk[at + 1];
    return step.place !== place || (at > 0 && step.tees.length === 0 && next !== undefined && next.via !== step.via);
  });

const settledAt = (boat: Draft<Boat>, place: string): string[] => [
  ...Object.entries(boat.pins?.layouts ?? {}).flatMap(([bus, { walk, state }]) =>
    goesPast(walk, place) ? [] : [`the backbone ${bus}, which is ${state} there`],
  ),
  ...boat.buses
    .filter(({ shieldAt }) => shieldAt?.includes(place) === true)
    .map(({ name }) => `the earth of the shield of ${name}`),
];

const steeredAt = (boat: Draft<Boat>, place: string): string[] =>
  (boat.steering ?? []).flatMap(({ place: helm, by, letsGo }) => {
    if (helm === place) return [`the ${by.replace('-', ' ')}`];
    return letsGo.some(({ at }) => at === place) ? [`what lets the pilot of the ${by.replace('-', ' ')} go`] : [];
  });

/** What stands, ends or is settled at a place, in words, but for the ways that lead to it and what only goes past. */
export const standingAt = (boat: Draft<Boat>, place: string): readonly string[] => [
  ...named(boat.kit, place),
  ...supplyAt(boat, place),
  ...steeredAt(boat, place),
  ...((boat.hull.masts ?? []).some(({ foot }) => foot === place) ? ['the foot of a mast'] : []),
  ...boat.cables
    .filter(({ from, to }) => from.place === place || to.place === place)
    .map(({ id, name }) => `the end of the cable ${name === undefined ? id : shortName(name)}`),
  ...named(boat.openings ?? [], place),
  ...settledAt(boat, place),
];

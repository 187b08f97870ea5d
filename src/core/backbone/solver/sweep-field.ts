import type { Ground, GroundDevice, LeadOption } from './ground.ts';

/**
 * Things served from one place of the trunk each: devices that hang alike, or the feed. `places` are those that can serve,
 * best first. At each rank the nominal length of all drops, their least length as bought (that of any place from this rank
 * on, so that it only grows with the rank), and the cost of the feed lead.
 */
export interface ServedGroup {
  readonly places: readonly number[];
  readonly dropMm: readonly number[];
  readonly boughtMm: readonly number[];
  readonly leadCost: readonly number[];
}

/** The groups of a ground; nothing where a device or the feed has no place at all. */
export const servedGroups = (ground: Ground, leads: readonly LeadOption[]): readonly ServedGroup[] | undefined => {
  const alike = new Map<string, GroundDevice[]>();
  for (const device of ground.devices) {
    if (fitting(ground, device).length === 0) return undefined;
    const key = fitting(ground, device)
      .map(({ place }) => place)
      .join();
    const others = alike.get(key);
    if (others === undefined) alike.set(key, [device]);
    else others.push(device);
  }
  if (leads.length === 0) return undefined;
  const zeros = leads.map(() => 0);
  const feed: ServedGroup = {
    places: leads.map(({ place }) => place),
    dropMm: zeros,
    boughtMm: zeros,
    leadCost: leads.map(({ cost }) => cost),
  };
  return [...[...alike.values()].map((devices) => deviceGroup(ground, devices)), feed];
};

/** Drops within the limit of one drop, cheapest first. */
export const fitting = ({ problem }: Ground, { options }: GroundDevice): GroundDevice['options'] =>
  options.filter(({ boughtMm }) => boughtMm <= problem.limits.dropMm);

const deviceGroup = (ground: Ground, devices: readonly GroundDevice[]): ServedGroup => {
  const lists = devices.map((device) => fitting(ground, device));
  const places = (lists[0] ?? []).map(({ place }) => place);
  const least = (list: GroundDevice['options'], rank: number): number =>
    Math.min(...list.slice(rank).map(({ boughtMm }) => boughtMm));
  return {
    places,
    dropMm: places.map((_, rank) => lists.reduce((sum, list) => sum + (list[rank]?.mm ?? 0), 0)),
    boughtMm: places.map((_, rank) => lists.reduce((sum, list) => sum + least(list, rank), 0)),
    leadCost: places.map(() => 0),
  };
};

import type { Boat } from '../../core/boat/boat-schema.ts';

/** The fuse of the circuit that feeds a bus, in amperes; undefined where no circuit does yet. */
export const fuseOf = (boat: Boat, bus: string): number | undefined =>
  boat.supply.panels.flatMap((panel) => panel.circuits).find((circuit) => circuit.feeds.includes(bus))?.ratingA;

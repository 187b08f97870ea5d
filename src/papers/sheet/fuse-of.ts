import type { Boat } from '../../core/boat/boat-schema.ts';

/** The fuse of the circuit that feeds a bus, in amperes; the smallest where several do, undefined where none does yet. */
export const fuseOf = (boat: Boat, bus: string): number | undefined => {
  const circuits = boat.supply.panels
    .flatMap((panel) => panel.circuits)
    .filter((circuit) => circuit.feeds.includes(bus));
  return circuits.length === 0 ? undefined : Math.min(...circuits.map((circuit) => circuit.ratingA));
};

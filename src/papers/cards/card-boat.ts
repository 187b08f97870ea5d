import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Bank, Panel } from '../../core/boat/supply.ts';
import { type DrawnBoat, drawnBoat } from '../sheet/drawn-boat.ts';

/** What a card looks up in a boat: what the drawing does, and where power comes from. */
export interface CardBoat extends DrawnBoat {
  readonly panels: ReadonlyMap<string, Panel>;
  readonly banks: ReadonlyMap<string, Bank>;
}

/** Finds by id what the cards of a boat speak of. */
export const cardBoat = (boat: Boat): CardBoat => ({
  ...drawnBoat(boat),
  panels: new Map(boat.supply.panels.map((panel) => [panel.id, panel])),
  banks: new Map(boat.supply.banks.map((bank) => [bank.id, bank])),
});

import type { Boat } from '../boat/boat-schema.ts';
import { type ShipsHeard, shipsHeard, usualWaters } from '../facts/waters.ts';

/** How many other ships a boat is planned to hear: those of the waters her file names, else of the fullest. */
export const shipsOnBoat = ({ waters = usualWaters }: Pick<Boat, 'waters'>): ShipsHeard => shipsHeard[waters];

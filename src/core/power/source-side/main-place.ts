import type { Protection } from '../../boat/supply.ts';
import { fusePlaceRow } from '../../facts/fuse-places.ts';

/** How far from its source protection may sit by the rule of this project, mm; in sheath or conduit all the way, by the law. */
export const allowedMm = ({ sheathed = false }: Pick<Protection, 'sheathed'>): number =>
  fusePlaceRow(sheathed ? 'cfr-sheathed' : 'project').mostMm;

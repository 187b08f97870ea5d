import type { BoatIndex } from '../boat/boat-index.ts';
import { feedLead } from '../facts/cable-grades.ts';
import { conductorOfAwg } from '../facts/conductors.ts';
import type { LineEntry } from '../plan-shape.ts';
import { conductorsOf } from './conductors-of.ts';

/** A conductor that stands whatever the plan would pick: aboard, settled by a person, or the power lead of a bus. */
export interface GivenWire {
  readonly wire: 'aboard' | 'settled' | 'bus-cable';
  readonly areaMm2: number;
  /** of one conductor at 20 °C */
  readonly ohmPerKm20: number;
  /** the metric size whose limits of current it has: the largest that is not thicker */
  readonly size: string | undefined;
}

const sizes = conductorsOf('metric');

/** A wire of any area: its resistance in proportion to the size below it, or above the thinnest. */
const wireOf = (wire: GivenWire['wire'], areaMm2: number): GivenWire => {
  const below = sizes.findLast((entry) => entry.areaMm2 <= areaMm2 + 1e-9);
  const near = below ?? sizes[0];
  const ohmPerKm20 = near === undefined ? Number.POSITIVE_INFINITY : (near.ohmPerKm20 * near.areaMm2) / areaMm2;
  return { wire, areaMm2, ohmPerKm20, size: below?.size };
};

/** The power lead of a bus, as the layout reckons it. */
const busLead = (): GivenWire | undefined => {
  const gauge = conductorOfAwg(String(feedLead.awg.value));
  if (gauge === undefined) return undefined;
  return { ...wireOf('bus-cable', gauge.areaMm2), ohmPerKm20: feedLead.ohmPerM.value * 1000 };
};

/** The thinnest of the cables that make a kept line; absent where one of them is not known. */
const keptArea = (index: BoatIndex, kept: readonly string[]): number | undefined => {
  const areas = kept.map((id) => index.cables.get(id)?.areaMm2);
  const known = areas.flatMap((area) => area ?? []);
  return known.length === kept.length && known.length > 0 ? Math.min(...known) : undefined;
};

/**
 * The wire of a feed where it is not the plan's to pick: `pins.wires` of the boat file, then the cable that lies aboard.
 * `unknown` where it lies aboard and nobody has said how thick it is; absent where the plan picks.
 */
export const givenWire = (
  index: BoatIndex,
  line: Pick<LineEntry, 'id' | 'kept'>,
  isBus: boolean,
): GivenWire | 'unknown' | undefined => {
  const settled = index.boat.pins?.wires?.[line.id];
  if (settled !== undefined) return wireOf('settled', settled.areaMm2);
  if (line.kept !== undefined) {
    const areaMm2 = keptArea(index, line.kept);
    return areaMm2 === undefined ? 'unknown' : wireOf('aboard', areaMm2);
  }
  return isBus ? busLead() : undefined;
};

import type { Boat, Place, Way } from '../boat/boat-schema.ts';
import type { HullMeasuresId } from '../facts/hull-measures.ts';

/** One usual place of a hull. */
export interface PatternPlace extends Pick<Place, 'id' | 'name' | 'exposure' | 'reach' | 'spares'> {
  /**
   * Shares: of the length forward of the transom, of the half beam to starboard, and of the length above the water;
   * below the water the third is a share of the draft, and of a place aloft one of the air draft.
   */
  readonly at: readonly [x: number, y: number, z: number];
  /** up a mast or on what stands as high as the boat */
  readonly aloft?: true;
  /** on a mast, arch, rail or transom, outside the hull and houses drawn */
  readonly outside?: true;
  readonly tees?: true;
}

/** One usual way between two of its places; open and through nothing in particular unless it says so. */
export interface PatternWay extends Pick<Way, 'ends'> {
  readonly kind?: Way['kind'];
  readonly through?: Way['through'];
  /** its bore as such boats usually have it */
  readonly boreMm?: number;
  readonly near?: readonly string[];
  /** two runs of the trunk pass, there and back */
  readonly trunkTimes?: 2;
}

/** Where the power usually is. */
export interface PatternSupply {
  readonly houseAt: string;
  readonly startAt: string;
  readonly panelAt: string;
  readonly nominalV: 12 | 24;
}

/** A kind of boat to start from: shape, usual places, ways and supply, all in shares of her measures (facts: hullMeasures). */
export interface BoatPattern {
  readonly id: HullMeasuresId;
  /** in plain words, as it is chosen by */
  readonly name: string;
  readonly kind: Boat['hull']['kind'];
  readonly material: Boat['hull']['material'];
  readonly places: readonly PatternPlace[];
  readonly ways: readonly PatternWay[];
  readonly masts?: NonNullable<Boat['hull']['masts']>;
  readonly supply: PatternSupply;
}

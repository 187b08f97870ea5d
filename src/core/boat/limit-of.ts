import { sources } from '../facts/sources.ts';
import type { Boat } from './boat-schema.ts';
import { ownLimit } from './limit-in.ts';
import { type LimitId, limits } from './limit-value.ts';

/** Whether a name is that of a limit known here. */
export const isLimitId = (id: string): id is LimitId => Object.hasOwn(limits, id);

/** A limit as it holds on one boat; `source` is in words, ready to print. */
export interface LimitOnBoat {
  readonly value: number;
  readonly unit: string;
  readonly source: string;
}

/**
 * The limit that holds on this boat, to be printed: the owner's own figure where `limits` in the file has one, else the one
 * in facts.
 *
 * @example limitOf(boat, 'nmea2000-one-drop') // { value: 6, unit: 'm', source: 'published: …' }
 */
export const limitOf = (boat: Pick<Boat, 'limits'>, limitId: LimitId): LimitOnBoat => {
  const { value, unit, source } = limits[limitId];
  const own = ownLimit(boat, limitId);
  if (own !== undefined) return { value: own.value, unit, source: `set by the owner: ${own.reason}` };
  return { value, unit, source: `${sources[source].standing}: ${sources[source].text}` };
};

import type { Figure } from '../facts/figure.ts';
import type { Boat } from './boat-schema.ts';

/** The owner's own figure for a limit, and why; undefined where the file has none. */
export const ownLimit = ({ limits: own }: Pick<Boat, 'limits'>, limitId: string) =>
  own !== undefined && Object.hasOwn(own, limitId) ? own[limitId] : undefined;

/**
 * The figure of a limit that holds on this boat, out of one table of them: the first plan asks for a few limits only, and
 * what draws it must not wait for the tables of all.
 *
 * @example limitIn(busLimits, boat, 'nmea2000-one-drop') // 6
 */
export const limitIn = <Id extends string>(
  table: Readonly<Record<Id, Figure>>,
  boat: Pick<Boat, 'limits'>,
  limitId: Id,
): number => ownLimit(boat, limitId)?.value ?? table[limitId].value;

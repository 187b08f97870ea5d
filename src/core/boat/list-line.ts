import type { Boat } from './boat-schema.ts';

/**
 * One line that tells a boat from another in a list.
 *
 * @example listLine(boat) // '11.8 m pilothouse motorboat, 26 units'
 */
export const listLine = ({ hull, kit }: Boat): string =>
  `${hull.lengthM} m ${hull.kind.replaceAll('-', ' ')}, ${kit.length} units`;

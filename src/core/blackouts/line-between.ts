import type { BoatIndex } from '../boat/boat-index.ts';
import { splitDotted } from '../boat/ids.ts';
import type { JoinEntry, LineEntry } from '../plan-shape.ts';

/** The plug `kit.plug` that a port is on; the port where it is on none. */
export const plugOf = (index: BoatIndex, dotted: string): string => {
  const { kit, part } = splitDotted(dotted);
  const plug = index.sheetOf.get(kit)?.ports.find(({ id }) => id === part)?.onPlug;
  return `${kit}.${plug ?? part}`;
};

/** The line of a join on which two of its ports hang together; absent over the air, or where no way leads. */
export const lineBetween = (
  { index, lines }: { readonly index: BoatIndex; readonly lines: readonly LineEntry[] },
  join: Pick<JoinEntry, 'lines'>,
  ports: readonly [string, string],
): string | undefined => {
  const [one, other] = ports.map((port) => plugOf(index, port));
  return lines.find(
    ({ id, from, to }) => join.lines.includes(id) && ((from === one && to === other) || (from === other && to === one)),
  )?.id;
};

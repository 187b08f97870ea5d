import type { BoatIndex } from '../boat/boat-index.ts';
import { chooseCoax } from '../coax/choose-coax.ts';
import { coaxRules } from '../coax/coax-limits.ts';
import { type CoaxUse, coaxUse } from '../coax/coax-use.ts';
import type { LineEntry } from '../plan-shape.ts';
import { breakPlace, mastsOf } from './masts.ts';

/** The coax sockets of a unit behind an end of a line, `kit.plug`. */
const socketsAt = (index: BoatIndex, end: string): { kit: string; port: string }[] => {
  const [kit = '', plug] = end.split('.');
  const ports = index.sheetOf.get(kit)?.ports ?? [];
  return ports
    .filter(({ onPlug, protocol }) => onPlug === plug && protocol === 'coax')
    .map(({ id }) => ({ kit, port: id }));
};

/** What a coax line carries, by the radio at one of its ends. */
export const lineUse = (index: BoatIndex, { from, to }: Pick<LineEntry, 'from' | 'to'>): CoaxUse | undefined =>
  [from, to]
    .flatMap((end) => socketsAt(index, end))
    .map((socket) => coaxUse(index, socket))
    .find((use) => use !== undefined);

/** Whether a new line is parted at the foot of a mast, so that this can be taken down. */
const isParted = (index: BoatIndex, { ways }: Pick<LineEntry, 'ways'>): boolean =>
  mastsOf(index).some((mast) => ways.some((way) => mast.ways.has(way)) && breakPlace(index, mast) !== undefined);

/** Two mated pairs where a cable is parted: the joiner has a plug on either side. */
const pairsPerBreak = 2;

/**
 * Mated pairs of plugs between the two units of a coax line: one at each end that is no fixed lead, two where a new one is parted at the foot of a
 * mast, two between one kept cable and the next.
 */
export const coaxJointsOf = (index: BoatIndex, line: Pick<LineEntry, 'from' | 'to' | 'ways' | 'kept'>): number => {
  const atEnds = [line.from, line.to].filter((end) => {
    const [kit = '', plug] = end.split('.');
    return index.sheetOf.get(kit)?.plugs.find(({ id }) => id === plug)?.fixedLead === undefined;
  }).length;
  const breaks = line.kept === undefined ? Number(isParted(index, line)) : line.kept.length - 1;
  return Math.max(1, atEnds) + pairsPerBreak * breaks;
};

/** A new coax line with the kind it is made of: as a person settled it, else the thinnest that loses little enough at its longest. */
export const withCoaxKind = (index: BoatIndex, line: LineEntry): LineEntry => {
  if (line.kind !== 'coax' || line.kept !== undefined) return line;
  const pins = index.boat.pins?.coax;
  const pinned = pins !== undefined && Object.hasOwn(pins, line.id) ? pins[line.id]?.kind : undefined;
  if (pinned !== undefined) return { ...line, coax: pinned };
  const use = lineUse(index, line);
  if (use === undefined) return line;
  const joints = coaxJointsOf(index, line);
  const kind = chooseCoax({ lengthM: line.longestM, joints, mhz: use.mhz }, coaxRules(index.boat));
  return { ...line, coax: kind };
};

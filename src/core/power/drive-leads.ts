import type { BoatIndex } from '../boat/boat-index.ts';
import { byCodeUnit, splitDotted } from '../boat/ids.ts';
import type { LineEntry } from '../plan-shape.ts';
import type { UnitLoad } from './unit-loads.ts';

/** The lead from a pilot computer to the drive that hangs on its output; currents as the drive runs and at its peak. */
export interface DriveLead {
  readonly line: LineEntry;
  /** port of the drive */
  readonly to: string;
  readonly runA: number;
  readonly peakA: number;
}

const endOf = (index: BoatIndex, port: string): string => {
  const { kit, part } = splitDotted(port);
  return `${kit}.${index.sheetOf.get(kit)?.ports.find(({ id }) => id === part)?.onPlug ?? ''}`;
};

/**
 * The leads to drives behind some dc ports of computers, longest first. The current of a drive flows through the feed of its
 * computer and on through this lead, so that both lose from one share.
 */
export const driveLeads = (
  index: BoatIndex,
  { lines, loads, served }: { lines: readonly LineEntry[]; loads: readonly UnitLoad[]; served: readonly string[] },
): DriveLead[] =>
  loads
    .flatMap(({ port, kit, source, mostA, peakA = mostA }): DriveLead[] => {
      if (source.by !== 'unit' || !served.includes(source.port)) return [];
      if (index.sheetOf.get(kit)?.drive === undefined) return [];
      const ends = [endOf(index, port), `${splitDotted(source.port).kit}.`];
      const line = lines.find(
        ({ from, to }) =>
          (from === ends[0] && to.startsWith(ends[1] ?? '')) || (to === ends[0] && from.startsWith(ends[1] ?? '')),
      );
      return line === undefined ? [] : [{ line, to: port, runA: mostA, peakA }];
    })
    .sort((one, other) => other.line.longestM - one.line.longestM || byCodeUnit(one.to, other.to));

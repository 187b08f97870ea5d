import type { BoatIndex } from '../boat/boat-index.ts';
import type { Drive } from '../boat/drive.ts';
import { byCodeUnit } from '../boat/ids.ts';
import { isAboard } from '../boat/phase.ts';
import type { Sheet } from '../boat/sheet.ts';
import type { StandingJoin } from '../plan-shape.ts';

/** A drive and the computer it hangs on; one that is one unit with its pilot has neither computer nor join. */
export interface DrivePair {
  /** `kit.port` of the drive, or the unit alone where it has no lead from a computer */
  readonly drive: string;
  readonly driveKit: string;
  readonly sheet: Sheet & { readonly drive: Drive };
  readonly computer?: { readonly kit: string; readonly port: string; readonly sheet: Sheet; readonly join: string };
}

const hasDrive = (sheet: Sheet | undefined): sheet is DrivePair['sheet'] => sheet?.drive !== undefined;

/** The port by which a drive takes its commands from a computer; absent where it is one unit with its pilot. */
const commandPort = ({ ports }: Sheet): string | undefined =>
  ports.find(
    ({ protocol, role, hears = [] }) =>
      protocol === 'analog' && role === 'listen' && hears.some(({ reading }) => reading === 'pilot-command'),
  )?.id;

const computerOf = (
  index: BoatIndex,
  joins: readonly StandingJoin[],
  { kit, port }: { readonly kit: string; readonly port: string },
): DrivePair['computer'] => {
  const join = joins.find(({ members }) => members.some((member) => member.kit === kit && member.port === port));
  const talker = join?.members.find((member) => member.kit !== kit && member.as === 'talk');
  const sheet = talker === undefined ? undefined : index.sheetOf.get(talker.kit);
  return join === undefined || talker === undefined || sheet === undefined
    ? undefined
    : { kit: talker.kit, port: `${talker.kit}.${talker.port}`, sheet, join: join.id };
};

/**
 * Every steering drive aboard in a phase with the computer that works it, sorted by the drive’s port. A drive that wants a
 * computer and has none is here without one.
 */
export const drivePairs = (index: BoatIndex, phase: number, joins: readonly StandingJoin[]): DrivePair[] =>
  index.boat.kit
    .flatMap((unit): DrivePair[] => {
      const sheet = index.sheetOf.get(unit.id);
      if (!isAboard(unit, phase) || !hasDrive(sheet)) return [];
      const port = commandPort(sheet);
      if (port === undefined) return [{ drive: unit.id, driveKit: unit.id, sheet }];
      const computer = computerOf(index, joins, { kit: unit.id, port });
      const pair = { drive: `${unit.id}.${port}`, driveKit: unit.id, sheet };
      return [computer === undefined ? pair : { ...pair, computer }];
    })
    .sort((one, other) => byCodeUnit(one.drive, other.drive));

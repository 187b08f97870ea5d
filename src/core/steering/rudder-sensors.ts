import type { BoatIndex } from '../boat/boat-index.ts';
import type { RudderKind } from '../boat/drive.ts';
import { readingsOf } from '../facts/message-readings.ts';
import type { StandingJoin } from '../plan-shape.ts';
import type { DrivePair } from './drive-pairs.ts';

/** A rudder sensor that a pilot computer is wired to, and what it gives. */
export interface RudderSensor {
  readonly kit: string;
  readonly kind: RudderKind | undefined;
}

const givesRudder = (index: BoatIndex, { kit, port }: StandingJoin['members'][number]): boolean =>
  (index.sheetOf.get(kit)?.ports.find(({ id }) => id === port)?.sends ?? []).some((sent) =>
    readingsOf(sent).some(({ reading }) => reading === 'rudder'),
  );

/** The rudder sensors a computer has: on a lead of their own, on its bus, or built into its drive. */
export const rudderSensors = (
  index: BoatIndex,
  joins: readonly StandingJoin[],
  { computer, driveKit, sheet }: DrivePair,
): RudderSensor[] => {
  if (computer === undefined) return [];
  const built = sheet.rudderSensor === undefined ? [] : [{ kit: driveKit, kind: sheet.rudderSensor }];
  const joined = joins
    .filter(({ kind }) => kind === 'analog' || kind === 'nmea2000')
    .filter(({ members }) => members.some(({ kit }) => kit === computer.kit))
    .flatMap(({ kind, members }) =>
      members
        .filter((member) => member.kit !== computer.kit && member.as !== 'listen' && givesRudder(index, member))
        .map(({ kit }) => ({
          kit,
          kind: kind === 'nmea2000' ? ('bus' as const) : index.sheetOf.get(kit)?.rudderSensor,
        })),
    );
  return [...built, ...joined];
};

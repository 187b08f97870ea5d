import { panelNominalV } from '../backbone/panel-volts.ts';
import type { BoatIndex } from '../boat/boat-index.ts';
import { limitValue } from '../boat/limit-value.ts';
import type { DriveCheck, DriveEntry, DriveVerdict, SteeringEntry } from '../drives-shape.ts';
import type { StandingJoin } from '../plan-shape.ts';
import { circuitsByTarget } from '../power/circuits-by-target.ts';
import type { DriveLeadEntry, FeedEntry } from '../power-shape.ts';
import { leadChecks, lossChecks, outputChecks, rudderChecks, weightChecks } from './drive-checks.ts';
import { type DrivePair, drivePairs } from './drive-pairs.ts';
import { ladenKg } from './laden-kg.ts';
import { outputWanted } from './output-wanted.ts';
import { rudderSensors } from './rudder-sensors.ts';
import { leversEverywhere, steeringPlaces } from './steering-places.ts';

/** What pilots and steering places are told from. */
export interface DrivesInput {
  readonly index: BoatIndex;
  readonly phase: number;
  readonly joins: readonly StandingJoin[];
  readonly feeds: readonly FeedEntry[];
}

/** Volts of the panel that feeds a unit in its last phase. */
const supplyVOf = (index: BoatIndex, kit: string): number | undefined => {
  const circuits = circuitsByTarget(index);
  const port = (index.sheetOf.get(kit)?.ports ?? []).find(({ id }) => circuits.has(`${kit}.${id}`));
  const panel = index.panels.get(circuits.get(`${kit}.${port?.id ?? ''}`)?.panel ?? '');
  return panel === undefined ? undefined : panelNominalV(index, panel);
};

const leadOf = (feeds: readonly FeedEntry[], drive: string): DriveLeadEntry | undefined =>
  feeds.flatMap(({ leads = [] }) => leads).find(({ to }) => to === drive);

/** The output a drive hangs on, where its sheet tells of that very port. */
const outputOf = ({ computer }: DrivePair) =>
  computer !== undefined && computer.port === `${computer.kit}.${computer.sheet.driveOutput?.port ?? ''}`
    ? computer.sheet.driveOutput
    : undefined;

const checksOf = ({ index, joins, feeds }: DrivesInput, pair: DrivePair, levers: boolean): DriveCheck[] => {
  const { drive } = pair.sheet;
  const weight = weightChecks(drive, ladenKg(index.boat.hull));
  const { computer } = pair;
  if (computer === undefined && pair.drive !== pair.driveKit)
    return [...outputChecks({ drive, output: undefined, supplyV: undefined }), ...weight];
  if (computer === undefined)
    return [...weight, ...lossChecks({ drive, output: undefined }, { isOnBus: false, levers })];
  const output = outputOf(pair);
  const isOnBus = computer.sheet.ports.some(({ protocol }) => protocol === 'nmea2000');
  const limits = {
    runPct: limitValue(index.boat, 'feed-drop'),
    peakPct: limitValue(index.boat, 'drive-peak-drop'),
  };
  return [
    ...outputChecks({ drive, output, supplyV: supplyVOf(index, computer.kit) }),
    ...rudderChecks({ drive, output }, rudderSensors(index, joins, pair)),
    ...weight,
    ...lossChecks({ drive, output }, { isOnBus, levers }),
    ...leadChecks(leadOf(feeds, pair.drive), limits),
  ];
};

const verdictOf = (checks: readonly DriveCheck[]): DriveVerdict => {
  if (checks.some(({ verdict }) => verdict === 'fails')) return 'fails';
  return checks.some(({ verdict }) => verdict === 'unknown') ? 'unknown' : 'fits';
};

/** Checks of the output itself: where one of them fails another output would do it. */
const ofOutput: ReadonlySet<DriveCheck['check']> = new Set([
  'motor-volts',
  'output-kind',
  'run-current',
  'peak-current',
  'clutch-output',
  'clutch-volts',
  'clutch-current',
]);

const driveEntry = (input: DrivesInput, pair: DrivePair, levers: boolean): DriveEntry => {
  const checks = checksOf(input, pair, levers);
  const isOutputWrong = checks.some(({ check, verdict }) => verdict === 'fails' && ofOutput.has(check));
  return {
    drive: pair.drive,
    ...(pair.computer === undefined ? {} : { computer: pair.computer.port, join: pair.computer.join }),
    checks,
    verdict: verdictOf(checks),
    ...(isOutputWrong ? { instead: outputWanted(pair.sheet.drive) } : {}),
  };
};

/**
 * Every pilot against its drive, and every steering place with what frees the helm there (docs/methods/steering-drive.md).
 * Pure; drives sorted by port, places as the canonical boat has them.
 */
export const planDrives = (input: DrivesInput): { drives: DriveEntry[]; steering: SteeringEntry[] } => {
  const pairs = drivePairs(input.index, input.phase, input.joins);
  const steering = steeringPlaces(input.index, pairs);
  const levers = leversEverywhere(steering);
  return { drives: pairs.map((pair) => driveEntry(input, pair, levers)), steering };
};

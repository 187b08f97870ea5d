import type { Drive, DriveOutput, RudderKind } from '../boat/drive.ts';
import { byCodeUnit } from '../boat/ids.ts';
import type { DriveCheck, DriveCheckId, DriveVerdict } from '../drives-shape.ts';
import { driveKinds } from '../facts/steering-figures.ts';

/** What a check is asked: a drive, the output it hangs on, the volts of its supply. */
export interface MatchAsk {
  readonly drive: Drive;
  readonly output: DriveOutput | undefined;
  /** of the supply of the computer */
  readonly supplyV: number | undefined;
}

type Unit = NonNullable<DriveCheck['unit']>;

/** Asked and given as figures; `holds` where both are known. */
const figures = (
  check: DriveCheckId,
  unit: Unit,
  { asked, given }: { readonly asked: number | undefined; readonly given: number | undefined },
  holds: (asked: number, given: number) => boolean,
): DriveCheck => ({
  check,
  verdict: asked === undefined || given === undefined ? 'unknown' : verdictOf(holds(asked, given)),
  ...(asked === undefined ? {} : { asked }),
  ...(given === undefined ? {} : { given }),
  unit,
});

const verdictOf = (holds: boolean): DriveVerdict => (holds ? 'fits' : 'fails');

const atLeast = (asked: number, given: number): boolean => asked <= given * (1 + 1e-9);
const same = (asked: number, given: number): boolean => asked === given;

/** The volts of an output nearest to those asked: of those it can be set to, or those of its supply. */
const nearest = (settable: readonly number[] | undefined, supplyV: number | undefined, askedV: number) =>
  settable === undefined
    ? supplyV
    : [...settable].sort((one, other) => Math.abs(one - askedV) - Math.abs(other - askedV) || one - other)[0];

/** What a drive wants of an output: a motor turned both ways, or two valves. */
export const wantedKind = ({ type }: Pick<Drive, 'type'>): DriveOutput['works'][number] => driveKinds[type].works;

/** Whether the drive has something that the clutch output must hold. */
export const needsClutch = ({ clutchV, clutchA, bypass }: Drive): boolean =>
  clutchV !== undefined || clutchA !== undefined || bypass === true;

/** Of a constant pump with its own rated gear nothing is turned by the computer but its valves. */
const outputA = (drive: Drive, output: DriveOutput): Pick<DriveOutput, 'runA' | 'peakA'> => {
  if (wantedKind(drive) === 'reversing-motor' || output.valveA === undefined) return output;
  return { runA: output.valveA, peakA: output.valveA };
};

const motorChecks = ({ drive, output, supplyV }: MatchAsk): DriveCheck[] => {
  const kind = wantedKind(drive);
  const given = output === undefined ? undefined : outputA(drive, output);
  const givenV = output === undefined ? undefined : nearest(output.motorV, supplyV, drive.motorV);
  return [
    figures('motor-volts', 'V', { asked: drive.motorV, given: givenV }, same),
    {
      check: 'output-kind',
      verdict: output === undefined ? 'unknown' : verdictOf(output.works.includes(kind)),
      askedKind: kind,
      ...(output === undefined ? {} : { givenKinds: [...output.works] }),
    },
    figures('run-current', 'A', { asked: drive.runA, given: given?.runA }, atLeast),
    figures('peak-current', 'A', { asked: drive.peakA, given: given?.peakA }, atLeast),
  ];
};

const clutchChecks = ({ drive, output, supplyV }: MatchAsk): DriveCheck[] => {
  if (!needsClutch(drive)) return [];
  const clutch = output?.clutch;
  const has: DriveCheck = {
    check: 'clutch-output',
    verdict: clutch === undefined ? 'unknown' : verdictOf(clutch.fitted),
  };
  if (clutch?.fitted !== true) return [has];
  const askedV = drive.clutchV ?? drive.motorV;
  return [
    has,
    figures('clutch-volts', 'V', { asked: drive.clutchV, given: nearest(clutch.clutchV, supplyV, askedV) }, same),
    figures('clutch-current', 'A', { asked: drive.clutchA, given: clutch.clutchA }, atLeast),
  ];
};

/** The sensors a computer has against those it hears, and whether there is one where the pair wants one. */
export const rudderChecks = (
  { drive, output }: Pick<MatchAsk, 'drive' | 'output'>,
  sensors: readonly { readonly kind: RudderKind | undefined }[],
): DriveCheck[] => {
  const wanted = drive.needsRudderSensor === true || output?.rudder?.needed === true;
  const isKnown = drive.needsRudderSensor !== undefined || output?.rudder !== undefined;
  if (sensors.length === 0) {
    if (!wanted && isKnown) return [];
    return [{ check: 'rudder-sensor', verdict: isKnown ? 'fails' : 'unknown' }];
  }
  const kinds = [...new Set(sensors.flatMap(({ kind }) => kind ?? []))].sort(byCodeUnit);
  const hears = output?.rudder?.hears;
  const heard = hears === undefined ? undefined : kinds.some((kind) => hears.includes(kind));
  const isOpen = heard === undefined || (!heard && sensors.some(({ kind }) => kind === undefined));
  return [
    {
      check: 'rudder-kind',
      verdict: isOpen ? 'unknown' : verdictOf(heard === true),
      ...(kinds.length === 0 ? {} : { askedKind: kinds.join(', ') }),
      ...(hears === undefined ? {} : { givenKinds: [...hears] }),
    },
  ];
};

/** The drive against the output of its computer: volts, kind, currents, clutch. */
export const outputChecks = (ask: MatchAsk): DriveCheck[] => [...motorChecks(ask), ...clutchChecks(ask)];

/** The laden boat against what the drive is rated for; gear that steers her by hand as well is sized for her. */
export const weightChecks = (drive: Drive, ladenKg: number | undefined): DriveCheck[] =>
  drive.boatKg === undefined && driveKinds[drive.type].sizedForBoat
    ? []
    : [figures('boat-weight', 'kg', { asked: ladenKg, given: drive.boatKg }, atLeast)];

/** What is left of the grip on the helm when power or, for a computer on a bus, the bus is lost; a lever frees it from a drive without power. */
export const lossChecks = (
  { drive, output }: Pick<MatchAsk, 'drive' | 'output'>,
  { isOnBus, levers }: { readonly isOnBus: boolean; readonly levers: boolean },
): DriveCheck[] => {
  const power = without('power-lost', drive.whenPowerIsLost);
  return [
    power.verdict === 'fails' && levers ? { ...power, verdict: 'fits', givenKinds: ['lever'] } : power,
    ...(isOnBus ? [without('bus-lost', output?.whenBusIsLost)] : []),
  ];
};

const without = (check: DriveCheckId, says: Drive['whenPowerIsLost']): DriveCheck => ({
  check,
  verdict: says === undefined ? 'unknown' : verdictOf(says === 'lets-go'),
  ...(says === undefined ? {} : { givenKinds: [says] }),
});

/** What feed and lead lose together against what they may, as the drive runs and at its peak; unknown where the plan has no such lead. */
export const leadChecks = (
  lead: { readonly togetherPct?: number; readonly peakPct?: number } | undefined,
  limits: { readonly runPct: number; readonly peakPct: number },
): DriveCheck[] => [
  figures('leads-run', '%', { asked: lead?.togetherPct, given: limits.runPct }, atLeast),
  figures('leads-peak', '%', { asked: lead?.peakPct, given: limits.peakPct }, atLeast),
];

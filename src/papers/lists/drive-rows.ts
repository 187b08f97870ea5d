import type { DriveCheck, DriveCheckId, DriveEntry, LetGoEntry, SteeringEntry } from '../../core/drives-shape.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { outputCure, outputKind } from '../../core/steering/output-words.ts';
import type { CardBoat } from '../cards/card-boat.ts';

/** One point in which a drive and its computer, its cables or its boat must agree. */
export interface DrivePoint {
  readonly key: string;
  readonly what: string;
  /** what the computer, the cables or the maker of the drive give */
  readonly computer: string;
  /** what the drive asks */
  readonly drive: string;
  readonly verdict: string;
  readonly isOpen: boolean;
}

/** A pilot computer against its drive, point by point. */
export interface DriveRow {
  readonly key: string;
  /** "Pilot computer with pump" */
  readonly what: string;
  readonly fact: string;
  /** which output would do it, where this one does not */
  readonly instead?: string;
  readonly points: readonly DrivePoint[];
  readonly isOpen: boolean;
  readonly lights: readonly string[];
}

/** One place the boat is steered from, with what frees the helm there. */
export interface SteeringRow {
  readonly key: string;
  readonly what: string;
  readonly fact: string;
  readonly isOpen: boolean;
  readonly lights: readonly string[];
}

const points = {
  'motor-volts': 'volts of the motor',
  'output-kind': 'kind of output',
  'run-current': 'current as it runs',
  'peak-current': 'current at its peak',
  'clutch-output': 'output for clutch or bypass',
  'clutch-volts': 'volts of the clutch',
  'clutch-current': 'current of the clutch',
  'rudder-kind': 'kind of rudder sensor',
  'rudder-sensor': 'rudder sensor',
  'boat-weight': 'weight of the laden boat',
  'power-lost': 'without power',
  'bus-lost': 'without its bus',
  'leads-run': 'lost in feed and lead as it runs',
  'leads-peak': 'lost in feed and lead at its peak',
} as const satisfies Record<DriveCheckId, string>;

const verdicts = { fits: 'fits', fails: 'does not fit', unknown: 'not known' } as const;

const figure = (value: number | undefined, unit: DriveCheck['unit']): string => {
  if (value === undefined) return '';
  const digits = unit === 'kg' ? 0 : 1;
  return `${Number(value.toFixed(digits))} ${unit}`;
};

const lossWords: Readonly<Record<string, string>> = {
  'lets-go': 'the helm is free by itself',
  holds: 'the helm is held',
  lever: 'a lever frees the helm at every steering place',
};

const kindsOf = (check: DriveCheck, kinds: readonly string[]): string => {
  if (check.check === 'output-kind') return kinds.map(outputKind).join(' or ');
  if (check.check === 'power-lost' || check.check === 'bus-lost')
    return kinds.map((kind) => lossWords[kind] ?? kind).join(', ');
  return kinds.join(' or ');
};

/** What computer and drive say of a point; what is of the boat or of the cables stands with the drive, that of lost power with it alone. */
const sidesOf = (check: DriveCheck): Pick<DrivePoint, 'computer' | 'drive'> => {
  const { asked, given, unit, askedKind, givenKinds = [] } = check;
  const [wants, has] = [figure(asked, unit), figure(given, unit)];
  switch (check.check) {
    case 'boat-weight':
      return {
        computer: '',
        drive: [has === '' ? '' : `for ${has}`, wants].filter((says) => says !== '').join(', boat '),
      };
    case 'leads-run':
    case 'leads-peak':
      return { computer: '', drive: wants === '' ? '' : `${wants} of at most ${has}` };
    case 'power-lost':
      return { computer: '', drive: kindsOf(check, givenKinds) };
    case 'rudder-kind':
      return {
        computer: givenKinds.length === 0 ? '' : `hears ${givenKinds.join(' or ')}`,
        drive: askedKind === undefined ? '' : `sensor: ${askedKind}`,
      };
    default:
      return {
        computer: has === '' ? kindsOf(check, givenKinds) : has,
        drive: wants === '' && askedKind !== undefined ? kindsOf(check, [askedKind]) : wants,
      };
  }
};

const pointOf = (check: DriveCheck): DrivePoint => ({
  key: check.check,
  what: points[check.check],
  ...sidesOf(check),
  verdict: verdicts[check.verdict],
  isOpen: check.verdict !== 'fits',
});

const unitOf = (port: string): string => port.split('.')[0] ?? port;
const nameOf = (index: CardBoat, port: string): string => index.kit.get(unitOf(port))?.name ?? unitOf(port);

const factOf = (all: readonly DrivePoint[]): string => {
  const open = all.filter(({ isOpen }) => isOpen);
  if (open.length === 0) return `fits in all ${all.length} points`;
  return open.map(({ what, verdict }) => `${what}: ${verdict}`).join('; ');
};

const driveRow = (index: CardBoat, { drive, computer, checks, instead, verdict }: DriveEntry): DriveRow => {
  const all = checks.map(pointOf);
  const driven = nameOf(index, drive);
  return {
    key: drive,
    what: computer === undefined ? driven : `${nameOf(index, computer)} with ${driven}`,
    fact: factOf(all),
    ...(instead === undefined ? {} : { instead: outputCure(instead) }),
    points: all,
    isOpen: verdict !== 'fits',
    lights: [unitOf(drive), ...(computer === undefined ? [] : [unitOf(computer)])],
  };
};

/** Every pilot computer against its drive, as the plan has it. */
export const driveRows = (index: CardBoat, { drives }: Pick<Plan, 'drives'>): DriveRow[] =>
  drives.map((entry) => driveRow(index, entry));

const byWords = {
  wheel: 'wheel',
  tiller: 'tiller',
  joystick: 'joystick',
  'emergency-tiller': 'emergency tiller',
} as const satisfies Record<SteeringEntry['by'], string>;

const howWords = {
  'hard-wired-switch': 'a hard-wired switch',
  lever: 'a lever',
  breaker: 'a breaker',
  'pilot-head': 'the key of a pilot head',
  remote: 'a remote',
} as const satisfies Record<LetGoEntry['how'], string>;

const freedBy = ({ ways }: SteeringEntry): string => {
  const good = ways.filter(({ counts }) => counts);
  if (good.length === 0) return 'nothing within reach frees the helm by hand';
  const each = good.map(({ how, awayM }) =>
    awayM < 0.005 ? howWords[how] : `${howWords[how]}, ${awayM.toFixed(2)} m away`,
  );
  return `freed by ${each.join(', or ')}`;
};

/** Every place the boat is steered from, with what frees the helm there. */
export const steeringRows = (index: CardBoat, { steering }: Pick<Plan, 'steering'>): SteeringRow[] =>
  steering.map((entry) => ({
    key: `${entry.place} ${entry.by}`,
    what: `${byWords[entry.by]}, ${index.places.get(entry.place)?.name ?? entry.place}`,
    fact: freedBy(entry),
    isOpen: !entry.free,
    lights: [entry.place],
  }));

import { type DutyId, duties, dutyOfKind, radarStandbyShare } from '../facts/day-duty.ts';
import { type DayGoes, hoursIn, hoursOf, type RunHours } from './day-hours.ts';

/** What a unit is and draws, W: as a rule, and at the most, which for a radio is while it sends. */
export interface DrawnBy {
  readonly kind: string;
  readonly typicalW: number;
  readonly mostW: number;
}

/** How a day goes, and the person's own hours for this unit. */
export interface DayAsked extends DayGoes {
  readonly ownHours?: number | undefined;
}

/** What a unit takes in a day, and what of it in hours in which nothing charges. */
export interface UnitDay {
  readonly hours: number;
  readonly wh: number;
  readonly fromBankWh: number;
}

const none: RunHours = { hours: 0, fromBankHours: 0 };

/** Own hours fall on the parts of the day as the usual ones do; where there are none, evenly on the day. */
const ownRun = (usual: RunHours, { parts, uncharged, ownHours }: DayAsked): RunHours => {
  if (ownHours === undefined) return usual;
  const share = usual.hours > 0 ? usual.fromBankHours / usual.hours : hoursIn(parts, uncharged) / 24;
  return { hours: ownHours, fromBankHours: ownHours * share };
};

/** The rest of the run, in which a radar that was used that day waits. */
const waiting = (asked: DayAsked, sending: RunHours): RunHours => {
  const run = hoursOf(duties.pilot, asked);
  const hours = Math.max(0, run.hours - sending.hours);
  return { hours, fromBankHours: run.hours > 0 ? (hours * run.fromBankHours) / run.hours : 0 };
};

interface Use extends RunHours {
  readonly watts: number;
}

/** What a unit does beside its main use: a radio sends, a radar waits. */
const besideOf = (dutyId: DutyId, { typicalW, mostW }: DrawnBy, asked: DayAsked, main: RunHours): Use[] => {
  if (dutyId === 'radio-receive') {
    const sends = main.hours > 0 ? hoursOf(duties['radio-transmit'], asked) : none;
    return [{ ...sends, watts: mostW }];
  }
  if (dutyId !== 'radar' || (asked.ownHours === 0 && main.hours === 0)) return [];
  return [{ ...waiting(asked, main), watts: typicalW * radarStandbyShare.value }];
};

/**
 * What one unit takes in a day, Wh: the sum of watts x hours over what it does, each part of the day by the duty of its kind.
 *
 * @example unitDay({ kind: 'ais', typicalW: 3, mostW: 30 }, { parts, uncharged: ['anchor'], reckoned: 'usual' }).wh // 72 at anchor
 */
export const unitDay = (drawn: DrawnBy, asked: DayAsked): UnitDay => {
  const dutyId = dutyOfKind[drawn.kind] ?? 'instruments';
  const main = ownRun(hoursOf(duties[dutyId], asked), asked);
  const uses: readonly Use[] = [{ ...main, watts: drawn.typicalW }, ...besideOf(dutyId, drawn, asked, main)];
  const sum = (hoursOfUse: (use: Use) => number): number =>
    uses.reduce((wh, use) => wh + use.watts * hoursOfUse(use), 0);
  return { hours: main.hours, wh: sum(({ hours }) => hours), fromBankWh: sum(({ fromBankHours }) => fromBankHours) };
};

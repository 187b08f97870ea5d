import type { Kit } from '../../boat/boat-schema.ts';
import type { EditParams } from '../../boat/edits/index.ts';
import { splitDotted } from '../../boat/ids.ts';
import { ratePath } from '../../boat/rate-path.ts';
import { instanceOf } from '../survey/draft-sends.ts';
import type { SurveySender } from '../survey/survey-report.ts';
import { cameFrom } from './find-messages.ts';
import { matchSenders, unitsOnBus } from './match-senders.ts';
import { messageState } from './message-state.ts';
import type { Planned, PlannedSend } from './planned-sends.ts';

type Change = NonNullable<Kit['changes']>[number];

/** One unit aboard that a heard sender is, and, where that is sure, what the boat file does not say of it yet. */
export interface HeardUnitAboard {
  readonly unit: string;
  /** places in the survey of its senders */
  readonly senders: readonly number[];
  readonly isSure: boolean;
  /** absent where the boat file has it already, or it is not sure */
  readonly identity?: string;
  readonly changes: readonly Change[];
}

/** Whether a sheet sends a message once only: a path leads to the first entry. */
const isOnce = ({ index }: Planned, { port, message }: PlannedSend): boolean => {
  const { kit, part } = splitDotted(port);
  const sends = index.sheetOf.get(kit)?.ports.find(({ id }) => id === part)?.sends ?? [];
  return sends.filter(({ pgn }) => pgn === message).length === 1;
};

/** The interval heard, where it is not the planned one. */
const rateChange = (send: PlannedSend, sender: SurveySender, durationS: number | undefined): Change[] => {
  const { state, seenMs } = messageState(send, cameFrom(sender, send.message), durationS);
  if ((state !== 'too-often' && state !== 'too-seldom') || seenMs === undefined) return [];
  const path = ratePath(splitDotted(send.port).part, send.message);
  return [{ path, value: Math.max(1, Math.round(seenMs)), how: 'recording' }];
};

/** The number heard, where the plan says none and there is only one. */
const numberChange = ({ port, message, numbers }: PlannedSend, sender: SurveySender): Change[] => {
  const parts = sender.sends.find(({ pgn }) => pgn === message)?.parts ?? [];
  const heard = new Set(parts.flatMap((part) => instanceOf(Number(message), part) ?? []));
  const [instance] = heard;
  if (numbers.length > 0 || heard.size !== 1 || instance === undefined) return [];
  return [{ path: `ports.${splitDotted(port).part}.sends.${message}.instance`, value: instance, how: 'recording' }];
};

/**
 * The units aboard that heard senders are: surely by their NAME where the boat file has it, else by kind, messages and
 * numbers where no other could be meant. With each sure one what the boat file does not say yet: NAME, numbers, intervals.
 * What it says already stays. Pure.
 */
export const identitiesHeard = (
  planned: Planned,
  bus: string,
  { senders, durationS }: { senders: readonly SurveySender[]; durationS: number | undefined },
): HeardUnitAboard[] => {
  const units = unitsOnBus(planned, bus);
  return matchSenders(units, senders).matches.map(({ unit, senders: own, how }): HeardUnitAboard => {
    const sender = senders[own[0] ?? -1];
    const isSure = how === 'identity' || how === 'sure';
    if (sender === undefined || !isSure) return { unit, senders: own, isSure, changes: [] };
    const sends = (units.find((one) => one.unit === unit)?.sends ?? []).filter((send) => isOnce(planned, send));
    const said = new Set((planned.index.kit.get(unit)?.changes ?? []).map(({ path }) => path));
    const changes = sends
      .flatMap((send) => [...rateChange(send, sender, durationS), ...numberChange(send, sender)])
      .filter(({ path }) => !said.has(path));
    const known = planned.index.kit.get(unit)?.identity;
    const identity = known === undefined && sender.name !== undefined ? { identity: sender.name.hex } : {};
    return { unit, senders: own, isSure, ...identity, changes };
  });
};

/** The edit that takes them over; undefined where the boat file says it all. */
export const takeOver = (heard: readonly HeardUnitAboard[]): EditParams<'take-identities'> | undefined => {
  const units = heard
    .filter(({ identity, changes }) => identity !== undefined || changes.length > 0)
    .map(({ unit, identity, changes }) => ({
      unit,
      ...(identity === undefined ? {} : { identity }),
      ...(changes.length === 0 ? {} : { changes: [...changes] }),
    }));
  return units.length === 0 ? undefined : { units };
};

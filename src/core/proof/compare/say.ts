import { shortName } from '../../boat/short-name.ts';
import { inchesInFoot, inchM } from '../../units/foot.ts';
import type { Sender } from '../survey/sender-book.ts';
import { senderKind } from '../survey/sender-words.ts';
import type { SurveySender } from '../survey/survey-report.ts';
import type { Evidence } from './evidence-book.ts';
import type { Planned } from './planned-sends.ts';
import type { ProofFinding } from './proof-report.ts';
import type { SeenBus } from './seen.ts';
import { senderKey } from './watched.ts';

/** A unit by its name in the boat file, a long one cut at its comma. */
export const unitName = ({ index }: Planned, unit: string): string => shortName(index.kit.get(unit)?.name ?? unit);

/** With a capital letter in front. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Several names in one sentence. */
export const listed = (names: readonly string[], between = 'and'): string =>
  names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} ${between} ${names.at(-1)}`;

/** A device in words: the unit it was matched to, else what it says it is, with its address. */
export const deviceWords = (planned: Planned, bus: SeenBus, sender: SurveySender): string => {
  const unit = bus.unitOf(sender);
  const address = sender.address ?? sender.addresses.at(-1);
  const at = address === undefined ? '' : ` at address ${address}`;
  return `${unit === undefined ? senderKind(sender).words : unitName(planned, unit)}${at}`;
};

/** The same at the beginning of a sentence. */
export const deviceSays = (planned: Planned, bus: SeenBus, sender: SurveySender): string =>
  capital(deviceWords(planned, bus, sender));

/** Messages that tell a ship, a place, or one very unit: their bytes are not shown. */
const isPrivate = (message: number | string): boolean => {
  if (typeof message === 'string')
    return ['VDM', 'VDO', 'DSC', 'DSE', 'GGA', 'GLL', 'GNS', 'RMC', 'RMA', 'RMB', 'WPL', 'BWC', 'BWR'].includes(
      message,
    );
  if ([60_928, 126_996, 126_998, 129_025, 129_029, 129_284, 129_285, 129_808].includes(message)) return true;
  return (message >= 129_038 && message <= 129_041) || (message >= 129_792 && message <= 129_814);
};

/** Bytes as they may be shown: `09 f1 12 …`; nothing of a message that is private. */
export const bytesOf = (message: number | string, bytes: Uint8Array | string | undefined): { bytes?: string } => {
  if (bytes === undefined || bytes.length === 0 || isPrivate(message)) return {};
  if (typeof bytes === 'string') return { bytes: bytes.replace(/[^ -~]/g, '?') };
  return { bytes: Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join(' ') };
};

/** A time in the recording. */
export const atTime = (us: number | undefined): { atS?: number } => (us === undefined ? {} : { atS: us / 1_000_000 });

/** When and how the last message of some evidence came. */
export const lastOf = (evidence: Evidence | undefined): Pick<ProofFinding, 'atS' | 'bytes'> =>
  evidence === undefined ? {} : { ...atTime(evidence.lastUs), ...bytesOf(evidence.pgn, evidence.last) };

/** The sender of the report that a sender of the survey’s own books became. */
export const reported = (bus: SeenBus, sender: Sender): SurveySender | undefined =>
  bus.senders.find((one) => senderKey(one) === senderKey(sender));

/** A figure in words: no more digits than tell something. */
export const figure = (value: number): string => {
  const size = Math.abs(value);
  return Number(value.toFixed(size >= 100 ? 0 : size >= 10 ? 1 : 2)).toString();
};

/** An interval in words: `250 ms`, `2.5 s`. */
export const interval = (ms: number): string => (ms < 1000 ? `${figure(ms)} ms` : `${figure(ms / 1000)} s`);

/** A count with its word: `1 frame`, `2 frames`. */
export const counted = (count: number, one: string, many = `${one}s`): string => `${count} ${count === 1 ? one : many}`;

/** A length in both units: `0.65 m (2.13 ft)`. */
export const lengthWords = (valueM: number): string =>
  `${figure(valueM)} m (${figure(valueM / (inchM * inchesInFoot))} ft)`;

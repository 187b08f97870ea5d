import { type InventedDevice, type RecordedFrame, recordBus } from '../../../../../../tests/recordings/invented-bus.ts';
import { plannedBoat, plannedMessages, watchFrames } from '../../../../../../tests/recordings/planned-boat.ts';
import { type PlannedMessage, plannedDevice } from '../../../../../../tests/recordings/planned-bus.ts';
import { recordLine } from '../../../../../../tests/recordings/planned-line.ts';
import type { ReaderCounts } from '../../../readers/recording-reader-shape.ts';
import type { ProofReport } from '../../proof-report.ts';
import { startWatch, type Watch } from '../../watch.ts';

/** A fault of a boat planted in what is watched of her, and every check that must find it, no other. */
export interface Planted {
  readonly report: () => ProofReport;
  readonly finds: readonly string[];
}

const gannet = plannedBoat('gannet');
const messages = plannedMessages(gannet, 'nav');
const seconds = 10;

export const addressOf = (unit: string): number => messages.get(unit)?.address ?? 0;

type Change = (sends: readonly PlannedMessage[]) => readonly PlannedMessage[];

/** The devices of Gannet’s bus, as planned but for one unit. */
export const devicesBut = (unit?: string, change: Change = (sends) => sends): InventedDevice[] =>
  [...messages].map(([id, said]) => plannedDevice({ ...said, sends: id === unit ? change(said.sends) : said.sends }));

/** One message of a unit otherwise. */
export const otherwise =
  (pgn: number, how: Partial<PlannedMessage>): Change =>
  (sends) =>
    sends.map((message) => (message.pgn === pgn ? { ...message, ...how } : message));

/** Without one message of a unit. */
export const without =
  (pgn: number): Change =>
  (sends) =>
    sends.filter((message) => message.pgn !== pgn);

export const framesOf = (devices: readonly InventedDevice[]): RecordedFrame[] => recordBus({ devices, seconds });

export const watchGannet = (): Watch => startWatch({ boat: gannet.index.boat, plan: gannet.plan });

/** What a watch of Gannet’s bus says of some frames. */
export const reportOf = (frames: readonly RecordedFrame[], read?: readonly ReaderCounts[]): ProofReport => {
  const watch = watchGannet();
  watchFrames(watch, frames);
  return watch.report(read);
};

/** What a watch says where these devices are on the bus. */
export const reportOn = (devices: readonly InventedDevice[]): ProofReport => reportOf(framesOf(devices));

const sandpiper = plannedBoat('sandpiper');

export interface Said {
  readonly timeUs: number;
  readonly text: string;
}

/** What a watch says of the line of Sandpiper’s log, with its sentences made otherwise. */
export const reportOnLine = (change: (said: readonly Said[]) => readonly Said[]): ProofReport => {
  const watch = startWatch({ boat: sandpiper.index.boat, plan: sandpiper.plan, talker: 'log-depth.out' });
  for (const { text, timeUs } of change(recordLine(sandpiper, 'log-depth.out'))) watch.takeSentence(text, timeUs);
  return watch.report();
};

/** What a watch says of a line nobody named. */
export const reportOnSomeLine = (said: readonly Said[]): ProofReport => {
  const watch = startWatch({ boat: sandpiper.index.boat, plan: sandpiper.plan });
  for (const { text, timeUs } of said) watch.takeSentence(text, timeUs);
  return watch.report();
};

import { UserError } from '../../core/boat/user-error.ts';
import type { RecordingState } from '../../core/proof/live/live-snapshot.ts';
import { wiresAboard } from '../../core/proof/live/wires-aboard.ts';
import { type Listening, startListening } from '../../live/listening.ts';
import { hasSerialLibrary } from '../../live/sources/serial-port.ts';
import { noLibrary } from '../../live/sources/serial-source.ts';
import { loadBoat } from '../../node/files/load-boat.ts';
import { picturesBeside } from '../../node/pictures-beside.ts';
import { askFirst } from '../ask-first.ts';
import { listenScreen } from '../listen-screen.ts';
import { listenSource, type SourceOptions } from '../listen-source.ts';
import { printProof } from '../print-proof.ts';
import { solveAtTerminal } from '../solve-at-terminal.ts';

interface ListenOptions extends SourceOptions {
  readonly on?: string;
  readonly record?: string;
  readonly json?: boolean;
  readonly for?: number;
  readonly ask?: string;
  readonly thorough?: boolean;
  readonly yes?: boolean;
}

const twice = new UserError({
  says: 'Boat and bus cannot both come from standard input.',
  whatToDo: 'Give the boat as a file.',
});

/** At a terminal nobody waits for a library that is not there. */
const mustReadSerial = async (path: string): Promise<void> => {
  if (!(await hasSerialLibrary())) throw new UserError({ ...noLibrary, place: path });
};

const mustBeWire = (on: string, wires: readonly string[]): void => {
  if (wires.includes(on)) return;
  throw new UserError({
    says: 'The boat has no such wire.',
    place: on,
    whatToDo: `Give one of: ${wires.join(', ')}.`,
  });
};

/** Whoever asked for a recording must not take half of one for the whole. */
const mustBeWhole = (recording: RecordingState | undefined, path: string | undefined): void => {
  if (recording?.kind !== 'stopped') return;
  throw new UserError({
    says: `${recording.why}: the recording ends with its line ${recording.lines}.`,
    ...(path === undefined ? {} : { place: path }),
    whatToDo: 'Make room or choose another disk, then record again.',
  });
};

/** Comes back when it is to be the end: Ctrl-C, the source’s own end, or so many seconds. */
const untilEnd = ({ ended }: Listening, seconds: number | undefined): Promise<void> =>
  new Promise((resolve) => {
    const timer = seconds === undefined ? undefined : setTimeout(() => finish(), seconds * 1000);
    const finish = (): void => {
      clearTimeout(timer);
      process.off('SIGINT', finish).off('SIGTERM', finish);
      resolve();
    };
    process.once('SIGINT', finish).once('SIGTERM', finish);
    void ended.then(finish);
  });

/**
 * `fairlead listen FILE`: the live bus held against the plan, while it speaks; at the end the same report and exit code as
 * `fairlead prove`. It only listens, unless `--ask` is given and a person says yes.
 */
export const listen = async (file: string, options: ListenOptions): Promise<void> => {
  if (file === '-' && options.stdin === true) throw twice;
  const { json = false } = options;
  const source = listenSource(options);
  if (options.serial !== undefined) await mustReadSerial(options.serial);
  const { boat } = await loadBoat(file);
  const ask = await askFirst(options);
  const plan = await solveAtTerminal(boat, await picturesBeside(file));
  if (options.on !== undefined) mustBeWire(options.on, wiresAboard(boat, plan));
  const screen = listenScreen(boat, json);
  const listening = startListening({
    source,
    boat,
    plan,
    on: options.on,
    recordTo: options.record,
    onNews: screen.news,
  });
  screen.begin(listening);
  if (ask !== undefined) listening.ask(ask);
  await untilEnd(listening, options.for);
  screen.end();
  await listening.stop();
  printProof(boat, listening.report(), json);
  mustBeWhole(listening.snapshot().recording, options.record);
};

import { availableParallelism } from 'node:os';
import { relative } from 'node:path';
import { newThread } from '../../node/new-thread.ts';
import { type ManyBoatsRow, manyBoatsText } from '../../papers/many/many-boats-text.ts';
import type { BoatAnswer, BoatTask, ManyWish } from './boat-task.ts';
import { boatsAskedFor } from './boats-asked-for.ts';
import { paperFolders } from './paper-folders.ts';
import { progressLine } from './progress-line.ts';
import { type Ending, shareOut, type Thread } from './share-out.ts';

/** A boat file of 16 MB is planned within it; whoever takes more fells one thread and nothing else. */
const mostMegabytes = 2048;

const newBoatThread = (wish: ManyWish): Thread =>
  newThread(
    { folder: import.meta.dirname, file: 'boat-worker' },
    { megabytes: mostMegabytes, data: wish, onEnd: () => undefined },
  );

/** What a shell reports of a program that Ctrl-C ended. */
const interruptedCode = 130;

export interface ManyTyped {
  readonly threads?: number;
  readonly times?: boolean;
  /** folder for a folder of papers a boat */
  readonly out?: string;
}

/** One boat that came to its end, in words or figures. */
interface Told {
  readonly row: ManyBoatsRow;
  readonly refused?: string;
  readonly answer?: Exclude<BoatAnswer, { refused: string }>;
}

const outOfMemory = (cause: Error | undefined): boolean =>
  cause !== undefined && 'code' in cause && cause.code === 'ERR_WORKER_OUT_OF_MEMORY';

const diedSays = (file: string, cause: Error | undefined): string =>
  outOfMemory(cause)
    ? `Planning this boat took more than ${mostMegabytes} MB of memory. At ${file}. Nothing was changed; plan her alone.`
    : `The thread that planned this boat came to an end. At ${file}. This is a fault in the program; nothing was changed.${cause === undefined ? '' : ` (${cause.message})`}`;

const toldOf = (file: string, ending: Exclude<Ending<BoatAnswer>, { kind: 'cut-off' }>): Told => {
  if (ending.kind === 'died') return { row: { file }, refused: diedSays(file, ending.cause) };
  const { answer, tookMs } = ending;
  const seconds = Math.round(tookMs / 100) / 10;
  return 'refused' in answer
    ? { row: { file, seconds }, refused: answer.refused }
    : { row: { file, seconds, summary: answer.summary }, answer };
};

const jsonOf = (file: string, { refused, answer, row }: Told, times: boolean): string => {
  const bare = answer?.json ?? JSON.stringify({ file, refused });
  return times ? `${bare.slice(0, -1)},"seconds":${row.seconds ?? 0}}` : bare;
};

/** Prints an array of one object a line, each as soon as it and all before it are there. */
const jsonPrinter = () => {
  let isFirst = true;
  return {
    print: (text: string): void => {
      process.stdout.write(`${isFirst ? '[' : ','}\n${text}`);
      isFirst = false;
    },
    end: (): void => void process.stdout.write(`${isFirst ? '[' : ''}\n]\n`),
  };
};

/** Ctrl-C lets the boats in hand be finished, a second one ends at once; gives what takes its ears off again. */
const hearInterrupts = (hear: { first: () => void; second: () => void }): (() => void) => {
  let count = 0;
  const onSignal = (): void => {
    count += 1;
    if (count === 1) hear.first();
    else hear.second();
  };
  process.on('SIGINT', onSignal);
  return () => void process.off('SIGINT', onSignal);
};

const tasksOf = (files: readonly string[], out: string | undefined): BoatTask[] => {
  const folders = out === undefined ? undefined : paperFolders(files, out);
  return files.map((file) => {
    const folder = folders?.get(file);
    return { file, ...(folder === undefined ? {} : { folder }) };
  });
};

/** Does what is wanted of every boat in the threads, and gives what came of each; `isStopped` where somebody had enough. */
const doAll = async (
  tasks: readonly BoatTask[],
  wish: ManyWish,
  { threads, times, begin }: Required<Omit<ManyTyped, 'out'>> & { begin: typeof newBoatThread },
) => {
  const line = progressLine(process.stderr);
  const printer = wish.json ? jsonPrinter() : undefined;
  const told: Told[] = [];
  let isStopped = false;
  const onEnding = ({ file }: BoatTask, ending: Ending<BoatAnswer>): void => {
    if (ending.kind === 'cut-off') return;
    const one = toldOf(file, ending);
    told.push(one);
    if (one.refused !== undefined) line.tell(one.refused);
    for (const note of one.answer?.notes ?? []) line.tell(`${file}: ${note}`);
    printer?.print(jsonOf(file, one, times));
    if (!wish.json) line.show(`${told.length} of ${tasks.length} boats done; last ${file}`);
  };
  const sharing = shareOut<BoatTask, BoatAnswer>({
    tasks,
    threads,
    begin: () => begin(wish),
    onEnding,
    nowMs: () => performance.now(),
  });
  const deafen = hearInterrupts({
    first: () => {
      isStopped = true;
      line.tell('Stopping: the boats in hand are finished first; Ctrl-C again ends at once.');
      sharing.stop();
    },
    second: sharing.end,
  });
  await sharing.done;
  deafen();
  line.wipe();
  printer?.end();
  return { told, isStopped };
};

const exitCodeOf = (of: ManyWish['of'], told: readonly Told[]): number => {
  if (told.some(({ refused }) => refused !== undefined)) return 2;
  return of === 'check' && told.some(({ answer }) => answer?.wantsMending === true) ? 1 : 0;
};

/** The table for a person; paths as they stand in the folder that was named. */
const tableOf = (
  named: readonly string[],
  wish: ManyWish,
  { told, times }: { told: readonly Told[]; times: boolean },
) =>
  manyBoatsText(
    wish.of,
    told.map(({ row: { file, summary, seconds } }) => ({
      file: named.length === 1 ? relative(named[0] ?? '', file) : file,
      ...(summary === undefined ? {} : { summary }),
      ...(times && seconds !== undefined ? { seconds } : {}),
    })),
  );

/**
 * Checks or plans every boat that was named, or lies in a folder that was named, in as many threads as there are cores:
 * a table, or an array of JSON with one object a line, in the order of the files. The exit code is that of one boat, and 2
 * where any could not be read; all others are done all the same.
 */
export const manyAtTerminal = async (
  named: readonly string[],
  wish: ManyWish,
  typed: ManyTyped,
  begin = newBoatThread,
): Promise<void> => {
  const { threads = availableParallelism(), times = false, out } = typed;
  const tasks = tasksOf(await boatsAskedFor(named), out);
  const { told, isStopped } = await doAll(tasks, wish, { threads, times, begin });
  if (!wish.json) {
    process.stdout.write(tableOf(named, wish, { told, times }));
    const bad = told.find(({ answer }) => answer?.wantsMending === true);
    if (bad !== undefined) process.stderr.write(`What it is: fairlead check ${bad.row.file}\n`);
    if (out !== undefined) process.stderr.write(`The papers are in ${out}, a folder for each boat.\n`);
  }
  if (isStopped)
    process.stderr.write(`Stopped: ${tasks.length - told.length} of ${tasks.length} boats were not looked at.\n`);
  process.exitCode = isStopped ? interruptedCode : exitCodeOf(wish.of, told);
};

import type { EventEmitter } from 'node:events';

/** How far the answers may run ahead of the first that is still awaited, in answers a thread: they are kept until it is there. */
const aheadPerThread = 8;

/** As much of a thread as is needed here. */
export interface Thread extends Pick<EventEmitter, 'on' | 'off'> {
  postMessage(task: unknown): void;
  ref(): void;
  terminate(): unknown;
}

/** How one piece of work ended. */
export type Ending<Answer> =
  | { readonly kind: 'answered'; readonly answer: Answer; readonly tookMs: number }
  /** its thread ended under it */
  | { readonly kind: 'died'; readonly cause: Error | undefined }
  /** it was cut off by `end` */
  | { readonly kind: 'cut-off' };

interface Sharing<Task, Answer> {
  readonly tasks: readonly Task[];
  readonly threads: number;
  /** a new thread, which answers each task it is sent with one message */
  readonly begin: () => Thread;
  /** told of each task in the order of the list, whatever thread had it and when */
  readonly onEnding: (task: Task, ending: Ending<Answer>) => void;
  readonly nowMs: () => number;
}

/** One task in one thread. A thread that ends under it has not answered. */
const askThread = <Answer>(worker: Thread, task: unknown, nowMs: () => number): Promise<Ending<Answer>> =>
  new Promise((resolve) => {
    const begunMs = nowMs();
    let cause: Error | undefined;
    const onError = (error: Error): void => {
      cause = error;
    };
    const finish = (ending: Ending<Answer>): void => {
      worker.off('message', onMessage);
      worker.off('error', onError);
      worker.off('exit', onExit);
      resolve(ending);
    };
    const onMessage = (answer: Answer): void => finish({ kind: 'answered', answer, tookMs: nowMs() - begunMs });
    const onExit = (): void => finish({ kind: 'died', cause });
    worker.on('message', onMessage);
    worker.on('error', onError);
    worker.on('exit', onExit);
    worker.postMessage(task);
  });

/**
 * Shares tasks out among threads. One that dies is told of, and another goes on in its place. `stop` begins no further task
 * and lets those in hand come to their end; `end` cuts them off. `done` settles when no thread is left.
 */
export const shareOut = <Task, Answer>({ tasks, threads, begin, onEnding, nowMs }: Sharing<Task, Answer>) => {
  let [next, told] = [0, 0];
  let state: 'going' | 'stopping' | 'ended' = 'going';
  const endings = new Map<number, Ending<Answer>>();
  const workers = new Set<Thread>();
  let wake: (() => void)[] = [];

  const wakeAll = (): void => {
    for (const go of wake) go();
    wake = [];
  };

  const tell = (at: number, ending: Ending<Answer>): void => {
    endings.set(at, ending);
    for (let ready = endings.get(told); ready !== undefined; ready = endings.get(told)) {
      endings.delete(told);
      // reason: what has an ending is a task
      onEnding(tasks[told] as Task, ready);
      told += 1;
    }
    wakeAll();
  };

  /** The number of the next task, once it is near enough to the first that is awaited. */
  const nextTask = async (): Promise<number | undefined> => {
    while (state === 'going' && next < tasks.length && next >= told + threads * aheadPerThread)
      await new Promise<void>((go) => {
        wake.push(go);
      });
    if (state !== 'going' || next >= tasks.length) return undefined;
    next += 1;
    return next - 1;
  };

  const started = (): Thread => {
    const worker = begin();
    worker.ref();
    workers.add(worker);
    worker.on('exit', () => workers.delete(worker));
    return worker;
  };

  const lane = async (): Promise<void> => {
    let worker: Thread | undefined;
    for (let at = await nextTask(); at !== undefined; at = await nextTask()) {
      worker ??= started();
      const ending = await askThread<Answer>(worker, tasks[at], nowMs);
      if (ending.kind === 'died') worker = undefined;
      tell(at, ending.kind === 'died' && state === 'ended' ? { kind: 'cut-off' } : ending);
    }
    await worker?.terminate();
  };

  return {
    done: Promise.all(Array.from({ length: Math.min(threads, tasks.length) }, lane)).then(() => undefined),
    stop: (): void => {
      state = 'stopping';
      wakeAll();
    },
    end: (): void => {
      state = 'ended';
      wakeAll();
      for (const worker of workers) void worker.terminate();
    },
  };
};

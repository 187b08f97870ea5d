import { parentPort, workerData } from 'node:worker_threads';
import type { BoatTask, ManyWish } from './boat-task.ts';
import { doBoat } from './do-boat.ts';

// reason: begun by many-at-terminal.ts only
const wish = workerData as ManyWish;

parentPort?.on('message', async (task: BoatTask) => parentPort?.postMessage(await doBoat(task, wish)));

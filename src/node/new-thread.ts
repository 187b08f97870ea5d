import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { Worker } from 'node:worker_threads';

/** Runs the sources as they are, for a checkout and for tests; a thread has no other way to be told what reads them. */
const fromSources = (file: string): string =>
  `import('tsx/esm/api').then(({ register }) => { register(); return import(${JSON.stringify(pathToFileURL(file).href)}); });`;

/**
 * A thread that runs a file of a folder of the sources; built, all such files lie beside this one. It may take so many
 * megabytes for itself, and keeps no program from ending. `onEnd` is called however it ends; one that fails takes nothing
 * else with it.
 */
export const newThread = (
  { folder, file }: { folder: string; file: 'sheet-worker' | 'phones-worker' | 'boat-worker' },
  { megabytes, data, onEnd }: { megabytes: number; data?: unknown; onEnd: () => void },
): Worker => {
  const built = join(import.meta.dirname, `${file}.js`);
  const options = { resourceLimits: { maxOldGenerationSizeMb: megabytes }, workerData: data };
  const worker = existsSync(built)
    ? new Worker(built, options)
    : new Worker(fromSources(join(folder, `${file}.ts`)), { ...options, eval: true });
  worker.unref();
  return worker.on('error', () => undefined).on('exit', onEnd);
};

import { chromium } from 'playwright-core';
import type { TestProject } from 'vitest/node';

declare module 'vitest' {
  interface ProvidedContext {
    /** where the one browser of the run is reached */
    browserAt: string;
  }
}

/** What a browser would do besides showing pages is left out. */
const quiet = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** Starts one browser for all files of a run, as starting one takes longer than many a test; shuts it in the end. */
export default async (project: TestProject): Promise<() => Promise<void>> => {
  const server = await chromium.launchServer({
    executablePath: process.env.CHROME_PATH ?? '/usr/bin/chromium',
    args: quiet,
    host: '127.0.0.1',
  });
  project.provide('browserAt', server.wsEndpoint());
  return () => server.close();
};

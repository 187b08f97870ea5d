import type { StaticFile } from './static-files.ts';

/** What the page is told when it comes from here: her boats are in a folder. Any other host hands it out as it was built. */
const mark = { built: 'name="fairlead-boats" content="browser"', served: 'name="fairlead-boats" content="folder"' };

/**
 * In place of the worker that keeps the page for use without a host: one that takes itself away, with all it kept. A page
 * that came from some other host at this very address must not stand before the boats of the folder.
 */
const leavingWorker = `addEventListener('install', () => skipWaiting());
addEventListener('activate', (event) => {
  const leave = async () => {
    for (const name of await caches.keys()) await caches.delete(name);
    await registration.unregister();
    for (const page of await clients.matchAll({ type: 'window' })) await page.navigate(page.url);
  };
  event.waitUntil(leave());
});
`;

/** The files of the built app as this server hands them out, by address. */
export const servedApp = (files: ReadonlyMap<string, StaticFile>): ReadonlyMap<string, StaticFile> => {
  const served = new Map(files);
  for (const address of ['/', '/index.html']) {
    const page = files.get(address);
    if (page === undefined) continue;
    served.set(address, { ...page, body: Buffer.from(page.body.toString('utf8').replace(mark.built, mark.served)) });
  }
  const type = 'text/javascript; charset=utf-8';
  served.set('/sw.js', { type, body: Buffer.from(leavingWorker), lasting: false });
  return served;
};

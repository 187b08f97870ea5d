// Runs with the page itself, so that the planning worker loads beside the rest of the page and not after it.
const named = document.currentScript.dataset.worker;
if (named !== undefined) {
  const worker = new Worker(named, { type: 'module' });
  globalThis.firstWorker = worker;
  // one that could not be loaded is tried once more by the page, which tells of it where it fails again
  worker.addEventListener('error', () => {
    globalThis.firstWorker = undefined;
  });
}

// Finds a browser for the tests that open the app: CHROME_PATH, one on the system, else Debian's package when root.
import { existsSync } from 'node:fs';
import { installPackage } from './debian-package.mjs';

const places = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/usr/bin/google-chrome-stable',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
];

const onSystem = () => [process.env.CHROME_PATH, ...places].find((path) => path !== undefined && existsSync(path));

/** Path of a browser, installing Debian's chromium when root may; nothing when there is none. @returns {string | undefined} */
export function findBrowser() {
  const found = onSystem();
  if (found !== undefined) return found;
  installPackage('chromium');
  return onSystem();
}

/** A browser that draws no window of its own, and so leaves the machine to the pages: the tests take a sixth less time in it. */
const windowless = '/usr/bin/chromium-headless-shell';

/** Path of the browser that tests open: CHROME_PATH, else the one without a window, else any. @returns {string | undefined} */
export function findTestBrowser() {
  if (process.env.CHROME_PATH !== undefined) return findBrowser();
  if (!existsSync(windowless)) installPackage('chromium-headless-shell');
  return existsSync(windowless) ? windowless : findBrowser();
}

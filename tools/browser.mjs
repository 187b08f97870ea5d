// Finds a browser for the tests that open the app: CHROME_PATH, one on the system, else Debian's package when root.
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';

const places = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/usr/bin/google-chrome-stable',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
];

const onSystem = () => [process.env.CHROME_PATH, ...places].find((path) => path !== undefined && existsSync(path));

const aptInstall = () => {
  process.stderr.write('Installing the chromium package …\n');
  const quiet = { stdio: 'ignore', env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' } };
  spawnSync('apt-get', ['update'], quiet);
  spawnSync('apt-get', ['install', '-y', '--no-install-recommends', 'chromium'], quiet);
};

/** Path of a browser, installing Debian's chromium when root may; nothing when there is none. @returns {string | undefined} */
export function findBrowser() {
  const found = onSystem();
  if (found !== undefined) return found;
  if (process.getuid?.() === 0 && existsSync('/usr/bin/apt-get')) aptInstall();
  return onSystem();
}

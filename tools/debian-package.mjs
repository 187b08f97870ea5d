// Installs a package of Debian's where root may: browsers and solvers that only the tests need.
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';

let isListFresh = false;

/** Installs a package, or does nothing where this is no Debian or nobody is root. @param {string} name */
export function installPackage(name) {
  if (process.getuid?.() !== 0 || !existsSync('/usr/bin/apt-get')) return;
  process.stderr.write(`Installing the ${name} package …\n`);
  const quiet = { stdio: 'ignore', env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' } };
  if (!isListFresh) spawnSync('apt-get', ['update'], quiet);
  isListFresh = true;
  spawnSync('apt-get', ['install', '-y', '--no-install-recommends', name], quiet);
}

/** Whether a command is on the path. @param {string} command */
const isThere = (command) => spawnSync('which', [command], { stdio: 'ignore' }).status === 0;

/** Whether Debian’s own Python has a module. @param {string} module */
const hasModule = (module) =>
  spawnSync('/usr/bin/python3', ['-c', `import ${module}`], { stdio: 'ignore' }).status === 0;

/** Programs that do part of our work by other means, read what we write, or stand in for a cable; a test that asks one is skipped where it is not there. */
const secondOpinions = [
  { asked: 'cbc', name: 'coinor-cbc', isHere: isThere },
  { asked: 'ngspice', name: 'ngspice', isHere: isThere },
  { asked: 'pdftotext', name: 'poppler-utils', isHere: isThere },
  { asked: 'qpdf', name: 'qpdf', isHere: isThere },
  { asked: 'socat', name: 'socat', isHere: isThere },
  { asked: 'ezdxf', name: 'python3-ezdxf', isHere: hasModule },
];

/** Installs what second opinions are asked of, as far as this machine lets us, and says which of them will not be asked. */
export function installSecondOpinions() {
  for (const { asked, name, isHere } of secondOpinions) {
    if (isHere(asked)) continue;
    installPackage(name);
    if (isHere(asked)) continue;
    process.stderr.write(`${asked} is not here, so tests that ask it are skipped; Debian has it as ${name}.\n`);
  }
}

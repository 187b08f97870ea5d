/** The oldest Node this runs on. */
const wanted = [20, 19];

/**
 * Says in one sentence why a Node version will not do, or nothing when it will.
 *
 * @param {string} version as process.versions.node gives it, for example "20.20.2"
 * @returns {string | undefined}
 */
export function nodeProblem(version) {
  const parts = version.split('.').map(Number);
  const tooOld = parts[0] < wanted[0] || (parts[0] === wanted[0] && parts[1] < wanted[1]);
  return tooOld
    ? `Fairlead needs Node ${wanted.join('.')} or newer and this is Node ${version}; install a newer Node and run the same command again.`
    : undefined;
}

/** Ends the program with one sentence on the error stream. @param {string} sentence */
export function stop(sentence) {
  process.stderr.write(`${sentence}\n`);
  process.exit(2);
}

const problem = nodeProblem(process.versions.node);
if (problem !== undefined) stop(problem);

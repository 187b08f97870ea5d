/** What is typed for a thing that is next, for those that are done by a command; `file` names the boat file. */
const typed: Readonly<Record<string, (file: string) => string>> = {
  places: () => 'fairlead new --list',
  kit: (file) => `fairlead add ${file} chart plotter`,
  wiring: (file) => `fairlead wire ${file}`,
  danger: (file) => `fairlead check ${file}`,
  fault: (file) => `fairlead check ${file}`,
  missing: (file) => `fairlead check ${file}`,
  tape: (file) => `fairlead tape ${file}`,
  doubts: (file) => `fairlead check ${file}`,
  needs: (file) => `fairlead need ${file} depth --at display`,
  order: (file) => `fairlead order ${file}`,
  start: (file) => `fairlead work ${file} --starts 2027-03-31`,
  jobs: (file) => `fairlead work ${file}`,
  tests: (file) => `fairlead dock ${file}`,
  papers: (file) => `fairlead plan ${file} --issue "For the yard." --out papers`,
};

/**
 * How a thing that is next is done at a terminal; undefined where the boat file is written on by hand.
 *
 * @example atTerminal('wiring', 'kittiwake.boat.json') // 'fairlead wire kittiwake.boat.json'
 */
export const atTerminal = (id: string, file: string): string | undefined => typed[id]?.(file);

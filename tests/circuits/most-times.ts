import { type Circuit, solveCircuit, timesAsHeavy } from './circuit.ts';

/** How many times as heavy all loads may be before the circuit cannot work, to the last digit; without end where nothing stops it. */
export const mostTimes = (circuit: Circuit): number => {
  const works = (times: number): boolean => solveCircuit(timesAsHeavy(circuit, times)) !== undefined;
  let [least, most] = [0, 1];
  for (; works(most); most *= 2) {
    if (most > 1e9) return Number.POSITIVE_INFINITY;
    least = most;
  }
  for (let between = (least + most) / 2; between > least && between < most; between = (least + most) / 2) {
    if (works(between)) least = between;
    else most = between;
  }
  return least;
};

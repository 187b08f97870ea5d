import type { BoatProblem } from '../boat-problem.ts';
import { type Known, linkTo } from './check-links.ts';

/** Units whose guests are said to come in by a wifi port they have not. */
export const checkRemote = ({ index }: Known): BoatProblem[] =>
  index.boat.kit.flatMap(({ id, remote }, at) => {
    if (remote?.guests === undefined) return [];
    const ports = (index.sheetOf.get(id)?.ports ?? []).filter(({ protocol }) => protocol === 'wifi');
    return linkTo(new Map(ports.map((port) => [port.id, port])), {
      id: remote.guests,
      what: 'wifi port',
      owner: id,
      path: ['kit', at, 'remote', 'guests'],
    });
  });

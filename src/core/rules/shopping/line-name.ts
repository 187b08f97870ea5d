import type { BoatIndex } from '../../boat/boat-index.ts';
import type { LineEntry } from '../../plan-shape.ts';
import { busName, unitName } from '../rule-words.ts';

const endName = (index: BoatIndex, end: string): string => {
  const [bus = end] = end.split('/');
  return index.buses.has(bus) ? busName(index, bus) : unitName(index, end);
};

/** A line as a person knows it: by its ends and its label; a stretch of trunk by its bus, which both its ends are on. */
export const lineName = (index: BoatIndex, { kind, from, to, label }: LineEntry): string => {
  const [one, other] = [endName(index, from), endName(index, to)];
  const name = kind === 'trunk' ? `A stretch of trunk of ${one}` : `The ${kind} from ${one} to ${other}`;
  return label === undefined ? name : `${name}, ${label},`;
};

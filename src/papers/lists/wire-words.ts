import type { LineEntry, WireEntry } from '../../core/plan-shape.ts';
import { type EndNames, endWords } from './end-words.ts';

const wireEnd = ({ role, label, colour }: WireEntry['from']): string =>
  label === undefined ? `${role} (look up its mark)` : `${label}${colour === 'as marked' ? '' : ` (${colour})`}`;

/** One wire in words: "TX A (white) to RX A (yellow)", or "TX B (green) stays open, insulated". */
export const wireWords = ({ from, to }: WireEntry): string =>
  to === undefined ? `${wireEnd(from)} stays open, insulated` : `${wireEnd(from)} to ${wireEnd(to)}`;

/** How the wires of a line are joined, in words, each talker by its name; empty where the plan does not say. */
export const wiresWords = (names: EndNames, { wires = [] }: Pick<LineEntry, 'wires'>): string => {
  const talkers = [...new Set(wires.map(({ from }) => `${from.end} ${from.port}`))];
  return talkers
    .map((talker) => {
      const own = wires.filter(({ from }) => `${from.end} ${from.port}` === talker);
      return `from ${endWords(names, talker.split(' ')[0] ?? '')}: ${own.map(wireWords).join('; ')}`;
    })
    .join(' | ');
};

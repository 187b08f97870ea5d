import { type BoatIndex, portOf } from '../../boat/boat-index.ts';
import { aisStatic } from '../../facts/source-choice.ts';
import type { ReadingEntry } from '../../plan-shape.ts';
import type { Rule } from '../rule.ts';
import { unitName } from '../rule-words.ts';

const lacking = (list: readonly { pgn?: number; reading?: string; sentence?: string }[] | undefined): number[] => {
  if (list?.some(({ reading }) => reading === 'ais-targets') === true) return [];
  return aisStatic.pgns.filter((pgn) => list?.some((said) => said.pgn === pgn) !== true);
};

/** What the source does not send or the screen does not take; sentences carry all AIS messages in one form. */
const missingFor = (index: BoatIndex, { by }: ReadingEntry): number[] => {
  const [from, to] = [portOf(index, by[0] ?? ''), portOf(index, by.at(-1) ?? '')];
  if (from?.protocol !== 'nmea2000' || to?.protocol !== 'nmea2000') return [];
  return [...new Set([...lacking(from.sends), ...lacking(to.hears)])].sort((a, b) => a - b);
};

/** Ships are drawn where they are, but without name and size: the messages that carry them are on neither list, or on one. */
export const aisNamesMissing: Rule = {
  id: 'readings/ais-names-missing',
  level: 'doubt',
  title: 'AIS targets arrive without their names.',
  sources: ['practice-ais-static'],
  looksAt: 'whole-plan',
  check: ({ index, plan }) =>
    plan.readings
      .filter((entry) => entry.reading === 'ais-targets' && entry.arrives)
      .flatMap((entry) => {
        const missing = missingFor(index, entry);
        if (missing.length === 0) return [];
        return [
          {
            about: [entry.at, ...entry.by],
            says: `AIS targets reach ${unitName(index, entry.at)}, but not their names and sizes: message ${missing.join(', ')} is missing from what is sent or what is heard.`,
            cure: 'Look the lists up in both manuals; a set that cannot send them wants an update or another place in the plan.',
          },
        ];
      }),
};

import type { Cable } from '../../boat/boat-schema.ts';
import type { Rule } from '../rule.ts';
import { unitName } from '../rule-words.ts';

const words: Readonly<Record<Exclude<Cable['condition'], 'good'>, string>> = {
  untested: 'has not been tested',
  doubtful: 'is in doubtful condition',
  bad: 'is in bad condition',
};

/** The plan leans on a cable that lies in the boat already; it must pass a test before anything is ordered round it. */
export const keptCableUntested: Rule = {
  id: 'provenance/kept-cable-untested',
  level: 'doubt',
  title: 'The plan relies on a cable aboard that nobody has tested.',
  sources: ['practice-survey'],
  check: ({ index, plan }) =>
    plan.lines.flatMap((line) =>
      (line.kept ?? []).flatMap((id) => {
        const cable = index.cables.get(id);
        if (cable === undefined || cable.condition === 'good') return [];
        return [
          {
            about: [cable.id],
            level: cable.condition === 'bad' ? ('fault' as const) : ('doubt' as const),
            says: `The ${line.kind.replace('-', ' ')} line from ${unitName(index, line.from)} to ${unitName(index, line.to)} is to run on the cable ${cable.name ?? cable.id}, which ${words[cable.condition]}.`,
            cure: 'Test it end to end before you order: resistance of each conductor, and insulation between them. If it fails, take it out and enter it as going.',
          },
        ];
      }),
    ),
};

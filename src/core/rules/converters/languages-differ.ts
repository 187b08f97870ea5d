import { portOf } from '../../boat/boat-index.ts';
import type { StandingJoin } from '../../plan-shape.ts';
import type { Rule } from '../rule.ts';
import { unitName } from '../rule-words.ts';

/** Kinds of join on which many makers live side by side, each taking what it understands. */
const shared: ReadonlySet<StandingJoin['kind']> = new Set(['nmea2000', 'wifi']);

const makerWords = (dialect: string): string =>
  (dialect.split('/')[0] ?? dialect).replace(/^maker-./, (maker) => `maker ${maker.slice(-1).toUpperCase()}`);

/** A passive adapter makes one maker's plug fit another's socket; it does not make them speak. */
export const languagesDiffer: Rule = {
  id: 'converters/languages-differ',
  level: 'fault',
  title: 'Two makers’ own languages are joined without a converter.',
  sources: ['project-readings', 'practice-own-plugs'],
  check: ({ index, plan }) =>
    plan.joins
      .filter(({ kind }) => !shared.has(kind))
      .flatMap(({ id, members }) => {
        const spoken = members.flatMap(({ kit, port, as }) => {
          const dialect = portOf(index, `${kit}.${port}`)?.dialect;
          return dialect === undefined ? [] : [{ kit, as, maker: makerWords(dialect) }];
        });
        const [first] = [...spoken.filter(({ as }) => as !== 'listen'), ...spoken];
        if (first === undefined) return [];
        return spoken
          .filter(({ maker }) => maker !== first.maker)
          .map((other) => ({
            about: [id, first.kit, other.kit],
            says: `${unitName(index, first.kit)} speaks a language of ${first.maker}, ${unitName(index, other.kit)} one of ${other.maker}. Joined plug to plug they fit and say nothing to each other.`,
            cure: 'Put an active converter between them that knows both, usually by way of the bus, or choose a unit of the same language.',
          }));
      }),
};

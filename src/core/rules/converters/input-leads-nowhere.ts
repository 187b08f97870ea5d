import type { Rule } from '../rule.ts';
import { unitName } from '../rule-words.ts';

/** Kinds of unit that are bought to pass readings on and have no use for them themselves. */
const passers: ReadonlySet<string> = new Set(['converter', 'multiplexer']);

/** A converter wired at an input from which it carries nothing: bought the wrong way round, or joined at the wrong port. */
export const inputLeadsNowhere: Rule = {
  id: 'converters/input-leads-nowhere',
  level: 'fault',
  title: 'A converter carries nothing from an input that is wired.',
  sources: ['project-readings'],
  check: ({ index, plan }) =>
    plan.joins
      .filter(({ kind }) => kind === 'nmea0183' || kind === 'single-wire' || kind === 'analog')
      .flatMap(({ id, members }) =>
        members
          .filter(({ as }) => as === 'listen')
          .flatMap(({ kit, port }) => {
            const sheet = index.sheetOf.get(kit);
            if (sheet === undefined || !passers.has(sheet.kind)) return [];
            if (sheet.turns?.some((turn) => turn.fromPort === port && turn.carries.length > 0) === true) return [];
            return [
              {
                about: [id, `${kit}.${port}`],
                says: `${unitName(index, kit)} is wired at its port ${port}, but carries nothing from there to anywhere. It turns the other way round, or another of its ports is meant.`,
                cure: 'Join the port that carries this way, or choose a converter that goes both ways.',
              },
            ];
          }),
      ),
};

import { functionNames } from '../../facts/function-names.ts';
import type { Rule } from '../rule.ts';
import { phasesOf } from './work-links.ts';

/** Panels are opened, and nobody said which of them feeds the pumps, the horn, the lights: all are taken to be dark then. */
export const essentialsUnsaid: Rule = {
  id: 'work/essentials-unsaid',
  level: 'doubt',
  title: 'Nobody has said what an essential function hangs on.',
  sources: ['choice-watched-functions'],
  looksAt: 'whole-plan',
  check: ({ index, plan }) => {
    if (index.boat.work === undefined) return [];
    const phases = phasesOf(plan);
    const panels = phases.flatMap(({ jobs }) =>
      jobs.filter(({ kind, leftOut }) => kind === 'panel' && leftOut === undefined),
    );
    const unknown = [
      ...new Set(
        phases.flatMap(({ functions }) => functions.filter((one) => one.unknown === true).map((one) => one.function)),
      ),
    ];
    if (panels.length === 0 || unknown.length === 0) return [];
    const opened = [...new Set(panels.flatMap(({ about }) => about.filter((id) => index.panels.has(id))))];
    return [
      {
        // one finding of the boat, whichever panels are opened: what was said of it holds when one more is
        about: [],
        says: `${opened.length === 1 ? 'A panel is' : `${opened.length} panels are`} opened, and nobody has said what these hang on: ${unknown.map((one) => functionNames.byFunction[one]).join(', ')}. Every panel is taken to put them out.`,
        cure: 'Say at the step Work which circuit or bank each hangs on, or that she has none.',
      },
    ];
  },
};

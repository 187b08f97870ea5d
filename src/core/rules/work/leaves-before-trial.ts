import { phaseRule } from './phase-rule.ts';

/** Old units leave before the sea trial has shown that nothing of them is wanted back. */
export const leavesBeforeTrial = phaseRule({
  id: 'work/leaves-before-trial',
  level: 'doubt',
  title: 'Old units leave before the sea trial.',
  sources: ['practice-leaving-kit', 'choice-work-rules'],
  find: ({ index, phase: { jobs } }) => {
    const leaving = jobs.find(({ kind, leftOut }) => kind === 'leaving' && leftOut === undefined);
    if (leaving === undefined) return [];
    const trials = jobs.filter(({ kind }) => kind === 'sea-trial');
    const held = trials.filter(({ leftOut }) => leftOut === undefined);
    const day = leaving.day;
    const late = held.find((trial) => day !== undefined && trial.day !== undefined && day < trial.day);
    if (late === undefined && (trials.length === 0 || held.length > 0)) return [];
    const why =
      late === undefined ? 'though the sea trial is left out' : `on ${day}, before the sea trial on ${late.day}`;
    return [
      {
        about: leaving.about,
        apart: [leaving.id],
        says: `${leaving.about.map((unit) => index.kit.get(unit)?.name ?? unit).join(', ')}: to leave ${why}. What the new set cannot do shows at sea only.`,
        cure: 'Keep what goes, with its cables, until the sea trial has passed.',
      },
    ];
  },
});

import { type ShipPaperId, shipPaperIds, shipPapers } from '../../facts/ship-papers.ts';
import { addDays } from '../../units/add-days.ts';
import type { Job, PhaseWork } from '../../work-shape.ts';
import { phaseRule } from './phase-rule.ts';
import { daysWaited } from './work-links.ts';

interface Late {
  readonly paper: string;
  readonly there: string;
}

const isPaper = (id: string): id is ShipPaperId => shipPaperIds.some((paper) => paper === id);

/** Papers that a job waits for and that are not there on its day: those asked for, and those still to ask for on the first day of work. */
const lateFor = ({ days, jobs }: PhaseWork, job: Job, day: string): Late[] => {
  const asked = job.waitsFor.flatMap(({ what, id, on }): Late[] =>
    what === 'paper' && on !== undefined && on > day ? [{ paper: id, there: on }] : [],
  );
  const first = days[0]?.date;
  const open = job.after.flatMap(({ job: id, why, waitH = 0 }): Late[] => {
    const paper = jobs.find((one) => one.id === id && one.leftOut === undefined);
    const from = paper?.day ?? first;
    if (why !== 'papers-first' || paper === undefined || from === undefined) return [];
    const there = addDays(from, daysWaited(waitH));
    return there > day ? [{ paper: paper.about[0] ?? id, there }] : [];
  });
  return [...asked, ...open];
};

/** The day settled for the radios, or for the whole work, comes before their papers. */
export const papersTooLate = phaseRule({
  id: 'work/papers-too-late',
  level: 'fault',
  title: 'Papers are not there on the day of the radios.',
  sources: ['practice-papers-first', 'memory-paper-waits', 'choice-work-rules'],
  find: ({ index, phase }) =>
    phase.jobs.flatMap((job) => {
      const day = job.day ?? index.boat.work?.doneBy;
      if (day === undefined || job.leftOut !== undefined || job.kind !== 'power-up') return [];
      const late = lateFor(phase, job, day);
      if (late.length === 0) return [];
      const words = late.map(
        ({ paper, there }) => `${isPaper(paper) ? shipPapers[paper].name : paper} (there on ${there})`,
      );
      return [
        {
          about: [job.id],
          says: `The radios are to be on by ${day}, and their papers come later: ${words.join(', ')}. They cannot be set up without.`,
          cure: 'Ask for the papers sooner, or settle a later day for the radios and keep the old set until then.',
        },
      ];
    }),
});

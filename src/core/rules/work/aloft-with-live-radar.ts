import { jobName } from './job-name.ts';
import { phaseRule } from './phase-rule.ts';

/** Somebody is up the mast on the day on which a radar is switched on, and nobody said that it is locked off. */
export const aloftWithLiveRadar = phaseRule({
  id: 'work/aloft-with-live-radar',
  level: 'danger',
  title: 'Somebody is aloft on the day a radar is live.',
  sources: ['practice-cautions', 'choice-work-rules'],
  find: ({ index, phase: { jobs } }) => {
    const byId = new Map(jobs.map((job) => [job.id, job]));
    return jobs.flatMap((job) => {
      if (!job.aloft || job.day === undefined || job.leftOut !== undefined) return [];
      return job.apart.flatMap((id) => {
        const radar = byId.get(id);
        if (radar === undefined || radar.day !== job.day || radar.leftOut !== undefined) return [];
        return [
          {
            about: radar.about.filter((unit) => index.kit.has(unit)),
            apart: [job.id, radar.id],
            says: `On ${job.day} somebody is aloft for ${jobName(index, job)}, and the radar is switched on for ${jobName(index, radar)}. Nothing keeps its breaker off meanwhile.`,
            cure: 'Put them on different days, or lock the breaker of the radar off, tag it, and say so at the job.',
          },
        ];
      });
    });
  },
});

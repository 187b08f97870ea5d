import { jobSteps } from '../../core/facts/job-steps.ts';
import { jobTools } from '../../core/facts/tools-of-jobs.ts';
import { seaTrials } from '../../core/facts/trial-tests.ts';

const isStep = (id: string): id is keyof typeof jobSteps.says => Object.hasOwn(jobSteps.says, id);
const isTool = (id: string): id is keyof typeof jobTools.says => Object.hasOwn(jobTools.says, id);

/** One step of a job, as it is done; those of a trial at sea are the trials. */
export const stepWords = (id: string): string =>
  isStep(id) ? jobSteps.says[id] : (seaTrials.find((trial) => trial.id === id)?.does ?? id.replaceAll('-', ' '));

/** A tool by its name. */
export const toolWords = (id: string): string => (isTool(id) ? jobTools.says[id] : id.replaceAll('-', ' '));

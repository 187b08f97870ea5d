/** The ten steps of the job, in order; the same names everywhere. */
export const jobSteps = ['boat', 'kit', 'needs', 'lines', 'power', 'fit', 'buy', 'work', 'prove', 'binder'] as const;
export type JobStep = (typeof jobSteps)[number];

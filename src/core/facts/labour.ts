import type { SourceKey } from './sources.ts';

interface Labour {
  readonly id: string;
  readonly task: string;
  /** least and most hours of a professional */
  readonly professionalH: readonly [number, number];
  readonly ownerH: readonly [number, number];
  readonly source: SourceKey;
}

/** Planning hours by task; half of it is poor access. Every one can be set. */
export const labour: readonly Labour[] = [
  {
    id: 'survey',
    task: 'survey and sketch of the old system',
    professionalH: [2, 4],
    ownerH: [4, 8],
    source: 'practice-labour',
  },
  {
    id: 'remove-display',
    task: 'remove one display, cap and label cables',
    professionalH: [0.5, 1],
    ownerH: [1, 2],
    source: 'practice-labour',
  },
  {
    id: 'remove-radar-mast-up',
    task: 'remove old radar dome, mast up',
    professionalH: [2, 3],
    ownerH: [4, 4],
    source: 'practice-labour',
  },
  {
    id: 'remove-radar-mast-down',
    task: 'remove old radar dome, mast down',
    professionalH: [1, 1],
    ownerH: [2, 2],
    source: 'practice-labour',
  },
  {
    id: 'flush-mount',
    task: 'cut a flush mount in GRP, dry fit, bed',
    professionalH: [1, 2],
    ownerH: [3, 4],
    source: 'practice-labour',
  },
  {
    id: 'cover-plate',
    task: 'cover plate or new fascia over an old hole',
    professionalH: [1, 3],
    ownerH: [3, 6],
    source: 'practice-labour',
  },
  {
    id: 'pull-10m',
    task: 'pull one cable with messenger, good conduit, 10 m',
    professionalH: [0.5, 1],
    ownerH: [1, 2],
    source: 'practice-labour',
  },
  {
    id: 'pull-full',
    task: 'pull one cable through a full conduit',
    professionalH: [3, 3],
    ownerH: [4, 6],
    source: 'practice-labour',
  },
  {
    id: 'mast-cable-down',
    task: 'one mast cable, mast down',
    professionalH: [1, 1.5],
    ownerH: [2, 3],
    source: 'practice-labour',
  },
  {
    id: 'mast-cable-up',
    task: 'one mast cable, mast up',
    professionalH: [2, 4],
    ownerH: [4, 8],
    source: 'practice-labour',
  },
  {
    id: 'radar-mast',
    task: 'radar on mast bracket with cable',
    professionalH: [4, 8],
    ownerH: [8, 16],
    source: 'practice-labour',
  },
  {
    id: 'transducer',
    task: 'through-hull transducer, hauled out',
    professionalH: [2, 4],
    ownerH: [4, 8],
    source: 'practice-labour',
  },
  {
    id: 'backbone-10',
    task: 'instrument backbone, 10 drops',
    professionalH: [3, 5],
    ownerH: [6, 10],
    source: 'practice-labour',
  },
  {
    id: 'power-feed',
    task: 'power feed with breaker and labels',
    professionalH: [1, 1.5],
    ownerH: [2, 3],
    source: 'practice-labour',
  },
  {
    id: 'pilot-sensors',
    task: 'pilot computer, heading and rudder sensor',
    professionalH: [4, 8],
    ownerH: [8, 16],
    source: 'practice-labour',
  },
  {
    id: 'pilot-drive',
    task: 'linear or hydraulic drive',
    professionalH: [8, 16],
    ownerH: [16, 32],
    source: 'practice-labour',
  },
  { id: 'vhf', task: 'VHF, antenna, coax ends', professionalH: [2, 4], ownerH: [4, 8], source: 'practice-labour' },
  {
    id: 'commission',
    task: 'dock commissioning: update, instance, calibrate, prove every reading',
    professionalH: [3, 6],
    ownerH: [6, 12],
    source: 'practice-labour',
  },
  {
    id: 'sea-trial',
    task: 'compass swing and pilot sea trial',
    professionalH: [2, 4],
    ownerH: [3, 6],
    source: 'practice-labour',
  },
  { id: 'as-built', task: 'as-built record', professionalH: [2, 3], ownerH: [3, 6], source: 'practice-labour' },
];

/** What an old boat adds to any sum of hours, least and most share. */
export const oldBoatContingency = { source: 'practice-labour', least: 0.3, most: 0.5 } as const;

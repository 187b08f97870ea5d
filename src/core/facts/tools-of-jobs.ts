import type { JobKind } from './job-kinds.ts';
import type { SourceKey } from './sources.ts';

/** Tools by id, in words. */
export const jobTools = {
  source: 'practice-job-tools',
  says: {
    camera: 'camera',
    tape: 'tape measure',
    torch: 'torch and mirror',
    labels: 'labels and pen',
    card: 'memory card',
    screwdrivers: 'screwdrivers and spanners',
    'insulated-tools': 'insulated tools',
    meter: 'multimeter',
    'messenger-line': 'messenger line and pulling grip',
    'draw-tape': 'draw tape',
    drill: 'drill, pilot bits, hole saws',
    jigsaw: 'jigsaw with fine blades',
    'dust-mask': 'mask for fine dust, goggles, suction',
    template: 'printed template and ruler',
    sealant: 'sealant or butyl tape, cleaner, masking tape',
    crimper: 'crimping tools and heat gun',
    'coax-tools': 'coax stripper and soldering iron',
    'cable-ties': 'clips and ties',
    'temporary-lead': 'lead with a fuse for the pump',
    tags: 'tags and a lock for breakers',
    harness: 'bosun’s chair, two halyards, tool lanyards',
    'blanking-plug': 'blanking plug',
    laptop: 'laptop with versions and settings',
    'shore-power': 'shore power or charger',
    handheld: 'handheld VHF',
    'lead-line': 'lead line',
    forms: 'forms and ship’s papers',
  },
} as const;
export type JobTool = keyof typeof jobTools.says;

/** What is brought to each kind of job. */
export const toolsOfJobs: {
  readonly source: SourceKey;
  readonly byKind: Readonly<Record<JobKind, readonly JobTool[]>>;
} = {
  source: 'practice-job-tools',
  byKind: {
    paper: ['forms'],
    survey: ['camera', 'tape', 'torch', 'meter'],
    label: ['labels', 'camera'],
    'save-settings': ['card', 'camera'],
    'open-way': ['screwdrivers', 'torch', 'drill'],
    'temporary-feed': ['temporary-lead', 'insulated-tools', 'meter'],
    'take-out': ['screwdrivers', 'labels', 'tags', 'camera'],
    'haul-out': ['blanking-plug'],
    'mast-down': ['labels', 'camera', 'tape'],
    pull: ['messenger-line', 'draw-tape', 'cable-ties', 'labels', 'torch'],
    'mast-pull': ['messenger-line', 'draw-tape', 'cable-ties', 'labels'],
    cut: ['template', 'drill', 'jigsaw', 'dust-mask', 'torch'],
    mount: ['screwdrivers', 'sealant', 'camera'],
    'mount-aloft': ['harness', 'screwdrivers', 'sealant', 'tags', 'camera'],
    underwater: ['blanking-plug', 'sealant', 'drill', 'dust-mask'],
    seal: ['sealant', 'drill'],
    connect: ['crimper', 'meter', 'labels', 'screwdrivers'],
    panel: ['insulated-tools', 'crimper', 'meter', 'labels', 'tags'],
    'power-up': ['meter', 'labels'],
    update: ['laptop', 'card', 'shore-power'],
    'mast-up': ['labels', 'camera'],
    launch: ['blanking-plug', 'torch'],
    'watch-for-water': ['torch'],
    'take-temporary-feed-out': ['insulated-tools', 'meter'],
    'dock-test': ['meter', 'handheld', 'laptop'],
    'drive-check': ['tags'],
    'sea-trial': ['lead-line', 'handheld'],
    'as-built': ['camera', 'laptop'],
    leaving: ['card', 'tags', 'forms'],
    own: [],
  },
};

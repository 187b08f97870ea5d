import type { Opening } from '../../../../../core/boat/opening.ts';
import type { FieldOf } from '../../../forms/described.tsx';
import { words } from './words.ts';

type Part<Key extends keyof Opening> = NonNullable<Opening[Key]>;
type Behind = Part<'behind'>;
type Panel = Part<'panel'>;

/** The sizes of a hole that is no traced one. */
export const holeFields: Readonly<Record<'rectangle' | 'round', readonly FieldOf<Opening['hole']>[]>> = {
  rectangle: [
    { key: 'widthMm', label: words.width, ask: 'number', must: true },
    { key: 'heightMm', label: words.height, ask: 'number', must: true },
    { key: 'cornerMm', label: words.corner, ask: 'number' },
  ],
  round: [{ key: 'widthMm', label: words.across, ask: 'number', must: true }],
};

export const panelFields: readonly FieldOf<Panel>[] = [
  { key: 'material', label: words.material, ask: 'choice', choices: words.materials, must: true },
  { key: 'thicknessMm', label: words.thickness, ask: 'number', must: true },
  { key: 'unevenMm', label: words.uneven, ask: 'number' },
];

export const coreFields: readonly FieldOf<NonNullable<Panel['core']>>[] = [
  { key: 'material', label: words.material, ask: 'choice', choices: words.cores, must: true },
  { key: 'thicknessMm', label: words.thickness, ask: 'number', must: true },
];

export const edgeFields: readonly FieldOf<NonNullable<Panel['edgesMm']>>[] = (
  ['left', 'right', 'above', 'below'] as const
).map((key) => ({ key, label: words.edge[key], ask: 'number' }));

export const behindFields: readonly FieldOf<Behind>[] = [
  { key: 'depthMm', label: words.depth, ask: 'number' },
  { key: 'how', label: words.depthHow, ask: 'choice', choices: words.hows },
  { key: 'widthMm', label: words.roomWidth, ask: 'number' },
  { key: 'heightMm', label: words.roomHeight, ask: 'number' },
  { key: 'air', label: words.air, ask: 'choice', choices: words.airs },
];

export const obstacleFields: readonly FieldOf<NonNullable<Behind['obstacles']>[number]>[] = [
  { key: 'what', label: words.what, ask: 'text', longest: 200 },
  { key: 'widthMm', label: words.width, ask: 'number', must: true },
  { key: 'heightMm', label: words.height, ask: 'number', must: true },
  { key: 'xMm', label: words.fromMiddleX, ask: 'number', must: true, least: -5000 },
  { key: 'yMm', label: words.fromMiddleY, ask: 'number', must: true, least: -5000 },
  { key: 'fromMm', label: words.beginsAt, ask: 'number' },
];

export const viewedFields: readonly FieldOf<Part<'viewed'>>[] = [
  { key: 'distanceM', label: words.distance, ask: 'number', must: true },
  { key: 'eyeAboveM', label: words.eyeAbove, ask: 'number', least: -5 },
  { key: 'reachM', label: words.reach, ask: 'number' },
  { key: 'gloves', label: words.gloves, ask: 'whether' },
];

export const plateFields: readonly FieldOf<Part<'plate'>>[] = [
  { key: 'id', label: words.plateId, ask: 'text', longest: 64 },
  { key: 'overlapMm', label: words.overlap, ask: 'number' },
  { key: 'material', label: words.material, ask: 'choice', choices: words.plateMaterials },
  { key: 'thicknessMm', label: words.thickness, ask: 'number' },
];

export const insteadFields: readonly FieldOf<Part<'instead'>>[] = [
  { key: 'verdict', label: words.verdict, ask: 'choice', choices: words.verdicts, must: true },
  { key: 'reason', label: words.reason, ask: 'text', longest: 400 },
];

import type { Boat } from '../../../core/boat/boat-schema.ts';
import { tableAmpacityA } from '../../../core/facts/ampacity.ts';
import { batteryFigures } from '../../../core/facts/battery-figures.ts';
import { busLimits } from '../../../core/facts/bus-limits.ts';
import { cableGrades } from '../../../core/facts/cable-grades.ts';
import { conduitFill, supports } from '../../../core/facts/cable-work.ts';
import { cautions } from '../../../core/facts/cautions.ts';
import { compassLaying, compassLimits } from '../../../core/facts/compass-figures.ts';
import { duties } from '../../../core/facts/day-duty.ts';
import { dropLimits } from '../../../core/facts/drop-limits.ts';
import { fallbackKit } from '../../../core/facts/fallback-kit.ts';
import { deviceFuses, fuseMargin } from '../../../core/facts/fuses.ts';
import { lineLimits } from '../../../core/facts/line-limits.ts';
import { mastWork } from '../../../core/facts/mast-work.ts';
import { papersAboard } from '../../../core/facts/papers-aboard.ts';
import { powerLimits } from '../../../core/facts/power-limits.ts';
import { typicalPrices } from '../../../core/facts/prices.ts';
import { type SourceKey, sources } from '../../../core/facts/sources.ts';
import { steeringLimits } from '../../../core/facts/steering-figures.ts';
import { trafficLimits } from '../../../core/facts/traffic-limits.ts';
import type { Plan } from '../../../core/plan-shape.ts';
import { byCodeUnit } from '../../../core/units/by-code-unit.ts';
import type { ListTable } from '../../table/list-table.ts';
import type { Chapter } from '../binder-shape.ts';
import { boatCautions } from './cautions.ts';
import { testSources } from './test-record.ts';

/** Every source key that a figure or a table of figures names, however deep. */
const keysIn = (facts: unknown): string[] => {
  if (Array.isArray(facts)) return facts.flatMap(keysIn);
  if (facts === null || typeof facts !== 'object') return [];
  return Object.entries(facts).flatMap(([name, value]) =>
    name === 'source' && typeof value === 'string' ? [value] : keysIn(value),
  );
};

/** The tables of figures a part of the plan rests on, where it has that part. */
const restsOn = (plan: Plan): unknown[] => [
  papersAboard,
  ...(plan.buses.length === 0 ? [] : [busLimits, plan.buses.map(({ grade }) => cableGrades[grade])]),
  ...(plan.feeds.length === 0 ? [] : [dropLimits, powerLimits, deviceFuses, fuseMargin, tableAmpacityA]),
  ...(plan.energy.length === 0 ? [] : [batteryFigures, duties]),
  ...(plan.shopping.length === 0 ? [] : [typicalPrices]),
  ...(plan.ways.length === 0 ? [] : [conduitFill, supports]),
  ...(plan.masts.length === 0 ? [] : [mastWork]),
  ...(plan.compass.length === 0 ? [] : [compassLimits, compassLaying]),
  ...(plan.pairs.length === 0 ? [] : [lineLimits]),
  ...(plan.drives.length === 0 ? [] : [steeringLimits]),
  ...(plan.vitals.length === 0 ? [] : [fallbackKit]),
  ...(plan.traffic.buses.length === 0 ? [] : [trafficLimits]),
];

const isKey = (key: string): key is SourceKey => Object.hasOwn(sources, key);

/** Keys of what the binder shows: tables of figures behind the plan, limits of its findings, cautions and tests in it. */
export const sourcesUsed = (boat: Boat, plan: Plan): SourceKey[] => {
  const shown = new Set(boatCautions(boat, plan).map(({ id }) => id));
  const limits = new Set(plan.findings.flatMap(({ limit }) => (limit === undefined ? [] : [limit.source])));
  const ofLimits = Object.entries(sources).flatMap(([key, { text }]) =>
    limits.has(text) || limits.has(key) ? [key] : [],
  );
  const all = [
    ...keysIn(restsOn(plan)),
    ...keysIn(cautions.filter(({ id }) => shown.has(id))),
    ...testSources(),
    ...ofLimits,
  ];
  return [...new Set(all)].filter(isKey).sort(byCodeUnit);
};

const standings = ['published', 'computed', 'common practice', 'from memory', 'project choice'] as const;

const sourceTable = (keys: readonly SourceKey[]): ListTable => ({
  id: 'sources-used',
  title: 'What the figures rest on',
  says: 'Published: somebody printed it. Common practice: several handbooks agree, or the trade does it so. From memory: not checked against a page. Project choice: sources differ or are silent.',
  columns: [
    { id: 'standing', head: 'standing', share: 0.7 },
    { id: 'text', head: 'source', share: 3 },
  ],
  rows: standings.flatMap((standing) =>
    keys.filter((key) => sources[key].standing === standing).map((key) => [standing, sources[key].text]),
  ),
  empty: 'Nothing rests on a figure from elsewhere.',
});

/** The sources of the figures in this binder, those that can be trusted most first. */
export const sourcesUsedChapter = (boat: Boat, plan: Plan): Chapter => ({
  id: 'sources-used',
  title: 'Sources',
  blocks: [{ kind: 'table', table: sourceTable(sourcesUsed(boat, plan)) }],
});

import type { SourceKey } from '../../facts/sources.ts';
import type { HeadingNear } from '../../heading-shape.ts';
import type { Level } from '../../plan-shape.ts';
import type { LaidInput, Observation, Rule } from '../rule.ts';
import { metres, sourceWords, unitName } from '../rule-words.ts';
import { betterPlace, type HeadingFound, magneticSites, nearName, neighbourWords } from './heading-words.ts';

/** Iron and magnets are worse than what only disturbs while it sends, or what no plate was read of. */
const levelOf = ({ is, by, verdict }: HeadingNear): Level => {
  if (verdict === 'doubtful') return 'advice';
  return is === 'radio' || is === 'unit' || by === 'taken' ? 'doubt' : 'fault';
};

/** One thing that is too near, with the heading sensors it is too near to: two often sit side by side. */
interface TooNear {
  readonly near: HeadingNear;
  readonly units: readonly string[];
}

/** Plating and what is told by the field of its current have rules of their own; a neighbour that is nearly too near is left. */
const tooNear = (found: readonly HeadingFound[]): TooNear[] => {
  const groups = new Map<string, TooNear>();
  for (const { site, heading } of found) {
    const turned = new Set(heading.feeds.flatMap(({ line, tooNear: isTold }) => (isTold ? [line] : [])));
    for (const near of heading.near) {
      if (near.is === 'steel' || near.distanceM >= near.leastM || turned.has(near.id)) continue;
      const key = `${site.place} ${near.id}`;
      groups.set(key, { near, units: [...(groups.get(key)?.units ?? []), site.unit] });
    }
  }
  return [...groups.values()];
};

const asked = (near: HeadingNear): { words: string; source: SourceKey } => {
  const leastM = metres(near.leastM);
  if (near.by === 'kind')
    return { words: `${leastM} from ${neighbourWords(near)} is asked for`, source: 'maker-heading-clearance' };
  return near.by === 'sheet'
    ? { words: `its distance from a compass is ${leastM}`, source: 'maker-compass-distance' }
    : { words: `nobody knows its distance from a compass, and ${leastM} is taken`, source: 'choice-siting' };
};

const observed = (input: LaidInput, { near, units }: TooNear): Observation => {
  const { words, source } = asked(near);
  const level = levelOf(near);
  const names = units.map((unit) => unitName(input.index, unit)).join(' and ');
  return {
    about: [...units, near.id],
    level,
    says: `${names} ${units.length === 1 ? 'stands' : 'stand'} ${metres(near.distanceM)} from ${nearName(input.index, near)}; ${words}.`,
    measured: { value: near.distanceM, unit: 'm' },
    limit: { value: near.leastM, unit: 'm', source: sourceWords(source) },
    cure: `Move the one or the other. Before a hole is drilled slide the sensor 30 cm each way with everything switched on: 5° of change or less is good, over 10° is another place.${level === 'fault' ? betterPlace(input, units[0] ?? '') : ''}`,
  };
};

/** A heading sensor is a compass nobody looks at: whatever turns it turns the pilot, the radar overlay and the chart. */
export const headingSensorTooNear: Rule = {
  id: 'compass/heading-sensor-too-near',
  level: 'fault',
  title: 'A heading sensor stands nearer to iron, magnets or wires than is asked for.',
  sources: ['maker-heading-clearance', 'choice-heading-siting', 'practice-heading-siting'],
  check: (input) => tooNear(magneticSites(input)).map((found) => observed(input, found)),
};

import type { BoatIndex } from '../../boat/boat-index.ts';
import { throughHullKinds } from '../../facts/isolation-figures.ts';
import type { StrayWay } from '../../isolation-shape.ts';
import type { LaidInput, Observation } from '../rule.ts';

/** Which rule speaks of a way. */
type Topic = 'braid' | 'case' | 'engine' | 'radar' | 'speaker' | 'supplies' | 'transducer';

const speakers: ReadonlySet<string> = new Set(['audio', 'hailer', 'loudspeaker']);

/** The first thing on the way that has a rule of its own; what stands on the hull comes before how the minus got to it. */
const topicOf = (index: BoatIndex, { meets, bonds }: StrayWay): Topic => {
  if (meets === 'supply') return 'supplies';
  if (meets === 'engine' || bonds.some(({ kind }) => kind === 'poles')) return 'engine';
  const standing = bonds.findLast(({ kind }) => kind === 'mount' || kind === 'water');
  const unitKind = index.sheetOf.get(standing?.about[0] ?? '')?.kind ?? '';
  if (throughHullKinds.has(unitKind)) return 'transducer';
  if (unitKind === 'radar') return 'radar';
  if (speakers.has(unitKind)) return 'speaker';
  return bonds.some(({ kind }) => kind === 'braid') ? 'braid' : 'case';
};

const metWords = { hull: 'the hull', water: 'the water', supply: 'another minus', engine: 'the engine' } as const;

const sentence = (words: string): string => `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;

/** What a rule says of each way of its topic: the joints from the minus on, and what parts them. */
export const wayFindings = ({ index, plan }: LaidInput, topic: Topic, harm: string): Observation[] =>
  plan.isolation.ways
    .filter((way) => topicOf(index, way) === topic)
    .map(({ meets, from, to, bonds, sure, cure }): Observation => {
      const units = bonds.flatMap(({ about }) => about);
      const sources = [from, to].flatMap((end) => (end.startsWith('negative:') ? [end.slice('negative:'.length)] : []));
      const ends =
        meets === 'supply'
          ? `the minus of ${sources.join(' and that of ')} meet`
          : `the minus meets ${metWords[meets]}`;
      return {
        about: [...new Set(units)],
        apart: bonds.slice(-1).map(({ id }) => id.split(':')[1] ?? id),
        ...(sure ? {} : { level: 'doubt' }),
        says: `${bonds.map(({ says }) => sentence(says)).join(' ')} ${sure ? 'So' : 'If that is so,'} ${ends} away from the one named point: ${harm}.`,
        cure:
          cure?.says ??
          'Ask its maker for one whose metal is not its minus, or stand it where it meets no other metal.',
      };
    });

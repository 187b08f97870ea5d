import type { Need } from '../boat/boat-schema.ts';
import { splitDotted } from '../boat/ids.ts';
import type { BrokenLink } from '../plan-shape.ts';
import { usualBaud } from '../readings/signal.ts';
import type { Candidate } from './candidate.ts';
import type { CureContext } from './cure-context.ts';

const nameOf = ({ index }: CureContext, dotted: string): string => {
  const { kit } = splitDotted(dotted);
  return index.kit.get(kit)?.name ?? kit;
};

/** One of two ports set to the speed of the other. */
const sameSpeed = (context: CureContext, { broken, from, to }: BrokenLink): Candidate[] => {
  if (broken !== 'baud-differs' || from === undefined || to === undefined) return [];
  return [
    [from, to],
    [to, from],
  ].flatMap(([changed = '', other = '']) => {
    const value = context.network.nodes.get(other)?.port.baud ?? usualBaud;
    const { kit: unit, part } = splitDotted(changed);
    return {
      says: `Set port ${part} of ${nameOf(context, changed)} to ${value} baud, if it can be set.`,
      edits: [{ edit: 'change-sheet', params: { unit, path: `ports.${part}.baud`, value, how: 'seen' } }],
      cost: 0,
    };
  });
};

/** The instance number that is asked for, set where the reading has none or another. */
const rightInstance = (context: CureContext, { broken, from }: BrokenLink, need: Need): Candidate[] => {
  if (broken !== 'wrong-instance' || from === undefined || need.instance === undefined) return [];
  const { reading, instance } = need;
  return [
    {
      says: `Set ${nameOf(context, from)} to instance ${instance}.`,
      edits: [{ edit: 'set-instance', params: { port: from, reading, instance } }],
      cost: 0,
    },
  ];
};

/** Where the screen takes one reference only, the wish for the other given up. */
const otherReference = (context: CureContext, { broken }: BrokenLink, need: Need): Candidate[] => {
  if (broken !== 'wrong-reference' || need.reference === undefined) return [];
  const wants = (context.network.nodesOf.get(need.at) ?? []).flatMap(({ hears }) =>
    (hears.get(need.reading) ?? []).flatMap((heard) => heard.wants?.reference ?? []),
  );
  const [reference] = wants.filter((one) => one !== need.reference);
  if (reference === undefined) return [];
  return [
    {
      says: `Ask for it as ${reference}, which is what ${context.index.kit.get(need.at)?.name ?? need.at} takes.`,
      edits: [{ edit: 'change-need', params: { ...need, reference } }],
      cost: 0,
    },
  ];
};

/** Cures that cost nothing but a setting. */
export const changeSettings = (context: CureContext, link: BrokenLink, need: Need): Candidate[] => [
  ...sameSpeed(context, link),
  ...rightInstance(context, link, need),
  ...otherReference(context, link, need),
];

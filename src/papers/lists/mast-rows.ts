import { mastWork } from '../../core/facts/mast-work.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { printCount } from './print-figure.ts';

/** One mast: what goes up it, where it is parted and how it is held. */
export interface MastRow {
  readonly key: string;
  readonly what: string;
  readonly fact: string;
  /** ids it lights on the drawing */
  readonly lights: readonly string[];
}

const stepWords = { deck: 'steps on deck', keel: 'goes through to the keel' } as const;

/** The masts with new cables in them: how they are stepped, height and weight, the joints at the foot, holds and drip loop. */
export const mastRows = (
  places: ReadonlyMap<string, { readonly name: string }>,
  { masts }: Pick<Plan, 'masts'>,
): MastRow[] => {
  const nameOf = (id: string): string => places.get(id)?.name ?? id;
  return masts.map(({ foot, top, stepped, stepKnown, heightM, breakAt, lines, weightKg, holds }) => ({
    key: foot,
    what: `Mast from ${nameOf(foot)} to ${nameOf(top)}`,
    fact: [
      `${stepKnown ? '' : 'as it seems '}${stepWords[stepped]}, ${heightM.toFixed(1)} m high, ${printCount(lines.length, 'new cable')} of ${weightKg.toFixed(1)} kg together.`,
      `Hang each by a grip at the top, not by its plug, and hold it ${holds} times on the way; a tie every ${mastWork.tieEvery.value} m keeps it from slapping.`,
      breakAt === undefined
        ? 'It can be parted nowhere dry.'
        : `Part the cables at ${nameOf(breakAt)}, in a dry box, ${mastWork.breakSlack.value} m of slack on each side, labelled on both; no joint aloft.`,
      'Leave a messenger line, and a drip loop below where they come out.',
    ].join(' '),
    lights: [foot, top, ...lines.map(({ line }) => line)],
  }));
};

import type { LineEntry, Plan } from '../../core/plan-shape.ts';
import { cableLabels } from '../labels/cable-labels.ts';
import { conductorWords } from '../lists/conductor-words.ts';
import { endWords } from '../lists/end-words.ts';
import { labelOf } from '../lists/label-of.ts';
import { wiresWords } from '../lists/wire-words.ts';
import type { CardBoat } from './card-boat.ts';
import { lineLength, lineName } from './line-words.ts';

/** Everything there is to say of one cable, in words: what whoever holds it and reads its label wants to know. */
export interface LineCard {
  readonly title: string;
  /** facts in the order in which they are asked for: "From", "To", "Length" */
  readonly facts: readonly { readonly head: string; readonly says: string }[];
  /** where its labels are, from its first end to its second */
  readonly labels: readonly string[];
  /** ids it lights on the drawing: the line and the ways it takes */
  readonly lights: readonly string[];
}

const factsOf = (index: CardBoat, plan: Plan, line: LineEntry): LineCard['facts'] => {
  const route = line.places.map((place) => index.places.get(place)?.name ?? place).join(' > ');
  const fuseA = plan.feeds.find((feed) => feed.line === line.id)?.fuseA;
  const told: readonly (readonly [head: string, says: string | undefined])[] = [
    ['From', endWords(index, line.from)],
    ['To', endWords(index, line.to)],
    ['Route', route],
    ['Length', lineLength(line)],
    ['Fuse', fuseA === undefined ? undefined : `${fuseA} A`],
    ['Conductors', conductorWords(plan, line)],
    ['Wires', wiresWords(index, line)],
    ['Cable', line.kept === undefined ? 'new' : `aboard already: ${line.kept.join(', ')}`],
  ];
  return told.flatMap(([head, says]) => (says === undefined || says === '' ? [] : [{ head, says }]));
};

/**
 * The card of the cable with a label; where the plan has none it says so, because a label outlives its cable.
 *
 * @example lineCard(index, plan, 'C07').title // 'drop C07'
 */
export const lineCard = (index: CardBoat, plan: Plan, label: string): LineCard => {
  const line = plan.lines.find((one) => labelOf(one) === label);
  if (line === undefined) {
    const says = `No cable of this plan is labelled ${label}. It may have been taken out, or the label not handed out yet.`;
    return { title: label, facts: [{ head: 'Not found', says }], labels: [], lights: [] };
  }
  const spots = cableLabels(index.boat, { ...plan, lines: [line] });
  return {
    title: lineName(line),
    facts: factsOf(index, plan, line),
    labels: spots.map(({ where }) => where),
    lights: [line.id, ...line.ways],
  };
};

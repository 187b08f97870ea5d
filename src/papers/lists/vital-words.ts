import { type FailureNames, failureWords } from '../../core/blackouts/failure-words.ts';
import {
  type Failure,
  failureKinds,
  type SinglePoint,
  type VitalEntry,
  type VitalId,
} from '../../core/blackouts-shape.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { printCount } from './print-figure.ts';

/** What a vital reading is called, and what its loss is. */
export const vitalNames: Readonly<Record<VitalId, { readonly name: string; readonly lost: string }>> = {
  depth: { name: 'Depth', lost: 'it off every screen' },
  heading: { name: 'Heading', lost: 'it off every screen' },
  position: { name: 'Position', lost: 'it off every screen' },
  radio: { name: 'Radio', lost: 'the last that can talk' },
};

/** Points that are named; the others stand in the table. */
const named = 3;

const nameOf = (names: FailureNames, id: string): string => names.kit.get(id)?.name ?? id;

const keyOf = ({ fails, how }: Failure): string => `${how} ${fails}`;

/** Certain ones first, then the greater piece before the smaller. */
const gravestFirst = (a: SinglePoint, b: SinglePoint): number =>
  Number(a.perhaps === true) - Number(b.perhaps === true) || failureKinds.indexOf(a.how) - failureKinds.indexOf(b.how);

/** How many single failures take a vital reading, the first of them, and what is left then. */
export const vitalWords = (
  names: FailureNames,
  { blackouts }: Pick<Plan, 'blackouts'>,
  { of, points, leftWith, carry }: VitalEntry,
): { readonly says: string; readonly left: string } => {
  const { name, lost } = vitalNames[of];
  if (points.length === 0) return { says: `${name}: no single failure takes it.`, left: '' };
  const also = new Map(blackouts.map((entry) => [keyOf(entry), entry.also?.length ?? 0]));
  const count = points.reduce((sum, point) => sum + 1 + (also.get(keyOf(point)) ?? 0), 0);
  const sorted = [...points].sort(gravestFirst);
  const told = sorted
    .slice(0, named)
    .map((point) => `${failureWords(names, point)}${point.perhaps === true ? ' (perhaps)' : ''}`);
  const more = count > told.length ? ` and ${count - told.length} more` : '';
  return {
    says: `${name}: ${printCount(count, 'single failure takes', 'single failures take')} ${lost}: ${told.join('; ')}${more}.`,
    left: [
      leftWith.length === 0 ? '' : `What is left: ${leftWith.map((id) => nameOf(names, id)).join('; ')}. `,
      `At hand (common practice): ${carry}.`,
    ].join(''),
  };
};

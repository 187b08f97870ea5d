import type { Boat } from '../../core/boat/boat-schema.ts';
import type { EditCall } from '../../core/boat/history.ts';
import { wireHer } from '../../core/kit/wire-her.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { printCount } from '../lists/print-figure.ts';

/** What one press would wire, in words. */
export interface OfferedWiring {
  readonly edits: readonly EditCall[];
  readonly title: string;
  /** "12 units on the backbone, 4 cables, 3 circuits" */
  readonly says: string;
}

/** How the boat can be wired as the plan proposes; undefined where nothing is left to wire. */
export const offeredWiring = (
  boat: Boat,
  plan: Pick<Plan, 'joins' | 'proposal' | 'panels' | 'loads' | 'buses'>,
): OfferedWiring | undefined => {
  const edits = wireHer(boat, plan);
  if (edits.length === 0) return undefined;
  const count = (of: readonly string[]): number => edits.filter(({ edit }) => of.includes(edit)).length;
  const parts = [
    [count(['join-bus']), 'port on the backbone', 'ports on the backbone'],
    [count(['join-ports']), 'cable from unit to unit', 'cables from unit to unit'],
    [count(['feed-port', 'add-circuit']), 'circuit', 'circuits'],
  ] as const;
  const says = parts.flatMap(([many, one, more]) => (many === 0 ? [] : [printCount(many, one, more)])).join(', ');
  return { edits, title: `Wire her so: ${says}.`, says };
};

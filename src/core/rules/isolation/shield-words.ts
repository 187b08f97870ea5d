import type { BoatIndex } from '../../boat/boat-index.ts';
import type { ShieldEntry } from '../../isolation-shape.ts';
import type { JoinEntry } from '../../plan-shape.ts';

/** A shield in words: the buses it is of, or the units its cables join. */
export const shieldName = (index: BoatIndex, joins: readonly JoinEntry[], { kind, of }: ShieldEntry): string => {
  if (kind === 'bus') return `the shield of ${of.map((id) => index.buses.get(id)?.name ?? id).join(' and ')}`;
  const units = of.flatMap((id) =>
    (joins.find((join) => join.id === id)?.members ?? []).map(({ kit }) => index.kit.get(kit)?.name ?? kit),
  );
  const names = [...new Set(units)];
  const cable = kind === 'ethernet' ? 'network cable' : 'cable';
  return names.length > 3
    ? `the shield of the ${cable}s of ${names.slice(0, 3).join(', ')} and others`
    : `the shield of the ${cable} of ${names.join(' and ')}`;
};

/** With a capital, to begin a sentence. */
export const capital = (words: string): string => `${words.charAt(0).toUpperCase()}${words.slice(1)}`;

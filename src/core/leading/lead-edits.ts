import type { EditCall } from '../boat/history.ts';
import type { LineEntry, Plan } from '../plan-shape.ts';

/**
 * The edits that lead a line by other ways, as one step. The drop or the lead of a bus is part of what its layout is searched
 * by: the layout is settled with it, so that its tees stand where they stand.
 */
export const leadEdits = (
  { buses }: Pick<Plan, 'buses'>,
  { id, from, to }: Pick<LineEntry, 'id' | 'from' | 'to'>,
  ways: readonly string[],
): EditCall[] => {
  const held = buses.filter((bus) => [from, to].includes(bus.id) && bus.layout.status !== 'pinned');
  return [
    ...held.map(
      ({ id: bus, grade, walk }): EditCall => ({
        edit: 'pin-layout',
        params: { bus, grade, walk: walk.map((step) => ({ ...step, tees: [...step.tees] })), state: 'fixed' },
      }),
    ),
    { edit: 'pin-route', params: { line: id, ways: [...ways], state: 'fixed' } },
  ];
};

import type { BoatIndex } from '../../boat/boat-index.ts';
import { splitDotted } from '../../boat/ids.ts';
import type { Plan } from '../../plan-shape.ts';

/** The parts of a plan that tests at the dock are drawn from. */
export interface DockInput {
  readonly index: BoatIndex;
  readonly plan: Pick<
    Plan,
    | 'banks'
    | 'buses'
    | 'converters'
    | 'feeds'
    | 'isolation'
    | 'loads'
    | 'pairs'
    | 'panels'
    | 'readings'
    | 'sources'
    | 'supplies'
    | 'vitals'
  >;
}

/** What a port or the end of a feed belongs to: a unit, or the converter or panel that it is itself. */
export const holderOf = (end: string): string => (end.includes('.') ? splitDotted(end).kit : end);

/** The place of what a port or the end of a feed belongs to, as the part of a test that says where. */
export const placeOf = ({ kit, panels, boat }: BoatIndex, end: string): { readonly place?: string } => {
  const holder = holderOf(end);
  const place = (kit.get(holder) ?? panels.get(holder) ?? boat.supply.dcdc?.find(({ id }) => id === holder))?.place;
  return place === undefined ? {} : { place };
};

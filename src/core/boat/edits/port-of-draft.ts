import type { Kit } from '../boat-schema.ts';
import { splitDotted } from '../ids.ts';
import type { Port } from '../sheet.ts';
import { findInBoat } from './find-in-boat.ts';

interface Ported {
  readonly kit: readonly Pick<Kit, 'id' | 'sheet'>[];
  readonly sheets: readonly { readonly id: string; readonly ports: readonly Pick<Port, 'id' | 'protocol'>[] }[];
}

/** The port `kit.port` as its sheet has it; throws UserError where the boat has none. */
export const portOfDraft = ({ kit, sheets }: Ported, dotted: string): Pick<Port, 'id' | 'protocol'> => {
  const { kit: id, part } = splitDotted(dotted);
  const { sheet } = findInBoat(kit, id, 'unit');
  return findInBoat(findInBoat(sheets, sheet, 'sheet').ports, part, 'port');
};

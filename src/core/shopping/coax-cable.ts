import { dbPer100M, dbPer100MByName } from '../coax/coax-loss.ts';
import { coaxKinds, newCoax, radioMhz } from '../facts/coax.ts';
import type { LineEntry } from '../plan-shape.ts';
import { metreItem, type PriceList } from '../prices/price-list.ts';

/** Coax of one kind by the metre: its item, what it is called with the loss its data sheet may show, and what a metre costs. */
export const coaxCable = (
  { prices }: { readonly prices: PriceList },
  { coax }: Pick<LineEntry, 'coax'>,
): { readonly id: string; readonly words: string; readonly perM: number } | undefined => {
  if (coax === undefined) return undefined;
  const { name, outsideMm } = coaxKinds[coax];
  const mhz = radioMhz.voice.value;
  const lossDb = dbPer100M(coax, mhz) ?? dbPer100MByName(coax, mhz);
  const id = `${metreItem({ kind: 'coax' })}-${coax}`;
  const usual = newCoax.kinds.find(({ kind }) => kind === coax)?.perM ?? newCoax.otherPerM;
  return {
    id,
    words: `coaxial cable ${name}, ${outsideMm} mm, at most ${lossDb.toFixed(1)} dB in 100 m at ${Math.round(mhz)} MHz`,
    perM: prices.own(id, usual),
  };
};

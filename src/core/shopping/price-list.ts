import type { Boat, GradeId, LineKind } from '../boat/boat-schema.ts';
import { readyLengthsMm } from '../boat/ready-lengths.ts';
import { smallPartPrices } from '../facts/buying.ts';
import { linePrices } from '../facts/part-prices.ts';
import { typicalPrices } from '../facts/prices.ts';
import type { ReadyLength } from './pieces-for.ts';

/** What things cost on one boat, in hundredths of the currency: the owner's own prices, else the usual ones. */
export interface PriceList {
  /** the owner's price of an item, else the one given */
  readonly each: (item: string, usual: number | undefined) => number | undefined;
  readonly perM: (kind: LineKind, grade?: GradeId) => number | undefined;
  readonly ready: (kind: LineKind, grade?: GradeId) => readonly ReadyLength[];
  readonly tee: number;
  readonly terminator: number;
  readonly feed: number;
}

/** The item of the shopping list that a ready-made cable is. */
export const readyItem = ({ kind, grade, mm }: { kind: LineKind; grade?: GradeId | undefined; mm: number }): string =>
  `${grade === undefined ? '' : `${grade}-`}${kind}-${mm}mm`;

/** The item of the shopping list that cable by the metre is. */
export const metreItem = ({ kind, grade }: { kind: LineKind; grade?: GradeId | undefined }): string =>
  `${grade === undefined ? '' : `${grade}-`}${kind}-cable`;

/** The prices of a boat, ready-made lengths among them: by the owner's list, else by the metre and its moulded plugs. */
export const priceList = (boat: Boat): PriceList => {
  const prices = boat.prices ?? typicalPrices;
  const items = boat.prices?.items;
  const each: PriceList['each'] = (item, usual) =>
    items !== undefined && Object.hasOwn(items, item) ? items[item] : usual;
  const usualPerM = (kind: LineKind, grade?: GradeId): number | undefined => {
    if (kind === 'feed' || kind === 'feeder') return prices.feedLeadPerM;
    if (kind === 'trunk' || kind === 'drop') {
      const ofGrade = grade === undefined ? undefined : prices.byGrade?.[grade];
      return kind === 'trunk' ? (ofGrade ?? prices).trunkPerM : (ofGrade ?? prices).dropPerM;
    }
    return linePrices.perM[kind];
  };
  const perM: PriceList['perM'] = (kind, grade) => each(metreItem({ kind, grade }), usualPerM(kind, grade));
  const readyOf = (kind: LineKind, grade: GradeId | undefined): readonly ReadyLength[] =>
    readyLengthsMm({ boat, kind }).map((mm) => {
      const usual = Math.round(((perM(kind, grade) ?? 0) * mm) / 1000) + smallPartPrices.mouldedPlugs;
      return { mm, cost: each(readyItem({ kind, grade, mm }), usual) ?? usual };
    });
  const known = new Map<string, readonly ReadyLength[]>();
  const ready: PriceList['ready'] = (kind, grade) => {
    const key = `${kind} ${grade ?? ''}`;
    const found = known.get(key) ?? readyOf(kind, grade);
    known.set(key, found);
    return found;
  };
  return { each, perM, ready, tee: prices.tee, terminator: prices.terminator, feed: prices.feed };
};

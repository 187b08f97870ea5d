import type { Boat, GradeId, LineKind } from '../boat/boat-schema.ts';
import { readyLengthsMm } from '../boat/ready-lengths.ts';
import type { Sheet } from '../boat/sheet.ts';
import { smallPartPrices } from '../facts/buying.ts';
import { linePrices, unitPrices } from '../facts/part-prices.ts';
import { typicalPrices } from '../facts/prices.ts';

/** A length that is sold ready-made, with a plug at either end. Cost in hundredths of the currency. */
export interface ReadyLength {
  readonly mm: number;
  readonly cost: number;
}

/** What things cost on one boat, in hundredths of the currency: the owner's own prices, else the usual ones. */
export interface PriceList {
  /** the owner's price of an item, else the usual one, which is in euros and unknown in another currency */
  readonly each: (item: string, usual: number | undefined) => number | undefined;
  /** the owner's price of an item, else the price given, which is the owner's as well */
  readonly own: (item: string, price: number) => number;
  /** by the metre, to weigh one length against another even where no price is known */
  readonly perM: (kind: LineKind, grade?: GradeId) => number | undefined;
  /** what a cable costs, as it may be said to people: what rests on a usual price in euros has none in another currency */
  readonly known: (kind: LineKind, item: string, weighed: number | undefined) => number | undefined;
  readonly ready: (kind: LineKind, grade?: GradeId) => readonly ReadyLength[];
  readonly tee: number;
  readonly terminator: number;
  readonly feed: number;
}

/** Kinds of line whose metre stands in every price list of an owner. */
const ownMetre: ReadonlySet<LineKind> = new Set(['trunk', 'drop', 'feed', 'feeder']);

/** The item of the shopping list that a ready-made cable is. */
export const readyItem = ({ kind, grade, mm }: { kind: LineKind; grade?: GradeId | undefined; mm: number }): string =>
  `${grade === undefined ? '' : `${grade}-`}${kind}-${mm}mm`;

/** The item of the shopping list that cable by the metre is. */
export const metreItem = ({ kind, grade }: { kind: LineKind; grade?: GradeId | undefined }): string =>
  `${grade === undefined ? '' : `${grade}-`}${kind}-cable`;

const byKind: Readonly<Record<string, number>> = unitPrices.byKind;

/** The item of the shopping list that a unit of some sheet is. */
export const unitItem = ({ id }: Pick<Sheet, 'id'>): string => `unit-${id}`;

/** What a unit of a sheet costs: the owner's price, else the usual one of its kind, where there is one. */
export const unitPrice = ({ each }: PriceList, sheet: Pick<Sheet, 'id' | 'kind'>): number | undefined =>
  each(unitItem(sheet), Object.hasOwn(byKind, sheet.kind) ? byKind[sheet.kind] : undefined);

/** The prices of a boat, ready-made lengths among them: by the owner's list, else by the metre and its moulded plugs. */
export const priceList = (boat: Boat): PriceList => {
  const prices = boat.prices ?? typicalPrices;
  const items = boat.prices?.items;
  const own: PriceList['own'] = (item, price) =>
    (items !== undefined && Object.hasOwn(items, item) ? items[item] : undefined) ?? price;
  const inEuros = prices.currency === typicalPrices.currency;
  const each: PriceList['each'] = (item, usual) => {
    if (items !== undefined && Object.hasOwn(items, item)) return items[item];
    return inEuros ? usual : undefined;
  };
  const usualPerM = (kind: LineKind, grade?: GradeId): number | undefined => {
    if (kind === 'feed' || kind === 'feeder') return prices.feedLeadPerM;
    if (kind === 'trunk' || kind === 'drop') {
      const ofGrade = grade === undefined ? undefined : prices.byGrade?.[grade];
      return kind === 'trunk' ? (ofGrade ?? prices).trunkPerM : (ofGrade ?? prices).dropPerM;
    }
    return linePrices.perM[kind];
  };
  const perM: PriceList['perM'] = (kind, grade) => {
    const usual = usualPerM(kind, grade);
    return usual === undefined ? items?.[metreItem({ kind, grade })] : own(metreItem({ kind, grade }), usual);
  };
  const readyOf = (kind: LineKind, grade: GradeId | undefined): readonly ReadyLength[] =>
    readyLengthsMm({ boat, kind }).map((mm) => {
      const usual = Math.round(((perM(kind, grade) ?? 0) * mm) / 1000) + smallPartPrices.mouldedPlugs;
      return { mm, cost: own(readyItem({ kind, grade, mm }), usual) };
    });
  const found = new Map<string, readonly ReadyLength[]>();
  const ready: PriceList['ready'] = (kind, grade) => {
    const key = `${kind} ${grade ?? ''}`;
    const lengths = found.get(key) ?? readyOf(kind, grade);
    found.set(key, lengths);
    return lengths;
  };
  const known: PriceList['known'] = (kind, item, weighed) => (ownMetre.has(kind) ? weighed : each(item, weighed));
  return { each, own, perM, known, ready, tee: prices.tee, terminator: prices.terminator, feed: prices.feed };
};

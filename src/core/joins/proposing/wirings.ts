import { type BoatIndex, indexBoat } from '../../boat/boat-index.ts';
import type { Boat, Kit } from '../../boat/boat-schema.ts';
import { byCodeUnit } from '../../boat/ids.ts';
import { isAboard, lastPhase } from '../../boat/phase.ts';
import type { Sheet } from '../../boat/sheet.ts';
import { readingsOf } from '../../facts/message-readings.ts';
import { typicalSheets } from '../../facts/sheets/index.ts';
import { priceList, unitPrice } from '../../prices/price-list.ts';
import type { WiringEntry } from '../../proposal-shape.ts';
import { portNetworkOf } from '../../readings/port-network.ts';
import { joinedRefit } from '../joined-refit.ts';
import { joinsOf } from '../joins-of.ts';
import { unmetNeeds } from '../unmet-needs.ts';
import { readingsBehind } from './derivations.ts';
import { chooseJoins, joinSetting } from './join-setting.ts';
import { joiningKinds, type Offer, offersFor } from './offers.ts';

/** Old units that are tried one at a time, beside all of them kept and all of them replaced. */
const mostAlone = 4;

interface Replacement {
  readonly unit: Kit;
  readonly sheet: Sheet;
  readonly cost: number;
}

const readingsAt = (sheet: Sheet | undefined, said: 'sends' | 'hears'): ReadonlySet<string> =>
  new Set(
    (sheet?.ports ?? []).flatMap((port) => (port[said] ?? []).flatMap((one) => readingsOf(one).map((r) => r.reading))),
  );

/** A unit that speaks 0183 or a maker's own wire and neither of the newer networks. */
const isOld = ({ ports }: Sheet): boolean =>
  ports.some(({ protocol }) => protocol === 'nmea0183' || protocol === 'single-wire') &&
  !ports.some(({ protocol }) => protocol === 'nmea2000' || protocol === 'ethernet');

const covers = (sheet: Sheet, wanted: ReadonlySet<string>, said: 'sends' | 'hears'): number => {
  const own = readingsAt(sheet, said);
  return [...wanted].filter((reading) => own.has(reading)).length;
};

/** What would come in the place of an old unit: one of its kind on a backbone that does most of what it does, then the cheapest. */
const replacementFor = (index: BoatIndex, unit: Kit): Replacement | undefined => {
  const old = index.sheetOf.get(unit.id);
  if (old === undefined) return undefined;
  const shown = new Set(index.boat.needs.filter(({ at }) => at === unit.id).map(({ reading }) => reading));
  const said = readingsAt(old, 'sends');
  const prices = priceList(index.boat);
  const found = typicalSheets
    .filter(({ kind, ports }) => kind === old.kind && ports.some(({ protocol }) => protocol === 'nmea2000'))
    .flatMap((sheet) => {
      const cost = unitPrice(prices, sheet);
      const does = covers(sheet, shown, 'hears') + covers(sheet, said, 'sends');
      return cost === undefined || does === 0 ? [] : [{ unit, sheet, cost, does }];
    })
    .sort((a, b) => b.does - a.does || a.cost - b.cost || byCodeUnit(a.sheet.id, b.sheet.id));
  return found[0];
};

/** The boat without some units and what they were joined to. */
const without = (boat: Boat, gone: ReadonlySet<string>): Boat => ({
  ...boat,
  kit: boat.kit.filter(({ id }) => !gone.has(id)),
  needs: boat.needs.filter(({ at }) => !gone.has(at)),
  joins: boat.joins
    .map((join) => ({ ...join, members: join.members.filter(({ kit }) => !gone.has(kit)) }))
    .filter(({ members }) => members.length > 0),
});

const withKit = (boat: Boat, more: readonly { readonly unit: Kit; readonly sheet: Sheet }[]): Boat => {
  const known = new Set(boat.sheets.map(({ id }) => id));
  const sheets = [...new Map(more.map(({ sheet }) => [sheet.id, sheet])).values()].filter(({ id }) => !known.has(id));
  return { ...boat, kit: [...boat.kit, ...more.map(({ unit }) => unit)], sheets: [...boat.sheets, ...sheets] };
};

/** Units that come only to join others: each way of wiring the boat buys its own. */
const joiningUnits = (index: BoatIndex): Offer[] => {
  const prices = priceList(index.boat);
  return index.boat.kit.flatMap((unit) => {
    const sheet = index.sheetOf.get(unit.id);
    if (unit.fate !== 'comes' || sheet === undefined || !joiningKinds.has(sheet.kind)) return [];
    const cost = unitPrice(prices, sheet);
    return cost === undefined ? [] : [{ unit, sheet, cost }];
  });
};

const replaced = (boat: Boat, replacements: readonly Replacement[]): Boat => {
  const gone = new Set(replacements.map(({ unit }) => unit.id));
  const bare = without(boat, gone);
  const units = replacements.map(({ unit, sheet }) => {
    const { changes: _, instances: __, identity: ___, ...own } = unit;
    return { unit: { ...own, sheet: sheet.id, fate: 'comes' as const }, sheet };
  });
  return { ...withKit(bare, units), needs: boat.needs };
};

interface Wiring {
  readonly id: string;
  readonly keeps: readonly Kit[];
  readonly replaces: readonly Replacement[];
}

const wiringEntry = (boat: Boat, joining: readonly Offer[], { id, keeps, replaces }: Wiring): WiringEntry => {
  const phase = lastPhase(boat);
  const bare = replaced(without(boat, new Set(joining.map(({ unit }) => unit.id))), replaces);
  const bareIndex = indexBoat(bare);
  const network = portNetworkOf(bareIndex, phase, joinsOf(bareIndex, phase));
  const needs = unmetNeeds(bareIndex, joinedRefit(bareIndex).reachesIn(phase));
  const wanted = new Set(needs.flatMap(({ reading }) => [...readingsBehind(reading)]));
  const offers = [...joining, ...offersFor({ index: bareIndex, network }, wanted)];
  const index = indexBoat(withKit(bare, offers));
  const setting = joinSetting({
    index,
    standing: joinsOf(bareIndex, phase),
    needs,
    offers: new Map(offers.map(({ unit, cost }) => [unit.id, cost])),
  });
  const answer = chooseJoins(setting);
  const chosen = answer.chosen.flatMap((at) => setting.candidates[at] ?? []);
  const bought = offers.filter(({ unit }) => chosen.some(({ members }) => members.some(({ kit }) => kit === unit.id)));
  const cost = [...chosen, ...bought, ...replaces].reduce((sum, one) => sum + one.cost, 0);
  return {
    id,
    says: wiringWords({ keeps, replaces, bought }),
    keeps: keeps.map((unit) => unit.id),
    replaces: replaces.map(({ unit, sheet, cost: each }) => ({ kit: unit.id, sheet: sheet.id, cost: each })),
    buys: bought.map(({ unit, sheet, cost: each }) => ({
      sheet: sheet.id,
      name: sheet.name,
      place: unit.place,
      cost: each,
    })),
    joins: chosen.length,
    cost,
    bound: cost - (answer.cost - answer.bound),
    proven: answer.cost === answer.bound,
    misses: answer.unmet.flatMap((at) => {
      const need = needs[at];
      if (need === undefined) return [];
      const { reading, instance, at: kit, must } = need;
      return [{ reading, ...(instance === undefined ? {} : { instance }), at: kit, must }];
    }),
  };
};

const listed = (names: readonly string[]): string =>
  names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;

/** A name up to its first comma: what runs on after it would not stand in a list. */
const firstPart = (name: string): string => name.split(',')[0] ?? name;

/** A sheet's name as it stands in a sentence. */
const plainName = ({ name }: Sheet): string => {
  const own = firstPart(name);
  return /^[A-Z][a-z]/.test(own) ? `${own.charAt(0).toLowerCase()}${own.slice(1)}` : own;
};

const counted = (names: readonly string[]): string[] =>
  [...new Set(names)].map((name) => {
    const count = names.filter((other) => other === name).length;
    return count === 1 ? name : `${count} × ${name}`;
  });

const wiringWords = ({
  keeps,
  replaces,
  bought,
}: Omit<Wiring, 'id'> & { readonly bought: readonly Offer[] }): string => {
  const parts = [
    ...(keeps.length === 0 ? [] : [`Keep ${listed(keeps.map(({ name }) => firstPart(name)))}`]),
    ...(replaces.length === 0
      ? []
      : [`Replace ${listed(replaces.map(({ unit, sheet }) => `${firstPart(unit.name)} by ${plainName(sheet)}`))}`]),
    bought.length === 0
      ? 'Nothing has to be bought to join them'
      : `To join them: ${listed(counted(bought.map(({ sheet }) => plainName(sheet))))}`,
  ];
  return parts.map((part) => `${part}.`).join(' ');
};

/** The units of old kit that stay and that something could replace, sorted by id. */
const oldUnits = (index: BoatIndex): Replacement[] => {
  const phase = lastPhase(index.boat);
  return index.boat.kit
    .filter((unit) => {
      const sheet = index.sheetOf.get(unit.id);
      return unit.fate === 'stays' && isAboard(unit, phase) && sheet !== undefined && isOld(sheet);
    })
    .flatMap((unit) => replacementFor(index, unit) ?? [])
    .sort((a, b) => byCodeUnit(a.unit.id, b.unit.id));
};

/** How many ways of wiring a boat there are to compare. */
export const wiringCount = (boat: Boat): number => {
  const count = oldUnits(indexBoat(boat)).length;
  return count < 2 ? count * 2 : 2 + Math.min(count, mostAlone);
};

/**
 * Ways to wire a boat with old kit, side by side: all of it kept behind whatever converters it takes, all of it replaced,
 * and each of it replaced alone; each with the cheapest units and joins that meet what is needed, and what it leaves unmet.
 * Units that come only to join others are chosen anew in each. None where no old unit stays that something could replace.
 * One after another, for each takes a while.
 */
export function* wiringsOf(boat: Boat): Generator<WiringEntry> {
  const index = indexBoat(boat);
  const old = oldUnits(index);
  if (old.length === 0) return;
  const joining = joiningUnits(index);
  const sets = [
    { id: 'keep', replaces: [] },
    { id: 'replace', replaces: old },
    ...(old.length < 2
      ? []
      : old.slice(0, mostAlone).map((one) => ({ id: `replace-${one.unit.id}`, replaces: [one] }))),
  ];
  for (const { id, replaces } of sets) {
    const keeps = old.filter((one) => !replaces.includes(one)).map(({ unit }) => unit);
    yield wiringEntry(boat, joining, { id, keeps, replaces });
  }
}

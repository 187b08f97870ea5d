import type { Need } from '../boat/boat-schema.ts';
import { isSameNeed } from '../boat/edits/same-need.ts';
import { splitDotted } from '../boat/ids.ts';
import { derivedReadings } from '../facts/derived-readings.ts';
import type { Cure, ReadingEntry } from '../plan-shape.ts';
import { type Arrival, needKey } from '../readings/arrivals.ts';
import { asCure } from './as-cure.ts';
import { byCost, type Candidate, type Wish } from './candidate.ts';
import { changeSettings } from './change-settings.ts';
import { type CureContext, cureContext } from './cure-context.ts';
import { fitConverter } from './fit-converter.ts';
import { fitSource } from './fit-source.ts';
import { joinAboard } from './join-aboard.ts';
import { keepAboard } from './keep-aboard.ts';
import { lookUp } from './look-up.ts';
import { triesOn } from './try-cure.ts';
import { type CureTask, hintsOf, withCuresOf } from './with-hints.ts';

/** Cures shown of one gap, and those tried for it. */
const atMost = { shown: 3, tried: 8 } as const;

/** Nobody takes a cure that costs many times what another does (source: choice-part-prices), in hundredths. */
const isTooDear = ({ cost }: Candidate, cheapest: Cure | undefined): boolean =>
  cheapest !== undefined && cost !== undefined && cost > 4 * (cheapest.cost ?? cost) + 10_000;

/** What would have to be brought where: the reading itself, or what is missing to make it or to turn it. */
const wishesOf = ({ reaches }: CureContext, { reading, instance, at, whyNot }: Arrival): Wish[] => {
  const { broken, from } = whyNot?.link ?? {};
  const wishes: Wish[] = [{ reading, instance, at }];
  if (broken === 'wrong-reference') wishes.push({ reading: 'variation', instance: undefined, at });
  const [recipe] = derivedReadings.get(reading) ?? [];
  if (broken === 'no-source' && from !== undefined && recipe !== undefined) {
    const maker = splitDotted(from).kit;
    const lacking = recipe.from.filter((part) => !reaches.has(maker, part));
    wishes.push(...lacking.map((part) => ({ reading: part, instance: undefined, at: maker })));
  }
  return wishes;
};

const candidatesFor = (context: CureContext, missing: Arrival, need: Need): Candidate[] => {
  const found = wishesOf(context, missing).flatMap((wish) => [
    ...keepAboard(context, wish),
    ...joinAboard(context, wish),
    ...fitConverter(context, wish),
    ...fitSource(context, wish),
  ]);
  const link = missing.whyNot?.link;
  const settings = link === undefined ? [] : changeSettings(context, link, need);
  const all = [...settings, ...found].sort(byCost);
  return all.filter((one, at) => one.says !== all[at - 1]?.says);
};

/**
 * The readings of a plan with, for each that does not arrive, up to three cures: each is an edit that was made on the
 * boat and seen to bring the reading without taking another away, the cheapest first, after the page of a manual that
 * may show the gap to be none. Where no edit helps, what a person could look at is said. Pure.
 */
export const withCures = ({ refit, phase, joins, readings }: CureTask): ReadingEntry[] => {
  if (readings.every(({ arrives }) => arrives)) return withCuresOf(readings, hintsOf);
  const { index } = refit;
  const context = cureContext(refit, phase, joins);
  const arrivedWith = triesOn(refit, phase);
  return withCuresOf(readings, (missing) => {
    const pages = lookUp(context, missing);
    const need = index.boat.needs.find((entry) => isSameNeed(entry, missing));
    const candidates = need === undefined ? [] : candidatesFor(context, missing, need);
    const cures: Cure[] = [];
    for (const candidate of candidates.slice(0, atMost.tried)) {
      if (pages.length + cures.length >= atMost.shown || isTooDear(candidate, cures[0])) break;
      if (arrivedWith(candidate).has(needKey(missing))) cures.push(asCure(candidate));
    }
    const found = [...pages, ...cures];
    return found.length > 0 ? found : hintsOf(missing);
  });
};

import type { Boat, Need } from '../boat/boat-schema.ts';

type Which = Pick<Need, 'reading' | 'instance' | 'at'>;

/** The port from which the person wants a reading at a unit: as chosen there, else as chosen for the boat. */
export const chosenPrimary = (
  { sources = [] }: Pick<Boat, 'sources'>,
  need: Which,
): { readonly primary: string; readonly here: boolean } | undefined => {
  const meant = sources.filter(({ reading, instance }) => reading === need.reading && instance === need.instance);
  const choice = meant.find(({ at }) => at === need.at) ?? meant.find(({ at }) => at === undefined);
  return choice === undefined ? undefined : { primary: choice.primary, here: choice.at !== undefined };
};

/** Whether the person has said which source of a reading counts, for the boat or at every unit that wants it. */
export const isSettled = (boat: Pick<Boat, 'sources' | 'needs'>, reading: Need['reading']): boolean => {
  const needs = boat.needs.filter((need) => need.reading === reading);
  const isForBoat = boat.sources?.some((choice) => choice.reading === reading && choice.at === undefined) === true;
  return isForBoat || (needs.length > 0 && needs.every((need) => chosenPrimary(boat, need) !== undefined));
};

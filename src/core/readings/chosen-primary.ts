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

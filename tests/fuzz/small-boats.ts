import { type Boat, boatSchema } from '../../src/core/boat/boat-schema.ts';
import { checkReferences } from '../../src/core/boat/check-references.ts';
import { aFullBoat } from '../../src/core/boat/full-boat.test-helper.ts';
import { misfitIn } from './misfit-in.ts';

/** Parsed JSON of a boat file. */
export type BoatData = Readonly<Record<string, unknown>>;

/** Whether a boat that came of a good one is good herself. */
const isGood = (data: BoatData, of: BoatData): boolean =>
  misfitIn(of, data) === undefined &&
  // reason: every part fits its schema
  checkReferences(data as unknown as Boat).length === 0;

const listsToThin = ['needs', 'joins', 'cables', 'kit', 'sheets', 'buses', 'ways', 'places'] as const;

/** The boat without each entry of her lists that she still is good without; `keeps` says what stays in any case. */
const thinned = (boat: BoatData, keeps: (entry: unknown) => boolean): BoatData => {
  let thin = boat;
  for (const list of listsToThin) {
    const entries = thin[list];
    if (!Array.isArray(entries)) continue;
    for (const entry of entries.toReversed()) {
      const now = thin[list];
      if (!Array.isArray(now) || keeps(entry)) continue;
      const without = { ...thin, [list]: now.filter((one) => one !== entry) };
      if (isGood(without, thin)) thin = without;
    }
  }
  return thin;
};

const without = (boat: Boat, parts: readonly string[]): BoatData =>
  Object.fromEntries(Object.entries(boat).filter(([name]) => !parts.includes(name)));

const optionalParts = Object.entries(boatSchema.shape)
  .filter(([, schema]) => schema.safeParse(undefined).success || schema.def.type === 'optional')
  .map(([name]) => name);

/**
 * Small good boats that together have something in every part of the file: one for each part that may be absent, one for
 * each unit with its sheet, one with all joins, one with the whole supply. The smaller a boat, the more of them a test can try.
 */
export const smallBoats = (): readonly BoatData[] => {
  const full = aFullBoat();
  const bare = without(full, optionalParts);
  const noSupply = { ...bare, supply: { banks: [], panels: [], dcdc: [] } };
  const boats: BoatData[] = [];
  for (const part of optionalParts) {
    const value = new Map<string, unknown>(Object.entries(full)).get(part);
    if (value === undefined) continue;
    const alone = { ...noSupply, [part]: value };
    boats.push(thinned(isGood(alone, full) ? alone : { ...bare, [part]: value }, () => false));
  }
  for (const unit of full.kit) {
    const sheet = full.sheets.find(({ id }) => id === unit.sheet);
    const alone = { ...noSupply, needs: [], joins: [] };
    boats.push(thinned(isGood(alone, full) ? alone : bare, (entry) => entry === unit || entry === sheet));
  }
  boats.push(thinned(bare, (entry) => full.joins.some((join) => join === entry)));
  boats.push(thinned(bare, (entry) => full.needs.some((need) => need === entry)));
  boats.push(thinned(bare, (entry) => full.ways.some((way) => way === entry)));
  boats.push(thinned(bare, (entry) => full.cables.some((cable) => cable === entry)));
  return boats.filter((boat) => isGood(boat, full));
};

import { UserError } from '../boat/user-error.ts';
import type { BoatPattern } from './pattern.ts';
import { boatPatterns } from './patterns/index.ts';

const byId: ReadonlyMap<string, BoatPattern> = new Map(boatPatterns.map((pattern) => [pattern.id, pattern]));

/**
 * The hull pattern of that id.
 *
 * @throws UserError with the list of patterns when there is none
 */
export const patternOf = (id: string): BoatPattern => {
  const pattern = byId.get(id);
  if (pattern !== undefined) return pattern;
  throw new UserError({
    says: `There is no hull pattern “${id}”.`,
    whatToDo: `Choose one of these: ${boatPatterns.map((one) => one.id).join(', ')}.`,
  });
};

import type { Draft } from 'mutative';
import { aBoat } from './a-boat.test-helper.ts';
import { sentenceOf } from './boat-problem.ts';
import type { Boat } from './boat-schema.ts';
import { checkReferences } from './check-references.ts';
import { placeInFile } from './place-in-file.ts';

export type Recipe = (boat: Draft<Boat>) => void;

/** What is said of the references of the small boat, changed so. */
export const told = (recipe: Recipe): string[] =>
  checkReferences(aBoat().change(recipe).boat).map((problem) => `${placeInFile(problem.path)}: ${sentenceOf(problem)}`);

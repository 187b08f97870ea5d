import { create, type Draft } from 'mutative';

/** A copy of a value with the changes a recipe makes to a draft of it; what is not changed is shared with the original. */
export const inPlace = <Value extends object>(value: Value, recipe: (draft: Draft<Value>) => void): Value =>
  create(value, (draft) => {
    // a recipe may end in a value, such as the new length that push gives; only the draft counts
    recipe(draft);
  });

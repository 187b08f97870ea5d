import { type Tested, testedOf } from '../../../core/proof/dock/tested.ts';
import type { TestEntry } from '../../../core/tests-shape.ts';
import { boatOfFolder } from '../pictures/picture-keeper.ts';
import { storeOf } from './use-boat-log.ts';

/** Tells how far the tests of the boat that is open have come, now and whenever her log changes; gives what ends it. */
export const watchTested = (
  boatName: string,
  tests: readonly TestEntry[],
  tell: (tested: Tested) => void,
): (() => void) => {
  const store = storeOf(boatOfFolder(), boatName);
  const say = (): void => tell(testedOf(tests, store.state().log));
  say();
  void store.sync();
  return store.onChange(say);
};

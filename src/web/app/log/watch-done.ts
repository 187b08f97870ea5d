import { doneJobs } from '../../../core/work/ticks.ts';
import { boatOfFolder } from '../pictures/picture-keeper.ts';
import { storeOf } from './use-boat-log.ts';

/** Tells which jobs of the boat that is open are done, now and whenever her log changes; gives what ends it. */
export const watchDone = (boatName: string, tell: (done: ReadonlyMap<string, string>) => void): (() => void) => {
  const store = storeOf(boatOfFolder(), boatName);
  const say = (): void => tell(doneJobs(store.state().log));
  say();
  void store.sync();
  return store.onChange(say);
};

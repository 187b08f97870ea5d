import { useSyncExternalStore } from 'react';

/** A choice among a few that holds for every page and is remembered on this machine. */
export interface KeptChoice<Value extends string> {
  readonly values: readonly Value[];
  readonly choose: (value: Value) => void;
  /** what is chosen now; the page is drawn anew when it changes */
  readonly use: () => Value;
}

const remembered = (key: string): string | null => {
  try {
    return localStorage.getItem(key);
  } catch {
    // A private window may bar storage; the choice then lasts as long as the page.
    return null;
  }
};

/** Keeps a choice under a key of the browser's storage; the first value is the one nobody has chosen. */
export const keptChoice = <Value extends string>(
  key: string,
  values: readonly [Value, ...Value[]],
): KeptChoice<Value> => {
  const listeners = new Set<() => void>();
  let now = values.find((value) => value === remembered(key)) ?? values[0];
  const subscribe = (listener: () => void): (() => void) => {
    listeners.add(listener);
    return () => listeners.delete(listener);
  };
  return {
    values,
    choose: (value) => {
      now = value;
      try {
        localStorage.setItem(key, value);
      } catch {
        // as above
      }
      for (const listener of listeners) listener();
    },
    use: () => useSyncExternalStore(subscribe, () => now),
  };
};

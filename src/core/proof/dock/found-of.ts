import type { Found } from './judge.ts';

/** What was found at each test so far, by its id: as a log keeps it. */
export const foundOf =
  (readings: ReadonlyMap<string, { readonly value?: number; readonly right?: boolean }>) =>
  (id: string): Found | undefined => {
    const entry = readings.get(id);
    return entry?.value ?? entry?.right;
  };

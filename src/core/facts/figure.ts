import type { SourceKey } from './sources.ts';

/** One sourced number: `unit` is printed after it, `source` is a key of the ledger of sources. */
export interface Figure {
  readonly value: number;
  readonly unit: string;
  readonly source: SourceKey;
}

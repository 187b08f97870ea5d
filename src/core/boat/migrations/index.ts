import type { Migration } from './run-migrations.ts';

/** Every migration there ever was, oldest first; none while the format is at its first version. */
export const migrations: readonly Migration[] = [];

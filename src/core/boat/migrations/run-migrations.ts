import { UserError } from '../user-error.ts';

/** Parsed JSON of a boat file, not yet known to be one. */
export type FileData = Readonly<Record<string, unknown>>;

/** Brings a boat file from one version to the next; kept for ever. `migrate` leaves `version` alone. */
export interface Migration {
  readonly from: number;
  /** what changed, as a sentence for the change log */
  readonly title: string;
  readonly migrate: (data: FileData) => FileData;
}

/**
 * Brings an older file to the version wanted, one migration after the other, and sets its `version`.
 * A version from which no migration leads on is refused.
 */
export const runMigrations = (
  data: FileData,
  { from, to, migrations }: { from: number; to: number; migrations: readonly Migration[] },
): FileData => {
  const byVersion = new Map(migrations.map((migration) => [migration.from, migration]));
  let current = data;
  for (let version = from; version < to; version += 1) {
    const migration = byVersion.get(version);
    if (migration === undefined) {
      throw new UserError({
        says: `There was never a boat file of version ${version}.`,
        place: 'version',
        whatToDo: `Write ${to}, the version this program writes.`,
      });
    }
    current = { ...migration.migrate(current), version: version + 1 };
  }
  return current;
};

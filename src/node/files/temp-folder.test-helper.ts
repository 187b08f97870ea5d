import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';

/** A new empty folder that is gone when the test is over. */
export const tempFolder = (): string => {
  const folder = mkdtempSync(join(tmpdir(), 'fairlead-files-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
};

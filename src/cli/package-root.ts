import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const findRoot = (from: string): string =>
  existsSync(join(from, 'package.json')) || dirname(from) === from ? from : findRoot(dirname(from));

/** The folder of the package, whether run from the build or from the sources. */
export const packageRoot = findRoot(dirname(fileURLToPath(import.meta.url)));

import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Boat } from '../../src/core/boat/boat-schema.ts';
import { writeBoat } from '../../src/core/boat/write-boat.ts';
import { bonxie } from './bonxie.ts';
import { gannet } from './gannet.ts';
import { sandpiper } from './sandpiper.ts';
import { wreck } from './wreck/index.ts';

const examples: readonly (readonly [path: string, boat: () => Boat])[] = [
  ['examples/bonxie/bonxie.boat.json', bonxie],
  ['examples/gannet/gannet.boat.json', gannet],
  ['examples/sandpiper/sandpiper.boat.json', sandpiper],
  ['examples/wreck/wreck.boat.json', () => wreck()],
];

const root = new URL('../../', import.meta.url);

const textNow = (file: string): string | undefined => {
  try {
    return readFileSync(file, 'utf8');
  } catch {
    return undefined;
  }
};

const check = process.argv.includes('--check');
for (const [path, boat] of examples) {
  const file = fileURLToPath(new URL(path, root));
  const text = writeBoat(boat());
  if (textNow(file) === text) continue;
  if (check) {
    console.error(`${path} is not what its tables give. Run "npm run examples" and commit the result.`);
    process.exitCode = 1;
    continue;
  }
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(file, text);
  console.log(`wrote ${path}`);
}

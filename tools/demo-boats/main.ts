import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Boat } from '../../src/core/boat/boat-schema.ts';
import { writeBoat } from '../../src/core/boat/write-boat.ts';
import { bonxie } from './bonxie.ts';
import { dockRecording } from './dock-recording.ts';
import { gannet } from './gannet.ts';
import { sandpiper } from './sandpiper.ts';
import { wreck } from './wreck/index.ts';

const boatText = (boat: () => Boat) => (): Uint8Array => new TextEncoder().encode(writeBoat(boat()));

/** In this order: the recording is made from the boat as her file stands. */
const examples: readonly (readonly [path: string, content: () => Uint8Array])[] = [
  ['examples/bonxie/bonxie.boat.json', boatText(bonxie)],
  ['examples/gannet/gannet.boat.json', boatText(gannet)],
  ['examples/gannet/gannet-at-the-dock.candump.log', dockRecording],
  ['examples/sandpiper/sandpiper.boat.json', boatText(sandpiper)],
  ['examples/wreck/wreck.boat.json', boatText(() => wreck())],
];

const root = new URL('../../', import.meta.url);

const bytesNow = (file: string): Uint8Array | undefined => {
  try {
    return readFileSync(file);
  } catch {
    return undefined;
  }
};

const check = process.argv.includes('--check');
for (const [path, contentOf] of examples) {
  const file = fileURLToPath(new URL(path, root));
  const content = contentOf();
  const now = bytesNow(file);
  if (now !== undefined && Buffer.compare(now, content) === 0) continue;
  if (check) {
    console.error(`${path} is not what its tables give. Run "npm run examples" and commit the result.`);
    process.exitCode = 1;
    continue;
  }
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(file, content);
  console.log(`wrote ${path}`);
}

import { writeSync } from 'node:fs';
import type { Boat } from '../../src/core/boat/boat-schema.ts';
import { addPlace } from '../../src/core/boat/edits/add-place.ts';
import { changePlace } from '../../src/core/boat/edits/change-place.ts';
import { tapeLength } from '../../src/core/boat/edits/tape-length.ts';
import { UserError } from '../../src/core/boat/user-error.ts';
import { writeBoat } from '../../src/core/boat/write-boat.ts';
import { contentHash } from '../../src/node/files/content-hash.ts';
import { loadBoat } from '../../src/node/files/load-boat.ts';
import { addToLog } from '../../src/node/files/log-file.ts';
import { saveBoat } from '../../src/node/files/save-boat.ts';
import { startLot } from '../recordings/mutate-bytes.ts';

// Edits a boat at random, saves her after each edit and adds lines to her log, until it is killed. Each save is told of
// before it begins and once it is made, each line once it is safe; a pipe is written at once, so what was told was so.
const [path = '', seed = '1'] = process.argv.slice(2);
const lot = startLot(Number(seed));
const tell = (what: string): void => void writeSync(1, `${what}\n`);

const edited = (boat: Boat): Boat => {
  const [place, way] = [boat.places[lot(boat.places.length)], boat.ways[lot(boat.ways.length)]];
  if (place === undefined || way === undefined) return boat;
  switch (lot(3)) {
    case 0:
      return changePlace.apply(boat, { place: place.id, name: `place ${lot(1000)}` });
    case 1:
      return addPlace.apply(boat, { ...place, id: `place-${lot(1_000_000)}` });
    default:
      return tapeLength.apply(boat, { way: way.id, length: { valueM: 1 + lot(900) / 100, how: 'taped' } });
  }
};

const orSame = (boat: Boat): Boat => {
  try {
    return edited(boat);
  } catch (error) {
    if (error instanceof UserError) return boat;
    throw error;
  }
};

const loaded = await loadBoat(path);
let boat = loaded.boat;
let readHash = loaded.hash;
for (let turn = 0; ; turn += 1) {
  boat = orSame(boat);
  const text = writeBoat(boat);
  tell(`saving ${contentHash(text)}`);
  readHash = (await saveBoat({ path, text, readHash })).hash;
  tell(`saved ${readHash}`);
  const id = `line${seed.padStart(8, '0')}${String(turn).padStart(6, '0')}`;
  await addToLog(path, [{ kind: 'note', id, at: '2027-03-31T09:30:00Z', about: [], text: 'x'.repeat(1 + lot(900)) }]);
  tell(`logged ${id}`);
}

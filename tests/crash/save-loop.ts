import { saveBoat } from '../../src/node/files/save-boat.ts';

// Saves two texts in turn to one path until it is killed; says so on its output once it is under way.
const [path = '', first = '', second = ''] = process.argv.slice(2);
const texts = [first, second].map((name) => JSON.stringify({ name, rows: Array(20_000).fill(name) }));

for (let turn = 0; ; turn += 1) {
  await saveBoat({ path, text: texts[turn % 2] ?? '' });
  if (turn === 1) process.stdout.write('under way\n');
}

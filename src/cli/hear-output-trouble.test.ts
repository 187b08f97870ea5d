import { Writable } from 'node:stream';
import { expect, test } from 'vitest';
import { hearOutputTrouble } from './hear-output-trouble.ts';

/** Standard output that refuses everything with an error of the operating system. */
const refusing = (code: string): Writable =>
  new Writable({
    autoDestroy: false,
    write: (_chunk, _encoding, done) => done(Object.assign(new Error(code), { code, syscall: 'write' })),
  });

const toldOf = async (code: string): Promise<string[]> => {
  const told: string[] = [];
  const [stdout, stderr] = [refusing(code), refusing('EPIPE')];
  hearOutputTrouble({ stdout, stderr }, (sentence) => told.push(sentence));
  for (const out of [stdout, stdout, stderr]) out.write('a line\n');
  await new Promise(setImmediate);
  return told;
};

test('what could not be printed because a disk is full is told once', async () => {
  expect(await toldOf('ENOSPC')).toEqual([
    'The disk is full: what was printed is not whole. Make room, or print to another disk.',
  ]);
  expect(await toldOf('EIO')).toEqual([
    'What was printed is not whole: the operating system refused it (EIO). Print it elsewhere.',
  ]);
});

test('a reader that has seen enough is no trouble', async () => {
  expect(await toldOf('EPIPE')).toEqual([]);
});

import { mkdirSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { contentHash } from './files/content-hash.ts';
import { tempFolder } from './files/temp-folder.test-helper.ts';
import { pictureFolder } from './picture-folder.ts';

const png = new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 1, 2, 3]);
const jpeg = new Uint8Array([0xff, 0xd8, 0xff, 0xe0, 9]);
const webp = new Uint8Array([0x52, 0x49, 0x46, 0x46, 0, 0, 0, 0, 0x57, 0x45, 0x42, 0x50, 7]);

/** Published for the text “abc” (FIPS 180-4, example of SHA-256). */
const abcHash = 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad';

const aFolder = () => {
  const folder = tempFolder();
  return { folder, files: join(folder, 'tern.files'), pictures: pictureFolder(join(folder, 'tern.boat.json')) };
};

test('pictures are named by the SHA-256 of their bytes', () => {
  expect(contentHash('abc')).toBe(abcHash);
});

test('a picture is kept under the hash of its bytes, once, and read again', async () => {
  const { files, pictures } = aFolder();
  for (const [bytes, type] of [
    [png, 'png'],
    [jpeg, 'jpeg'],
    [webp, 'webp'],
  ] as const) {
    const { hash } = await pictures.keep(bytes);
    expect(hash).toBe(contentHash(bytes));
    expect(await pictures.keep(bytes)).toEqual({ hash });
    expect(await pictures.read(hash)).toEqual({ type, bytes: Buffer.from(bytes) });
    expect(new Uint8Array(readFileSync(join(files, `${hash}.${type}`)))).toEqual(bytes);
  }
  expect(readdirSync(files)).toHaveLength(3);
  expect(await pictures.hashes()).toEqual(new Set([png, jpeg, webp].map(contentHash)));
});

test('what is no picture, or more than 8 MB of one, is refused and nothing is written', async () => {
  const { folder, pictures } = aFolder();
  await expect(pictures.keep(new TextEncoder().encode('<svg/>'))).rejects.toThrow('no picture that can be kept');
  const large = new Uint8Array(8_000_001);
  large.set(jpeg);
  await expect(pictures.keep(large)).rejects.toThrow('larger than 8 MB');
  expect(readdirSync(folder)).toEqual([]);
});

test('a picture that is missing, was changed, or lies elsewhere is not there', async () => {
  const { folder, files, pictures } = aFolder();
  const { hash } = await pictures.keep(png);
  writeFileSync(join(files, `${hash}.png`), jpeg);
  expect(await pictures.read(hash)).toBeUndefined();
  expect(await pictures.hashes()).toEqual(new Set());
  expect(await pictures.read('0'.repeat(64))).toBeUndefined();
  expect(await pictures.read('../tern.boat.json')).toBeUndefined();
  // a link out of the folder is not followed
  const elsewhere = join(folder, 'elsewhere.png');
  writeFileSync(elsewhere, webp);
  symlinkSync(elsewhere, join(files, `${contentHash(webp)}.png`));
  expect(await pictures.read(contentHash(webp))).toBeUndefined();
});

test('a picture that was damaged is written whole again', async () => {
  const { files, pictures } = aFolder();
  mkdirSync(files);
  const hash = contentHash(png);
  writeFileSync(join(files, `${hash}.png`), png.slice(0, 9));
  await pictures.keep(png);
  expect((await pictures.read(hash))?.bytes).toEqual(Buffer.from(png));
});

import { describe, expect, test } from 'vitest';
import { aBoat } from '../src/core/boat/a-boat.test-helper.ts';
import { boatFileName } from '../src/core/boat/boat-file-name.ts';
import { byCodeUnit } from '../src/core/boat/ids.ts';
import { readSheet } from '../src/core/boat/read-sheet.ts';
import { writeSheet } from '../src/core/boat/write-sheet.ts';
import { copyBoat } from '../src/web/app/opening/copy-boat.ts';
import { bytesHash, textHash } from '../src/web/workers/text-hash.ts';
import { demoText, emptyBrowser, emptyFolder } from './boat-stores.test-helper.ts';
import { aSentence, jpeg, kept, named, note, png, skua, tern, textNow } from './kept-boats.test-helper.ts';

describe.each([
  ['files of a folder, by the server', emptyFolder],
  ['the storage of a browser', emptyBrowser],
])('boats kept as %s', (_, empty) => {
  test('an empty place has no boat, and a new one is listed and read', async () => {
    const { store } = await empty();
    expect(await store.list('boats')).toEqual({ boats: [] });
    const { id, text, tag } = await kept(store, tern);
    expect([id, text, tag]).toEqual(['tern', tern, `"${textHash(tern)}"`]);
    expect(await store.list('boats')).toEqual({
      boats: [{ id: 'tern', name: 'Tern', says: expect.stringMatching(/^[\d.]+ m [a-z ]+, \d+ units$/) }],
    });
  });

  test.each([
    ['lines of another system', tern.replaceAll('\n', '\r\n')],
    ['no line end', tern.trimEnd()],
    ['a mark before the first letter', `\uFEFF${tern}`],
    ['letters of all the world', named('Tern — ß ø 漢 🛥️ \u202E')],
    ['spaces of a person', tern.replaceAll('": ', '" :\t ')],
  ])('a text with %s is kept to the byte', async (_what, text) => {
    const { store } = await empty();
    const { id, tag } = await kept(store, skua);
    expect(await store.save({ id, tag }, text)).toEqual({ kind: 'saved', tag: `"${textHash(text)}"` });
    expect(await textNow(store, id)).toBe(text);
    const added = await kept(store, text);
    expect(added.text).toBe(text);
    expect(added.tag).toBe(`"${textHash(text)}"`);
  });

  test('a boat that is damaged is put back from her newest good state, once, and a good or newer one never', async () => {
    const { store, damage } = await empty();
    const { id, tag } = await kept(store, tern);
    expect(await store.putInPlace({ id, tag }, skua)).toHaveProperty('refusal');
    await store.save({ id, tag }, skua);
    await damage(id, skua.slice(0, 300));
    const found = await store.damaged(id);
    if ('refusal' in found) throw new Error(found.refusal.says);
    expect(found.good?.text).toBe(tern);
    expect(await store.putInPlace({ id, tag }, tern)).toHaveProperty('refusal');
    expect(await store.putInPlace({ id, tag: found.tag }, 'no boat')).toHaveProperty('refusal');
    expect(await store.putInPlace({ id, tag: found.tag }, tern)).toBeUndefined();
    expect(await textNow(store, id)).toBe(tern);
    expect(await store.states(id)).toEqual({ states: [expect.objectContaining({ untilMs: found.good?.untilMs })] });
    const newer = tern.replace('"version": 1', '"version": 2');
    await damage(id, newer);
    const now = await store.read('boats', id);
    expect(await store.putInPlace({ id, tag: 'tag' in now ? now.tag : '' }, tern)).toHaveProperty('refusal');
    expect(await textNow(store, id)).toBe(newer);
    expect(await store.damaged('none')).toHaveProperty('refusal');
  });

  test('a save goes over what was read only, and what was there stays otherwise', async () => {
    const { store, other } = await empty();
    const { id, tag } = await kept(store, tern);
    const saved = await store.save({ id, tag }, skua);
    expect(saved).toEqual({ kind: 'saved', tag: `"${textHash(skua)}"` });
    const late = await other.save({ id, tag }, named('Gull'));
    expect(late).toEqual({ kind: 'changed', says: expect.stringMatching(aSentence) });
    expect(await textNow(other, id)).toBe(skua);
    expect(await store.list('boats')).toMatchObject({ boats: [{ id: 'tern', name: 'Skua' }] });
  });

  test('of many writers at once one saves, and every other is told', async () => {
    const { store, other } = await empty();
    const { id, tag } = await kept(store, tern);
    const names = ['Gull', 'Knot', 'Ruff', 'Smew', 'Teal', 'Rail'];
    const outcomes = await Promise.all(
      names.map((name, at) => (at % 2 === 0 ? store : other).save({ id, tag }, named(name))),
    );
    const kinds = outcomes.map(({ kind }) => kind).sort();
    expect(kinds).toEqual(['changed', 'changed', 'changed', 'changed', 'changed', 'saved']);
    const winner = names[outcomes.findIndex(({ kind }) => kind === 'saved')] ?? '';
    expect(await textNow(store, id)).toBe(named(winner));
  });

  test('a page finds out whether a boat is still what it read', async () => {
    const { store, other } = await empty();
    const { id, tag } = await kept(store, tern);
    expect(await store.look({ id, tag })).toEqual({ kind: 'same' });
    await other.save({ id, tag }, skua);
    expect(await store.look({ id, tag })).toMatchObject({ kind: 'changed', text: skua, tag: `"${textHash(skua)}"` });
    expect(await store.look({ id: 'gull', tag })).toEqual({ kind: 'gone' });
  });

  test('what a boat was before each save is kept, the newest first', async () => {
    const { store } = await empty();
    const { id, tag } = await kept(store, tern);
    expect(await store.states(id)).toEqual({ states: [] });
    const first = await store.save({ id, tag }, skua);
    expect(first.kind).toBe('saved');
    await store.save({ id, tag: `"${textHash(skua)}"` }, named('Gull'));
    const found = await store.states(id);
    const states = 'states' in found ? found.states : [];
    expect(states).toHaveLength(2);
    const texts = await Promise.all(states.map((state) => store.state(id, state.id)));
    expect(texts).toEqual([{ text: skua }, { text: tern }]);
    expect(states.every(({ id: name }) => /^[\d-]+$/.test(name))).toBe(true);
    expect(await store.state(id, '1999-01-01')).toEqual({
      refusal: { says: expect.stringMatching(aSentence), whatToDo: expect.stringMatching(aSentence) },
    });
  });

  test('saving the same text again changes nothing', async () => {
    const { store } = await empty();
    const { id, tag } = await kept(store, tern);
    expect(await store.save({ id, tag }, tern)).toEqual({ kind: 'saved', tag });
    expect(await store.states(id)).toEqual({ states: [] });
  });

  test.each(['../../gull', 'CON', 'Möwe II', '🛥️', 'a/b\\c', '__proto__', 'x'.repeat(100), 'Tern'])(
    'a boat called %j gets a plain free id',
    async (name) => {
      const { store } = await empty();
      await kept(store, tern);
      const { id, text } = await kept(store, named(name));
      expect(id).toBe(boatFileName(name, new Set(['tern'])));
      expect(text).toBe(named(name));
    },
  );

  test.each(['', '.', '..', '../tern', '/etc/passwd', 'tern.boat.json', '%2e%2e', '__proto__', 'TERN', 'tern/log'])(
    'the odd id %j leads to no boat, but to a sentence',
    async (id) => {
      const { store } = await empty();
      await kept(store, tern);
      expect(await store.read('boats', id)).toEqual({
        refusal: { says: expect.stringMatching(aSentence), whatToDo: expect.any(String) },
      });
      expect(await store.save({ id, tag: `"${textHash(tern)}"` }, skua)).not.toMatchObject({ kind: 'saved' });
      expect(await store.addToLog(id, [note('abcdefgh')])).not.toBe(true);
      expect(await store.keepPicture(id, bytesHash(jpeg), { type: 'jpeg', bytes: jpeg })).toEqual(expect.any(String));
      expect(await textNow(store, 'tern')).toBe(tern);
    },
  );

  test.each([
    ['nothing', ''],
    ['words', 'Tern'],
    ['another file', '{"format":"other"}'],
    ['a boat of no version', tern.replace('"version": 1', '"version": "one"')],
    ['a key twice', tern.replace('{', '{"name":"Twice",')],
  ])('%s is no boat and is not kept', async (_what, text) => {
    const { store } = await empty();
    expect(await store.add(text)).toMatchObject({
      refusal: { says: expect.stringMatching(aSentence), whatToDo: expect.stringMatching(aSentence) },
    });
    expect(await store.list('boats')).toEqual({ boats: [] });
    const { id, tag } = await kept(store, tern);
    expect(await store.save({ id, tag }, text)).toMatchObject({
      kind: 'failed',
      says: expect.stringMatching(aSentence),
    });
    expect(await textNow(store, id)).toBe(tern);
  });

  test('a log takes each entry once, whoever sends it, and none that is none', async () => {
    const { store, other } = await empty();
    const { id } = await kept(store, tern);
    expect(await store.readLog(id)).toBe('');
    expect(await store.addToLog(id, [note('aaaaaaaa'), note('bbbbbbbb')])).toBe(true);
    expect(await other.addToLog(id, [note('bbbbbbbb'), note('cccccccc')])).toBe(true);
    const lines = (await store.readLog(id)) ?? '';
    const written = ['aaaaaaaa', 'bbbbbbbb', 'cccccccc'].map(note);
    expect(
      lines
        .trimEnd()
        .split('\n')
        .map((line) => JSON.parse(line)),
    ).toEqual(written);
    expect(lines.endsWith('\n')).toBe(true);
    const broken = { ...note('dddddddd'), id: 'No Id' };
    expect(await store.addToLog(id, [note('eeeeeeee'), broken])).toMatch(/^Entry 2 cannot be added: /);
    expect(await store.readLog(id)).toBe(lines);
    expect(await store.readLog('gull')).toBeUndefined();
  });

  test('of two who add to a log at once neither loses a line', async () => {
    const { store, other } = await empty();
    const { id } = await kept(store, tern);
    const ids = Array.from({ length: 6 }, (_one, at) => `entry00${at}`);
    await Promise.all(ids.map((one, at) => (at % 2 === 0 ? store : other).addToLog(id, [note(one)])));
    const lines = ((await store.readLog(id)) ?? '').trimEnd().split('\n');
    expect(lines.map((line) => JSON.parse(line).id).sort()).toEqual(ids);
  });

  test('a boat that is removed is on no list, and a new one of her name has nothing of hers', async () => {
    const { store, other } = await empty();
    const { id, tag } = await kept(store, tern);
    await kept(store, skua);
    await store.save({ id, tag }, named('Tern'));
    await store.addToLog(id, [note('entry0001')]);
    await store.keepPicture(id, bytesHash(png), { type: 'png', bytes: png });
    const done = await store.remove(id);
    expect(done).not.toHaveProperty('refusal');
    expect('aside' in done ? done.aside : 'set-aside/tern-1').toMatch(/^set-aside\/tern-/);
    expect(await other.read('boats', id)).toHaveProperty('refusal');
    const listed = await other.list('boats');
    expect('boats' in listed ? listed.boats.map((boat) => boat.id) : listed).toEqual(['skua']);
    const again = await kept(store, tern);
    expect([await store.readLog(again.id), await store.pictures(again.id), await store.states(again.id)]).toEqual([
      '',
      [],
      { states: [] },
    ]);
  });

  test('a picture is kept under the hash of its bytes, and nothing else is', async () => {
    const { store, other } = await empty();
    const { id } = await kept(store, tern);
    expect(await store.pictures(id)).toEqual([]);
    for (const picture of [{ type: 'png', bytes: png } as const, { type: 'jpeg', bytes: jpeg } as const]) {
      expect(await store.keepPicture(id, bytesHash(picture.bytes), picture)).toBeUndefined();
      expect(await other.picture('boats', id, bytesHash(picture.bytes))).toEqual(picture);
    }
    expect(await other.pictures(id)).toEqual([jpeg, png].map(bytesHash).sort(byCodeUnit));
    const text = Uint8Array.from('no picture', (letter) => letter.charCodeAt(0));
    const large = new Uint8Array(8_000_001);
    large.set(jpeg);
    for (const [hash, bytes] of [
      [bytesHash(png), jpeg],
      [bytesHash(text), text],
      [bytesHash(large), large],
    ] as const) {
      expect(await store.keepPicture(id, hash, { type: 'jpeg', bytes })).toMatch(aSentence);
    }
    expect(await store.pictures(id)).toHaveLength(2);
    expect(await store.picture('boats', id, bytesHash(text))).toBeUndefined();
    expect(await store.pictures('gull')).toBeUndefined();
  });

  test('a sheet is kept for the next boat under an id of its own, and forgotten', async () => {
    const { store, other } = await empty();
    const [sheet] = aBoat().boat.sheets;
    if (sheet === undefined) throw new Error('The boat of the tests has a sheet.');
    expect(await store.sheets()).toEqual([]);
    expect(await store.keepSheet(writeSheet(sheet))).toBeUndefined();
    const own = readSheet(writeSheet({ ...sheet, id: `own-${boatFileName(sheet.name, new Set())}` }));
    expect(await other.sheets()).toEqual([own]);
    expect(await store.keepSheet('{}')).toMatch(aSentence);
    expect(await store.forgetSheet('own-nothing')).toMatch(aSentence);
    expect(await store.forgetSheet(own.id)).toBeUndefined();
    expect(await other.sheets()).toEqual([]);
  });

  test('where nothing can be written that is said in a sentence, and all is as it was', async () => {
    const { store, bar } = await empty();
    const { id, tag } = await kept(store, tern);
    bar(id);
    expect(await store.save({ id, tag }, skua)).toEqual({ kind: 'failed', says: expect.stringMatching(aSentence) });
    expect(await store.keepPicture(id, bytesHash(jpeg), { type: 'jpeg', bytes: jpeg })).toMatch(aSentence);
    // to be sent again later
    expect(await store.addToLog(id, [note('aaaaaaaa')])).toBeUndefined();
    expect(await textNow(store, id)).toBe(tern);
    expect(await store.look({ id, tag })).toEqual({ kind: 'same' });
  });

  test('the demo boats are listed, read to the byte and copied under a free id', async () => {
    const { store } = await empty();
    const found = await store.list('demos');
    const demos = 'boats' in found ? found.boats : [];
    expect(demos.map(({ id }) => id)).toEqual(['bonxie', 'gannet', 'sandpiper', 'wreck']);
    expect(demos.find(({ id }) => id === 'gannet')?.says).toMatch(/^11\.8 m pilothouse motorboat, \d+ units$/);
    expect(await store.read('demos', 'sandpiper')).toMatchObject({
      text: demoText('sandpiper'),
      tag: `"${textHash(demoText('sandpiper'))}"`,
    });
    expect(await copyBoat(store, 'demos', { id: 'sandpiper', name: 'Sandpiper' })).toEqual({ id: 'sandpiper' });
    expect(await copyBoat(store, 'boats', { id: 'sandpiper', name: 'Sandpiper' })).toEqual({ id: 'sandpiper-2' });
    expect(JSON.parse(await textNow(store, 'sandpiper-2'))).toEqual(JSON.parse(demoText('sandpiper')));
    expect(await store.read('demos', 'gull')).toMatchObject({ refusal: { says: expect.stringMatching(aSentence) } });
  });
});

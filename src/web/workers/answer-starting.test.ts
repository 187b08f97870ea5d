import { expect, test } from 'vitest';
import { inventedDevices, recordBus } from '../../../tests/recordings/invented-bus.ts';
import { candumpBytes } from '../../../tests/recordings/write-recording.ts';
import { readBoat } from '../../core/boat/read-boat.ts';
import { boatFromPattern } from '../../core/starting/boat-from-pattern.ts';
import { answerStarting } from './answer-starting.ts';
import type { StartingReply, StartingRequest } from './starting-protocol.ts';

const recording = new Blob([new Uint8Array(candumpBytes(recordBus({ devices: inventedDevices, seconds: 20 })))]);
const asked = { pattern: 'ketch', name: 'Kittiwake', lengthM: 12 } as const;

const repliesTo = async (...requests: readonly StartingRequest[]): Promise<StartingReply[]> => {
  const replies: StartingReply[] = [];
  const answer = answerStarting((reply) => replies.push(reply));
  for (const request of requests) await answer(request);
  return replies;
};

const madeIn = (replies: readonly StartingReply[]) => {
  const made = replies.find((reply) => reply.kind === 'made');
  return made === undefined ? undefined : readBoat(made.boatText);
};

test('a boat is made from a hull pattern, as her file is written', async () => {
  expect(madeIn(await repliesTo({ kind: 'make', asked }))).toEqual(boatFromPattern(asked));
});

test('a recording that was read is told, and its units are aboard the boat made after it', async () => {
  const replies = await repliesTo({ kind: 'read', recording }, { kind: 'make', asked });
  const heard = replies.find((reply) => reply.kind === 'heard');
  expect(heard?.heard.units.length).toBe(9);
  expect(madeIn(replies)?.kit.length).toBe(9);
});

test('a boat that is open gets the edits for what she does not know', async () => {
  const [, , edits] = await repliesTo(
    { kind: 'read', recording },
    { kind: 'make', asked },
    { kind: 'edits', boat: boatFromPattern(asked) },
  );
  expect(edits).toMatchObject({ kind: 'edits', added: 9, known: 0, edits: [{ edit: 'add-heard' }] });
});

test('a file that is no recording, and a measure that no boat has, are refused in one sentence', async () => {
  const no = new Blob(['A letter to the yard, in plain words, and nothing of a bus in it.']);
  expect((await repliesTo({ kind: 'read', recording: no }))[0]).toMatchObject({
    kind: 'refused',
    refusal: { says: 'There is not one message of a bus in this file.' },
  });
  expect((await repliesTo({ kind: 'make', asked: { ...asked, lengthM: 400 } }))[0]).toMatchObject({ kind: 'refused' });
});

test('a long recording tells how far it was read', async () => {
  const long = new Blob(Array.from({ length: 400 }, () => recording));
  const told = (await repliesTo({ kind: 'read', recording: long })).filter((reply) => reply.kind === 'progress');
  expect(told.length).toBeGreaterThan(0);
  expect(told.every(({ readBytes }, at) => readBytes > (told[at - 1]?.readBytes ?? 0))).toBe(true);
}, 30_000);

import { expect, test } from 'vitest';
import { recordBus } from '../../../tests/recordings/invented-bus.ts';
import { plannedBoat, plannedDevices } from '../../../tests/recordings/planned-boat.ts';
import { candumpBytes } from '../../../tests/recordings/write-recording.ts';
import { edits } from '../../core/boat/edits/index.ts';
import { answerProof } from './answer-proof.ts';
import type { ProofReply } from './proof-protocol.ts';

const { index, plan } = plannedBoat('gannet');
const { boat } = index;
const devices = plannedDevices({ index, plan }, 'nav');
const recording = new Blob([Uint8Array.from(candumpBytes(recordBus({ devices: [...devices.values()], seconds: 8 })))]);

test('a dropped recording is held against the plan, taken over and noted as proved', async () => {
  const said: ProofReply[] = [];
  const ask = answerProof((reply) => said.push(reply));
  await ask({ kind: 'prove', recordings: [recording], boat, plan });
  await ask({ kind: 'take-over', boat, plan });
  await ask({ kind: 'note-proved', on: '2027-05-05' });
  expect(said.map(({ kind }) => kind)).toEqual(['proved', 'edits', 'edits']);
  const [proved, taken, noted] = said;
  expect(proved?.kind === 'proved' && proved.report.findings).toEqual([]);
  if (taken?.kind !== 'edits' || noted?.kind !== 'edits') throw new Error('no edits');
  expect(taken.edits.map(({ edit }) => edit)).toEqual(['take-identities']);
  expect(noted.edits.map(({ edit }) => edit)).toEqual(['note-proved']);
  const [call] = noted.edits;
  const after = call?.edit === 'note-proved' ? edits['note-proved'].apply(boat, call.params as never) : boat;
  expect(after.proof?.proved.length).toBeGreaterThan(5);
});

test('what is no recording is refused with what to do', async () => {
  const said: ProofReply[] = [];
  await answerProof((reply) => said.push(reply))({
    kind: 'prove',
    recordings: [new Blob([new Uint8Array(600)])],
    boat,
    plan,
  });
  expect(said).toMatchObject([{ kind: 'refused' }]);
});

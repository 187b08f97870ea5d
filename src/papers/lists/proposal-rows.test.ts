import { expect, test } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import { edits } from '../../core/boat/edits/index.ts';
import { plan } from '../../core/plan.ts';
import { proposalRows, proposalSays } from './proposal-rows.ts';

const bare = aBoat().with({ joins: [] }).boat;
const made = plan(bare, new Map());

test('joins that the file does not say are told in words, with their price and that nothing is cheaper', () => {
  expect(proposalRows(bare, made).map(({ says }) => says)).toEqual([
    'Wire out of Converter for the old radio to gps-in of Old radio',
    'Put on Navigation bus: Heading sensor at the mast, Converter for the old radio, Helm display and GNSS on the stern rail',
  ]);
  expect(made.proposal === undefined ? '' : proposalSays(bare, made.proposal)).toMatch(
    /^2 joins are not in the file and planned as proposed, for [0-9.]+ EUR of cable and tees, proved: nothing cheaper brings as much\.$/,
  );
});

test('each comes with the edits that take it into the file, and then nothing is proposed any more', () => {
  const calls = proposalRows(bare, made).flatMap((row) => row.edits);
  const after = calls.reduce((boat, { edit, params }) => {
    if (edit === 'join-bus') return edits['join-bus'].apply(boat, edits['join-bus'].params.parse(params));
    return edits['join-ports'].apply(boat, edits['join-ports'].params.parse(params));
  }, bare);
  const settled = plan(after, new Map());
  expect(settled.proposal).toBeUndefined();
  expect(settled.readings.every(({ arrives }) => arrives)).toBe(true);
});

test('one that a person forbids is not proposed again', () => {
  const [row] = proposalRows(bare, made);
  const [forbid] = row?.forbids ?? [];
  const after = edits['forbid-join'].apply(bare, edits['forbid-join'].params.parse(forbid?.params));
  expect(plan(after, new Map()).proposal?.joins.map(({ join }) => join)).not.toContain(row?.join);
});

import { expect, test } from 'vitest';
import type { CoaxPiece } from '../../aerial-shape.ts';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { antennaFindings, aRun } from './antenna-case.test-helper.ts';
import { coaxKindUnknown } from './coax-kind-unknown.ts';

const boat = aBoat().change((draft) => {
  draft.cables.push({
    id: 'old-coax',
    kind: 'coax',
    from: { place: 'helm' },
    to: { place: 'stern-rail' },
    ways: [],
    length: { valueM: 8, how: 'taped' },
    diameterMm: 10.3,
    condition: 'good',
    fate: 'stays',
  });
}).boat;
const piece: CoaxPiece = {
  line: 'coax:a~b',
  cable: 'old-coax',
  by: 'thickness',
  lengthM: 8,
  dbPer100M: 9.1,
  lossDb: 0.7,
};
const found = (own: Partial<CoaxPiece>, verdict: 'ok' | 'doubt' = 'ok') =>
  antennaFindings(coaxKindUnknown, { coax: [aRun({ verdict, pieces: [{ ...piece, ...own }] })] }, boat);

test('a cable whose kind was read passes', () => {
  expect(found({ by: 'name', kind: 'rg-213-u' })).toEqual([]);
});

test('one that nobody read is advice, and a doubt where its run may lose too much', () => {
  expect(found({})).toMatchObject([{ level: 'advice', about: ['old-coax'], measured: { value: 9.1 } }]);
  expect(found({}, 'doubt')).toMatchObject([{ level: 'doubt' }]);
});

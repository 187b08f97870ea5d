import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { anOpening } from '../../boat/an-opening.test-helper.ts';
import type { Boat } from '../../boat/boat-schema.ts';
import type { Opening } from '../../boat/opening.ts';
import type { Photo } from '../../boat/photo.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { told } from '../told.test-helper.ts';
import { provenanceRules } from './index.ts';
import { pictureNotThere } from './picture-not-there.ts';

const picture = (digit: string): Photo['picture'] => ({
  hash: digit.repeat(64),
  type: 'jpeg',
  widthPx: 800,
  heightPx: 600,
});
const there = new Set(['a'.repeat(64)]);
const given = (own: Partial<Boat>) => ({ boat: { ...aBoat().boat, ...own }, pictures: there });
const photoOf = (of: string, digit = 'b'): Photo => ({ of, shows: 'front', picture: picture(digit) });
const traced = (digit: string): NonNullable<Opening['traced']> => ({
  picture: picture(digit),
  from: { xPx: 0, yPx: 0 },
  to: { xPx: 100, yPx: 0 },
  apartMm: 50,
});

test('a photo names what it shows, whatever that is', () => {
  const openings = [anOpening({ id: 'hole' }), anOpening({ id: 'slot', name: 'slot of the radio' })];
  const things = ['main-panel', 'house', 'locker-helm', 'helm', 'display', 'slot'];
  expect(
    told(provenanceRules, 'provenance/picture-not-there', given({ openings, photos: things.map((id) => photoOf(id)) })),
  ).toEqual([
    'doubt display: A photo of the front of Helm display is not found beside the boat file. [ / ] Put the folder of pictures that belongs to the boat back beside her file, take the picture again, or take it out.',
    'doubt helm: A photo of the front of helm dash is not found beside the boat file. [ / ] Put the folder of pictures that belongs to the boat back beside her file, take the picture again, or take it out.',
    'doubt house: A photo of the front of the bank house is not found beside the boat file. [ / ] Put the folder of pictures that belongs to the boat back beside her file, take the picture again, or take it out.',
    'doubt locker-helm: A photo of the front of the way from electrical locker to helm dash is not found beside the boat file. [ / ] Put the folder of pictures that belongs to the boat back beside her file, take the picture again, or take it out.',
    'doubt main-panel: A photo of the front of the panel main-panel is not found beside the boat file. [ / ] Put the folder of pictures that belongs to the boat back beside her file, take the picture again, or take it out.',
    'doubt slot: A photo of the front of slot of the radio is not found beside the boat file. [ / ] Put the folder of pictures that belongs to the boat back beside her file, take the picture again, or take it out.',
  ]);
});

test('the picture that an opening is traced from is looked for, where it is traced from one', () => {
  const openings = [
    anOpening({ id: 'plain' }),
    anOpening({ id: 'known', traced: traced('a') }),
    anOpening({ id: 'lost', traced: traced('c') }),
  ];
  expect(told(provenanceRules, 'provenance/picture-not-there', given({ openings }))).toEqual([
    'doubt lost: A photo of the front of hole of the old plotter is not found beside the boat file. [ / ] Put the folder of pictures that belongs to the boat back beside her file, take the picture again, or take it out.',
  ]);
  const photos = [photoOf('lost', 'c')];
  expect(findingsOf(pictureNotThere, given({ openings, photos })).map(({ id }) => id)).toEqual([
    'provenance/picture-not-there:lost:front:cccccccc',
    'provenance/picture-not-there:lost:traced',
  ]);
});

test('a picture under the drawing is told whole', () => {
  const at = (xPx: number, alongM: number) => ({ xPx, yPx: 500, alongM, acrossM: 0 });
  const underlays: Boat['underlays'] = [{ view: 'top', picture: picture('b'), from: at(0, 0), to: at(800, 9) }];
  expect(told(provenanceRules, 'provenance/picture-not-there', given({ underlays }))).toEqual([
    'doubt : The picture under the boat from above is not found beside the boat file; it is needed for the drawing only. [ / ] Put the folder of pictures that belongs to the boat back beside her file, take the picture again, or take it out.',
  ]);
});

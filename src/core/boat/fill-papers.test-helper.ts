import type { Draft } from 'mutative';
import type { Boat } from './boat-schema.ts';

/** Photos, what was found otherwise, revisions, and what was settled by hand. */
export const fillPapers = (boat: Draft<Boat>): void => {
  const picture = { hash: 'ab'.repeat(32), type: 'jpeg', widthPx: 2000, heightPx: 900 } as const;
  boat.underlays = [
    {
      view: 'top',
      picture: { ...picture, hash: 'cd'.repeat(32) },
      from: { xPx: 100, yPx: 450, alongM: 0, acrossM: 0 },
      to: { xPx: 1900, yPx: 450, alongM: 8.4, acrossM: 0 },
      hidden: true,
    },
    {
      view: 'side',
      picture,
      from: { xPx: 1900.5, yPx: 640, alongM: 0, acrossM: 0.2 },
      to: { xPx: 100, yPx: 640.25, alongM: 8.4, acrossM: 0.2 },
      mirrored: true,
    },
  ];
  boat.photos = [
    { of: 'display', shows: 'label', picture: { ...picture, hash: 'ef'.repeat(32) } },
    { of: 'display', shows: 'front', picture },
    { of: 'helm', shows: 'other', picture: { ...picture, type: 'png' } },
  ];
  boat.proof = {
    proved: [
      { reading: 'position', from: 'gnss.n2k', on: '2027-05-05' },
      { reading: 'heading', instance: 1, from: 'compass.n2k', on: '2027-05-05' },
    ],
  };
  boat.fitted = [
    {
      id: 'd1',
      about: 'main-panel.helm-circuit',
      what: 'fuse',
      was: '15 A',
      is: '10 A',
      on: '2027-05-02',
      by: 'the yard',
      note: 'None of 15 A was at hand.',
    },
    { id: 'd2', about: 'locker', what: 'other', is: 'a second grommet in its back', on: '2027-05-03' },
  ];
  boat.revisions = [
    { mark: 'A', standing: 'planned', on: '2027-03-01', by: 'the owner', says: 'For the yard.', boat: '030000' },
    { mark: 'B', standing: 'fitted', on: '2027-05-04', says: 'As she went back in.', boat: '030000' },
  ];
  const walk = [
    { place: 'locker', tees: ['feed', 'converter.n2k', 'gnss.n2k'] },
    { place: 'helm', via: 'locker-helm', tees: ['spare@helm#1', 'display.n2k'] },
    { place: 'mast-base', via: 'helm-mast', tees: ['compass.n2k'] },
  ];
  boat.pins = {
    layouts: { nav: { grade: 'mid', walk, state: 'fixed' } },
    wires: { 'feed:display.supply~main-panel': { areaMm2: 2.5, state: 'fitted' } },
    coax: { 'coax:aerial.coax~radio.rf': { kind: 'rg-8x', state: 'fixed' } },
    fuses: { 'main-panel.helm-circuit': { ratingA: 10, state: 'fixed' } },
    routes: {
      'pair:converter.wires~radio.wires': { ways: ['helm-mast', 'locker-mast'], state: 'fixed' },
      'feed:radio.supply~main-panel': { ways: ['locker-helm', 'locker-stern'], state: 'bought' },
    },
  };
};

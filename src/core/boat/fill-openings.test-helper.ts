import type { Draft } from 'mutative';
import type { Boat } from './boat-schema.ts';

/** Two holes with all that can be said of a hole. */
export const fillOpenings = (boat: Draft<Boat>): void => {
  boat.openings = [
    {
      id: 'old-plotter-hole',
      name: 'hole of the old plotter',
      place: 'helm',
      hole: { shape: 'rectangle', widthMm: 160, heightMm: 90, cornerMm: 6 },
      atMm: [0, 0],
      screws: [
        { xMm: 84, yMm: 50, holeMm: 4 },
        { xMm: -84, yMm: 50, holeMm: 4 },
      ],
      panel: {
        material: 'grp',
        thicknessMm: 6,
        core: { material: 'plywood', thicknessMm: 12 },
        edgesMm: { left: 80, above: 45 },
        unevenMm: 0.5,
      },
      behind: {
        depthMm: 180,
        how: 'taped',
        widthMm: 400,
        heightMm: 300,
        air: 'closed',
        obstacles: [
          { what: 'rib', xMm: 120, yMm: 0, widthMm: 20, heightMm: 300 },
          { what: 'hose', xMm: 0, yMm: -90, widthMm: 300, heightMm: 40, fromMm: 60 },
        ],
      },
      how: 'taped',
      for: 'display',
      plate: { id: 'dash-plate', overlapMm: 25, material: 'grp', thicknessMm: 5 },
      instead: { verdict: 'plate', reason: 'The edge of the hole is ragged.' },
      viewed: { distanceM: 0.8, eyeAboveM: 0.3, reachM: 0.6, gloves: true },
      toCut: true,
    },
    {
      id: 'old-log-hole',
      name: 'hole of the old log',
      place: 'helm',
      hole: {
        shape: 'traced',
        widthMm: 60,
        heightMm: 40,
        outlineMm: [
          [-30, -20],
          [30, -20],
          [0, 20],
        ],
      },
      atMm: [220, 0],
      panel: { material: 'plywood', thicknessMm: 12 },
      how: 'guessed',
      traced: {
        picture: { hash: '12'.repeat(32), type: 'jpeg', widthPx: 900, heightPx: 900 },
        from: { xPx: 100, yPx: 800 },
        to: { xPx: 800.5, yPx: 800 },
        apartMm: 100,
      },
      throughHull: false,
    },
  ];
};

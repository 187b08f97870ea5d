import type { Observation, Rule } from '../rule.ts';

/** A kept coax without a kind counts as the worst of its thickness, which may wrong it. */
export const coaxKindUnknown: Rule = {
  id: 'antennas/coax-kind-unknown',
  level: 'advice',
  title: 'What a kept coax is, nobody has read.',
  sources: ['practice-coax-class'],
  check: ({ index, plan }) =>
    plan.coax.flatMap((run) =>
      run.pieces.flatMap(({ by, cable, dbPer100M, lossDb }): Observation[] => {
        const found = cable === undefined ? undefined : index.cables.get(cable);
        if (by !== 'thickness' || found === undefined) return [];
        return [
          {
            about: [found.id],
            ...(run.verdict === 'ok' ? {} : { level: 'doubt' }),
            says: `What coax ${found.name ?? found.id} is, is not known. As the worst of ${found.diameterMm} mm it loses ${dbPer100M.toFixed(1)} dB in 100 m, here ${lossDb.toFixed(1)} dB.`,
            measured: { value: dbPer100M, unit: 'dB for 100 m' },
            cure: 'Read what is printed on its jacket, every half metre or so, and enter it; loss by the data sheet of the part is better still.',
          },
        ];
      }),
    ),
};

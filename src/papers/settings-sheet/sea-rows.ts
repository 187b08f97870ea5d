import { type SeaMethodId, seaMethods } from '../../core/facts/sea-methods.ts';
import { sources } from '../../core/facts/sources.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { signedDegrees } from './signed-degrees.ts';

/** One result of a calculator, in words. */
export interface SeaRow {
  readonly key: string;
  readonly kind: 'logs' | 'winds' | 'leads' | 'swings' | 'bridges';
  readonly id: string;
  readonly what: string;
  readonly found: string;
  readonly on: string;
}

/** Formula and source of a calculator, as they stand beside its result. */
export const methodWords = (id: SeaMethodId): { readonly formula: string; readonly source: string } => {
  const { formula, source } = seaMethods[id];
  return { formula, source: `${sources[source].standing}: ${sources[source].text}` };
};

const metres = (valueM: number): string => `${valueM.toFixed(2).replace('-', '−')} m`;

/** Levels a chart may count bridges from, in words. */
export const datumWords: Readonly<Record<NonNullable<Plan['atSea']['bridges'][number]['datum']>, string>> = {
  hat: 'highest astronomical tide (HAT)',
  mhw: 'mean high water (MHW)',
  mhws: 'mean high water springs (MHWS)',
  mhhw: 'mean higher high water (MHHW)',
  'fixed-level': 'a fixed level of an inland water',
};

const swingFound = ({ curve, points }: Plan['atSea']['swings'][number]): string =>
  curve === undefined
    ? `${points.length} headings, too few or too far apart for a curve`
    : `at most ${curve.mostDeg.toFixed(1)}°; A ${signedDegrees(curve.a)}, B ${signedDegrees(curve.b)}, C ${signedDegrees(curve.c)}, D ${signedDegrees(curve.d)}, E ${signedDegrees(curve.e)}; the curve leaves ${curve.residualDeg.toFixed(1)}°`;

/** What was found at sea, kind by kind. */
export const seaRows = (
  names: ReadonlyMap<string, { readonly name: string }>,
  { atSea }: Pick<Plan, 'atSea'>,
): SeaRow[] => {
  const name = (kit: string): string => names.get(kit)?.name ?? kit;
  const row = (kind: SeaRow['kind'], id: string, rest: Pick<SeaRow, 'what' | 'found' | 'on'>): SeaRow => ({
    key: `${kind}:${id}`,
    kind,
    id,
    ...rest,
  });
  return [
    ...atSea.leads.map(({ id, on, kit, belowWaterM, surfaceM, keelM }) =>
      row('leads', id, {
        on,
        what: `${name(kit)}, lead line`,
        found: `${metres(belowWaterM)} below the water; offset ${metres(surfaceM)} to the surface, ${metres(keelM)} to the keel`,
      }),
    ),
    ...atSea.logs.map(({ id, on, kit, trueKn, indicatedKn, factor }) =>
      row('logs', id, {
        on,
        what: `${name(kit)}, log run`,
        found: `factor ${factor.toFixed(2)}; ${trueKn.toFixed(2)} kn true, ${indicatedKn.toFixed(2)} kn shown`,
      }),
    ),
    ...atSea.winds.map(({ id, on, kit, offsetDeg, turnedTo, spreadDeg }) =>
      row('winds', id, {
        on,
        what: `${name(kit)}, both tacks`,
        found:
          turnedTo === 'neither'
            ? 'not turned'
            : `turned ${Math.abs(offsetDeg).toFixed(1)}° to ${turnedTo}; tacks within ${spreadDeg.toFixed(1)}°`,
      }),
    ),
    ...atSea.swings.map((swing) =>
      row('swings', swing.id, {
        on: swing.on,
        what: `${name(swing.kit)}, electronics ${swing.electronics}`,
        found: swingFound(swing),
      }),
    ),
    ...atSea.bridges.map(({ id, on, name: bridge, datum, highestTideM }) =>
      row('bridges', id, {
        on,
        what: bridge,
        found:
          highestTideM === undefined || datum === undefined
            ? 'not computed: say which level its chart counts from'
            : `passes up to a tide of ${metres(highestTideM)}; counted from ${datumWords[datum]}`,
      }),
    ),
  ];
};

import { byCodeUnit } from '../../boat/ids.ts';
import type { HeadingSite } from '../../heading-shape.ts';
import { headingAt } from './heading-at.ts';
import { type HeadingField, type HeadingInput, headingField, isMagnetic } from './heading-field.ts';
import { steelOff } from './steel-at.ts';

/** A feed that turns a sensor by less is not told of. */
const toldFromDeg = 0.3;

const siteOf = ({ index }: HeadingInput, field: () => HeadingField, unit: string): HeadingSite | undefined => {
  const at = index.places.get(index.kit.get(unit)?.place ?? '');
  if (at === undefined) return undefined;
  const magnetic = isMagnetic(index, unit);
  const north = index.sheetOf.get(unit)?.sensor?.north ?? 'unknown';
  if (!magnetic) return { north, magnetic, verdict: 'good', near: [], feeds: [], sumDeg: 0, allowedDeg: 0 };
  const offSteelM = index.kit.get(unit)?.site?.offSteelM;
  const { near, feeds, ...found } = headingAt(field(), at, {
    except: unit,
    ...(offSteelM === undefined ? {} : { steel: steelOff(index.boat.hull, offSteelM) }),
  });
  const bad = near.filter(({ verdict }) => verdict !== 'good');
  return {
    north,
    magnetic,
    ...found,
    near: bad.length > 0 ? bad : near.slice(0, 1),
    feeds: feeds
      .filter(({ deviationDeg, tooNear }) => tooNear || deviationDeg >= toldFromDeg)
      .sort((one, other) => byCodeUnit(one.line, other.line)),
  };
};

/** How each heading sensor stands, by its unit: all that is near gathered once, and only where one is magnetic. */
export const planHeading = (input: HeadingInput, units: readonly string[]): ReadonlyMap<string, HeadingSite> => {
  let gathered: HeadingField | undefined;
  const field = (): HeadingField => {
    gathered ??= headingField(input);
    return gathered;
  };
  return new Map(
    units.flatMap((unit): [string, HeadingSite][] => {
      const site = siteOf(input, field, unit);
      return site === undefined ? [] : [[unit, site]];
    }),
  );
};

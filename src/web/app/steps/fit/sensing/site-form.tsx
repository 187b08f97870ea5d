import type { ReactNode } from 'react';
import type { Boat } from '../../../../../core/boat/boat-schema.ts';
import type { KitSite } from '../../../../../core/boat/site.ts';
import { useEdit } from '../../../edit-context.ts';
import { DescribedFields, type FieldOf } from '../../../forms/described.tsx';
import { DraftForm } from '../../../forms/draft-form.tsx';
import { words } from './words.ts';

const inHull: readonly FieldOf<KitSite>[] = [
  { key: 'tiltDeg', label: words.tilt, ask: 'number' },
  { key: 'tiltBy', label: words.tiltBy, ask: 'choice', choices: words.tiltBys },
  { key: 'headroomMm', label: words.headroom, ask: 'number' },
  { key: 'laminate', label: words.laminate, ask: 'choice', choices: words.laminates },
  { key: 'housing', label: words.housing, ask: 'choice', choices: words.housings },
];

const ofHeading: readonly FieldOf<KitSite>[] = [
  { key: 'arrowForward', label: words.arrow, ask: 'whether' },
  { key: 'offSteelM', label: words.offSteel, ask: 'metres' },
  { key: 'steelLocker', label: words.steelLocker, ask: 'whether' },
  { key: 'adjuster', label: words.adjuster, ask: 'whether' },
];

const ofCompass: readonly FieldOf<KitSite>[] = [
  { key: 'swing', label: words.swing, ask: 'choice', choices: words.swings },
];

const fieldsFor = { hull: inHull, heading: ofHeading, compass: ofCompass } as const;

/** What is known of the spot a unit sits in, to be said or changed. */
export const SiteForm = ({ boat, unit, of }: { boat: Boat; unit: string; of: keyof typeof fieldsFor }): ReactNode => {
  const edit = useEdit();
  const found = boat.kit.find(({ id }) => id === unit);
  if (found === undefined) return null;
  const { site = {}, name } = found;
  return (
    <DraftForm<KitSite>
      heading={words.sits}
      whose={name}
      of={site}
      onKeep={(kept) =>
        edit([{ edit: 'set-site', params: { unit, ...(Object.keys(kept).length === 0 ? {} : { site: kept }) } }])
      }
    >
      {(draft, put) => (
        <div className="form-fields">
          <DescribedFields of={draft} fields={fieldsFor[of]} onOf={put} />
        </div>
      )}
    </DraftForm>
  );
};

import { type ReactNode, useState } from 'react';
import type { Boat, Kit } from '../../../../../core/boat/boat-schema.ts';
import type { KitSite } from '../../../../../core/boat/site.ts';
import { useEdit } from '../../../edit-context.ts';
import { DescribedFields, type FieldOf } from '../../../forms/described.tsx';
import { words } from './words.ts';

const inHull: readonly FieldOf<KitSite>[] = [
  { key: 'tiltDeg', label: words.tilt, ask: 'number', least: 0 },
  { key: 'tiltBy', label: words.tiltBy, ask: 'choice', choices: words.tiltBys },
  { key: 'headroomMm', label: words.headroom, ask: 'number', least: 0 },
  { key: 'laminate', label: words.laminate, ask: 'choice', choices: words.laminates },
  { key: 'housing', label: words.housing, ask: 'choice', choices: words.housings },
];

const ofHeading: readonly FieldOf<KitSite>[] = [
  { key: 'arrowForward', label: words.arrow, ask: 'whether' },
  { key: 'offSteelM', label: words.offSteel, ask: 'number', step: 0.05, least: 0 },
  { key: 'steelLocker', label: words.steelLocker, ask: 'whether' },
  { key: 'adjuster', label: words.adjuster, ask: 'whether' },
];

const ofCompass: readonly FieldOf<KitSite>[] = [
  { key: 'swing', label: words.swing, ask: 'choice', choices: words.swings },
];

const fieldsFor = { hull: inHull, heading: ofHeading, compass: ofCompass } as const;

interface FormProps {
  readonly unit: Kit;
  readonly of: keyof typeof fieldsFor;
}

const Fields = ({ unit, of }: FormProps): ReactNode => {
  const edit = useEdit();
  const [site, setSite] = useState<KitSite>(unit.site ?? {});
  const keep = (): void => {
    const params = Object.keys(site).length === 0 ? { unit: unit.id } : { unit: unit.id, site };
    edit([{ edit: 'set-site', params }]);
  };
  return (
    <>
      <div className="form-fields">
        <DescribedFields of={site} fields={fieldsFor[of]} onOf={setSite} />
      </div>
      <button type="button" className="press-link" onClick={keep}>
        {words.keep}
        <span className="unseen">{words.sitsOf(unit.name)}</span>
      </button>
    </>
  );
};

/** What is known of the spot a unit sits in, to be said or changed; kept as one step when it is all written. */
export const SiteForm = ({ boat, unit, of }: { boat: Boat; unit: string } & Pick<FormProps, 'of'>): ReactNode => {
  const found = boat.kit.find(({ id }) => id === unit);
  if (found === undefined) return null;
  return (
    <details className="form-part">
      <summary>
        {words.sits}
        <span className="unseen">{words.sitsOf(found.name)}</span>
      </summary>
      <Fields key={JSON.stringify(found.site)} unit={found} of={of} />
    </details>
  );
};

import type { ReactNode } from 'react';
import type { Boat } from '../../../../../core/boat/boat-schema.ts';
import type { Opening } from '../../../../../core/boat/opening.ts';
import { shortName } from '../../../../../core/boat/short-name.ts';
import { withPart } from '../../../../../core/kit/with-part.ts';
import { DescribedFields, OptionalPart } from '../../../forms/described.tsx';
import { ChoiceField, NumberField, TextField } from '../../../forms/fields.tsx';
import { ListOfParts } from '../../../forms/list-of-parts.tsx';
import { ScrewsList } from '../../../forms/screws-list.tsx';
import { reshaped } from './opening-draft.ts';
import {
  behindFields,
  coreFields,
  edgeFields,
  holeFields,
  insteadFields,
  obstacleFields,
  panelFields,
  plateFields,
  viewedFields,
} from './opening-parts.ts';
import { words } from './words.ts';

interface FieldsProps {
  readonly opening: Opening;
  readonly onOpening: (opening: Opening) => void;
}

const nothing = '-';

/** What it is called, where it is, and what is to come there. */
export const NameFields = ({ boat, opening, onOpening }: FieldsProps & { boat: Boat }): ReactNode => {
  const units = boat.kit.filter(({ id, fate }) => fate !== 'goes' || id === opening.for);
  return (
    <div className="form-fields">
      <TextField
        label={words.name}
        hint={words.nameHint}
        value={opening.name}
        longest={200}
        onValue={(name) => onOpening({ ...opening, name })}
      />
      <ChoiceField
        label={words.place}
        value={opening.place === '' ? undefined : opening.place}
        choices={boat.places.map(({ id, name }) => [id, shortName(name)] as const)}
        onValue={(place) => onOpening({ ...opening, place })}
      />
      <ChoiceField
        label={words.unit}
        value={opening.for ?? nothing}
        choices={[[nothing, words.nothing], ...units.map(({ id, name }) => [id, shortName(name)] as const)]}
        onValue={(unit) => onOpening(withPart(opening, 'for', unit === nothing ? undefined : unit))}
      />
      <DescribedFields
        of={opening}
        fields={[
          { key: 'how', label: words.how, ask: 'choice', choices: words.hows, must: true },
          { key: 'throughHull', label: words.throughHull, ask: 'whether' },
          { key: 'toCut', label: words.toCut, ask: 'whether' },
        ]}
        onOf={onOpening}
      />
    </div>
  );
};

/** The shape and the size of the hole; one that is traced has them from its photo. */
export const HoleFields = ({ opening, onOpening, children }: FieldsProps & { children: ReactNode }): ReactNode => {
  const { hole } = opening;
  const { shape } = hole;
  return (
    <fieldset>
      <legend>{words.hole}</legend>
      <div className="form-fields">
        <ChoiceField
          label={words.shape}
          value={shape}
          choices={[
            ['rectangle', words.shapes.rectangle],
            ['round', words.shapes.round],
            ...(shape === 'traced' ? [['traced', words.shapes.traced] as const] : []),
          ]}
          onValue={(next) => {
            if (next === 'traced') return;
            const { traced: _, ...untraced } = opening;
            onOpening({ ...untraced, hole: reshaped(hole, next) });
          }}
        />
        {shape === 'traced' ? (
          <p className="wide">{words.traced(hole.widthMm, hole.heightMm)}</p>
        ) : (
          <DescribedFields
            of={hole}
            fields={holeFields[shape]}
            onOf={(next) =>
              onOpening({ ...opening, hole: shape === 'round' ? { ...next, heightMm: next.widthMm } : next })
            }
          />
        )}
      </div>
      {children}
    </fieldset>
  );
};

/** The panel round the hole: its material, its core, its edges. */
export const PanelFields = ({ opening, onOpening }: FieldsProps): ReactNode => {
  const { panel } = opening;
  return (
    <fieldset>
      <legend>{words.panel}</legend>
      <div className="form-fields">
        <DescribedFields of={panel} fields={panelFields} onOf={(next) => onOpening({ ...opening, panel: next })} />
      </div>
      <OptionalPart<NonNullable<Opening['panel']['core']>>
        heading={words.core}
        add={words.addCore}
        of={panel.core}
        first={{ material: 'plywood', thicknessMm: 12 }}
        fields={coreFields}
        onOf={(core) => onOpening({ ...opening, panel: withPart(panel, 'core', core) })}
      />
      <OptionalPart
        heading={words.edges}
        add={words.addEdges}
        of={panel.edgesMm}
        first={{}}
        fields={edgeFields}
        onOf={(edges) => onOpening({ ...opening, panel: withPart(panel, 'edgesMm', edges) })}
      />
    </fieldset>
  );
};

const AtFields = ({ opening, onOpening }: FieldsProps): ReactNode => {
  const { atMm } = opening;
  return (
    <details className="form-part">
      <summary>{words.at}</summary>
      <p className="quiet">{words.atHelp}</p>
      {atMm === undefined ? (
        <button type="button" className="press-link" onClick={() => onOpening({ ...opening, atMm: [0, 0] })}>
          {words.addAt}
        </button>
      ) : (
        <>
          <div className="form-fields">
            <NumberField
              label={words.atX}
              least={-5000}
              value={atMm[0]}
              onValue={(x) => onOpening({ ...opening, atMm: [x ?? 0, atMm[1]] })}
            />
            <NumberField
              label={words.atY}
              least={-5000}
              value={atMm[1]}
              onValue={(y) => onOpening({ ...opening, atMm: [atMm[0], y ?? 0] })}
            />
          </div>
          <button type="button" className="press-link" onClick={() => onOpening(withPart(opening, 'atMm', undefined))}>
            {words.takeOutShort}
          </button>
        </>
      )}
    </details>
  );
};

/** All else that may be known of an opening, each part closed until it is wanted. */
export const MoreFields = ({ opening, onOpening }: FieldsProps): ReactNode => {
  const { behind } = opening;
  return (
    <>
      <OptionalPart
        heading={words.behind}
        add={words.addBehind}
        of={behind}
        first={{ how: 'taped' }}
        fields={behindFields}
        onOf={(next) => onOpening(withPart(opening, 'behind', next))}
      >
        {behind === undefined ? null : (
          <ListOfParts
            heading={words.obstacles}
            add={words.addObstacle}
            nameOf={words.obstacle}
            first={{ what: words.obstacle(1), xMm: 0, yMm: 0, widthMm: 30, heightMm: 30 }}
            all={behind.obstacles}
            fields={obstacleFields}
            onAll={(obstacles) => onOpening({ ...opening, behind: withPart(behind, 'obstacles', obstacles) })}
          />
        )}
      </OptionalPart>
      <ScrewsList
        heading={words.screws}
        all={opening.screws}
        onAll={(screws) => onOpening(withPart(opening, 'screws', screws))}
      />
      <AtFields opening={opening} onOpening={onOpening} />
      <OptionalPart
        heading={words.viewed}
        add={words.addViewed}
        of={opening.viewed}
        first={{ distanceM: 0.8 }}
        fields={viewedFields}
        onOf={(viewed) => onOpening(withPart(opening, 'viewed', viewed))}
      />
      <OptionalPart
        heading={words.plate}
        add={words.addPlate}
        of={opening.plate}
        first={{ id: 'plate-1' }}
        fields={plateFields}
        onOf={(plate) => onOpening(withPart(opening, 'plate', plate))}
      >
        <p className="quiet">{words.plateHelp}</p>
      </OptionalPart>
      <OptionalPart<NonNullable<Opening['instead']>>
        heading={words.instead}
        add={words.addInstead}
        of={opening.instead}
        first={{ verdict: 'plate', reason: '' }}
        fields={insteadFields}
        onOf={(instead) => onOpening(withPart(opening, 'instead', instead))}
      />
    </>
  );
};

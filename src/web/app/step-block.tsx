import { type ReactNode, useMemo } from 'react';
import type { Failure } from '../../core/blackouts-shape.ts';
import type { Boat, Way } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { printLength } from '../../core/units/print-length.ts';
import { BackboneBlock } from './backbone-block.tsx';
import { BuyBlock } from './buy-block.tsx';
import { LinesBlock } from './lines-block.tsx';
import { LitRows, type Row, type RowHand } from './lit-rows.tsx';
import { needsGroups } from './needs-rows.ts';
import { PowerBlock } from './power/power-block.tsx';
import type { BlackoutBlock } from './pull-out/blackout-block.tsx';
import type { StepId } from './route.ts';
import { StrayBlock } from './stray-block.tsx';
import { TapeField } from './tape-field.tsx';
import { usePart } from './use-part.ts';

interface BlockProps {
  readonly boat: Boat;
  readonly plan: Plan;
  readonly hand: RowHand;
}

const howWords = { guessed: 'about ', taped: '', papers: 'by papers ' } as const;

const lengthWords = ({ length }: Way): string =>
  `${howWords[length.how]}${printLength({ valueM: length.valueM, as: 'metres' })}`;

const BoatBlock = ({ boat, hand }: BlockProps): ReactNode => {
  const names = new Map(boat.places.map((place) => [place.id, place.name]));
  const nameOf = (way: Way): string => way.ends.map((end) => names.get(end) ?? end).join(' to ');
  const rowOf = (way: Way, fact: string): Row => ({
    key: way.id,
    what: nameOf(way),
    fact,
    lights: [way.id, ...way.ends],
  });
  const lengthRowOf = (way: Way): Row => ({
    ...rowOf(way, lengthWords(way)),
    control: <TapeField way={way} name={nameOf(way)} />,
  });
  const guessed = boat.ways.filter((way) => way.length.how === 'guessed');
  const known = boat.ways.filter((way) => way.length.how !== 'guessed');
  const assumed = boat.ways.filter((way) => way.known === 'assumed');
  return (
    <>
      <LitRows
        heading="Lengths to tape"
        rows={guessed.map(lengthRowOf)}
        empty="Every length was taped or comes from papers."
        hand={hand}
      />
      <LitRows
        heading="Ways nobody has looked at"
        rows={assumed.map((way) => rowOf(way, way.kind))}
        empty="Every way was seen or had a line pulled through."
        hand={hand}
      />
      <details className="block known-lengths">
        <summary>Lengths that are known ({known.length})</summary>
        <LitRows heading="Taped, or from papers" rows={known.map(lengthRowOf)} empty="None yet." hand={hand} />
      </details>
    </>
  );
};

const fates = [
  ['comes', 'Comes', 'Nothing new comes aboard.'],
  ['stays', 'Stays', 'Nothing stays.'],
  ['goes', 'Goes', 'Nothing goes ashore.'],
] as const;

const KitBlock = ({ boat, hand }: BlockProps): ReactNode => {
  const names = new Map(boat.places.map((place) => [place.id, place.name]));
  return fates.map(([fate, heading, empty]) => (
    <LitRows
      key={fate}
      heading={heading}
      rows={boat.kit
        .filter((unit) => unit.fate === fate)
        .map((unit) => ({
          key: unit.id,
          what: unit.name,
          fact: names.get(unit.place) ?? unit.place,
          lights: [unit.id],
          card: { kind: 'unit', id: unit.id } as const,
        }))}
      empty={empty}
      hand={hand}
    />
  ));
};

const NeedsBlock = ({ boat, plan, hand }: BlockProps): ReactNode => {
  const groups = useMemo(() => needsGroups({ boat, plan }), [boat, plan]);
  if (groups.length === 0) {
    return (
      <p className="block quiet">
        No reading is asked for yet. Once the boat file says which one must be seen where, this page tells whether it
        arrives.
      </p>
    );
  }
  return groups.map(({ unit, name, rows }) => <LitRows key={unit} heading={name} rows={rows} empty="" hand={hand} />);
};

// brought once the page stands: no part of the way to the first picture
const bringEnergy = () => import('./energy-block.tsx');

const Energy = (block: BlockProps): ReactNode => {
  const energy = usePart(bringEnergy);
  return energy === undefined ? null : <energy.EnergyBlock {...block} />;
};

const bringSources = () => import('./sources/sources-block.tsx');

const Sources = (block: BlockProps): ReactNode => {
  const sources = usePart(bringSources);
  return sources === undefined ? null : <sources.SourcesBlock {...block} />;
};

const bringDrives = () => import('./power/drives-block.tsx');

const Drives = (block: BlockProps): ReactNode => {
  const drives = usePart(bringDrives);
  return drives === undefined ? null : <drives.DrivesBlock {...block} />;
};

const bringJoins = () => import('./joins/joins-block.tsx');

const Joins = (block: BlockProps): ReactNode => {
  const joins = usePart(bringJoins);
  return joins === undefined ? null : <joins.JoinsBlock {...block} />;
};

const bringTraffic = () => import('./traffic-block.tsx');

const Traffic = (block: BlockProps): ReactNode => {
  const traffic = usePart(bringTraffic);
  return traffic === undefined ? null : <traffic.TrafficBlock {...block} />;
};

const bringBlackouts = () => import('./pull-out/blackout-block.tsx');

const Blackouts = (block: Parameters<typeof BlackoutBlock>[0]): ReactNode => {
  const part = usePart(bringBlackouts);
  return part === undefined ? null : <part.BlackoutBlock {...block} />;
};

const bringPhases = () => import('./phases-block.tsx');

const Phases = (block: BlockProps): ReactNode => {
  const phases = usePart(bringPhases);
  return phases === undefined ? null : <phases.PhasesBlock {...block} />;
};

const bringSecurity = () => import('./security-block.tsx');

const Security = (block: BlockProps): ReactNode => {
  const security = usePart(bringSecurity);
  return security === undefined ? null : <security.SecurityBlock {...block} />;
};

/** What the margin holds under the notes at each step of the job. */
export const StepBlock = ({
  step,
  onPull,
  ...block
}: BlockProps & { step: StepId; onPull: (failure: Failure) => void }): ReactNode => {
  const blackouts = <Blackouts boat={block.boat} plan={block.plan} onPull={onPull} />;
  switch (step) {
    case 'boat':
      return <BoatBlock {...block} />;
    case 'kit':
      return (
        <>
          <KitBlock {...block} />
          <Security {...block} />
        </>
      );
    case 'needs':
      return (
        <>
          <NeedsBlock {...block} />
          <Joins {...block} />
          <Sources {...block} />
        </>
      );
    case 'power':
      return (
        <>
          <PowerBlock {...block} />
          <Drives {...block} />
          <Energy {...block} />
          <StrayBlock {...block} />
          <BackboneBlock boat={block.boat} plan={block.plan} />
          {blackouts}
        </>
      );
    case 'buy':
      return (
        <>
          {block.plan.phases === undefined ? null : <Phases {...block} />}
          <BuyBlock {...block} />
        </>
      );
    case 'lines':
      return (
        <>
          <BackboneBlock boat={block.boat} plan={block.plan} />
          <LinesBlock {...block} />
          <Traffic {...block} />
          {blackouts}
        </>
      );
    default:
      return <BackboneBlock boat={block.boat} plan={block.plan} />;
  }
};

import { type ReactNode, useEffect, useMemo } from 'react';
import type { Boat } from '../../../../../core/boat/boat-schema.ts';
import type { LiveTold } from '../../../../../core/proof/live/live-snapshot.ts';
import { wiresAboard } from '../../../../../core/proof/live/wires-aboard.ts';
import { boatOfFolder } from '../../../pictures/picture-keeper.ts';
import { store } from '../../../store/the-store.ts';
import type { StepMarginProps } from '../../step.ts';
import { AskBlock } from './ask-block.tsx';
import './live.css';
import { live, useLive } from './live-store.ts';
import { PickedReading } from './picked-reading.tsx';
import { PullBlock } from './pull-block.tsx';
import { ReadingList } from './reading-list.tsx';
import { SourceForm } from './source-form.tsx';
import { words } from './words.ts';

const hasServer = store.kind === 'folder';

type Listened = Extract<LiveTold, { listening: true }>;

const namesIn = (units: Listened['units'], state: string, names: ReadonlyMap<string, string>): string =>
  units.flatMap((unit) => (unit.state === state ? [names.get(unit.unit) ?? unit.unit] : [])).join(', ');

/** How the source stands, how many units speak, and the recording; what changes all the time is not read aloud. */
const Standing = ({ told, names }: { told: Listened; names: ReadonlyMap<string, string> }): ReactNode => {
  const { source, units, frames, sentences, damaged, recording, file } = told;
  const silent = namesIn(units, 'silent', names);
  const unheard = namesIn(units, 'unheard', names);
  const speaking = units.filter(({ state }) => state === 'speaking').length;
  return (
    <>
      <p className={`live-source ${source.state.kind}`}>
        {source.says}: {source.words}
      </p>
      {/* said aloud only when it changes */}
      <p className="unseen" role="status">
        {source.state.kind === 'silent' || source.state.kind === 'waiting' ? source.state.kind : source.words} {silent}
      </p>
      <p>{units.length === 0 ? words.noUnits : words.units(speaking, units.length)}</p>
      {silent === '' ? null : <p className="live-silent">{words.silent(silent)}</p>}
      {unheard === '' ? null : <p>{words.unheard(unheard)}</p>}
      <p className="quiet">
        {words.heard(frames, sentences)} {damaged === 0 ? '' : words.damaged(damaged)}{' '}
        {recording?.kind === 'writing' && file !== undefined ? words.recordingTo(file, recording.lines) : ''}
        {recording?.kind === 'stopped' ? recording.says : ''}
      </p>
    </>
  );
};

const Findings = ({ told, hand }: { told: Listened; hand: StepMarginProps['hand'] }): ReactNode =>
  told.findings.length === 0 ? null : (
    <>
      <h3>{words.findings}</h3>
      <ul>
        {told.findings.map(({ id, says, cure, about }) => (
          <li key={id} className="row">
            <button type="button" className="row-button" onClick={() => hand.onShow(about)}>
              {says}
              <span className="row-fact"> {cure}</span>
            </button>
          </li>
        ))}
      </ul>
    </>
  );

const News = ({ told }: { told: Listened }): ReactNode => (
  <details className="form-part">
    <summary>{words.news}</summary>
    <ol className="live-news">
      {[...told.news].reverse().map(({ atMs, says }) => (
        <li key={`${atMs} ${says}`}>
          <span className="row-fact">{new Date(atMs).toLocaleTimeString()}</span> {says}
        </li>
      ))}
    </ol>
  </details>
);

const wireName = ({ buses }: Boat, names: ReadonlyMap<string, string>, id: string): string => {
  const bus = buses.find((one) => one.id === id);
  const [unit = ''] = id.split('.');
  return bus?.name ?? words.lineOf(names.get(unit) ?? unit);
};

/** The live bus of the boat: where to listen, how it stands, each reading, and what is pulled and asked while listening. */
export const LiveBlock = ({ boat, plan, hand }: StepMarginProps): ReactNode => {
  const folderBoat = hasServer ? boatOfFolder() : undefined;
  useEffect(() => (folderBoat === undefined ? undefined : live.open(folderBoat)), [folderBoat]);
  const { told, isAway, refused, picked } = useLive();
  const names = useMemo(() => new Map(boat.kit.map(({ id, name }) => [id, name])), [boat]);
  const wires = useMemo(
    () => wiresAboard(boat, plan).map((id) => [id, wireName(boat, names, id)] as const),
    [boat, plan, names],
  );
  const reading = told.listening ? told.readings.find(({ id }) => id === picked) : undefined;
  return (
    <section className="block live-block">
      <h2>{words.heading}</h2>
      <p className="quiet">
        {hasServer ? (folderBoat === undefined ? words.notInFolder : words.about) : words.noServer}
      </p>
      <p role="status">{isAway ? words.away : (refused ?? '')}</p>
      {folderBoat === undefined || told.listening ? null : <SourceForm wires={wires} />}
      {told.listening ? (
        <>
          <Standing told={told} names={names} />
          <button type="button" className="press-link" onClick={() => void live.stop()}>
            {words.stop}
          </button>
          {reading === undefined ? null : <PickedReading snapshot={told} reading={reading} names={names} />}
          <Findings told={told} hand={hand} />
          <PullBlock boat={boat} plan={plan} snapshot={told} />
          <ReadingList snapshot={told} names={names} picked={picked} hand={hand} />
          <News told={told} />
          <AskBlock isAsking={told.isAsking === true} />
        </>
      ) : null}
    </section>
  );
};

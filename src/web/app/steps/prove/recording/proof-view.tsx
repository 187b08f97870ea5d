import type { ReactNode } from 'react';
import type { Boat } from '../../../../../core/boat/boat-schema.ts';
import { levels } from '../../../../../core/plan-shape.ts';
import type { ProofFinding, ProofReport } from '../../../../../core/proof/compare/proof-report.ts';
import {
  evidenceWords,
  messageRow,
  namesIn,
  outcomeWords,
  proofHeadings,
  readingRow,
  strangerSentence,
  unitRow,
  wireSentences,
} from '../../../../../papers/proof/proof-words.ts';
import { LitRows, type Row, type RowHand } from '../../../margin/lit-rows.tsx';
import { plainName, saveFile } from '../../../saving/save-file.ts';
import { todayIso } from '../../binder/today-iso.ts';
import { words } from './words.ts';

interface Given {
  readonly boat: Boat;
  readonly report: ProofReport;
  readonly tookNothing: boolean;
  readonly hand: RowHand;
  readonly onTakeOver: () => void;
  readonly onNote: (on: string) => void;
  readonly onAgain: () => void;
}

const unitOf = (id: string): string => id.split('.')[0] ?? id;

const rowOf = (key: string, [state, what, ...facts]: readonly string[], lights: readonly string[]): Row => ({
  key,
  what: `${state ?? ''}: ${what ?? ''}`,
  fact: facts.filter((fact) => fact !== '').join(', '),
  lights: lights.map(unitOf),
});

const findingRow = (finding: ProofFinding): Row => {
  const evidence = evidenceWords(finding);
  return {
    key: finding.id,
    what: finding.says,
    fact: [`${words.aboard} ${finding.cure}`, ...(evidence === '' ? [] : [`${words.seen} ${evidence}`])].join(' '),
    lights: finding.about.map(unitOf),
  };
};

const Findings = ({ report, hand }: Pick<Given, 'report' | 'hand'>): ReactNode =>
  report.findings.length === 0 ? (
    <p>{words.noFindings}</p>
  ) : (
    levels.map((level) => {
      const own = report.findings.filter((finding) => finding.level === level);
      return own.length === 0 ? null : (
        <LitRows
          key={level}
          heading={words.findings(proofHeadings[level], own.length)}
          rows={own.map(findingRow)}
          empty={words.none}
          hand={hand}
        />
      );
    })
  );

const Lists = ({ boat, report, hand }: Pick<Given, 'boat' | 'report' | 'hand'>): ReactNode => {
  const name = namesIn(boat);
  const told = report.readings.filter(({ state }) => state === 'heard' || state === 'silent');
  const wrong = report.messages.filter(({ state }) => state !== 'right' && state !== 'not-due');
  return (
    <>
      <LitRows
        heading={words.units}
        rows={report.units.map((unit) => rowOf(`${unit.unit} ${unit.on}`, unitRow(name, unit), [unit.unit]))}
        empty={words.none}
        hand={hand}
      />
      <LitRows
        heading={words.readings}
        rows={told.map((one) =>
          rowOf(`${one.reading} ${one.instance ?? ''} ${one.from}`, readingRow(name, one), [one.from, ...one.at]),
        )}
        empty={words.none}
        hand={hand}
      />
      <p className="quiet">{words.rest(report.readings.length - told.length)}</p>
      {wrong.length === 0 ? null : (
        <LitRows
          heading={words.messages}
          rows={wrong.map((one) => rowOf(`${one.port} ${one.message}`, messageRow(name, one), [one.port]))}
          empty={words.none}
          hand={hand}
        />
      )}
      {report.strangers.length === 0 ? null : (
        <section className="block">
          <h2>{words.strangers}</h2>
          <ul>
            {report.strangers.map((stranger) => (
              <li key={`${stranger.on} ${stranger.address ?? stranger.what}`}>{strangerSentence(stranger)}</li>
            ))}
          </ul>
        </section>
      )}
    </>
  );
};

/** A proof as a calm list that lights the drawing, and what can be made of it. */
export const ProofView = ({ boat, report, tookNothing, hand, onTakeOver, onNote, onAgain }: Given): ReactNode => {
  const heard = report.readings.filter(({ state }) => state === 'heard').length;
  const save = (): void =>
    saveFile({
      name: words.file(plainName(boat.name)),
      text: `${JSON.stringify(report, undefined, 2)}\n`,
      type: 'json',
    });
  return (
    <>
      <p role="status">{outcomeWords(report)}</p>
      {report.wires.map((wire) => (
        <p key={`${wire.kind} ${wire.id}`} className="quiet">
          {wireSentences(wire).join(' ')}
        </p>
      ))}
      <div className="proof-hand">
        <button type="button" className="press-link" onClick={onTakeOver}>
          {words.takeOver}
        </button>
        {heard === 0 ? null : (
          <button type="button" className="press-link" onClick={() => onNote(todayIso())}>
            {words.noteProved(heard)}
          </button>
        )}
        <button type="button" className="press-link" onClick={save}>
          {words.save}
        </button>
        <button type="button" className="press-link" onClick={onAgain}>
          {words.again}
        </button>
      </div>
      <p className="quiet">{tookNothing ? words.tookNothing : words.takeOverHint}</p>
      <Findings report={report} hand={hand} />
      <Lists boat={boat} report={report} hand={hand} />
    </>
  );
};

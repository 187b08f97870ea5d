import type { ReactNode } from 'react';
import { geometryWords, labelSheets, labelTapes } from '../../../../papers/labels/label-geometry.ts';
import type { BinderPart } from '../../../../papers/pages/parts-of.ts';
import type { BinderFile } from '../../../workers/binder-protocol.ts';
import { type KeptChoice, keptChoice } from '../../kept-choice.ts';
import type { ShownBinder } from './binder-desk.ts';
import { ListFile } from './list-file.tsx';
import { choosePapers, useWhichPapers } from './papers-choice.ts';
import { paperChoice } from './use-binder-desk.ts';
import { words } from './words.ts';

/** How large the pages are shown. */
export const sizeChoice = keptChoice('fairlead-page-size', ['width', 'page', 'true']);

const Choice = <Value extends string>({
  choice,
  legend,
  names,
}: {
  choice: KeptChoice<Value>;
  legend: string;
  names: Readonly<Record<Value, string>>;
}): ReactNode => {
  const now = choice.use();
  return (
    <fieldset className="lights">
      <legend className="unseen">{legend}</legend>
      {choice.values.map((value) => (
        <button key={value} type="button" aria-pressed={value === now} onClick={() => choice.choose(value)}>
          {names[value]}
        </button>
      ))}
    </fieldset>
  );
};

/** The binder, or papers that are no part of it. */
const PapersSelect = (): ReactNode => {
  const now = useWhichPapers();
  return (
    <select
      className="binder-part"
      aria-label={words.which}
      value={typeof now === 'string' ? now : now.labels}
      onChange={({ currentTarget: { value } }) =>
        choosePapers(value === 'binder' || value === 'quote' || value === 'templates' ? value : { labels: value })
      }
    >
      <option value="binder">{words.binderPapers}</option>
      <option value="quote">{words.quotePapers}</option>
      <option value="templates">{words.templatePapers}</option>
      {[...labelSheets, ...labelTapes].map((geometry) => (
        <option key={geometry.id} value={geometry.id}>
          {words.labelPapers(geometryWords(geometry))}
        </option>
      ))}
    </select>
  );
};

/** The row under the pages: for what paper, what of it, how large, and the files. */
export const BinderTools = ({
  shown,
  part,
  onPart,
  onFile,
  onPrint,
}: {
  shown: ShownBinder | undefined;
  part: BinderPart | undefined;
  onPart: (title: string | undefined) => void;
  onFile: (file: BinderFile) => void;
  onPrint: () => void;
}): ReactNode => (
  <div className="sheet-tools binder-tools">
    <PapersSelect />
    <Choice choice={paperChoice} legend={words.paper} names={words.papers} />
    <Choice choice={sizeChoice} legend={words.size} names={words.sizes} />
    {shown === undefined ? null : (
      <>
        <select
          className="binder-part"
          aria-label={words.part}
          value={part?.title ?? ''}
          onChange={({ currentTarget: { value } }) => onPart(value === '' ? undefined : value)}
        >
          <option value="">{words.whole}</option>
          {shown.parts.map(({ title }) => (
            <option key={title}>{title}</option>
          ))}
        </select>
        <button type="button" onClick={() => onFile({ as: 'pdf', ...(part === undefined ? {} : { part }) })}>
          {words.download}
        </button>
        <button type="button" onClick={onPrint}>
          {words.print}
        </button>
        <ListFile lists={shown.lists} onFile={onFile} />
      </>
    )}
  </div>
);

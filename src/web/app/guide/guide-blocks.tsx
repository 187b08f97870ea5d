import type { ReactNode } from 'react';
import type { GuideBlock, GuideRun } from '../../../papers/guide/guide-shape.ts';
import { openGuide } from './guide-hand.ts';
import { guidePicture, linkedPage } from './guide-pages.ts';

/** Draws a list whose order never changes while it is shown, so that where each stands tells it from the others. */
const keyed = <Of,>(list: readonly Of[], draw: (one: Of, key: number) => ReactNode): ReactNode =>
  list.map((one, at) => draw(one, at));

const Run = ({ run }: { run: GuideRun }): ReactNode => {
  switch (run.kind) {
    case 'words':
      return run.text;
    case 'code':
      return <code>{run.text}</code>;
    case 'strong':
      return <strong>{drawnRuns(run.runs)}</strong>;
    case 'stress':
      return <em>{drawnRuns(run.runs)}</em>;
    case 'link': {
      const page = linkedPage(run.to);
      return page === undefined ? (
        drawnRuns(run.runs)
      ) : (
        <button type="button" className="guide-link" onClick={() => openGuide(page)}>
          {drawnRuns(run.runs)}
        </button>
      );
    }
  }
};

const drawnRuns = (runs: readonly GuideRun[]): ReactNode => keyed(runs, (run, key) => <Run key={key} run={run} />);

const Heading = ({ level, runs }: { level: 1 | 2 | 3; runs: readonly GuideRun[] }): ReactNode => {
  // the heading of the page itself stands under that of the guide
  const Tag = level === 1 ? 'h2' : level === 2 ? 'h3' : 'h4';
  return <Tag tabIndex={level === 1 ? -1 : undefined}>{drawnRuns(runs)}</Tag>;
};

const Block = ({ block }: { block: GuideBlock }): ReactNode => {
  switch (block.kind) {
    case 'heading':
      return <Heading level={block.level} runs={block.runs} />;
    case 'paragraph':
      return <p>{drawnRuns(block.runs)}</p>;
    case 'code':
      return <pre>{block.text}</pre>;
    case 'picture':
      return (
        <div className="guide-picture">
          <img src={guidePicture(block.file)} alt={block.says} />
        </div>
      );
    case 'list': {
      const Tag = block.isNumbered ? 'ol' : 'ul';
      return (
        <Tag>
          {keyed(block.items, (runs, key) => (
            <li key={key}>{drawnRuns(runs)}</li>
          ))}
        </Tag>
      );
    }
    case 'table':
      return (
        <div className="guide-table">
          <table>
            <thead>
              <tr>
                {keyed(block.head, (runs, key) => (
                  <th key={key} scope="col">
                    {drawnRuns(runs)}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {keyed(block.rows, (row, key) => (
                <tr key={key}>
                  {keyed(row, (runs, cell) => (
                    <td key={cell}>{drawnRuns(runs)}</td>
                  ))}
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      );
  }
};

/** The blocks of a page of the guide. */
export const GuideBlocks = ({ blocks }: { blocks: readonly GuideBlock[] }): ReactNode =>
  keyed(blocks, (block, key) => <Block key={key} block={block} />);

// biome-ignore-all lint/a11y/useSemanticElements: an SVG has no button element
// biome-ignore-all lint/a11y/noAriaHiddenOnFocusable: an SVG text takes no focus
import { type ReactNode, useMemo } from 'react';
import { createPortal } from 'react-dom';
import type { LiveSnapshot } from '../../../../../core/proof/live/live-snapshot.ts';
import { type LiveMark, type LiveMarks, labelMm, liveMarks, markMm } from '../../../../../papers/live/live-marks.ts';
import { useWords } from '../../../words/units.ts';
import type { OnSheetProps } from '../../step.ts';
import './live-on-sheet.css';
import { live, useLive } from './live-store.ts';
import { words } from './words.ts';

/** What tells a state without colour: rays of one that speaks, a cross in one that fell silent. */
const Sign = ({ mark }: { mark: LiveMark }): ReactNode => {
  const [x, y] = mark.at;
  const r = markMm;
  if (mark.state === 'speaking') return <circle className="live-ray" cx={x} cy={y} r={r + 0.7} />;
  if (mark.state !== 'silent') return null;
  const arm = r * 0.6;
  const cross = `M${x - arm} ${y - arm}L${x + arm} ${y + arm}M${x - arm} ${y + arm}L${x + arm} ${y - arm}`;
  return <path className="live-cross" d={cross} />;
};

const namedGroup = (name: string) => ({ role: 'group', 'aria-label': name });

/** Picks what a unit says, or lets it go again. */
const pickOf = (snapshot: LiveSnapshot, unit: string): void => {
  const first =
    snapshot.readings.find((reading) => reading.unit === unit && reading.curve === true) ??
    snapshot.readings.find((reading) => reading.unit === unit);
  live.pick(first?.id);
};

const ViewMarks = ({
  of: { view, marks, labels },
  snapshot,
  names,
  onPick,
}: {
  of: LiveMarks;
  snapshot: LiveSnapshot;
  names: ReadonlyMap<string, string>;
  onPick: (unit: string) => void;
}): ReactNode => {
  const say = useWords();
  const saidBy = (unit: string): string => labels.find((label) => label.unit === unit)?.text ?? '';
  return (
    <g {...namedGroup(words.onView[view])}>
      {marks.map((mark) => (
        <g
          key={mark.unit}
          className={`live-mark ${mark.state} fresh-${mark.fresh}`}
          role="button"
          tabIndex={-1}
          aria-label={words.marks(
            names.get(mark.unit) ?? mark.unit,
            `${words.states[mark.state]} ${saidBy(mark.unit)}`.trim(),
          )}
          onClick={(event) => {
            event.stopPropagation();
            pickOf(snapshot, mark.unit);
            onPick(mark.unit);
          }}
          onKeyDown={(event) => {
            if (event.key === 'Enter' || event.key === ' ') pickOf(snapshot, mark.unit);
          }}
        >
          <circle className="live-dot" cx={mark.at[0]} cy={mark.at[1]} r={markMm} />
          <Sign mark={mark} />
        </g>
      ))}
      {labels.map(({ unit, text, at: [x, y], box }) => (
        <g key={unit} className="live-label" aria-hidden="true">
          <rect
            x={box.leftMm - 0.4}
            y={box.topMm}
            width={box.rightMm - box.leftMm + 0.8}
            height={box.bottomMm - box.topMm}
          />
          <text className="figures" x={x} y={y} fontSize={labelMm}>
            {say(text)}
          </text>
        </g>
      ))}
    </g>
  );
};

/** The boat drawing under a live bus: each unit lights up as it speaks and fades with age; what it says stands beside it. */
export const LiveOnSheet = ({ boat, frame, views, lights }: OnSheetProps): ReactNode => {
  const { told } = useLive();
  const names = useMemo(() => new Map(boat.kit.map(({ id, name }) => [id, name])), [boat]);
  const drawn = useMemo(
    () => (told.listening && views !== undefined ? liveMarks({ boat, views, snapshot: told }) : []),
    [boat, views, told],
  );
  const layer = frame.current?.querySelector('.sheet-layer') ?? null;
  if (!told.listening || layer === null) return null;
  return createPortal(
    <g className="live-layer">
      {drawn.map((one) => (
        <ViewMarks key={one.view} of={one} snapshot={told} names={names} onPick={(unit) => lights.pick([unit])} />
      ))}
    </g>,
    layer,
  );
};

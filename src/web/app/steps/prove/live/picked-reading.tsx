import { type ReactNode, useEffect, useMemo, useState } from 'react';
import { readingName } from '../../../../../core/facts/reading-words.ts';
import { ageWords } from '../../../../../core/proof/live/age-words.ts';
import type { LiveCurve, LiveReading, LiveSnapshot } from '../../../../../core/proof/live/live-snapshot.ts';
import { liveCurve } from '../../../../../papers/live/live-curve.ts';
import { StillDrawing } from '../../../../drawing/still-drawing.tsx';
import { useWords } from '../../../words/units.ts';
import { live } from './live-store.ts';
import { whoSays } from './who-says.ts';
import { words } from './words.ts';

const everyMs = 1000;
const widthMm = 78;

/** The last minutes of a reading, asked for again each second while it is looked at. */
const useCurve = (reading: number): LiveCurve | undefined => {
  const [curve, setCurve] = useState<LiveCurve | undefined>(undefined);
  useEffect(() => {
    let isGone = false;
    const look = (): void =>
      void live.curve(reading).then((found) => {
        if (!isGone) setCurve(found);
      });
    look();
    const timer = setInterval(look, everyMs);
    return () => {
      isGone = true;
      clearInterval(timer);
      setCurve(undefined);
    };
  }, [reading]);
  return curve;
};

/** One reading looked at closely: its value, who says it, and its last minutes as a curve. */
export const PickedReading = ({
  snapshot,
  reading,
  names,
}: {
  snapshot: LiveSnapshot;
  reading: LiveReading;
  names: ReadonlyMap<string, string>;
}): ReactNode => {
  const say = useWords();
  const curve = useCurve(reading.id);
  const name = readingName(reading);
  const title = words.curveOf(name);
  const drawing = useMemo(
    () => (curve === undefined ? undefined : liveCurve(curve, { title, widthMm })),
    [curve, title],
  );
  return (
    <div className="live-picked">
      <div className="card-head">
        <h3>{name}</h3>
        <button type="button" className="card-button" onClick={() => live.pick(undefined)}>
          {words.closeCurve}
        </button>
      </div>
      <p className="live-value">
        {say(reading.empty === true ? words.noValue : (reading.says ?? reading.short ?? words.comes))}
      </p>
      <p className="quiet">
        {words.from(whoSays(snapshot, reading, names))}, {words.message(reading.message)},{' '}
        {words.age(ageWords(reading.ageMs))}
      </p>
      {drawing === undefined ? (
        <p className="quiet">{reading.curve === true ? '' : words.noCurve}</p>
      ) : (
        <div className="live-curve">
          <StillDrawing drawing={drawing} label={title} />
        </div>
      )}
    </div>
  );
};

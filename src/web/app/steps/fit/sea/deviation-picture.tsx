import type { ReactNode } from 'react';
import {
  type DeviationCurve,
  type DeviationPoint,
  deviationAt,
} from '../../../../../core/fitting/sea/deviation-curve.ts';
import { words } from './words.ts';

const width = 360;
const height = 160;
const margin = { left: 30, bottom: 18 } as const;

/** The points of a swing and the curve through them: heading to the right, east up. */
export const DeviationPicture = ({
  points,
  curve,
}: {
  points: readonly DeviationPoint[];
  curve: DeviationCurve | undefined;
}): ReactNode => {
  const most = Math.max(1, ...points.map(({ deviationDeg }) => Math.abs(deviationDeg)), curve?.mostDeg ?? 0);
  const top = Math.ceil(most);
  const x = (heading: number): number => margin.left + (heading / 360) * (width - margin.left - 4);
  const y = (deviation: number): number => (1 - deviation / top) * ((height - margin.bottom) / 2 - 4) + 4;
  const line =
    curve === undefined
      ? ''
      : Array.from({ length: 73 }, (_, at) => at * 5)
          .map((heading) => `${x(heading).toFixed(1)},${y(deviationAt(curve, heading)).toFixed(1)}`)
          .join(' ');
  return (
    <svg className="sea-curve" viewBox={`0 0 ${width} ${height}`} role="img" aria-label={words.swing.picture}>
      {[-top, 0, top].map((deviation) => (
        <g key={deviation}>
          <line className="sea-grid" x1={margin.left} x2={width - 4} y1={y(deviation)} y2={y(deviation)} />
          <text x={margin.left - 4} y={y(deviation) + 4} textAnchor="end">
            {deviation === 0 ? '0°' : `${Math.abs(deviation)}° ${deviation > 0 ? 'E' : 'W'}`}
          </text>
        </g>
      ))}
      {[0, 90, 180, 270, 360].map((heading) => (
        <text key={heading} x={x(heading)} y={height - 4} textAnchor={heading === 360 ? 'end' : 'middle'}>
          {`${heading}°`}
        </text>
      ))}
      {line === '' ? null : <polyline className="sea-line" points={line} />}
      {points.map(({ headingDeg, deviationDeg }) => (
        <circle key={headingDeg} className="sea-point" cx={x(headingDeg)} cy={y(deviationDeg)} r="3.5" />
      ))}
    </svg>
  );
};

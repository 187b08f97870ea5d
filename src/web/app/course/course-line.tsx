import { type ReactNode, useEffect, useRef } from 'react';
import type { StepId } from '../route.ts';
import type { Waypoint } from './course-facts.ts';
import { words } from './words.ts';

const WaypointView = ({ waypoint, isHere, href }: { waypoint: Waypoint; isHere: boolean; href: string }): ReactNode => {
  return (
    <li className={`waypoint ${waypoint.state}${isHere ? ' here' : ''}`}>
      <a href={href} aria-current={isHere ? 'step' : undefined}>
        <span className="waypoint-mark" aria-hidden="true" />
        <span className="waypoint-name">{waypoint.name}</span>
        <span className="waypoint-fact">{waypoint.fact}</span>
        <span className="unseen">, {words.state[waypoint.state]}</span>
      </a>
    </li>
  );
};

/** The ten steps of the job on their course line; where one is has a ring. */
export const CourseLine = ({
  waypoints,
  here,
  hrefOf,
}: {
  waypoints: readonly Waypoint[];
  here: StepId;
  hrefOf: (step: StepId) => string;
}): ReactNode => {
  const list = useRef<HTMLOListElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new step scrolls into sight on the phone's row
  useEffect(() => {
    list.current?.querySelector('.here')?.scrollIntoView({ block: 'nearest', inline: 'center' });
  }, [here]);
  return (
    <nav className="course" aria-label={words.tenSteps}>
      <ol ref={list}>
        {waypoints.map((waypoint) => (
          <WaypointView
            key={waypoint.step}
            waypoint={waypoint}
            isHere={waypoint.step === here}
            href={hrefOf(waypoint.step)}
          />
        ))}
      </ol>
    </nav>
  );
};

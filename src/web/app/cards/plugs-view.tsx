import type { ReactNode } from 'react';
import type { PlugCard, PlugLine } from '../../../papers/cards/unit-plugs.ts';
import { type LightStore, useIsLit } from '../../drawing/light-store.ts';
import { useExplained } from '../words/explained.tsx';
import { words } from './words.ts';

const LineView = ({
  line,
  told,
  lights,
}: {
  line: PlugLine;
  told: { says: ReactNode; route: ReactNode };
  lights: LightStore;
}): ReactNode => {
  const lit = useIsLit(lights, line.lights);
  return (
    <li
      className={lit ? 'plug-line lit-line' : 'plug-line'}
      onPointerEnter={() => lights.rest(line.lights)}
      onPointerLeave={() => lights.rest([])}
    >
      {told.says}
      {line.route === undefined ? null : <span className="quiet plug-route">{told.route}</span>}
    </li>
  );
};

/** Every plug of a unit, and where its lines go by which places; resting on a line lights it on the drawing. */
export const PlugsView = ({ plugs, lights }: { plugs: readonly PlugCard[]; lights: LightStore }): ReactNode => {
  const texts = plugs.flatMap(({ what, lines }) => [what, ...lines.flatMap(({ says, route = '' }) => [says, route])]);
  const explained = useExplained(texts);
  let at = 0;
  return plugs.map(({ plug, lines }) => {
    const [what, ...rest] = explained.slice(at, at + 1 + 2 * lines.length);
    at += 1 + 2 * lines.length;
    return (
      <div key={plug} className="plug">
        <p className="talk-port">
          {words.plug(plug)} {what}
        </p>
        {lines.length === 0 ? <p className="quiet">{words.nothingPlugged}</p> : null}
        <ul>
          {lines.map((line, order) => (
            <LineView
              key={line.lights.join(' ') + line.says}
              line={line}
              told={{ says: rest[2 * order], route: rest[2 * order + 1] }}
              lights={lights}
            />
          ))}
        </ul>
      </div>
    );
  });
};

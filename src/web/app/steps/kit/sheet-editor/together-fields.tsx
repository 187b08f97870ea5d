import type { ReactNode } from 'react';
import type { Sheet } from '../../../../../core/boat/sheet.ts';
import { withPart } from '../../../../../core/kit/with-part.ts';
import { ChoiceField } from '../../../forms/fields.tsx';
import { words } from './words.ts';

const notInLine = '-';

/** The same for a pair whichever of the two is named first. */
const keyOf = ([one, other]: readonly [string, string]): string =>
  one < other ? `${one} ${other}` : `${other} ${one}`;

/** Every pair of ports of the backbone: a unit that is cut into the trunk passes it on from the one to the other. */
const pairsOf = ({ ports }: Sheet): [string, string][] => {
  const ids = ports.filter(({ protocol }) => protocol === 'nmea2000').map(({ id }) => id);
  return ids.flatMap((one, at) => ids.slice(at + 1).map((other): [string, string] => [one, other]));
};

const InLine = ({ sheet, onSheet }: { sheet: Sheet; onSheet: (sheet: Sheet) => void }): ReactNode => {
  const pairs = pairsOf(sheet);
  if (pairs.length === 0) return null;
  const now = sheet.inLine === undefined ? notInLine : keyOf(sheet.inLine);
  return (
    <ChoiceField
      label={words.inLine}
      value={now}
      choices={[[notInLine, words.no], ...pairs.map((pair) => [keyOf(pair), words.both(...pair)] as const)]}
      onValue={(value) => {
        const pair = pairs.find((ids) => keyOf(ids) === value);
        onSheet(withPart(sheet, 'inLine', pair));
      }}
    />
  );
};

/** Which ports of a unit are one network inside it, as those of a switch, and whether the backbone goes through it. */
export const TogetherFields = ({ sheet, onSheet }: { sheet: Sheet; onSheet: (sheet: Sheet) => void }): ReactNode => {
  const { together = [], ports } = sheet;
  const put = (next: string[][]): void => onSheet(withPart(sheet, 'together', next));
  const taken = new Set(together.flat());
  const free = ports.filter(({ id, protocol }) => protocol === 'ethernet' && !taken.has(id)).map(({ id }) => id);
  return (
    <details className="form-part">
      <summary>{words.together}</summary>
      {together.map((group, at) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a group is known by its ports, which are ticked here
        <fieldset key={at} className="form-several">
          <legend>{words.group(at + 1)}</legend>
          {ports
            .filter(({ protocol }) => protocol !== 'dc')
            .map(({ id }) => (
              <label key={id} className="kit-needs">
                <input
                  type="checkbox"
                  checked={group.includes(id)}
                  onChange={({ target }) =>
                    put(
                      together.map((one, index) => {
                        if (index !== at) return one;
                        return target.checked ? [...one, id] : one.filter((port) => port !== id);
                      }),
                    )
                  }
                />
                <span>{id}</span>
              </label>
            ))}
          <button type="button" className="press-link" onClick={() => put(together.filter((_, index) => index !== at))}>
            {words.takeOut}
          </button>
        </fieldset>
      ))}
      {ports.length < 2 ? null : (
        <button type="button" className="press-link" onClick={() => put([...together, free])}>
          {words.addGroup}
        </button>
      )}
      <InLine sheet={sheet} onSheet={onSheet} />
    </details>
  );
};

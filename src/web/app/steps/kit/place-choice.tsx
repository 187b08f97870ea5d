import { type ReactNode, useEffect, useMemo, useRef } from 'react';
import type { Boat, Kit } from '../../../../core/boat/boat-schema.ts';
import type { Sheet } from '../../../../core/boat/sheet.ts';
import { likelyPlaces } from '../../../../core/kit/likely-places.ts';
import { placeUnit } from '../../../../core/kit/place-unit.ts';
import { needsWords } from '../../../../papers/kit/needs-words.ts';
import { useWords } from '../../words/units.ts';
import { PhaseChoice } from './phase-choice.tsx';
import { words } from './words.ts';

/** What a person has said of the units they put aboard; it stays from one to the next. */
export interface PlaceWish {
  readonly fate: Kit['fate'];
  readonly phase: number;
  readonly withNeeds: boolean;
}

const fates = ['comes', 'stays', 'goes'] as const;
/** So many places have a button of their own; the others are in the list. */
const buttons = 3;

const WishFields = ({
  wish,
  count,
  onWish,
}: {
  wish: PlaceWish;
  count: number;
  onWish: (wish: PlaceWish) => void;
}): ReactNode => (
  <div className="kit-wish">
    <label>
      <span className="unseen">{words.fateLegend}</span>
      <select
        value={wish.fate}
        onChange={({ target }) => onWish({ ...wish, fate: fates.find((fate) => fate === target.value) ?? 'comes' })}
      >
        {fates.map((fate) => (
          <option key={fate} value={fate}>
            {words.fateOf[fate]}
          </option>
        ))}
      </select>
    </label>
    {wish.fate === 'stays' ? null : (
      <PhaseChoice label={words.phase} phase={wish.phase} isLabelSeen onPhase={(phase) => onWish({ ...wish, phase })} />
    )}
    {wish.fate === 'goes' || count === 0 ? null : (
      <label className="kit-needs">
        <input
          type="checkbox"
          checked={wish.withNeeds}
          onChange={({ target }) => onWish({ ...wish, withNeeds: target.checked })}
        />
        <span>{words.withNeeds(count)}</span>
      </label>
    )}
  </div>
);

/** Where a picked unit is to go: the likely places first, each a press; and what is said of it, all of it given already. */
export const PlaceChoice = ({
  boat,
  sheet,
  name,
  wish,
  onWish,
  onPlace,
}: {
  boat: Boat;
  sheet: Sheet;
  name: string;
  wish: PlaceWish;
  onWish: (wish: PlaceWish) => void;
  onPlace: (place: string) => void;
}): ReactNode => {
  const say = useWords();
  const first = useRef<HTMLButtonElement>(null);
  const places = useMemo(() => likelyPlaces(boat, sheet), [boat, sheet]);
  const [likeliest] = places;
  const made = useMemo(
    () => (likeliest === undefined ? undefined : placeUnit(boat, { sheet, place: likeliest.id, fate: wish.fate })),
    [boat, sheet, likeliest, wish.fate],
  );
  // biome-ignore lint/correctness/useExhaustiveDependencies: whoever picks another sheet goes on to its place
  useEffect(() => first.current?.focus(), [sheet]);
  if (likeliest === undefined || made === undefined) return <p className="quiet">{words.noPlaces}</p>;
  const names = new Map([[made.unit.id, made.unit.name]]);
  return (
    <div className="kit-place">
      <p>
        {words.putAt} <span className="quiet">({words.orPress})</span>
      </p>
      <ul className="kit-places">
        {places.slice(0, buttons).map((place, at) => (
          <li key={place.id}>
            <button
              ref={at === 0 ? first : undefined}
              type="button"
              className="kit-put"
              aria-label={words.putAtPlace(name, place.name)}
              onClick={() => onPlace(place.id)}
            >
              {say(place.name)}
            </button>
          </li>
        ))}
        {places.length <= buttons ? null : (
          <li>
            <select
              aria-label={words.anotherPlace}
              value=""
              onChange={({ target }) => {
                if (target.value !== '') onPlace(target.value);
              }}
            >
              <option value="">{words.anotherPlace}</option>
              {places.slice(buttons).map((place) => (
                <option key={place.id} value={place.id}>
                  {place.name}
                </option>
              ))}
            </select>
          </li>
        )}
      </ul>
      <WishFields wish={wish} count={made.needs.length} onWish={onWish} />
      {wish.withNeeds ? (
        <ul className="kit-will-want">
          {needsWords(boat, made.needs, names).map((sentence) => (
            <li key={sentence}>{say(sentence)}</li>
          ))}
        </ul>
      ) : null}
    </div>
  );
};

import { type ReactNode, useRef, useState } from 'react';
import type { Boat } from '../../../../../core/boat/boat-schema.ts';
import type { Photo } from '../../../../../core/boat/photo.ts';
import { photoNotFound } from '../../../../../core/rules/provenance/picture-words.ts';
import { answerEdit } from '../../../../../core/walk-round/answer-edits.ts';
import { useEdit } from '../../../edit-context.ts';
import { keepPicture, usePicture } from '../../../pictures/picture-keeper.ts';
import { shrinkPicture } from '../../../pictures/shrink-picture.ts';
import { words } from './words.ts';

const asked = ['front', 'back', 'label'] as const satisfies readonly Photo['shows'][];

/** A photo that is there, small, with what takes it away again. */
const Taken = ({ photo, name }: { photo: Photo; name: string }): ReactNode => {
  const edit = useEdit();
  const { of, shows, picture } = photo;
  const found = usePicture(picture.hash);
  const what = words.photoOf({ name, shows: words.shows[shows] });
  return (
    <div className="walk-photo">
      {found.kind === 'here' ? (
        <img src={found.url} alt={what} width={picture.widthPx} height={picture.heightPx} />
      ) : null}
      {found.kind === 'missing' ? <p>{photoNotFound({ shows, name })}</p> : null}
      <button
        type="button"
        aria-label={words.takeAway(what)}
        onClick={() => edit([{ edit: 'remove-photo', params: { of, shows, hash: picture.hash } }])}
      >
        {words.away}
      </button>
    </div>
  );
};

/** Takes the photos that the walk asks for of one unit: with the camera of a phone, or from files; made smaller and kept beside the boat. */
export const PhotoField = ({ boat, unit, name }: { boat: Boat; unit: string; name: string }): ReactNode => {
  const edit = useEdit();
  const inputs = useRef(new Map<Photo['shows'], HTMLInputElement>());
  const [wrong, setWrong] = useState<string | undefined>(undefined);
  const photos = (boat.photos ?? []).filter(({ of }) => of === unit);
  const take = async (shows: Photo['shows'], file: File): Promise<void> => {
    const shrunk = await shrinkPicture(file);
    const refusal = 'refusal' in shrunk ? shrunk.refusal : await keepPicture(shrunk);
    setWrong(refusal);
    if (refusal !== undefined || 'refusal' in shrunk) return;
    edit([answerEdit({ kind: 'photos', photo: { of: unit, shows, picture: shrunk.picture } })]);
  };
  return (
    <>
      <fieldset className="walk-options">
        <legend className="unseen">{words.photosOf(name)}</legend>
        {asked
          .filter((shows) => !photos.some((photo) => photo.shows === shows))
          .map((shows) => (
            <span key={shows}>
              <button type="button" onClick={() => inputs.current.get(shows)?.click()}>
                {words.shows[shows]}
              </button>
              <input
                ref={(input) => {
                  if (input !== null) inputs.current.set(shows, input);
                }}
                type="file"
                accept="image/jpeg,image/png,image/webp"
                capture="environment"
                hidden
                onChange={(event) => {
                  const [file] = event.target.files ?? [];
                  event.target.value = '';
                  if (file !== undefined) void take(shows, file);
                }}
              />
            </span>
          ))}
      </fieldset>
      {wrong === undefined ? null : (
        <p className="walk-wrong" role="alert">
          {wrong}
        </p>
      )}
      {photos.map((photo) => (
        <Taken key={`${photo.shows} ${photo.picture.hash}`} photo={photo} name={name} />
      ))}
    </>
  );
};

import { copiedSettings } from '../../facts/copied-settings.ts';
import { draftJob, type JobDraft, waits } from './job-draft.ts';
import { jobId, kindOf, type PhaseFrame } from './job-frame.ts';
import { unitsOfCable } from './pull-groups.ts';
import { isUnderwater } from './underwater.ts';

/** The survey, once; what is labelled and saved before anything is unplugged; and each unit that goes taken out. */
export const surveyJobs = (frame: PhaseFrame): JobDraft[] => {
  const { phase, isFirst, goes } = frame;
  const units = goes.map(({ id }) => id);
  const saved = units.filter((unit) => Object.hasOwn(copiedSettings.byKind, kindOf(frame, unit)));
  const survey = jobId('survey', '', phase);
  const afterSurvey = isFirst ? waits([survey], 'label-first') : [];
  return [
    ...(isFirst && frame.pieces.length > 0 ? [draftJob(frame, '', { kind: 'survey' })] : []),
    ...(units.length === 0 ? [] : [draftJob(frame, '', { kind: 'label', about: units, after: afterSurvey })]),
    ...(saved.length === 0 ? [] : [draftJob(frame, '', { kind: 'save-settings', about: saved, after: afterSurvey })]),
    ...goes.map((unit) => takeOut(frame, unit, saved.includes(unit.id))),
  ];
};

const takeOut = (frame: PhaseFrame, unit: PhaseFrame['goes'][number], isSaved: boolean): JobDraft => {
  const { phase, index } = frame;
  const { id, place } = unit;
  const opensHull = isUnderwater(frame, unit);
  const isAloft = index.places.get(place)?.reach === 'aloft';
  const cables = index.boat.cables.filter(
    ({ id: cable, fate }) => fate === 'goes' && unitsOfCable(frame, cable).includes(id),
  );
  return draftJob(frame, id, {
    kind: 'take-out',
    about: [id, ...cables.map((cable) => cable.id)],
    place,
    after: [
      ...waits([jobId('label', '', phase)], 'label-first'),
      ...(isSaved ? waits([jobId('save-settings', '', phase)], 'saved-first') : []),
      ...(isAloft && frame.mastDown ? waits([jobId('mast-down', '', phase)], 'in-reach') : []),
      ...(opensHull ? waits([jobId('haul-out', '', phase)], 'in-reach') : []),
    ],
    ...aloftOf(frame, isAloft),
    ...(opensHull ? { state: 'ashore' as const, outside: true } : {}),
  });
};

/** What work in a mast asks for: two people and daylight up a standing one, or the mast down. */
export const aloftOf = (
  { mastDown }: Pick<PhaseFrame, 'mastDown'>,
  isAloft: boolean,
): Partial<Pick<JobDraft, 'aloft' | 'people' | 'needs' | 'mast' | 'outside'>> => {
  if (!isAloft) return {};
  if (mastDown) return { mast: 'down', outside: true };
  return { aloft: true, people: 2, needs: ['aloft'], mast: 'up', outside: true };
};

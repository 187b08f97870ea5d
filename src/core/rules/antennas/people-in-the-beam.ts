import type { Level } from '../../plan-shape.ts';
import type { PersonAtRadar, Radar } from '../../radar-shape.ts';
import type { Observation, Rule } from '../rule.ts';
import { metres, sourceWords, unitName } from '../rule-words.ts';

const levelOf = ({ peopleM, peopleBy }: Radar, { distanceM, soleKnown }: PersonAtRadar): Level => {
  if (peopleM !== undefined && distanceM >= peopleM) return 'advice';
  const isSure = soleKnown && (peopleBy === 'plate' || peopleBy === 'size');
  return isSure ? 'fault' : 'doubt';
};

const distanceWords = ({ peopleM, peopleBy }: Radar): string => {
  switch (peopleBy) {
    case 'plate':
      return `its plate wants people ${peopleM} m off`;
    case 'typical':
      return `such scanners usually want people ${peopleM} m off`;
    case 'size':
      return `one of its power wants people ${peopleM} m off`;
    case 'unknown':
      return 'how far people keep off is not known';
  }
};

/** People steer and sit out of the beam: the scanner above their heads, or far enough away. */
export const peopleInTheBeam: Rule = {
  id: 'antennas/people-in-the-beam',
  level: 'fault',
  title: 'A scanner turns at the height of heads.',
  sources: ['choice-people', 'maker-radar-distance', 'icnirp-1998', 'computed-near-zone'],
  check: ({ index, plan }) =>
    plan.sites.flatMap(({ unit, radar }) =>
      radar === undefined
        ? []
        : radar.people
            .filter(({ inBeam }) => inBeam)
            .map((person): Observation => {
              const place = index.places.get(person.place)?.name ?? person.place;
              const level = levelOf(radar, person);
              return {
                about: [unit, person.place],
                ...(level === 'fault' ? {} : { level }),
                says: `Who stands at ${place} has the beam of ${unitName(index, unit)} at the head: ${metres(person.distanceM)} off the beam reaches from ${metres(person.beamFromM)} to ${metres(person.beamToM)} over the water, the head is at ${metres(person.headM)}; ${distanceWords(radar)}.`,
                measured: { value: person.distanceM, unit: 'm' },
                ...(radar.peopleM === undefined
                  ? {}
                  : {
                      limit: {
                        value: radar.peopleM,
                        unit: 'm',
                        source:
                          radar.peopleBy === 'plate'
                            ? 'the plate of the radar'
                            : sourceWords(radar.peopleBy === 'size' ? 'maker-radar-distance' : 'memory-scanners'),
                      },
                    }),
                cure: `Mount the scanner higher, so that its beam passes over every head${person.soleKnown ? '' : '; enter how high the sole is there, it was taken from what stands in front'}. Until then it does not send while people stand there.`,
              };
            }),
    ),
};

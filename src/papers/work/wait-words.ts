import type { waitReasons } from '../../core/work-shape.ts';

/** Why a job waits for another, after the name of that. */
export const waitWords: Readonly<Record<(typeof waitReasons)[number], string>> = {
  'label-first': 'cables are labelled before they are unplugged',
  'saved-first': 'its settings are saved before it loses power',
  'bore-full': 'the bore is too full until the old cable is out',
  'same-hole': 'the new unit goes into the hole of the old one',
  'in-reach': 'one gets at it only then',
  'way-open': 'the way is opened first',
  'fed-by': 'it is fed from there',
  'fixed-first': 'it stands before its cables are made up',
  'cabled-first': 'its cables are there first',
  'cured-first': 'the sealant cures first',
  'powered-first': 'it has power first',
  'updated-first': 'its software is up to date first',
  'calibrated-first': 'it is set right first',
  'tried-first': 'it is tried first',
  'safe-first': 'it is safe only then',
  'papers-first': 'the papers come first',
  person: 'you said so',
};

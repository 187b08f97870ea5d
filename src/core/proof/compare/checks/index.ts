import type { Check } from '../check.ts';
import { addressClaimedAgain } from './address-claimed-again.ts';
import { addressFought } from './address-fought.ts';
import { addressOutOfRange } from './address-out-of-range.ts';
import { clockStepped } from './clock-stepped.ts';
import { depthOffsetDoubled } from './depth-offset-doubled.ts';
import { depthOffsetWrong } from './depth-offset-wrong.ts';
import { echo } from './echo.ts';
import { errorFrames } from './error-frames.ts';
import { headingFromCourse } from './heading-from-course.ts';
import { headingInvented } from './heading-invented.ts';
import { instanceShared } from './instance-shared.ts';
import { lineChecksum } from './line-checksum.ts';
import { lineTooFull } from './line-too-full.ts';
import { loadOffPlan } from './load-off-plan.ts';
import { messageEmpty } from './message-empty.ts';
import { messageGap } from './message-gap.ts';
import { messageSilent } from './message-silent.ts';
import { messageTooOften } from './message-too-often.ts';
import { messageTooSeldom } from './message-too-seldom.ts';
import { messagesLost } from './messages-lost.ts';
import { readingsDisagree } from './readings-disagree.ts';
import { recordingDamaged } from './recording-damaged.ts';
import { recordingWithoutTime } from './recording-without-time.ts';
import { senderUnclaimed } from './sender-unclaimed.ts';
import { sentenceRepeated } from './sentence-repeated.ts';
import { sentenceTooLong } from './sentence-too-long.ts';
import { trueMarkedMagnetic } from './true-marked-magnetic.ts';
import { unitDoubtful } from './unit-doubtful.ts';
import { unitSilent } from './unit-silent.ts';
import { unitUnknown } from './unit-unknown.ts';
import { variationDiffers } from './variation-differs.ts';
import { variationMissing } from './variation-missing.ts';
import { variationZero } from './variation-zero.ts';
import { wireSilent } from './wire-silent.ts';
import { wireUnsure } from './wire-unsure.ts';
import { wrongInstance } from './wrong-instance.ts';

/** Everything that is looked for in a watched bus or line, by id. */
export const checks: readonly Check[] = [
  addressClaimedAgain,
  addressFought,
  addressOutOfRange,
  clockStepped,
  depthOffsetDoubled,
  depthOffsetWrong,
  echo,
  errorFrames,
  headingFromCourse,
  headingInvented,
  instanceShared,
  lineChecksum,
  lineTooFull,
  loadOffPlan,
  messageEmpty,
  messageGap,
  messageSilent,
  messageTooOften,
  messageTooSeldom,
  messagesLost,
  readingsDisagree,
  recordingDamaged,
  recordingWithoutTime,
  senderUnclaimed,
  sentenceRepeated,
  sentenceTooLong,
  trueMarkedMagnetic,
  unitDoubtful,
  unitSilent,
  unitUnknown,
  variationDiffers,
  variationMissing,
  variationZero,
  wireSilent,
  wireUnsure,
  wrongInstance,
];

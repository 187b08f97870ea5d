import type * as z from 'zod';
import { acceptFinding } from './accept-finding.ts';
import { addBank } from './add-bank.ts';
import { addBus } from './add-bus.ts';
import { addCable } from './add-cable.ts';
import { addCircuit } from './add-circuit.ts';
import { addHeard } from './add-heard.ts';
import { addNeed } from './add-need.ts';
import { addPanel } from './add-panel.ts';
import { addPhoto } from './add-photo.ts';
import { addPlace } from './add-place.ts';
import { addSheet } from './add-sheet.ts';
import { addUnit } from './add-unit.ts';
import { addWay } from './add-way.ts';
import { allowTees } from './allow-tees.ts';
import { changeBank } from './change-bank.ts';
import { changeBus } from './change-bus.ts';
import { changeCable } from './change-cable.ts';
import { changeCircuit } from './change-circuit.ts';
import { changeNeed } from './change-need.ts';
import { changePanel } from './change-panel.ts';
import { changePlace } from './change-place.ts';
import { changeSheet } from './change-sheet.ts';
import { changeWay } from './change-way.ts';
import { chooseSource } from './choose-source.ts';
import { confirmJoin } from './confirm-join.ts';
import { copySheet } from './copy-sheet.ts';
import { feedPort } from './feed-port.ts';
import { forbidJoin } from './forbid-join.ts';
import { giveLabels } from './give-labels.ts';
import { issueRevision } from './issue-revision.ts';
import { joinBus } from './join-bus.ts';
import { joinPorts } from './join-ports.ts';
import { joinWays } from './join-ways.ts';
import { letSourceGo } from './let-source-go.ts';
import { movePlaces } from './move-places.ts';
import { moveUnit } from './move-unit.ts';
import { nameUnit } from './name-unit.ts';
import { noteAboard } from './note-aboard.ts';
import { noteAtSea } from './note-at-sea.ts';
import { noteFitted } from './note-fitted.ts';
import { noteOrder } from './note-order.ts';
import { notePaperwork } from './note-paperwork.ts';
import { noteProved } from './note-proved.ts';
import { noteTyped } from './note-typed.ts';
import { pinCoax } from './pin-coax.ts';
import { pinFuse } from './pin-fuse.ts';
import { pinLayout } from './pin-layout.ts';
import { pinPieces } from './pin-pieces.ts';
import { pinRoute } from './pin-route.ts';
import { pinWire } from './pin-wire.ts';
import { removeBank } from './remove-bank.ts';
import { removeCable } from './remove-cable.ts';
import { removeCircuit } from './remove-circuit.ts';
import { removeDay } from './remove-day.ts';
import { removeHand } from './remove-hand.ts';
import { removeNeed } from './remove-need.ts';
import { removeOpening } from './remove-opening.ts';
import { removeOwnJob } from './remove-own-job.ts';
import { removePanel } from './remove-panel.ts';
import { removePhoto } from './remove-photo.ts';
import { removePlace } from './remove-place.ts';
import { removeUnderlay } from './remove-underlay.ts';
import { removeUnit } from './remove-unit.ts';
import { removeWay } from './remove-way.ts';
import { reopenFinding } from './reopen-finding.ts';
import { restoreBoat } from './restore-boat.ts';
import { seePlug } from './see-plug.ts';
import { setChanges } from './set-changes.ts';
import { setDay } from './set-day.ts';
import { setEssential } from './set-essential.ts';
import { setFate } from './set-fate.ts';
import { setGrade } from './set-grade.ts';
import { setHand } from './set-hand.ts';
import { setInstance } from './set-instance.ts';
import { setLeaving } from './set-leaving.ts';
import { setMeasures } from './set-measures.ts';
import { setNegative } from './set-negative.ts';
import { setOpening } from './set-opening.ts';
import { setOrder } from './set-order.ts';
import { setOwnJob } from './set-own-job.ts';
import { setPapers } from './set-papers.ts';
import { setPrice } from './set-price.ts';
import { setQuote } from './set-quote.ts';
import { setRate } from './set-rate.ts';
import { setRemote } from './set-remote.ts';
import { setScreenUnits } from './set-screen-units.ts';
import { setSheet } from './set-sheet.ts';
import { setSite } from './set-site.ts';
import { setTransducer } from './set-transducer.ts';
import { setUnderlay } from './set-underlay.ts';
import { setUnderwater } from './set-underwater.ts';
import { setWaters } from './set-waters.ts';
import { setWork } from './set-work.ts';
import { settleJob } from './settle-job.ts';
import { splitWay } from './split-way.ts';
import { takeBackAtSea } from './take-back-at-sea.ts';
import { takeBackFitted } from './take-back-fitted.ts';
import { takeIdentities } from './take-identities.ts';
import { tapeLength } from './tape-length.ts';
import { tapeTail } from './tape-tail.ts';
import { unpinLayout } from './unpin-layout.ts';
import { unpinRoute } from './unpin-route.ts';

/** Every edit by its id; menus, keys and buttons share this list. */
export const edits = {
  'accept-finding': acceptFinding,
  'add-bank': addBank,
  'add-bus': addBus,
  'add-cable': addCable,
  'add-circuit': addCircuit,
  'add-heard': addHeard,
  'add-need': addNeed,
  'add-panel': addPanel,
  'add-photo': addPhoto,
  'add-place': addPlace,
  'add-sheet': addSheet,
  'add-unit': addUnit,
  'add-way': addWay,
  'allow-tees': allowTees,
  'change-bank': changeBank,
  'change-bus': changeBus,
  'change-cable': changeCable,
  'change-circuit': changeCircuit,
  'change-need': changeNeed,
  'change-panel': changePanel,
  'change-place': changePlace,
  'change-sheet': changeSheet,
  'change-way': changeWay,
  'choose-source': chooseSource,
  'confirm-join': confirmJoin,
  'copy-sheet': copySheet,
  'feed-port': feedPort,
  'forbid-join': forbidJoin,
  'give-labels': giveLabels,
  'join-bus': joinBus,
  'join-ports': joinPorts,
  'join-ways': joinWays,
  'let-source-go': letSourceGo,
  'move-places': movePlaces,
  'move-unit': moveUnit,
  'name-unit': nameUnit,
  'note-aboard': noteAboard,
  'note-at-sea': noteAtSea,
  'note-order': noteOrder,
  'note-paperwork': notePaperwork,
  'note-proved': noteProved,
  'note-typed': noteTyped,
  'issue-revision': issueRevision,
  'note-fitted': noteFitted,
  'pin-coax': pinCoax,
  'pin-wire': pinWire,
  'pin-fuse': pinFuse,
  'pin-pieces': pinPieces,
  'pin-layout': pinLayout,
  'pin-route': pinRoute,
  'remove-bank': removeBank,
  'remove-cable': removeCable,
  'remove-circuit': removeCircuit,
  'remove-day': removeDay,
  'remove-hand': removeHand,
  'remove-need': removeNeed,
  'remove-opening': removeOpening,
  'remove-own-job': removeOwnJob,
  'remove-panel': removePanel,
  'remove-photo': removePhoto,
  'remove-place': removePlace,
  'remove-underlay': removeUnderlay,
  'remove-unit': removeUnit,
  'remove-way': removeWay,
  'reopen-finding': reopenFinding,
  'restore-boat': restoreBoat,
  'see-plug': seePlug,
  'set-changes': setChanges,
  'set-day': setDay,
  'set-essential': setEssential,
  'set-fate': setFate,
  'set-grade': setGrade,
  'set-hand': setHand,
  'set-instance': setInstance,
  'set-leaving': setLeaving,
  'set-measures': setMeasures,
  'set-negative': setNegative,
  'set-opening': setOpening,
  'set-order': setOrder,
  'set-own-job': setOwnJob,
  'set-papers': setPapers,
  'set-price': setPrice,
  'set-quote': setQuote,
  'set-rate': setRate,
  'set-remote': setRemote,
  'set-screen-units': setScreenUnits,
  'set-site': setSite,
  'set-underwater': setUnderwater,
  'set-sheet': setSheet,
  'set-transducer': setTransducer,
  'set-underlay': setUnderlay,
  'set-waters': setWaters,
  'set-work': setWork,
  'settle-job': settleJob,
  'split-way': splitWay,
  'take-back-at-sea': takeBackAtSea,
  'take-back-fitted': takeBackFitted,
  'take-identities': takeIdentities,
  'tape-length': tapeLength,
  'tape-tail': tapeTail,
  'unpin-layout': unpinLayout,
  'unpin-route': unpinRoute,
} as const;

export type EditId = keyof typeof edits;

/** The parameters of one edit. */
export type EditParams<Id extends EditId> = z.infer<(typeof edits)[Id]['params']>;

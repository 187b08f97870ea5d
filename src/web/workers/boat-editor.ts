export { boundedHistory } from '../../core/boat/bounded-history.ts';
export { applyEdits, redo, undo } from '../../core/boat/history.ts';
export { readNewerBoat } from '../../core/boat/read-newer-boat.ts';
export { compareTexts } from './compare-texts.ts';
export { takeInFile, takeUpKept } from './take-in-file.ts';

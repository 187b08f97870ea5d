export { KeptNotes } from './kept-notes.tsx';
export { RowTools } from './row-tools.tsx';

import type { ReactNode } from 'react';

const phases = [1, 2, 3, 4, 5, 6, 7, 8, 9];

/** In which phase of the refit something comes or goes. */
export const PhaseChoice = ({
  label,
  phase,
  shown = String,
  isLabelSeen = false,
  onPhase,
}: {
  label: string;
  phase: number;
  /** what a phase is called in the list */
  shown?: (phase: number) => string;
  isLabelSeen?: boolean;
  onPhase: (phase: number) => void;
}): ReactNode => (
  <label>
    <span className={isLabelSeen ? undefined : 'unseen'}>{label}</span>{' '}
    <select value={phase} onChange={({ target }) => onPhase(Number(target.value))}>
      {phases.map((one) => (
        <option key={one} value={one}>
          {shown(one)}
        </option>
      ))}
    </select>
  </label>
);

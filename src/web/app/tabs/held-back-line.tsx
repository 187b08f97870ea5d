import type { ReactNode } from 'react';
import { words } from './words.ts';

/** Why nothing can be changed in this tab: another one works on the boat, or an earlier state is looked at. */
export type HeldBack = { readonly kind: 'follows' } | { readonly kind: 'looks'; readonly when: string };

const LineButton = ({ onPress, children }: { onPress: () => void; children: ReactNode }): ReactNode => (
  <button type="button" className="edit-link" onClick={onPress}>
    {children}
  </button>
);

/** The line in place of the one about saving, in a tab in which nothing can be changed. */
export const HeldBackLine = ({
  held,
  onTakeOver,
  onBack,
  onRestore,
}: {
  held: HeldBack;
  onTakeOver: () => void;
  onBack: () => void;
  onRestore: () => void;
}): ReactNode => (
  <div className="save-line trouble">
    <p role="status">{held.kind === 'follows' ? words.follows : words.looksAt(held.when)}</p>
    {held.kind === 'follows' ? (
      <LineButton onPress={onTakeOver}>{words.workHere}</LineButton>
    ) : (
      <>
        <LineButton onPress={onBack}>{words.back}</LineButton>
        <LineButton onPress={onRestore}>{words.restore}</LineButton>
      </>
    )}
  </div>
);

/** Why an edit was not made in such a tab. */
export const heldBackWords = (held: HeldBack): string => (held.kind === 'follows' ? words.notHere : words.notThen);

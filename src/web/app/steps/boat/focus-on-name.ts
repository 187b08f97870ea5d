/** A new thing is in the margin once the boat has it. */
const triesMs = [60, 200, 500, 1000, 2000];

/** Brings the keyboard to the name of what is new, as soon as its form stands in the margin; nothing where somebody went on meanwhile. */
export const focusOnName = (id: string): void => {
  const before = document.activeElement;
  const tryFrom = (at: number): void => {
    const waitMs = triesMs[at];
    if (waitMs === undefined) return;
    setTimeout(() => {
      if (document.activeElement !== before) return;
      const field = document.querySelector<HTMLInputElement>(`[data-form="${CSS.escape(id)}"] input[name="name"]`);
      if (field === null) {
        tryFrom(at + 1);
        return;
      }
      field.focus();
      field.select();
    }, waitMs);
  };
  tryFrom(0);
};

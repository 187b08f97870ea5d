// Runs before the first paint, so that a screen left in night red never flashes white.
try {
  const kept = localStorage.getItem('fairlead-theme');
  if (kept === 'dusk' || kept === 'night') document.documentElement.dataset.theme = kept;
} catch {
  // storage may be barred; day is the start then
}

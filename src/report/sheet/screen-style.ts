import type { Palette } from '../scene/scene.js';

/**
 * Inks of a picture on a screen: variables of the page, so that one picture serves a light and a dark one.
 *
 * Hues are those of Okabe & Ito, Color Universal Design (2008), which the colour-blind tell apart (from memory).
 */
export const SCREEN: Palette = {
  ink: 'var(--ink)',
  soft: 'var(--soft)',
  faint: 'var(--faint)',
  shade: 'var(--shade)',
  paper: 'var(--paper)',
  pin: 'var(--pin)',
  pap: 'var(--pap)',
  marker: 'var(--marker)',
  rings: 'var(--rings)',
};

/**
 * The page's style: one column on a telephone, two on a desk, and on paper the printed sheet alone.
 *
 * @param paperSize  as CSS writes it, width first
 */
export const screenStyle = (paperSize: string): string => `
:root {
  color-scheme: light dark;
  --paper: #ffffff; --ink: #1a1a1a; --soft: #565656; --faint: #c9c9c9; --shade: #ececec;
  --pin: #0072b2; --pap: #c65300; --marker: #00805e; --rings: #8a8a8a;
}
@media (prefers-color-scheme: dark) {
  :root {
    --paper: #15171a; --ink: #ececec; --soft: #b4b4b4; --faint: #4a4d52; --shade: #2b2e33;
    --pin: #56b4e9; --pap: #e69f00; --marker: #2fc79b; --rings: #8f959d;
  }
}
body { margin: 0; background: var(--paper); color: var(--ink); font: 1rem/1.5 system-ui, sans-serif; }
main { max-width: 70rem; margin: 0 auto; padding: 1rem; }
h1 { margin: 0; font-size: 1.9rem; line-height: 1.2; }
h2 { margin: 1.5rem 0 0.5rem; padding-bottom: 0.2rem; border-bottom: 1px solid var(--soft); font-size: 1.05rem; }
p, ul { margin: 0.4rem 0; max-width: 42rem; overflow-wrap: anywhere; }
ul { padding-left: 1.2rem; }
.over { color: var(--soft); }
.pictures { display: flex; flex-wrap: wrap; gap: 1rem 2rem; margin: 1rem 0; }
figure { flex: 1 1 18rem; max-width: 32rem; margin: 0; }
figure svg { display: block; width: 100%; height: auto; overflow: visible; }
figcaption { color: var(--soft); text-align: center; font-size: 0.9rem; }
.short { white-space: nowrap; }
.facts { margin-top: 1.5rem; columns: 2 24rem; column-gap: 2.5rem; }
.facts section { break-inside: avoid; }
.facts section:first-child h2 { margin-top: 0; }
table { border-collapse: collapse; font-variant-numeric: tabular-nums; }
th, td { padding: 0.25rem 0.9rem 0.25rem 0; text-align: left; vertical-align: top; font-weight: normal; }
thead th { color: var(--soft); font-size: 0.85rem; }
tbody tr { border-top: 1px solid var(--faint); }
footer { margin-top: 2rem; color: var(--soft); font-size: 0.85rem; }
.sheet { display: none; }
@media (max-width: 40rem) {
  table { font-size: 0.92rem; }
  th, td { padding-right: 0.45rem; }
  .wide thead { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
  .wide, .wide tbody, .wide tr, .wide th, .wide td { display: block; }
  .wide tr { padding: 0.4rem 0; }
  .wide th { font-weight: 600; }
  .wide th, .wide td { padding: 0; }
  .wide td:empty { display: none; }
  .wide td[data-head]::before { content: attr(data-head) ": "; color: var(--soft); }
}
@page { size: ${paperSize}; margin: 0; }
@media print {
  body { background: #ffffff; }
  main { display: none; }
  .sheet { display: block; height: 100vh; overflow: hidden; }
  .sheet svg { display: block; width: 100%; height: 100%; }
}
`;

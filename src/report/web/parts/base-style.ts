import { inkVariables } from '../../scene/screen-inks.js';

/** Text, tables and colours of every web page: light and dark, and tables that become lists on a telephone. */
export const BASE_STYLE = `
:root {
  color-scheme: light dark;
  ${inkVariables('light')}
}
@media (prefers-color-scheme: dark) {
  :root { ${inkVariables('dark')} }
}
body { margin: 0; background: var(--paper); color: var(--ink); font: 1rem/1.5 system-ui, sans-serif; }
main { max-width: 70rem; margin: 0 auto; padding: 1rem; }
h1 { margin: 0; font-size: 1.9rem; line-height: 1.2; }
h2 { margin: 1.5rem 0 0.5rem; padding-bottom: 0.2rem; border-bottom: 1px solid var(--soft); font-size: 1.05rem; }
p, ul { margin: 0.4rem 0; max-width: 42rem; overflow-wrap: anywhere; }
ul { padding-left: 1.2rem; }
.over { color: var(--soft); }
figure { margin: 0; }
figure svg { display: block; width: 100%; height: auto; overflow: visible; }
.short, .word { white-space: nowrap; }
table { border-collapse: collapse; font-variant-numeric: tabular-nums; }
th, td { padding: 0.25rem 0.9rem 0.25rem 0; text-align: left; vertical-align: top; font-weight: normal; }
thead th { color: var(--soft); font-size: 0.85rem; }
tbody tr { border-top: 1px solid var(--faint); }
footer { margin-top: 2rem; color: var(--soft); font-size: 0.85rem; }
@media (max-width: 40rem) {
  table { font-size: 0.9rem; }
  th, td { padding-right: 0.3rem; }
  .wide thead { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
  .wide, .wide tbody, .wide tr, .wide th, .wide td { display: block; }
  .wide tr { padding: 0.4rem 0; }
  .wide th { font-weight: 600; }
  .wide th, .wide td { padding: 0; }
  .wide td:empty { display: none; }
  .wide td[data-head]::before { content: attr(data-head) ": "; color: var(--soft); }
}
`;

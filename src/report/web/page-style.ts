import type { Compared } from '../picture/compared.js';
import { partOf } from '../picture/compared.js';
import { inkVariables } from '../scene/screen-inks.js';
import { BASE_STYLE } from './base-style.js';
import { choiceId } from './choice-html.js';

/** The style of a page with pictures that compare layouts; what is not ticked is not drawn. */
export const pageStyle = (compared: readonly Compared[]): string => `${BASE_STYLE}
h2 { margin-top: 2.2rem; font-size: 1.25rem; }
h3 { margin: 1.2rem 0 0.3rem; font-size: 1rem; }
a { color: inherit; }
a:focus-visible, summary:focus-visible, input:focus-visible { outline: 3px solid var(--series1); outline-offset: 2px; }
nav ul { display: flex; flex-wrap: wrap; gap: 0 1.2rem; max-width: none; padding: 0; list-style: none; }
nav a { display: inline-block; padding: 0.3rem 0; }
.notice, .cautions { max-width: 42rem; margin: 0.8rem 0; padding: 0.5rem 0.9rem; border: 1px solid var(--soft); border-left-width: 5px; }
.cautions h2 { margin: 0; border: 0; font-size: 1rem; }
.choice { max-width: 42rem; margin: 1rem 0; padding: 0.4rem 0.9rem 0.7rem; border: 1px solid var(--soft); }
.choice label { display: block; padding: 0.25rem 0; }
.choice input { width: 1.15rem; height: 1.15rem; margin: 0 0.5rem 0 0; vertical-align: -0.2rem; }
.sign { display: inline-block; min-width: 1.2rem; margin-right: 0.3rem; border: 2px solid; border-radius: 0.7rem; line-height: 1.2rem; text-align: center; font-weight: 700; color: var(--ink); }
.small { display: grid; grid-template-columns: repeat(auto-fill, minmax(min(20rem, 100%), 1fr)); gap: 1.2rem 2rem; margin: 0.8rem 0; }
.small > div { max-width: 26rem; }
.small h3 { margin: 0 0 0.2rem; }
.lane { display: grid; grid-template-columns: minmax(0, 26rem); gap: 1rem 2.5rem; margin: 0.8rem 0; }
@media (min-width: 60rem) { .lane { grid-template-columns: 26rem minmax(0, 1fr); } }
.key { max-width: 26rem; }
.lane th, .lane td { padding-right: 0.6rem; font-size: 0.92rem; }
.lane th[scope=row] { white-space: nowrap; }
table { margin: 0.6rem 0 1rem; }
@media (max-width: 40rem) { .wide caption { display: block; } .wide td { display: inline-block; margin-right: 1rem; } }
@media (min-width: 60rem) {
  header { display: grid; grid-template-columns: 1fr 1fr; gap: 0 2.5rem; align-items: start; }
  .choice { display: flex; flex-wrap: wrap; gap: 0 1.6rem; max-width: none; }
}
details { margin: 0.6rem 0; }
summary { padding: 0.3rem 0; cursor: pointer; color: var(--soft); }
caption { padding: 0.8rem 0 0.2rem; text-align: left; font-weight: 600; }
pre { max-width: 100%; overflow-wrap: anywhere; white-space: pre-wrap; font-size: 0.8rem; }
${compared.map(({ sign }) => `main:has(#${choiceId(sign)}:not(:checked)) [data-part="${partOf(sign)}"] { display: none; }`).join('\n')}
@supports not selector(:has(*)) { .choice { display: none; } }
@page { margin: 14mm; }
@media print {
  :root { color-scheme: light; ${inkVariables('light')} }
  * { print-color-adjust: exact; -webkit-print-color-adjust: exact; }
  body { font-size: 10pt; }
  main { max-width: none; padding: 0; }
  nav, .choice { display: none; }
  h2, h3, summary { break-after: avoid; }
  figure svg, tr, .small > div { break-inside: avoid; }
  .lane { display: block; }
  .lane > div:first-child { float: left; width: 80mm; margin-right: 10mm; }
  .lane table { clear: both; }
  .key { max-width: 82mm; margin-left: auto; }
  .small { grid-template-columns: 1fr 1fr; }
  table, thead th, .lane th, .lane td { font-size: 8.5pt; }
}
`;

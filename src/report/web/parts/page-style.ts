import { partOf } from '../../picture/compared.js';
import { inkVariables } from '../../scene/screen-inks.js';
import { BASE_STYLE } from './base-style.js';
import { choiceId } from './choice-html.js';

/**
 * The style of a page about layouts.
 *
 * @param signs  of the layouts whose paths are drawn only where their boxes are ticked
 */
export const pageStyle = (signs: readonly string[]): string => `${BASE_STYLE}
h2 { margin-top: 1rem; font-size: 1.2rem; }
footer { margin-top: 0.7rem; }
footer p { max-width: none; }
.chart { margin: 0 0 0.2rem; font-weight: 700; }
a { color: inherit; }
a:focus-visible, summary:focus-visible, input:focus-visible { outline: 3px solid var(--series1); outline-offset: 2px; }
nav ul { display: flex; flex-wrap: wrap; gap: 0 1.2rem; max-width: none; padding: 0; list-style: none; font-size: 0.9rem; }
nav a { display: inline-block; padding: 0.3rem 0; }
.notice, .cautions { margin: 0.5rem 0; padding: 0.3rem 0.9rem; border: 1px solid var(--soft); border-left-width: 5px; }
.notice { max-width: 42rem; }
.cautions { font-size: 0.85rem; }
.cautions h2 { margin: 0; border: 0; font-size: 0.95rem; }
.cautions ul { margin: 0; max-width: none; }
dl { display: grid; grid-template-columns: max-content 1fr; column-gap: 0.6rem; margin: 0; }
dl > div { display: grid; grid-column: 1 / -1; grid-template-columns: subgrid; padding: 0.25rem 0; border-top: 1px solid var(--faint); }
dt { font-weight: 700; }
dd { margin: 0; overflow-wrap: anywhere; }
header { display: grid; grid-template-columns: minmax(0, 1fr); gap: 0.6rem 2rem; margin: 0.6rem 0; align-items: start; }
header .beside { max-width: 26rem; }
.next p { margin: 0; max-width: none; }
.note { max-width: none; color: var(--soft); font-size: 0.85rem; }
code { font-size: 0.85rem; overflow-wrap: anywhere; }
figcaption p { margin: 0.2rem 0; max-width: none; color: var(--soft); font-size: 0.85rem; }
.choice { margin: 0.6rem 0; padding: 0.2rem 0.9rem 0.4rem; border: 1px solid var(--soft); }
.choice label { display: inline-block; padding: 0.2rem 1rem 0.2rem 0; }
.choice input { width: 1.15rem; height: 1.15rem; margin: 0 0.5rem 0 0; vertical-align: -0.2rem; }
.sign { display: inline-block; min-width: 1.2rem; margin-right: 0.3rem; border: 2px solid; border-radius: 0.7rem; line-height: 1.2rem; text-align: center; font-weight: 700; color: var(--ink); }
.small { display: grid; grid-template-columns: repeat(auto-fill, minmax(min(20rem, 100%), 1fr)); gap: 0.8rem 2rem; margin: 0.5rem 0; }
.small > div { max-width: 24rem; }
.lane { display: grid; grid-template-columns: minmax(0, 24rem); gap: 0.5rem 2.5rem; margin: 0.3rem 0; }
.key { max-width: 24rem; }
.lane th, .lane td { padding-right: 0.6rem; font-size: 0.9rem; }
.lane th[scope=row] { white-space: nowrap; }
table { margin: 0.3rem 0 0.5rem; line-height: 1.3; }
th, td { padding-top: 0.12rem; padding-bottom: 0.12rem; }
details { margin: 0; }
.on-paper { display: none; }
summary { padding: 0.1rem 0; cursor: pointer; color: var(--soft); font-size: 0.9rem; }
#ball-figure svg { max-width: 21rem; }
caption { padding: 0.5rem 0 0.2rem; text-align: left; font-weight: 600; }
pre { max-width: 100%; overflow-wrap: anywhere; white-space: pre-wrap; font-size: 0.8rem; }
@media (max-width: 30rem) {
  html { font-size: 94%; }
  main { padding: 0.3rem 0.75rem; }
  #ball-figure svg { max-width: none; }
  body { line-height: 1.2; }
  header { gap: 0.3rem; margin: 0; }
  header .answer p, header .next p { margin: 0.15rem 0; font-size: 1rem; }
  .next p { line-height: 1.15; }
  h1 { font-size: 1.45rem; }
  .answer dl > div { display: block; padding: 0.1rem 0; }
  .answer dt, .answer dd { display: inline; }
  .answer dt { margin-right: 0.4rem; }
  .lead .small { margin: 0; }
  .lead summary { padding: 0; line-height: 1.1; }
  .answer .notice { margin: 0.2rem 0; padding: 0.1rem 0.6rem; }
}
@media (max-width: 40rem) { .wide caption { display: block; } .wide td { display: inline-block; margin-right: 1rem; } }
@media (min-width: 48rem) {
  html { font-size: 94%; }
  body { line-height: 1.42; }
  h2 { margin-top: 0.85rem; }
  details:not([open]) { display: inline-block; margin-right: 1.6rem; }
  .pictured { grid-template: 'answer beside' 'lead below' 'next next' 'cautions cautions' / minmax(0, 1fr) minmax(0, 24rem); }
${['answer', 'lead', 'next', 'beside', 'below', 'cautions'].map((name) => `  .pictured .${name} { grid-area: ${name}; }`).join('\n')}
}
@media (min-width: 66rem) {
  .whole:not(.pictured) { grid-template-columns: minmax(0, 1fr) minmax(0, 24rem); }
  .whole:not(.pictured) > .answer { grid-column: 1 / -1; }
  .pictured { grid-template: 'answer answer beside' auto 'answer answer next' auto 'answer answer cautions' 1fr 'lead below cautions' auto / minmax(0, 1fr) minmax(0, 1fr) minmax(0, 24rem); }
}
@media (min-width: 60rem) { .lane { grid-template-columns: 23rem minmax(0, 1fr); } }
${signs.map((sign) => `#lane-figure:has(#${choiceId(sign)}:not(:checked)) [data-part="${partOf(sign)}"] { display: none; }`).join('\n')}
@supports not selector(:has(*)) { .choice { display: none; } }
@page { margin: 12mm; }
@media print {
  :root { color-scheme: light; ${inkVariables('light')} --oil: #000; --soft: #333; }
  * { print-color-adjust: exact; -webkit-print-color-adjust: exact; }
  html { font-size: 9.5pt; }
  body { line-height: 1.3; }
  main { max-width: none; padding: 0; }
  h1 { font-size: 18pt; }
  h2 { margin: 0.7rem 0 0.3rem; font-size: 12pt; }
  nav, .choice, details { display: none !important; }
  .cautions { font-size: 7.5pt; }
  .cautions ul { columns: 2; column-gap: 2rem; }
  .on-paper { display: block; }
  .on-paper ul { max-width: none; columns: 2; column-gap: 2rem; font-size: 7.5pt; line-height: 1.3; }
  footer { margin-top: 0.5rem; }
  h2, .chart { break-after: avoid; }
  figcaption { break-before: avoid; }
  header.whole { break-after: page; }
  figure svg, tr, .small > div { break-inside: avoid; }
  header { gap: 1mm 6mm; }
  .pictured { grid-template: 'answer beside' 'lead below' 'next next' 'cautions cautions' / minmax(0, 1fr) 78mm; }
  .pictured .lead { max-width: 90mm; }
  .whole:not(.pictured) { grid-template-columns: minmax(0, 1fr); }
  .lane .small { grid-template-columns: minmax(0, 1fr); }
  .lane { grid-template-columns: 66mm minmax(0, 1fr); gap: 0 5mm; }
  .small { grid-template-columns: repeat(2, minmax(0, 80mm)); }
  .pictured .small { grid-template-columns: minmax(0, 1fr); }
  .key { max-width: 66mm; }
  table, thead th { font-size: 8pt; }
  .lane th, .lane td, .lane thead th { padding-right: 2mm; font-size: 7.2pt; }
}
`;

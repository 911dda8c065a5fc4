import { BASE_STYLE } from '../web/parts/base-style.js';

/**
 * The page's style: one column on a telephone, two on a desk, and on paper the printed sheet alone.
 *
 * @param paperSize  as CSS writes it, width first
 */
export const screenStyle = (paperSize: string): string => `${BASE_STYLE}
.pictures { display: flex; flex-wrap: wrap; gap: 1rem 2rem; margin: 1rem 0; }
figure { flex: 1 1 18rem; max-width: 32rem; }
figcaption { color: var(--soft); text-align: center; font-size: 0.9rem; }
.pair { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(22rem, 100%), 1fr)); column-gap: 2.5rem; }
.facts { margin-top: 1.5rem; columns: 2 24rem; column-gap: 2.5rem; }
.facts section { break-inside: avoid; }
.facts section:first-child h2 { margin-top: 0; }
.stop { border: 3px solid var(--ink); padding: 0.5rem 1rem; margin: 0.75rem 0; }
.stop p { margin: 0.2rem 0; }
.sheet { display: none; }
@media (max-width: 30rem) { table { font-size: 0.8rem; } }
@page { size: ${paperSize}; margin: 0; }
@media print {
  body { background: #ffffff; }
  main { display: none; }
  .sheet { display: block; height: 100vh; overflow: hidden; break-after: page; }
  .sheet:last-child { break-after: auto; }
  .sheet svg { display: block; width: 100%; height: 100%; }
}
`;

import type { ModelCard } from '../../src/regression/card.js';
import type { Errors } from './errors.js';

/** The model card as a page to read. */
export function modelPage(card: ModelCard): string {
  const { data, fit, file, inputs, outputs, physics } = card;
  return `# The fitted regression

${card.about} Written by \`npm run fit\`; do not edit.

| | |
|---|---|
| file | \`${file.name}\`, ${Math.round(file.bytes / 1024)} kB, ONNX opset 17, IR version 8, sha256 ${file.sha256.slice(0, 16)}… |
| version, physics | ${card.version}, ${physics.hash} (hash of the reaction numbers of ${physics.numbers.length / outputs.length} probe shots) |
| data | seed ${data.seed}, ${data.lanes} lanes; fitted on ${data.fittedOn} shots, ${data.heldOut} held out (${data.split}) |
| fit | linear part, ${fit.squares} squares, tanh layers of ${fit.widths.join(' and ')}; ${fit.epochs} passes in batches of ${fit.batch}, rate ${fit.rate}, seed ${fit.seed}; weight of each output: \`tests/fit/fit-network.ts\` |

## Errors on held-out shots

| output | unit | R² | RMSE | 95 % | worst |
|---|---|---|---|---|---|
${outputs.map(({ name, unit, heldOut }) => `| ${name} | ${unit} | ${errorCells(heldOut)} |`).join('\n')}

Other fits of the same shots, RMSE:

| fit | ${outputs.map(({ name }) => name).join(' | ')} |
|---|${outputs.map(() => '---').join('|')}|
${card.comparison.map((row) => `| ${row.fit} | ${row.heldOut.map(({ rmse }) => figure(rmse)).join(' | ')} |`).join('\n')}
| the network | ${outputs.map(({ heldOut }) => figure(heldOut.rmse)).join(' | ')} |

How far the engine itself moves when every input of a shot changes by up to this share, root mean square. A bowler is
known to 1 % at best, so a fit cannot usefully be better than the second row.

| change | ${outputs.map(({ name }) => name).join(' | ')} |
|---|${outputs.map(() => '---').join('|')}|
${card.roughness.map(({ share, rmse }) => `| ${100 * share} % | ${rmse.map(figure).join(' | ')} |`).join('\n')}

By thirds of an input, RMSE:

| input | from | to | ${outputs.map(({ name }) => name).join(' | ')} |
|---|---|---|${outputs.map(() => '---').join('|')}|
${card.regions.map((row) => `| ${row.input} | ${figure(row.from)} | ${figure(row.to)} | ${row.rmse.map(figure).join(' | ')} |`).join('\n')}

## Inputs

In SI, in this order, with the range of the fit. Outputs are in SI too, in the order above.

| input | unit | least | most |
|---|---|---|---|
${inputs.map(({ name, unit, least, most }) => `| ${name} | ${unit} | ${figure(least)} | ${figure(most)} |`).join('\n')}
`;
}

const errorCells = ({ r2, rmse, p95, worst }: Errors): string =>
  [r2.toFixed(4), figure(rmse), figure(p95), figure(worst)].join(' | ');

const figure = (value: number): string => String(Number(value.toPrecision(3)));

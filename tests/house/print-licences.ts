import { licences } from './licences.js';

const [shipped, others] = [false, true].map((isDev) => licences().filter(({ dev }) => dev === isDev));
const counts = new Map<string, number>();
for (const { licence } of others) counts.set(licence, (counts.get(licence) ?? 0) + 1);

process.stdout.write(
  [
    'What flarewise brings along:',
    ...shipped.map(({ name, version, licence }) => `${licence}\t${name} ${version}`).sort(),
    '',
    'Packages needed only to work on it, by licence:',
    ...[...counts].map(([licence, count]) => `${licence}\t${count}`).sort(),
    '',
  ].join('\n'),
);

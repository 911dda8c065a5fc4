import { readFileSync } from 'node:fs';

/** The README without its reference, whose examples are those of the helps. */
const readme = (): string => page('README.md').split('<!-- reference:', 1)[0];

const page = (name: string): string => readFileSync(new URL(`../../${name}`, import.meta.url), 'utf8');

/** Commands in blocks of the README, and those in its prose that can be copied whole, each as a shell takes it, in an order in which they work. */
export const readmeCommands = (): readonly string[] => {
  const blocks = [...readme().matchAll(/^```(\w*)\n(.*?)^```$/gms)]
    .filter(([, language]) => language === '')
    .map(([, , block]) => block.replace(/\\\n\s*/g, ' '));
  const lines = blocks.flatMap((block) => block.split('\n')).filter((line) => line.startsWith('flarewise '));
  const inProse = [...readme().matchAll(/`(flarewise [a-z]+ [^`]+)`/g)]
    .map(([, line]) => (line as string).replace(/\s+/g, ' '))
    .filter((line) => !/\b[A-Z]{2,}\b|^flarewise shelf import /.test(line) && !lines.includes(line));
  const isKept = (line: string): boolean => /^flarewise shelf +add /.test(line);
  return [...inProse.filter(isKept), ...lines, ...inProse.filter((line) => !isKept(line))];
};

/** Names of the scripts of npm that both pages tell to run. */
export const scriptsTold = (): readonly string[] =>
  [
    ...`${page('README.md')}${page('DEVELOPERS.md')}`.matchAll(
      /npm (?:run (?:--silent |-s )?([\w:]+)|(start|test)\b)/g,
    ),
  ].map(([, run, own]) => run ?? own);

/** Commands of npm and npx that both pages tell to type, each as a shell takes it. */
export const npmCommands = (): readonly string[] => [
  ...new Set(
    [...`${page('README.md')}${page('DEVELOPERS.md')}`.matchAll(/(?:^|`)(np[mx] [^`\n]+)(?:`|$)/gm)].map(
      ([, line]) => (line as string).replace(/^npm ci && /, ''),
    ),
  ),
];

import { readFileSync } from 'node:fs';

/** The README without its reference, whose examples are those of the helps. */
const readme = (): string => page('README.md').split('<!-- reference:', 1)[0];

const page = (name: string): string => readFileSync(new URL(`../../${name}`, import.meta.url), 'utf8');

/** Commands that stand in blocks of the README, and those in its prose that can be copied whole, each as a shell takes it. */
export const readmeCommands = (): readonly string[] => {
  const blocks = [...readme().matchAll(/^```\n(.*?)^```$/gms)].map(([, block]) =>
    block.replace(/\\\n\s*/g, ' '),
  );
  const lines = blocks.flatMap((block) => block.split('\n')).filter((line) => line.startsWith('flarewise '));
  const inProse = [...readme().matchAll(/`(flarewise shelf add [^`]+)`/g)].map(([, line]) =>
    line.replace(/\s+/g, ' '),
  );
  return [...inProse, ...lines];
};

/** Names of the scripts of npm that both pages tell to run. */
export const scriptsTold = (): readonly string[] =>
  [
    ...`${page('README.md')}${page('DEVELOPERS.md')}`.matchAll(
      /npm (?:run (?:--silent |-s )?([\w:]+)|(start|test)\b)/g,
    ),
  ].map(([, run, own]) => run ?? own);

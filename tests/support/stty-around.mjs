// Runs `node MAIN ...ARGS` on this terminal and says how the terminal was set before and after, and how the program ended.
import { spawn, spawnSync } from 'node:child_process';

const settings = () =>
  spawnSync('stty', ['-g'], { stdio: ['inherit', 'pipe', 'inherit'], encoding: 'utf8' }).stdout.trim();

process.on('SIGINT', () => {}); // ctrl-C is for the program
console.log(`before ${settings()}`);
const child = spawn(process.execPath, process.argv.slice(2), { stdio: 'inherit' });
child.on('exit', (code, signal) => console.log(`\nafter ${settings()} ${signal ?? code}`));

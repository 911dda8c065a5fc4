// Runs `node MAIN ...ARGS` on this terminal and says how the terminal was set before and after, its process, and how it ended.
import { spawn, spawnSync } from 'node:child_process';

const settings = () =>
  spawnSync('stty', ['-g'], { stdio: ['inherit', 'pipe', 'inherit'], encoding: 'utf8' }).stdout.trim();

process.on('SIGINT', () => {}); // ctrl-C is for the program
console.log(`before ${settings()}`);
const child = spawn(process.execPath, process.argv.slice(2), { stdio: 'inherit' });
console.log(`runs ${child.pid}`);
child.on('exit', (code, signal) => console.log(`\nafter ${settings()} ${signal ?? code}`));

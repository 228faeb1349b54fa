// `npm start`: draws every demo spec of templates-spec/ into output/, with the command as a user has it.
import { spawnSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = join(dirname(fileURLToPath(import.meta.url)), '..');
const demos = readdirSync(join(root, 'templates-spec')).filter((name) => name.endsWith('.yaml')).sort().map((name) => join('templates-spec', name));
if (demos.length === 0) throw new Error('templates-spec/ holds no demo spec');
const { status } = spawnSync(process.execPath, [join(root, 'dist/roundwright.cjs'), 'draw', ...demos], { stdio: 'inherit', cwd: root });
process.exitCode = status ?? 1;

// Rewrites manifest.sha256: one line a file of the seed folder, as sha256sum prints it, in order of the path.
import { createHash } from 'node:crypto';
import { readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { byCodeUnit } from './lib/table.mjs';

const MANIFEST = 'manifest.sha256';
const seed = process.argv[2];
if (!seed) throw new Error('the seed folder is missing; run derive.sh --manifest instead');

const paths = readdirSync(seed, { withFileTypes: true, recursive: true })
  .filter((entry) => entry.isFile() && entry.name !== MANIFEST)
  .map((entry) => relative(seed, join(entry.parentPath ?? entry.path, entry.name)).replaceAll(sep, '/'))
  .sort(byCodeUnit);

const lines = paths.map((path) => `${createHash('sha256').update(readFileSync(`${seed}/${path}`)).digest('hex')}  ${path}\n`);
writeFileSync(`${seed}/${MANIFEST}`, lines.join(''));
console.log(`manifest: ${paths.length} files`);

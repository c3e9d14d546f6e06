// Tables are tab-separated UTF-8 with LF. Lines that start with '#' are comments; the last of them names the columns.
import { readFileSync, writeFileSync, mkdirSync } from 'node:fs';
import { dirname } from 'node:path';

/** Writes a table; rows are arrays of cells, already in order. Answers the number of rows. */
export function writeTable(path, comments, columns, rows) {
  for (const row of rows) {
    if (row.length !== columns.length || row.some((cell) => /[\t\n\r]/.test(cell))) {
      throw new Error(`${path}: this row does not fit the columns ${columns.join(', ')}: ${JSON.stringify(row)}`);
    }
  }
  const lines = [...comments.map((comment) => `# ${comment}`), `# ${columns.join('\t')}`, ...rows.map((row) => row.join('\t'))];
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, lines.join('\n') + '\n');
  return rows.length;
}

/** Reads a table as arrays of cells; blank cells at the end may be missing, as editors cut them off. */
export function readTable(path) {
  const lines = readFileSync(path, 'utf8').split('\n').filter((line) => line !== '');
  const firstRow = lines.findIndex((line) => !line.startsWith('#'));
  const columns = lines.at(firstRow < 0 ? -1 : firstRow - 1).split('\t').length;
  return lines
    .filter((line) => !line.startsWith('#'))
    .map((line) => line.split('\t'))
    .map((row) => {
      if (row.length > columns) throw new Error(`${path}: ${columns} columns expected in: ${row.join(' | ')}`);
      return [...row, ...Array(columns - row.length).fill('')];
    });
}

export const PLAIN = /^[a-z]+$/;

/** Plain code-unit order, the same on every machine and under every locale. */
export function byCodeUnit(left, right) {
  return left < right ? -1 : left > right ? 1 : 0;
}

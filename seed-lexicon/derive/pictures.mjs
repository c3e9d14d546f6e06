// Pictures that have a word as their name: OpenMoji's drawings for the words that pictures/decisions.tsv accepts.
import { readFileSync, writeFileSync, mkdirSync, rmSync } from 'node:fs';
import { readTable, writeTable, byCodeUnit } from './lib/table.mjs';
import { plainSvg } from './lib/svg.mjs';
import { downloads, seed } from './lib/arguments.mjs';

const openmoji = `${downloads}/openmoji`;
const version = JSON.parse(readFileSync(`${openmoji}/package.json`, 'utf8')).version;
const made = new Map(JSON.parse(readFileSync(`${openmoji}/data/openmoji.json`, 'utf8')).map((each) => [each.hexcode, each]));
const names = cldrNames();

const accepted = readTable(`${seed}/pictures/decisions.tsv`).map(checked).filter(({ decision }) => decision === 'yes');
rmSync(`${seed}/pictures/svg`, { recursive: true, force: true });
mkdirSync(`${seed}/pictures/svg`, { recursive: true });
for (const code of new Set(accepted.map(({ code }) => code))) {
  writeFileSync(`${seed}/pictures/svg/${idOf(code)}.svg`, plainSvg(readFileSync(`${openmoji}/color/svg/${code}.svg`, 'utf8'), code));
}
const count = writeTable(
  `${seed}/pictures/pictures.tsv`,
  ['Words and the pictures that have them as their names, with what must be said of each. See SOURCE.md.',
   'Written by derive/pictures.mjs; not for editing by hand: correct decisions.tsv.'],
  ['word', 'id', 'title', 'author', 'source'],
  accepted.sort((left, right) => byCodeUnit(left.word, right.word)).map(rowOf));
console.log(`pictures: ${count} words`);

function rowOf({ word, code }) {
  const { annotation, openmoji_author: author } = made.get(code);
  return [word, idOf(code), annotation, author, `OpenMoji ${version}, ${code}`];
}

function idOf(code) {
  return `openmoji-${code.toLowerCase()}`;
}

/** Names are facts that this table may not invent: CLDR's, or of OpenMoji's own pictures OpenMoji's. */
function checked([word, code, decision, name, reason]) {
  const picture = made.get(code);
  if (!picture) throw new Error(`pictures/decisions.tsv: ${word}: OpenMoji has no picture ${code}`);
  if (!['yes', 'no'].includes(decision) || !reason) throw new Error(`pictures/decisions.tsv: ${word}: decide yes or no, with a reason`);
  const given = picture.group.startsWith('extras') ? picture.annotation : names.get(picture.emoji.replaceAll('\ufe0f', ''));
  if (given?.toLowerCase() !== name) throw new Error(`pictures/decisions.tsv: ${word}: ${code} is named ${given}, not ${name}`);
  return { word, code, decision };
}

function cldrNames() {
  const file = `${downloads}/cldr-annotations-full/annotations/en/annotations.json`;
  const { annotations } = JSON.parse(readFileSync(file, 'utf8')).annotations;
  return new Map(Object.entries(annotations).filter(([, { tts }]) => tts).map(([emoji, { tts }]) => [emoji.replaceAll('\ufe0f', ''), tts[0]]));
}

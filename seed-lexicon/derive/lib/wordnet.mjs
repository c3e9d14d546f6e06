// WordNet 3.1 as plain files: lemmas with their capitals, senses, and the exception lists of its morphology.
import { readFileSync } from 'node:fs';

const FOLDER = 'wordnet/net/sf/extjwnl/data/wordnet/wn31';
export const PARTS_OF_SPEECH = ['noun', 'verb', 'adj', 'adv'];
const SUFFIX_RULES = {
  noun: [['s', ''], ['ses', 's'], ['xes', 'x'], ['zes', 'z'], ['ches', 'ch'], ['shes', 'sh'], ['men', 'man'], ['ies', 'y']],
  verb: [['s', ''], ['ies', 'y'], ['es', 'e'], ['es', ''], ['ed', 'e'], ['ed', ''], ['ing', 'e'], ['ing', '']],
  adj: [['er', ''], ['est', ''], ['er', 'e'], ['est', 'e']],
  adv: [],
};

export function readWordNet(downloads) {
  return new WordNet(`${downloads}/${FOLDER}`);
}

class WordNet {
  /** pos → lemma as written → senses, each { instance, gloss, file } */
  senses = {};
  /** pos → inflected form → bases, of the words that don't follow the rules */
  exceptions = {};

  constructor(folder) {
    for (const pos of PARTS_OF_SPEECH) {
      this.senses[pos] = readSenses(`${folder}/data.${pos}`);
      this.exceptions[pos] = readExceptions(`${folder}/${pos}.exc`);
    }
    this.capitalised = this.#capitalisedForms();
    this.uses = readUses(`${folder}/cntlist.rev`);
  }

  hasLemma(pos, lemma) {
    return this.senses[pos].has(lemma);
  }

  isLemma(lemma) {
    return PARTS_OF_SPEECH.some((pos) => this.hasLemma(pos, lemma));
  }

  /** How often the tagged texts behind WordNet use this lemma in this part of speech. */
  useCount(pos, lemma) {
    return this.uses.get(`${pos} ${lemma}`) ?? 0;
  }

  /** Whether the word is a lemma, or WordNet's own morphology leads from it to one. */
  knows(word) {
    return this.isLemma(word) || PARTS_OF_SPEECH.some((pos) => this.basesOf(pos, word).length > 0);
  }

  basesOf(pos, word) {
    const byRule = SUFFIX_RULES[pos]
      .filter(([ending]) => word.endsWith(ending) && word.length > ending.length)
      .map(([ending, replacement]) => word.slice(0, -ending.length) + replacement);
    return [...(this.exceptions[pos].get(word) ?? []), ...byRule].filter((base) => base !== word && this.hasLemma(pos, base));
  }

  /** The spellings with capitals of a lower-case word: "turkey" → "Turkey". */
  capitalisedForms(word) {
    return this.capitalised.get(word) ?? [];
  }

  #capitalisedForms() {
    const forms = new Map();
    for (const pos of PARTS_OF_SPEECH) {
      for (const [lemma, senses] of this.senses[pos]) {
        const lower = lemma.toLowerCase();
        if (lower !== lemma) forms.set(lower, [...(forms.get(lower) ?? []), { lemma, pos, senses }]);
      }
    }
    return forms;
  }
}

function readSenses(path) {
  const lemmas = new Map();
  for (const line of readFileSync(path, 'latin1').split('\n')) {
    if (line === '' || line.startsWith(' ')) continue;
    const [data, gloss = ''] = line.split(' | ');
    const fields = data.split(' ');
    const sense = { instance: fields.includes('@i'), gloss: gloss.trim(), file: Number(fields[1]) };
    const words = parseInt(fields[3], 16);
    for (let index = 0; index < words; index++) {
      const lemma = fields[4 + 2 * index].replace(/\(\w+\)$/, '');
      lemmas.set(lemma, [...(lemmas.get(lemma) ?? []), sense]);
    }
  }
  return lemmas;
}

function readExceptions(path) {
  const forms = new Map();
  for (const line of readFileSync(path, 'latin1').split('\n')) {
    const [form, ...bases] = line.trim().split(/\s+/);
    if (form) forms.set(form, [...(forms.get(form) ?? []), ...bases]);
  }
  return forms;
}

// Sense keys look like "building%1:06:00::"; the digit is the part of speech, 5 an adjective of a cluster.
const POS_OF_SENSE_KEY = { 1: 'noun', 2: 'verb', 3: 'adj', 4: 'adv', 5: 'adj' };

function readUses(path) {
  const uses = new Map();
  for (const line of readFileSync(path, 'latin1').split('\n')) {
    const [senseKey, , count] = line.split(' ');
    if (!senseKey) continue;
    const [lemma, rest] = senseKey.split('%');
    const key = `${POS_OF_SENSE_KEY[rest[0]]} ${lemma}`;
    uses.set(key, (uses.get(key) ?? 0) + Number(count));
  }
  return uses;
}

// Reads what espeak-ng 1.51 writes with -x --sep: its phoneme mnemonics, which tell more than its IPA (BATH `aa` from PALM `A:`,
// FORCE `o@` from NORTH `O@`, the three vowels of NURSE), into the inventory of an accent.

const CONSONANTS = {
  p: 'p', b: 'b', t: 't', d: 'd', k: 'k', g: 'ɡ', tS: 'tʃ', dZ: 'dʒ', f: 'f', v: 'v', T: 'θ', D: 'ð', s: 's', z: 'z', S: 'ʃ',
  Z: 'ʒ', h: 'h', m: 'm', n: 'n', N: 'ŋ', l: 'l', 'l#': 'l', r: 'ɹ', 'r-': 'ɹ', j: 'j', w: 'w', ';': '',
};

const SOUTHERN = {
  ...CONSONANTS, x: 'k', 'w#': 'w',
  I: 'ɪ', I2: 'ɪ', E: 'e', a: 'æ', aa: 'ɑː', 'A:': 'ɑː', 'A@': 'ɑː', 0: 'ɒ', 'O~': 'ɒ n', 'A~': 'ɒ n', 'O:': 'ɔː', 'O@': 'ɔː', O: 'ɔː',
  V: 'ʌ', U: 'ʊ', 'u:': 'uː', 'i:': 'iː', i: 'i', '3:': 'ɜː', '@': 'ə', '@2': 'ə', '@-': 'ə', 3: 'ə', 'a#': 'ə', '@L': 'ə l',
  eI: 'eɪ', aI: 'aɪ', aI2: 'aɪ', OI: 'ɔɪ', aU: 'aʊ', oU: 'əʊ', 'i@': 'ɪə', 'i@3': 'ɪə', 'e@': 'eə', 'U@': 'ʊə', 'aI@': 'aɪ ə',
};

// Length is no phoneme in Scotland, FOOT and GOOSE, TRAP and PALM, LOT and THOUGHT are one vowel each, and every r is said.
const SCOTTISH = {
  ...CONSONANTS, x: 'x', 'w#': 'ʍ',
  I: 'ɪ', I2: 'ɪ', E: 'ɛ', a: 'a', aa: 'a', 'A:': 'a', 'A@': 'a ɹ', 0: 'ɔ', 'O~': 'ɔ n', 'A~': 'ɔ n', 'O:': 'ɔ', 'O@': 'ɔ ɹ', O: 'ɔ', 'o@': 'o ɹ',
  V: 'ʌ', U: 'ʉ', 'u:': 'ʉ', 'i:': 'i', i: 'i', '3:': 'ɛ ɹ', VR: 'ʌ ɹ', IR: 'ɪ ɹ', '@': 'ə', '@2': 'ə', '@-': 'ə', 3: 'ə ɹ', 'a#': 'ə', '@L': 'ə l',
  eI: 'e', aI: 'aɪ', aI2: 'aɪ', OI: 'ɔɪ', aU: 'ʌʉ', oU: 'o', 'i@': 'i ə', 'i@3': 'i ɹ', 'e@': 'e ɹ', 'U@': 'ʉ ɹ', 'aI@': 'aɪ ə ɹ',
};

/** For each accent the voice that speaks it, and its sounds for the voice's mnemonics. */
export const VOICES = {
  'en-GB': { voice: 'en-gb-x-rp', sounds: SOUTHERN },
  'en-GB-scotland': { voice: 'en-gb-scotland', sounds: SCOTTISH, adjust: adjustScottish },
};

/** The sounds of one line as an array. */
export function readLine(line, { sounds, adjust = (mnemonics) => mnemonics }) {
  const mnemonics = line.trim().split(' ').map((mnemonic) => mnemonic.replace(/[',%_]/g, '')).filter((mnemonic) => mnemonic !== '');
  const said = adjust(mnemonics, line).map((mnemonic) => {
    if (!(mnemonic in sounds)) throw new Error(`espeak-ng writes ${mnemonic}, which is not mapped: ${line}`);
    return sounds[mnemonic];
  });
  return said.join(' ').split(/ +/).filter((sound) => sound !== '').reduce(onceR, []);
}

/** A vowel that holds its r, and the r that the voice also writes, are one. */
function onceR(before, sound) {
  return sound === 'ɹ' && before.at(-1) === 'ɹ' ? before : [...before, sound];
}

/** The voice writes the last vowel of "banana" V; before r, `i@` is the vowel of NEAR. */
function adjustScottish(mnemonics, line) {
  return mnemonics.map((mnemonic, index) => {
    const last = index === mnemonics.length - 1;
    if (last && index > 0 && mnemonic === 'V' && !/['V,]V$/.test(line.trim())) return '@';
    return mnemonic === 'i@' && /^r/.test(mnemonics[index + 1] ?? '') ? 'i@3' : mnemonic;
  });
}

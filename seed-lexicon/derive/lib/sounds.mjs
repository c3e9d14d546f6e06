// Do the sounds of a form fit the sounds of its base and the ending? Sounds are ARPAbet strings; stress is ignored.

const SIBILANTS = new Set(['S', 'Z', 'SH', 'ZH', 'CH', 'JH']);
const VOICELESS = new Set(['P', 'T', 'K', 'F', 'TH', 'S', 'SH', 'CH', 'HH']);
const ALVEOLAR_STOPS = new Set(['T', 'D']);
const VOWEL = /\b[AEIOU][A-Z]\b/g;
const WEAK_VOWELS = ['AH', 'IH', 'EH'];

const ENDINGS = {
  s: (last) => (SIBILANTS.has(last) ? weak('Z') : VOICELESS.has(last) ? ['S'] : ['Z']),
  ed: (last) => (ALVEOLAR_STOPS.has(last) ? weak('D') : VOICELESS.has(last) ? ['T'] : ['D']),
  ing: () => ['IH NG'],
  er: () => ['ER'],
  est: () => weak('S T'),
};

/** Whether any pronunciation of the form is any pronunciation of the base with the ending added. */
export function fits(basePronunciations, formPronunciations, ending) {
  const forms = new Set(formPronunciations.flatMap(alike));
  return basePronunciations.flatMap(alike).some((base) => extended(base, ending).some((form) => isAmong(forms, form)));
}

/** Ending and all, the vowels may have been made one. */
function isAmong(forms, form) {
  return forms.has(form) || (form.split(' ').filter((phone) => phone === 'AH').length > 1 && forms.has(form.replace(VOWEL, 'AH')));
}

function extended(base, ending) {
  const phones = base.split(' ');
  const whole = ENDINGS[ending](phones.at(-1)).map((tail) => `${base} ${tail}`);
  return [...whole, ...withLostVowel(phones, ending)];
}

/** "double" D AH B AH L, "doubling" D AH B L IH NG; "longer" gets back its G. */
function withLostVowel(phones, ending) {
  if (ending === 's' || ending === 'ed') return [];
  const tails = ENDINGS[ending](phones.at(-1));
  const lost = phones.at(-2) === 'AH' && phones.length > 3 ? [[...phones.slice(0, -2), phones.at(-1)].join(' ')] : [];
  const hardened = phones.at(-1) === 'NG' ? [`${phones.join(' ')} G`] : [];
  return [...lost, ...hardened].flatMap((stem) => tails.map((tail) => `${stem} ${tail}`));
}

/**
 * The pronunciation without stress. In longer words the dictionary is free with vowels ("inspire" IH N, "inspired" AH N),
 * so all their vowels count as one.
 */
function alike(pronunciation) {
  const plain = pronunciation.replace(/\d/g, '');
  return pronunciation.match(/\d/g).length < 2 ? [plain] : [plain, plain.replace(VOWEL, 'AH')];
}

function weak(tail) {
  return WEAK_VOWELS.map((vowel) => `${vowel} ${tail}`);
}

// The spelling rules of the regular endings: which forms may a base have?

const SIBILANT_LETTERS = /(s|x|z|ch|sh)$/;
const CONSONANT_Y = /[^aeiou]y$/;
const CONSONANT_O = /[^aeiou]o$/;
const VOWEL_THEN_CONSONANT = /(?:^|[^aeiou]|qu)[aeiouy][^aeiouwxy]$/;
const ONE_SHORT_SYLLABLE = /^(?:y|[^aeiouy]*(?:qu)?)[aeiouy][^aeiouwxy]$/;
/** "fuelled", "dialling" */
const BRITISH_L = /[ui][ea]l$/;
// "buses" and "gases" stand beside "busses" and "gasses".
const MAY_STAY_SINGLE = /^(bus|gas|yes|pus)$/;

/** plural of a noun and third person of a verb */
export function withS(base) {
  if (CONSONANT_Y.test(base)) return [base.slice(0, -1) + 'ies'];
  if (SIBILANT_LETTERS.test(base)) return unique([base + 'es', ...doubled(base, /[sz]$/).map((stem) => stem + 'es'), ...hardCh(base)]);
  if (CONSONANT_O.test(base)) return [base + 's', base + 'es'];
  return [base + 's'];
}

export function withEd(base) {
  if (base.endsWith('e')) return [base + 'd'];
  return beforeVowel(base).map((stem) => stem + 'ed');
}

export function withIng(base) {
  if (/ie$/.test(base)) return [base.slice(0, -2) + 'ying'];
  if (/[^eoy]e$/.test(base)) return unique([base.slice(0, -1) + 'ing', ...(/[gn]e$/.test(base) ? [base + 'ing'] : [])]);
  return stemsBeforeVowel(base).map((stem) => stem + 'ing');
}

export function withEr(base) {
  return comparison(base, 'er');
}

export function withEst(base) {
  return comparison(base, 'est');
}

function comparison(base, ending) {
  if (base.endsWith('e')) return [base + ending.slice(1)];
  return beforeVowel(base).map((stem) => stem + ending);
}

/** y becomes i before -ed, -er and -est, not before -ing. */
function beforeVowel(base) {
  if (CONSONANT_Y.test(base)) return unique([base.slice(0, -1) + 'i', base]);
  return stemsBeforeVowel(base);
}

function stemsBeforeVowel(base) {
  if (/[^aeiou]?ic$|[^aeiou]ac$/.test(base)) return unique([base + 'k', base]);
  const stems = doubled(base, /[bdfgklmnprstvz]$/);
  if (stems.length === 0) return [base];
  // One short syllable always doubles ("hop", "hopping"), a longer word may ("travel", "travelling" or "traveling").
  return ONE_SHORT_SYLLABLE.test(base) && !MAY_STAY_SINGLE.test(base) ? stems : [...stems, base];
}

function doubled(base, letters) {
  const doubles = (VOWEL_THEN_CONSONANT.test(base) && letters.test(base)) || BRITISH_L.test(base);
  return doubles ? [base + base.at(-1)] : [];
}

/** "stomachs": ch that says /k/ takes a plain s. */
function hardCh(base) {
  return base.endsWith('ch') ? [base + 's'] : [];
}

function unique(values) {
  return [...new Set(values)];
}

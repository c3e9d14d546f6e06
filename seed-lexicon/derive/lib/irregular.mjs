// WordNet lists irregular verb forms without saying whether they are pasts or participles; their shape tells.

const PARTICIPLE_SHAPE = /(n|ne|um)$/;

/** "sang" and "sung", "began" and "begun": the past has a where the participle has u. */
const ABLAUT = /^(.*)a([^aeiou]+)$/;

export function verbKinds(form, base, wordNet) {
  if (form.endsWith('ing')) return ['gerund'];
  if (form.endsWith('s') && form !== 'was') return ['third-person'];
  const others = siblings(form, base, wordNet);
  if (others.some((other) => other === form.replace(ABLAUT, '$1u$2') && other !== form)) return ['past'];
  if (others.some((other) => other.replace(ABLAUT, '$1u$2') === form)) return ['participle'];
  if (isParticiple(form, base)) return ['participle'];
  return others.some((other) => isParticiple(other, base)) ? ['past'] : ['past', 'participle'];
}

/** "eaten" is a participle; "won" and "spun" have the n of their base. */
function isParticiple(form, base) {
  return PARTICIPLE_SHAPE.test(form) && !/n(e|g)?$/.test(base);
}

function siblings(form, base, wordNet) {
  return [...wordNet.exceptions.verb]
    .filter(([other, bases]) => other !== form && bases.includes(base))
    .map(([other]) => other);
}

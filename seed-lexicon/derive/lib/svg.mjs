// Makes plain pictures of SVG documents: shapes and their looks, no scripts, no styles, nothing that refers to anything.

const ELEMENTS = new Set(['svg', 'g', 'path', 'circle', 'ellipse', 'line', 'polyline', 'polygon', 'rect']);
const ATTRIBUTES = new Set([
  'viewBox', 'd', 'cx', 'cy', 'r', 'rx', 'ry', 'x', 'y', 'x1', 'x2', 'y1', 'y2', 'width', 'height', 'points', 'transform', 'opacity',
  'fill', 'fill-rule', 'fill-opacity', 'clip-rule', 'stroke', 'stroke-width', 'stroke-linecap', 'stroke-linejoin', 'stroke-miterlimit',
  'stroke-opacity', 'stroke-dasharray',
]);
/** Names for editors, and looks that change nothing in a picture without text. */
const NEEDLESS = /^(id|class|xml:space|version|style|paint-order|stop-color|solid-.*|overflow|font-.*|text-.*|enable-background|xmlns(:.*)?|data-.*|sodipodi:.*|inkscape:.*)$/;
const HARMLESS = /^[-\w.,#%() +]*$/;
const MOST_BYTES = 20000;

export function plainSvg(text, name) {
  const body = text.replace(/<\?[^]*?\?>|<!--[^]*?-->|<!DOCTYPE[^>]*>|<(title|desc|metadata)\b[^]*?<\/\1>/g, '');
  const svg = body.replace(/<(\/?)([\w:]+)([^>]*?)(\/?)>/g, (tag, closing, element, attributes, empty) => {
    if (!ELEMENTS.has(element)) throw new Error(`${name}: the element ${element} has no place in a picture`);
    return closing ? `</${element}>` : `<${element}${plainAttributes(element, attributes, name)}${empty}>`;
  }).replace(/>\s+</g, '><').trim() + '\n';
  if (!/^<svg [^]*<\/svg>\n$/.test(svg) || />[^<>\s]/.test(svg)) throw new Error(`${name}: this is no plain picture`);
  if (Buffer.byteLength(svg) > MOST_BYTES) throw new Error(`${name}: more than ${MOST_BYTES} bytes`);
  return svg;
}

function plainAttributes(element, text, name) {
  const kept = [...text.matchAll(/([\w:-]+)\s*=\s*(?:"([^"]*)"|'([^']*)')/g)]
    .map(([, attribute, double, single]) => [attribute, (double ?? single).replace(/\s+/g, ' ').trim()])
    .filter(([attribute, value]) => {
      if (attribute === 'style' && value !== '') throw new Error(`${name}: a style: ${value}`);
      return !NEEDLESS.test(attribute);
    });
  for (const [attribute, value] of kept) {
    if (!ATTRIBUTES.has(attribute)) throw new Error(`${name}: the attribute ${attribute} has no place in a picture`);
    if (!HARMLESS.test(value) || /url|script/i.test(value)) throw new Error(`${name}: ${attribute} is ${value}`);
  }
  const space = element === 'svg' ? ' xmlns="http://www.w3.org/2000/svg"' : '';
  return space + kept.map(([attribute, value]) => ` ${attribute}="${value}"`).join('');
}

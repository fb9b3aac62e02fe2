/** Heights of a strip in pixels: the lane for due flags, the bar, and a gap; the same as on the printed wall. */
export const STRIP = { height: 48, lane: 14, top: 16, bar: 29 };

const NARROW = new Set(" .,:;'|/-()·il");

function ems(letter) {
  if (NARROW.has(letter)) return 0.36;
  if (letter >= '0' && letter <= '9') return 0.62;
  if ('mwMW'.includes(letter) || letter > '˿') return 1;
  return letter !== letter.toLowerCase() ? 0.72 : 0.58;
}

/** Width of a text in pixels at a font size, on the safe side: measuring each in the page would cost more than drawing it. */
export function width(text, size) {
  let all = 0;
  for (const letter of text) all += ems(letter);
  return all * size;
}

/** The text, or as much of it as fits with an ellipsis, or nothing when too little is left to tell anything. */
export function fit(text, size, room) {
  if (width(text, size) <= room) return text;
  let left = room - size;
  let end = 0;
  for (const letter of text) {
    left -= ems(letter) * size;
    if (left < 0) break;
    end += letter.length;
  }
  return end < 7 ? '' : `${text.slice(0, end)}…`;
}

/** The text as markup. */
export function plain(text) {
  return String(text).replace(/[&<>"']/g, (c) => `&#${c.charCodeAt(0)};`);
}

/** A length in markup: one digit behind the point is all that a screen shows. */
export function px(value) {
  return Math.round(value * 10) / 10;
}

function linear(part) {
  const value = parseInt(part, 16) / 255;
  return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
}

/** Black or white, whichever stands out more from `RRGGBB` (relative luminance of WCAG 2.1; both are even at 0.179). */
function inkOn(srgb) {
  const light = 0.2126 * linear(srgb.slice(0, 2)) + 0.7152 * linear(srgb.slice(2, 4)) + 0.0722 * linear(srgb.slice(4, 6));
  return light > 0.179 ? '#000' : '#fff';
}

const known = new Map();

/** How a colour is drawn: `fill`, and the `ink` of letters upon it; a colour without sRGB is hatched, with the page's ink ''. */
export function swatch(srgb) {
  const key = String(srgb || '').replace('#', '');
  if (!known.has(key)) {
    const told = /^[0-9a-f]{6}$/i.test(key);
    known.set(key, told ? { fill: `#${key}`, ink: inkOn(key) } : { fill: 'url(#hatch-unknown)', ink: '' });
  }
  return known.get(key);
}

function pattern(id, size, lines) {
  return `<pattern id="${id}" width="${size}" height="${size}" patternUnits="userSpaceOnUse">`
    + `<rect class="ground" width="${size}" height="${size}"/><path class="line" d="${lines}"/></pattern>`;
}

/** The hatchings; each differs from the others in its lines, so that it can be told in black and white. */
export const PATTERNS = `<svg width="0" height="0" aria-hidden="true" class="patterns"><defs>${
  pattern('hatch-change', 4, 'M-1 5L5 -1M-1 1L1 -1M3 5L5 3')}${
  pattern('hatch-dismount', 4, 'M2 0V4')}${
  pattern('hatch-away', 7, 'M0 0L7 7M7 0L0 7')}${
  pattern('hatch-unknown', 9, 'M-1 -1L10 10M-1 8L1 10M8 -1L10 1')}</defs></svg>`;

/** What stays where it is: two chevrons for what is running, a pin for what is promised, a clamp for what is held here. */
export const STAYS = {
  running: { words: 'running', path: 'm0 0 3.5 4-3.5 4m4-8 3.5 4-3.5 4' },
  promised: { words: 'promised', path: 'm3 5a2.6 2.6 0 1 1 .1 0zm0 0v5' },
  held: { words: 'held here', path: 'm0 0h7m-3.5 0v9m-3.5 0h7' },
};

/** Which of them a run has. */
export function stays(run) {
  return Object.keys(STAYS).filter((name) => run[name]);
}

const KEYS = [
  ['run, in the colour of its parts; thin where it pauses', '<rect class="edge" x="1" y="1" width="24" height="16" rx="2" fill="#c9d3d6"/>'],
  ['run, colour not known', '<rect class="edge" x="1" y="1" width="24" height="16" rx="2" fill="url(#hatch-unknown)"/>'],
  ['running now', stayKey('running')],
  ['promised to the floor', stayKey('promised')],
  ['held here', stayKey('held')],
  ['change, with its minutes', hatchKey('change')],
  ['mold taken off for another press', hatchKey('dismount')],
  ['press waits', '<g class="wait"><path d="M2 5v8M24 5v8"/><path class="dotted" d="M2 9H24"/></g>'],
  ['late: flag where due, line to where ready', '<path class="late" d="M3 15.5H24M24 11v6"/><path class="flag" d="M3 16v-13l7 3-7 3"/>'],
  ['press away', hatchKey('away')],
  ['press not working; drawn narrow where none works', '<rect class="closed" x="1" y="1" width="24" height="16"/>'],
  ['now', '<path class="nowmark" d="M13 1V17M9 1h8"/>'],
];

function stayKey(name) {
  return `<rect class="edge" x="1" y="1" width="24" height="16" rx="2" fill="#c9d3d6"/><path class="mark" d="M9 4.5${STAYS[name].path}" stroke="#000"/>`;
}

function hatchKey(name) {
  return `<rect class="hatched" x="1" y="1" width="24" height="16" fill="url(#hatch-${name})"/>`;
}

/** What the marks mean, each drawn beside its words. */
export const LEGEND = `<ul class="legend" aria-label="What the marks mean">${KEYS.map(([words, mark]) =>
  `<li><svg width="26" height="18" aria-hidden="true">${mark}</svg>${words}</li>`).join('')}</ul>`;

/** The parts of the wall: a field that scrolls beneath its axis and beside its names. */
export const FIELD = `<div class="wall" role="region" aria-label="Week wall"><div class="field">
  <div class="corner"></div><div class="axis"><svg class="axispicture" aria-hidden="true"></svg></div>
  <div class="names" role="group" aria-label="Presses"></div>
  <div class="cells"><svg class="overlay" aria-hidden="true"></svg><div class="now" aria-hidden="true"></div><div class="caret" aria-hidden="true" hidden></div></div>
</div></div>`;

import { span } from '/assets/shell.js';
import { STAYS, STRIP, fit, plain, px, stays, swatch, width } from '/assets/wall-marks.js';
import { rulesMarkup } from '/assets/wall-axis.js';
import { sentence, without } from '/assets/wall-week.js';

const THIN = 6;
const PAD = 4;
const INSET = 3;
const MIDDLE = STRIP.top + STRIP.bar / 2;

/** What a press is to food-grade work, in words. */
export const FOOD = { ONLY: 'food only', KEPT: 'kept for food', OPEN: 'open to food', NEVER: '' };

const label = (cls, x, y, words, more = '') => `<text class="${cls}" x="${px(x)}" y="${px(y)}"${more}>${plain(words)}</text>`;

/** What the drawing of one strip shares: where minutes stand, what the picture shows, and how the plant tells time. */
function sheet(view, strip) {
  const { scale, left, right } = view;
  const x = (min) => scale.x(min) - left;
  return {
    ...view,
    strip,
    x,
    shows: (from, to) => to >= view.fromMin && from <= view.toMin && scale.x(to) >= left && scale.x(from) <= right,
    pieces(from, to) {
      const all = [];
      for (const [a, b] of strip.working) {
        if (a >= to) break;
        if (b > from) all.push([Math.max(a, from), Math.min(b, to)]);
      }
      return all.length ? all : [[from, to]];
    },
    box(cls, [from, to], y, height, more) {
      const at = Math.max(-2, x(from));
      const wide = Math.max(1.5, Math.min(right - left + 2, x(to)) - at);
      return `<rect class="${cls}" x="${px(at)}" y="${y}" width="${px(wide)}" height="${height}" ${more || ''}/>`;
    },
    // The widest room for words among the pieces, as far as the reader sees them.
    room(pieces) {
      let best = [0, 0];
      const seenFrom = view.seen - left;
      const seenTo = view.seenTo - left;
      for (const [from, to] of pieces) {
        const one = [Math.max(seenFrom, x(from)), Math.min(seenTo, x(to))];
        if (one[1] - one[0] > best[1] - best[0]) best = one;
      }
      if (best[1] > best[0]) return best;
      for (const [from, to] of pieces) {
        const one = [Math.max(0, x(from)), Math.min(right - left, x(to))];
        if (one[1] - one[0] > best[1] - best[0]) best = one;
      }
      return best;
    },
  };
}

function ground(on) {
  const { strip, extent, clock } = on;
  const closed = without([extent], strip.press.hours).filter(([a, b]) => on.shows(a, b)).map((s) => on.box('closed', s, 0, STRIP.height));
  const away = (strip.press.away || []).filter((a) => on.shows(a.from, a.to)).map((a) => {
    const reason = a.reason || 'away';
    const [from, to] = on.room([[a.from, a.to]]);
    const words = fit(reason, 10, to - from - 8);
    const say = `${strip.press.id} away: ${reason}, ${clock.full(a.from)} to ${clock.full(a.to)}`;
    return `<g class="away" data-say="${plain(say)}">${on.box('hatched', [a.from, a.to], 1, STRIP.height - 2, 'fill="url(#hatch-away)"')}`
      + `${words ? label('small haloed', from + 4, STRIP.top + 9, words) : ''}</g>`;
  });
  return closed.join('') + away.join('');
}

function gap(on, from, to, pattern, minutes, say) {
  const pieces = on.pieces(from, to);
  const boxes = pieces.map((p) => on.box('hatched', p, STRIP.top + INSET, STRIP.bar - 2 * INSET, `fill="url(#${pattern})"`)).join('');
  const thread = pieces.length > 1 ? on.box('hatched', [from, to], MIDDLE - 1, 2) : '';
  const [a, b] = on.room(pieces);
  const full = `${minutes} min`;
  const short = String(minutes);
  const room = b - a;
  const middle = (a + b) / 2;
  let words = '';
  if (width(full, 10) <= room - 4) words = label('small mid haloed', middle, MIDDLE + 3.5, full);
  else if (width(short, 10) <= room - 1) words = label('small mid haloed', middle, MIDDLE + 3.5, short);
  else if (room >= 10) words = label('small mid haloed', middle, MIDDLE + 3.5, short, ` transform="rotate(-90 ${px(middle)} ${MIDDLE})"`);
  return `<g class="gap" data-say="${plain(say)}">${thread}${boxes}${words}</g>`;
}

function change(on, run) {
  const say = `change of ${run.changeMin} min before ${run.line}: ${run.changeWords || 'change'}, ${on.clock.full(run.changeFrom)} to ${on.clock.time(run.changeTo)}`;
  return gap(on, run.changeFrom, run.changeTo, 'hatch-change', run.changeMin, say);
}

function dismount(on, off) {
  const say = `mold ${off.mold} taken off for another press, ${span(off.to - off.from)}, from ${on.clock.full(off.from)}`;
  return gap(on, off.from, off.to, 'hatch-dismount', off.to - off.from, say);
}

function wait(on, stretch) {
  const from = on.x(stretch.from);
  const to = on.x(stretch.to);
  const words = from >= 0 ? fit(stretch.words, 10, to - from - 6) : '';
  const y = STRIP.top + 11;
  return `<g class="wait" data-say="${plain(`${stretch.words}, ${on.clock.full(stretch.from)} to ${on.clock.time(stretch.to)}`)}">`
    + `<path d="M${px(from)} ${y}v8M${px(to)} ${y}v8"/><path class="dotted" d="M${px(from)} ${y + 4}H${px(to)}"/>`
    + `${words ? label('small haloed', from + 3, y - 2, words) : ''}</g>`;
}

function marks(names, x, colour) {
  const ink = colour.ink ? ` stroke="${colour.ink}"` : '';
  return names.map((name, i) => `<path class="mark${colour.ink ? '' : ' bare'}" d="M${px(x + i * 11)} ${STRIP.top + 4}${STAYS[name].path}"${ink}/>`).join('');
}

// The order line, and below it the item; in a narrow bar the order line alone, in smaller letters.
function words(run, x, room, colour) {
  const cls = colour.ink ? '' : ' haloed';
  const ink = colour.ink ? ` fill="${colour.ink}"` : '';
  if (width(run.line, 11) > room) {
    return width(run.line, 9) > room + 5 ? '' : label(`tiny bold${cls}`, x - 2.5, STRIP.top + 18, run.line, ink);
  }
  const names = stays(run).map((name) => STAYS[name].words);
  const second = fit(`${names.length ? `${names.join(', ')} · ` : ''}${run.item}`, 10, room);
  const third = room > 260 ? fit(`${run.quantity} pieces, ${run.words}${run.inserts ? `, ${run.inserts}` : ''}`, 10, room - width(run.line, 11) - 14) : '';
  return label(`large${cls}`, x, STRIP.top + 12, run.line, ink)
    + (third ? label(`small${cls}`, x + width(run.line, 11) + 10, STRIP.top + 12, third, ink) : '')
    + (second ? label(`small${cls}`, x, STRIP.top + 24, second, ink) : '');
}

function bar(on, run) {
  const colour = swatch(run.srgb);
  const fill = `fill="${colour.fill}"`;
  const pieces = on.pieces(run.from, run.to);
  const whole = pieces.length === 1 && pieces[0][0] === run.from && pieces[0][1] === run.to;
  const thread = whole ? '' : on.box('edge', [run.from, run.to], STRIP.top + (STRIP.bar - THIN) / 2, THIN, fill);
  const boxes = pieces.filter(([a, b]) => on.shows(a, b)).map((p) => on.box('edge', p, STRIP.top, STRIP.bar, `rx="2" ${fill}`)).join('');
  const [a, b] = on.room(pieces);
  const room = b - a;
  const names = room < 14 ? [] : stays(run).slice(0, Math.max(1, Math.floor((room - 4) / 11)));
  const lead = names.length * 11;
  const cls = `run${on.moved.has(run.line) ? ' moved' : ''}${on.chosen === run.line ? ' chosen' : ''}${on.carried === run.line ? ' carried' : ''}`;
  const outline = on.moved.has(run.line) || on.chosen === run.line ? on.box('around', [run.from, run.to], STRIP.top - 3, STRIP.bar + 6, 'rx="4"') : '';
  return `<g class="${cls}" data-line="${plain(run.line)}" tabindex="${on.stop === run.line ? 0 : -1}" role="button"`
    + ` aria-label="${plain(sentence(run, on.clock))}">${thread}${boxes}${outline}${marks(names, a + PAD, colour)}`
    + `${room > 12 ? words(run, a + lead + PAD, room - lead - 2 * PAD, colour) : ''}</g>`;
}

// The words beside a due flag, or the line alone, as far as the next flag leaves room.
function flagWords(on, run, at, next) {
  const room = Math.min(on.right - on.left, next) - at - 12;
  return [`${run.line} ${span(run.lateMin)} late`, run.line].find((words) => width(words, 10) <= room) || '';
}

// A flag where the line was due and a line from it to where it is ready, above the bars.
function flags(on) {
  const { extent, clock } = on;
  const end = on.right - on.left;
  const seen = Math.max(0, on.seen - on.left);
  const begin = (run) => Math.max(extent[0], Math.min(extent[1] - 1, run.due));
  const late = on.strip.runs.filter((r) => r.lateMin > 0 && on.shows(begin(r), r.ready)).sort((a, b) => a.due - b.due);
  return late.map((run, i) => {
    const from = begin(run);
    const a = on.x(from);
    const b = on.x(Math.max(from + 1, Math.min(extent[1], run.ready)));
    const at = Math.max(a, seen);
    const next = late[i + 1] ? Math.max(on.x(begin(late[i + 1])), seen) : end;
    const words = at < b + 60 ? flagWords(on, run, at, next) : '';
    const shape = run.due >= extent[0] ? `M${px(a)} ${STRIP.lane}v-12l7 3-7 3` : `M${px(a)} ${STRIP.lane}m7 -11l-6 4 6 4z`;
    const say = `${run.line} ${span(run.lateMin)} late: due ${clock.full(run.due)}, ready ${clock.full(run.ready)}`;
    return `<g class="due" data-say="${plain(say)}">`
      + `<path class="late" d="M${px(Math.max(-2, a))} 12.5H${px(Math.min(end + 2, b))}"/>${b <= end ? `<path class="late" d="M${px(b)} 8.5v6"/>` : ''}`
      + `${a >= -8 ? `<path class="flag" d="${shape}"/>` : ''}${words ? label('small haloed', at + 10, 9, words) : ''}</g>`;
  }).join('');
}

/** All that one press does between two places of the scale, as markup. */
export function stripMarkup(view, strip) {
  const on = sheet(view, strip);
  const gaps = [];
  const bars = [];
  for (const off of strip.dismounts) if (on.shows(off.from, off.to)) gaps.push(dismount(on, off));
  for (const run of strip.runs) {
    for (const stretch of run.waits) if (on.shows(stretch.from, stretch.to)) gaps.push(wait(on, stretch));
    if (run.changeTo > run.changeFrom && on.shows(run.changeFrom, run.changeTo)) gaps.push(change(on, run));
    if (on.shows(run.from, run.to)) bars.push(bar(on, run));
  }
  return ground(on) + rulesMarkup(view, STRIP.height) + gaps.join('') + bars.join('') + flags(on);
}

/** The name of a press beside its strip; `stop` where the Tab key stops on it. */
export function nameMarkup({ press, at }, stop) {
  return `<button type="button" class="press" tabindex="${stop ? 0 : -1}" data-press="${at}"><b>${plain(press.id)}</b>`
    + `<span>${plain(press.words || press.orientation)}</span><span>${FOOD[press.food] || ''}</span></button>`;
}

/** Where a run would be: dashed where it is shifted, in long dashes where it is put, a flag where it would be later than it is. */
export function outlineMarkup(o, scale, left) {
  const x = px(scale.x(o.from) - left);
  const wide = px(Math.max(2, scale.x(o.to) - scale.x(o.from)));
  const y = o.at * STRIP.height + STRIP.top - 1.5;
  const flag = o.later ? `<path class="flag" d="M${px(x + wide)} ${y + 12}v-12l-7 3 7 3"/>` : '';
  return `<rect class="${o.own ? 'own' : 'shifted'}" x="${x}" y="${y}" width="${wide}" height="${STRIP.bar + 3}" rx="3"/>${flag}`;
}

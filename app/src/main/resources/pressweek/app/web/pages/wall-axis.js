import { without } from '/assets/wall-week.js';
import { fit, plain, px, width } from '/assets/wall-marks.js';

const SQUEEZE_FROM = 90;
const NARROW = 14;
const NARROW_SHARE = 0.1;
const DAY_ROW = 18;
const ROW = 13;
const STEPS = [1, 5, 10, 15, 30, 60, 120, 240, 360, 720];

function stretches(extent, open) {
  const idle = without([extent], open).filter(([a, b]) => b - a >= SQUEEZE_FROM).map(([a, b]) => ({ from: a, to: b, idle: true }));
  const work = without([extent], idle.map((s) => [s.from, s.to])).map(([a, b]) => ({ from: a, to: b, idle: false }));
  return [...idle, ...work].sort((a, b) => a.from - b.from);
}

/** How many pixels an hour may have so that all of it fits the room. */
export function fitting(extent, open, room) {
  const all = stretches(extent, open);
  const hours = all.filter((s) => !s.idle).reduce((sum, s) => sum + s.to - s.from, 0) / 60;
  const narrow = all.filter((s) => s.idle).length * NARROW;
  return Math.max(3, (room - narrow) / Math.max(1, hours));
}

/** Where a minute stands, in pixels from the left; time in which no press works is drawn narrow. */
export function scale(extent, open, perHour) {
  let x = 0;
  const pieces = stretches(extent, open).map((s) => {
    const wide = (s.to - s.from) / 60 * perHour;
    const piece = { ...s, x, width: s.idle ? Math.min(Math.max(NARROW, wide * NARROW_SHARE), Math.max(NARROW, perHour)) : wide };
    x += piece.width;
    return piece;
  });
  const find = (test) => {
    let low = 0;
    let high = pieces.length - 1;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (test(pieces[middle])) low = middle + 1;
      else high = middle;
    }
    return pieces[low];
  };
  return {
    extent,
    perHour,
    pieces,
    width: x,
    x(min) {
      const p = find((q) => q.to <= min);
      return p.x + p.width * Math.min(1, Math.max(0, (min - p.from) / (p.to - p.from)));
    },
    at(left) {
      const p = find((q) => q.x + q.width <= left);
      return Math.round(p.from + (p.to - p.from) * Math.min(1, Math.max(0, (left - p.x) / p.width)));
    },
  };
}

/** The first minute of each day within the extent. The day after may be 23 or 25 hours away. */
export function midnights(extent, clock) {
  const all = [];
  let at = dayStart(extent[0], clock);
  while (at < extent[1]) {
    all.push(at);
    at = dayStart(at + 36 * 60, clock);
  }
  return all;
}

function dayStart(min, clock) {
  const parts = clock.parts(min);
  let at = min - parts.hour * 60 - parts.minute;
  for (let tries = 0; tries < 3; tries++) {
    const got = clock.parts(at);
    const off = got.day === parts.day ? got.hour * 60 + got.minute : got.hour * 60 + got.minute - 1440;
    if (off === 0) return at;
    at -= off;
  }
  return at;
}

function lanes(shifts) {
  const rows = [];
  for (const shift of shifts) {
    const free = rows.find((row) => row[row.length - 1].to <= shift.from);
    if (free) free.push(shift);
    else rows.push([shift]);
  }
  return rows;
}

/** The height of an axis for these shifts. */
export function axisHeight(shifts) {
  return DAY_ROW + lanes(shifts).length * ROW + ROW + 3;
}

const text = (cls, x, y, words) => `<text class="${cls}" x="${px(x)}" y="${y}">${plain(words)}</text>`;

function dayMarks(view) {
  const { scale: on, left, right, clock, extent, height } = view;
  const starts = midnights(extent, clock);
  return starts.map((at, i) => {
    const from = Math.max(on.x(Math.max(at, extent[0])), left);
    const to = i + 1 < starts.length ? on.x(starts[i + 1]) : on.width;
    if (to < left || from > right) return '';
    const name = clock.day(Math.max(at, extent[0]));
    const room = to - from - 6;
    const words = width(name, 12) <= room ? name : width(name.slice(0, 3), 12) <= room ? name.slice(0, 3) : '';
    const line = at > extent[0] ? `<path class="day" d="M${px(on.x(at) - left)} 0V${height}"/>` : '';
    const shown = Math.max(from, Math.min(view.seen, to - width(name, 12) - 6));
    return line + (words ? text('dayname', shown - left + 4, 12.5, words) : '');
  }).join('');
}

function shiftMarks(view) {
  const { scale: on, left, right } = view;
  return lanes(view.shifts).map((row, lane) => row.map((shift) => {
    const from = Math.max(on.x(shift.from), left);
    const to = on.x(shift.to);
    if (to < left || from > right) return '';
    const words = fit(shift.name, 10, to - from - 6);
    const shown = Math.max(from, Math.min(view.seen, to - width(words, 10) - 6));
    return words ? text('small muted', shown - left + 4, DAY_ROW + lane * ROW + 9, words) : '';
  }).join('')).join('');
}

function tickStep(perHour) {
  return STEPS.find((step) => step * perHour / 60 >= (step < 60 ? 34 : 22)) || 1440;
}

// Steps of minutes from each midnight by the clock on the wall, so that labels stay even on the two days when it is changed.
function ticks(view) {
  const { scale: on, left, right, clock, extent, height } = view;
  const step = tickStep(on.perHour);
  const marks = [];
  for (const piece of on.pieces) {
    if (piece.idle || piece.x + piece.width < left || piece.x > right) continue;
    const first = Math.max(piece.from, on.at(left));
    const stop = Math.min(piece.to, on.at(right) + step, extent[1]);
    const fine = Math.min(step, 60);
    for (let at = Math.ceil(first / fine) * fine; at < stop; at += fine) {
      const { hour, minute } = clock.parts(at);
      if ((hour * 60 + minute) % step) continue;
      const x = on.x(at);
      marks.push(`<path class="tick" d="M${px(x - left)} ${height - 4}V${height}"/>`);
      const words = step < 60 ? clock.time(at) : String(hour).padStart(2, '0');
      if (on.x(piece.to) - x >= (step < 60 ? 30 : 12)) marks.push(text('hour muted', x - left + 1.5, height - 5, words));
    }
  }
  return marks.join('');
}

/** Days, shifts and hours between two places of the scale, as markup; `view.seen` is where the reader's window begins. */
export function axisMarkup(view) {
  return dayMarks(view) + shiftMarks(view) + ticks(view);
}

/** The lines of days and shifts that run down over a strip. */
export function rulesMarkup(view, bottom) {
  const { scale: on, left, right, clock, extent } = view;
  const line = (cls, at) => {
    const x = on.x(at);
    return x < left || x > right || at <= extent[0] ? '' : `<path class="${cls}" d="M${px(x - left)} 0V${bottom}"/>`;
  };
  return view.shifts.map((s) => line('shift', s.from)).join('') + midnights(extent, clock).map((at) => line('day', at)).join('');
}

import { span } from '/assets/shell.js';

/** Spans, as pairs of minutes, without what lies in others; both in order of time. */
export function without(spans, holes) {
  let left = spans.map((s) => [...s]);
  for (const [from, to] of holes) {
    left = left.flatMap(([a, b]) => (to <= a || from >= b ? [[a, b]] : [[a, Math.min(b, from)], [Math.max(a, to), b]].filter(([x, y]) => y > x)));
  }
  return left;
}

/** The spans put together where they touch. */
export function union(spans) {
  const all = [];
  for (const [from, to] of [...spans].sort((a, b) => a[0] - b[0])) {
    const last = all[all.length - 1];
    if (last && last[1] >= from) last[1] = Math.max(last[1], to);
    else all.push([from, to]);
  }
  return all;
}

function grouped(rows) {
  const by = new Map();
  for (const row of rows) {
    const list = by.get(row.press);
    if (list) list.push(row);
    else by.set(row.press, [row]);
  }
  return by;
}

/**
 * A week as the wall looks at it: strips in the order of the presses, each {press, runs in order, dismounts, working}; `byLine`,
 * `unplaced` by line, the `late` runs, the `extent` from first to last minute and the `open` spans in which some press works.
 */
export function arrange(week) {
  const runs = grouped(week.runs);
  const dismounts = grouped(week.dismounts || []);
  const strips = week.presses.map((press, at) => ({
    at,
    press,
    runs: (runs.get(press.id) || []).sort((a, b) => a.seq - b.seq || a.from - b.from),
    dismounts: dismounts.get(press.id) || [],
    working: without(press.hours, (press.away || []).map((a) => [a.from, a.to])),
  }));
  const byLine = new Map();
  for (const strip of strips) strip.runs.forEach((run, place) => byLine.set(run.line, { run, strip, place }));
  const from = week.runs.reduce((least, r) => Math.min(least, r.changeFrom), week.start);
  const to = week.runs.reduce((most, r) => Math.max(most, r.to), week.end);
  return {
    week,
    strips,
    byLine,
    unplaced: new Map(week.unplaced.map((u) => [u.line, u])),
    late: week.runs.filter((r) => r.lateMin > 0).sort((a, b) => b.lateMin - a.lateMin),
    extent: [from, to],
    open: union(week.presses.flatMap((p) => p.hours)),
  };
}

/** What stays first on a strip whatever is moved: what runs there and what is promised, up to the first that is neither. */
export function fixed(runs) {
  const free = runs.findIndex((r) => !r.running && !r.promised);
  return free < 0 ? runs.length : free;
}

/** The places a line may be put on a strip: {place, before, next, minute}, `minute` between the two. */
export function places(strip, line, start) {
  const others = strip.runs.filter((r) => r.line !== line);
  const first = fixed(others);
  const all = [];
  for (let i = first; i <= others.length; i++) {
    const before = others[i - 1];
    const next = others[i];
    const minute = before ? before.to : next ? next.changeFrom : Math.max(start, strip.working[0] ? strip.working[0][0] : start);
    all.push({ place: i - first, before: before ? before.line : '', next: next ? next.line : '', minute });
  }
  return all;
}

/** The place of these that a minute points at: before the first run of which it lies left of the middle. */
export function placeAt(strip, line, minute) {
  const others = strip.runs.filter((r) => r.line !== line);
  const first = fixed(others);
  let place = 0;
  while (first + place < others.length) {
    const run = others[first + place];
    if (minute < (run.from + run.to) / 2) break;
    place++;
  }
  return place;
}

/** How late in words: "2 h 10 min late", "on time". */
export function lateness(min) {
  return min > 0 ? `${span(min)} late` : 'on time';
}

/** A run in one sentence, for who hears the wall rather than sees it, and for who rests on a bar. */
export function sentence(run, clock) {
  const same = clock.day(run.from) === clock.day(run.to);
  const late = run.lateMin > 0 ? `, ${span(run.lateMin)} late, due ${clock.moment(run.due)}` : '';
  const marks = [run.running && 'running', run.promised && 'promised', run.held && 'held here', run.food && 'food-grade'].filter(Boolean);
  return `${run.press}, order ${run.line}: ${run.quantity} pieces of ${run.item}, ${`${run.resin} ${run.colour}`.trim()}, `
    + `${clock.full(run.from)}–${same ? clock.time(run.to) : clock.full(run.to)}, run ${run.run}`
    + `${marks.length ? `, ${marks.join(', ')}` : ''}${late}${run.inserts ? `, ${run.inserts}` : ''}`;
}

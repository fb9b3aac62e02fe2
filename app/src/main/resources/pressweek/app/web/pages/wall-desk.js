import { api } from '/assets/shell.js';
import { arrange } from '/assets/wall-week.js';

/**
 * What the page knows: the week as the server has it and the same `arranged`, what is proposed, which of the two is `shown`, what is
 * `chosen` ({line} or {press, at}), what is carried, how a search goes, and what has to be said. Only `set` changes it.
 */
export const desk = {
  who: null,
  clock: null,
  week: null,
  arranged: null,
  proposal: null,
  proposed: null,
  shown: 'week',
  chosen: null,
  carry: null,
  progress: null,
  shorts: [],
  busy: '',
  notices: [],
  done: '',
  dialog: '',
  printing: false,
};

const listeners = new Set();

/** Calls a function after each change with what changed; answers with what ends it. */
export function watch(listener) {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

export function set(changes) {
  Object.assign(desk, changes);
  for (const listener of [...listeners]) listener(changes);
}

/** The week that the wall shows: the one in force, or the one that is proposed. */
export function inView() {
  return desk.shown === 'proposed' && desk.proposed ? desk.proposed : desk.arranged;
}

export function mayEdit() {
  return desk.who.may.includes('edit') && desk.shown === 'week';
}

let numbers = 0;

/** Says something that stays until it is put away: `kind` is `said` or `wrong`; the same words are said once. */
export function say(words, kind = 'said', act = null) {
  const others = desk.notices.filter((n) => n.words !== words);
  set({ notices: [...others, { id: ++numbers, words, kind, act }].slice(-3) });
}

/** Says in passing what was done. */
export function tell(words) {
  set({ done: words });
}

export function unsay(id) {
  set({ notices: desk.notices.filter((n) => n.id !== id) });
}

function stillThere(chosen, arranged) {
  if (!chosen || !chosen.line) return chosen;
  return arranged.byLine.has(chosen.line) || arranged.unplaced.has(chosen.line) ? chosen : null;
}

/** Takes a week as the server gave it; what was chosen stays chosen while it is there. */
export function take(week) {
  const arranged = arrange(week);
  const changes = { week, arranged, chosen: stillThere(desk.chosen, arranged) };
  if (!week.solving || !week.solving.on) changes.progress = null;
  else if (!desk.progress) changes.progress = { millis: week.solving.millis || 0, by: week.solving.by, seconds: week.solving.seconds };
  if (!week.proposal) Object.assign(changes, { proposal: null, proposed: null, shown: 'week' });
  set(changes);
  if (week.proposal && !desk.proposal) loadProposal();
}

let reading = null;

/** Reads the week anew; requests at the same time are one. */
export function reload() {
  reading = reading || api('GET', '/api/week').then(take).finally(() => { reading = null; });
  return reading;
}

export async function loadProposal() {
  try {
    const proposal = await api('GET', '/api/week/proposal');
    const proposed = arrange({ ...desk.week, dismounts: [], ...pick(proposal, ['runs', 'unplaced', 'dismounts']) });
    set({ proposal, proposed, progress: null });
  } catch (refused) {
    if (refused.status !== 404) say(refused.words, 'wrong');
  }
}

function pick(from, names) {
  return Object.fromEntries(names.filter((n) => from[n]).map((n) => [n, from[n]]));
}

/** What a refusal means for who asked: another's change is said and the week read anew; nothing of theirs is written over. */
export async function refused(problem) {
  if (problem.status !== 409) {
    say(problem.words || String(problem), 'wrong');
    if (!problem.status && problem.status !== 0) console.error(problem);
    return;
  }
  await reload().catch(() => {});
  say(`${problem.words}. What you asked for was not done; this is the week as it is now.`, 'wrong');
}

let told = null;

/** Asks for a change of the week as it is known here. Answers whether it was done. */
export async function ask(path, body = {}, busy = 'working') {
  if (desk.busy) return false;
  set({ busy });
  try {
    const week = await api('POST', path, { version: desk.week.version, ...body });
    if (week && week.runs) take(week);
    // What went wrong before is no news once something has gone right.
    set({ notices: desk.notices.filter((n) => n.kind !== 'wrong') });
    return true;
  } catch (problem) {
    await refused(problem);
    return false;
  } finally {
    set({ busy: '' });
    if (told && told.version > desk.week.version) heard.week(told);
    told = null;
  }
}

/** An edit of one line. */
export function edit(kind, line, more = {}) {
  return ask('/api/week/edits', { kind, line, ...more }, `${kind} ${line}`);
}

/** Where a line is put. `after` says the same as `place` by the line before it. */
export function move(line, press, place, after) {
  return edit('move', line, { press, place, after });
}

export const undo = () => (desk.week.undo ? ask('/api/week/undo') : Promise.resolve(false));
export const redo = () => (desk.week.redo ? ask('/api/week/redo') : Promise.resolve(false));

export async function solve(seconds) {
  if (await ask('/api/week/solve', { seconds })) set({ progress: { millis: 0, seconds, by: '' } });
}

export function choose(chosen) {
  set({ chosen });
}

/** Reads anew what the material handlers found short. */
export function readShorts() {
  return api('GET', '/api/shorts').then(({ rows }) => set({ shorts: rows })).catch(() => {});
}

/** What to do when the server tells of something. */
export const heard = {
  progress: (p) => set({ progress: { ...desk.progress, ...p } }),
  proposal: () => reload().then(() => (desk.proposal ? loadProposal() : null)).catch(() => {}),
  week: async (what) => {
    if (desk.busy) told = what;
    if (desk.busy || what.version < desk.week.version) return;
    const before = desk.week;
    await reload().catch(() => {});
    readShorts();
    if (desk.week.version !== before.version || desk.week.plan.givenOut !== before.plan.givenOut) say(`${what.by || 'Somebody'} changed the week: ${what.what}`);
  },
  ticks: () => readShorts(),
  files: () => reload().catch(() => {}),
  again: () => reload().then(readShorts).catch(() => {}),
  lost: () => say('The connection to Pressweek is lost; it is tried again and again.', 'wrong'),
};

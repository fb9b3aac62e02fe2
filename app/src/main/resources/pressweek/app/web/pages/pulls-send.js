import { api } from '/assets/shell.js';

const AT_ONCE = 50;

/** What is said when somebody has to log in before ticks can be sent. */
export const LOGIN = 'Log in again to send them.';

// Refused for what stands in the tick itself; anything else may pass and is tried again.
const FAULTY = new Set([400, 404, 409, 413, 422]);

function sent({ place, ...tick }) {
  return tick;
}

async function one(store, tick) {
  try {
    const { taken = [], refused = [] } = await api('POST', '/api/ticks', { ticks: [sent(tick)] });
    await settle(store, [tick], taken, refused);
  } catch (wrong) {
    if (!FAULTY.has(wrong.status)) throw wrong;
    await store.setAside(tick, wrong.words);
  }
}

async function settle(store, ticks, taken, refused) {
  const gone = new Set(taken);
  for (const { id, words } of refused) {
    const tick = ticks.find((waiting) => waiting.id === id);
    if (tick) await store.setAside(tick, words);
  }
  await store.remove(ticks.filter((tick) => gone.has(tick.id)).map((tick) => tick.place));
  return gone.size + refused.length;
}

async function some(store, ticks) {
  try {
    const { taken = [], refused = [] } = await api('POST', '/api/ticks', { ticks: ticks.map(sent) });
    return await settle(store, ticks, taken, refused);
  } catch (wrong) {
    if (!FAULTY.has(wrong.status)) throw wrong;
    for (const tick of ticks) await one(store, tick);
    return ticks.length;
  }
}

async function all(store) {
  for (;;) {
    const ticks = (await store.waiting()).slice(0, AT_ONCE);
    if (ticks.length === 0) return '';
    if ((await some(store, ticks)) === 0) return 'Pressweek did not take them; they are tried again.';
  }
}

/**
 * Sends what waits, in its order, and takes out of the store only what the server says it has. One tab sends at a time; a tick sent
 * twice bears the same id and counts once. Answers with '' or why something still waits.
 */
export async function send(store) {
  const work = async () => {
    try {
      return await all(store);
    } catch (wrong) {
      if (wrong.status === 401) return LOGIN;
      return wrong.words || String(wrong);
    }
  };
  return navigator.locks ? navigator.locks.request('pressweek-ticks', work) : work();
}

/** A tick on a pull, with an id of its own. */
export function tick(row, what, who) {
  return {
    id: identity(),
    key: row.key,
    pieces: what.pieces ?? 0,
    short: what.short ?? 0,
    reason: what.reason ?? '',
    undo: what.undo ?? false,
    at: Math.floor(Date.now() / 60000),
    by: who.name || '',
  };
}

// crypto.randomUUID is missing where a page comes over plain http from another machine.
function identity() {
  if (crypto.randomUUID) return crypto.randomUUID();
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  bytes[6] = (bytes[6] & 0x0f) | 0x40;
  bytes[8] = (bytes[8] & 0x3f) | 0x80;
  const hex = Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
  return hex.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5');
}

/** The rows as they stand with what is ticked on this tablet and not sent yet. */
export function withWaiting(rows, waiting) {
  const last = new Map(waiting.map((one) => [one.key, one]));
  return rows.map((row) => {
    const mine = last.get(row.key);
    if (!mine) return row;
    return { ...row, unsent: true, ticked: mine.undo ? null : { pieces: mine.pieces, short: mine.short, reason: mine.reason, by: mine.by, at: mine.at } };
  });
}

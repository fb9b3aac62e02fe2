const KEPT = 'pressweek.me';
let token = '';
let asked = null;

/** What a request came to when it did not come to an answer: `status` (0 without a connection), `words`, `body`. */
export class Refused extends Error {
  constructor(status, words, body) {
    super(words);
    this.status = status;
    this.words = words;
    this.body = body;
  }
}

async function read(response) {
  const type = response.headers.get('Content-Type') || '';
  if (!type.includes('json')) return response.text();
  const text = await response.text();
  return text ? JSON.parse(text) : null;
}

function options(method, body) {
  const headers = { Accept: 'application/json' };
  if (method !== 'GET') headers['X-Pressweek-Token'] = token;
  if (body === undefined) return { method, headers };
  if (body instanceof FormData) return { method, headers, body };
  headers['Content-Type'] = 'application/json';
  return { method, headers, body: JSON.stringify(body) };
}

async function send(method, path, body) {
  let response;
  try {
    response = await fetch(path, { ...options(method, body), cache: 'no-store', credentials: 'same-origin' });
  } catch {
    throw new Refused(0, 'There is no connection to Pressweek.', null);
  }
  const answer = await read(response).catch(() => null);
  if (response.ok) return answer;
  const said = answer && answer.words;
  const words = Array.isArray(said) ? said.join(' ') : said;
  throw new Refused(response.status, words || `Pressweek answered with ${response.status}.`, answer);
}

/** Asks the server; answers with the JSON it gave (or text), throws `Refused`. Forms go as they are. */
export async function api(method, path, body) {
  if (method === 'GET' || path === '/api/login') return send(method, path, body);
  if (!token) await me();
  const before = token;
  try {
    return await send(method, path, body);
  } catch (refused) {
    // Pressweek may have been started anew, and the page has the word of the time before.
    if (refused.status !== 403) throw refused;
    await me();
    if (token === before) throw refused;
    return send(method, path, body);
  }
}

/** Who is here and what they may do. With `keep`, what was known last stands in while there is no connection (`offline: true`). */
export async function me(keep = false) {
  asked = asked || send('GET', '/api/me');
  try {
    const found = await asked;
    token = found.token || '';
    remember(found);
    return found;
  } catch (refused) {
    const last = keep && refused.status === 0 && remembered();
    if (last) return { ...last, offline: true };
    throw refused;
  } finally {
    asked = null;
  }
}

// The token stays out of what is kept: it is only good together with the cookie and is asked for again.
function remember(found) {
  try {
    localStorage.setItem(KEPT, JSON.stringify({ ...found, token: '' }));
  } catch {
    // A browser that keeps nothing works all the same while it is connected.
  }
}

function remembered() {
  try {
    return JSON.parse(localStorage.getItem(KEPT));
  } catch {
    return null;
  }
}

/** Forgets who was here, on logging out. */
export function forget() {
  token = '';
  try {
    localStorage.removeItem(KEPT);
  } catch {
    // Nothing was kept.
  }
}

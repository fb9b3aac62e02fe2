import { html, render } from '/assets/preact.js';
import { api, me, forget } from '/assets/api.js';

export { api, Refused } from '/assets/api.js';
export { clock, minutes, money, number, span } from '/assets/clock.js';
export { live } from '/assets/live.js';

const LINKS = [
  ['/', 'Week wall', 'week'],
  ['/pulls', 'Pulls', 'pulls'],
  ['/changes', 'Changes', 'changes'],
  ['/crew', 'Crew', 'crew'],
  ['/codes', 'Codes', 'codes'],
  ['/figures', 'Figures', 'figures'],
  ['/scenarios', 'Scenarios', 'scenarios'],
  ['/files', 'Files', 'files'],
  ['/history', 'History', 'week'],
  ['/users', 'Users', 'users'],
];

async function logOut() {
  await api('POST', '/api/logout').catch(() => {});
  forget();
  location.assign('/login');
}

function toLogin() {
  location.assign(`/login?next=${encodeURIComponent(location.pathname + location.search)}`);
}

function Link({ to, words }) {
  const here = location.pathname === to ? 'page' : undefined;
  return html`<li><a href=${to} aria-current=${here}>${words}</a></li>`;
}

function Bar({ who }) {
  const may = new Set(who.may || []);
  const links = LINKS.filter(([, , needs]) => may.has(needs));
  return html`
    <a class="skip" href="#main">To the page</a>
    <div class="house"><b>Pressweek</b> <span class="plant muted">${who.plant}</span></div>
    <nav aria-label="Pages"><ul>${links.map(([to, words]) => html`<${Link} key=${to} to=${to} words=${words} />`)}</ul></nav>
    <div class="who">${whoWords(who)}
      ${who.name && !who.local && html`<button type="button" class="plain" onClick=${logOut}>Log out</button>`}</div>`;
}

function whoWords(who) {
  if (who.local) return 'on this machine';
  return who.name ? html`<span>${who.name}</span>` : '';
}

/** A sentence about what went wrong, in place of the page or above it. */
export function Wrong({ words }) {
  return html`<div class="notice wrong" role="alert"><p>${words}</p></div>`;
}

/** The line that only paper shows: plant, what this is, when it was printed. */
export function PrintLine({ who, title, plan }) {
  const at = new Date().toLocaleString('en-GB', { timeZone: who.zone, dateStyle: 'medium', timeStyle: 'short' });
  return html`<div class="paper-only"><div class="printline"><span>${who.plant}: ${title}</span>
    <span>${plan ? `plan ${plan}` : ''}</span><span>printed ${at}</span></div></div>`;
}

/** The bar and the page's own element; a page may bring them along, so that something is seen at once. */
function frame() {
  const bar = document.querySelector('header.topbar') || document.createElement('header');
  bar.className = 'topbar';
  const main = document.querySelector('main') || document.createElement('main');
  main.id = 'main';
  main.tabIndex = -1;
  document.body.append(bar, main);
  return { bar, main };
}

/**
 * Opens a page: the bar, then `mount(main, who)` with the page's own element and who is here (as /api/me gives it, and `offline`
 * when `options.offline` allows what was known last). Who is not logged in is sent to the login page and back.
 */
export async function page(title, mount, options = {}) {
  document.title = `${title} - Pressweek`;
  const { bar, main } = frame();
  render(html`<div class="house"><b>Pressweek</b></div>`, bar);
  try {
    const who = await me(options.offline);
    document.title = `${title} - ${who.plant} - Pressweek`;
    render(html`<${Bar} who=${who} />`, bar);
    // Where the links do not fit, the one that is open is in sight.
    bar.querySelector('[aria-current]')?.scrollIntoView({ block: 'nearest', inline: 'nearest' });
    await mount(main, who);
  } catch (refused) {
    if (refused.status === 401) {
      toLogin();
    } else {
      render(html`<h1>${title}</h1><${Wrong} words=${refused.words || String(refused)} />`, main);
      if (!refused.status) console.error(refused);
    }
  }
}

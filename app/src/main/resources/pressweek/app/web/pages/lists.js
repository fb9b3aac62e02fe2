import { html, useEffect, useState } from '/assets/preact.js';
import { PrintLine, Wrong, api } from '/assets/shell.js';
import { Table } from '/assets/table.js';

// Which list is read on which page; the figures page has all others.
const HOMES = {
  '/changes': ['changes', 'staging', 'clearance'],
  '/crew': ['crew', 'handover'],
};

/** The list that the address asks for, or the page's own. */
export function chosenList(own) {
  return new URLSearchParams(location.search).get('list') || own;
}

function belongs(name, path) {
  const home = Object.keys(HOMES).find((to) => HOMES[to].includes(name));
  return home ? home === path : path === '/figures';
}

/** Links to the lists that belong to this page; `own` is the one that the page itself shows. */
export function ListLinks({ own, words }) {
  const [all, setAll] = useState([]);
  useEffect(() => {
    api('GET', '/api/lists').then(setAll, () => setAll([]));
  }, []);
  const path = location.pathname;
  const here = chosenList(own);
  const links = all.filter((list) => list.name !== own && belongs(list.name, path));
  if (links.length === 0) return '';
  const link = (name, to, said) => html`<li key=${name}><a href=${to} aria-current=${here === name ? 'page' : undefined}>${said}</a></li>`;
  return html`<nav class="lists screen-only" aria-label="Lists of the plan"><ul>
    ${link(own, path, words)}${links.map((list) => link(list.name, `${path}?list=${encodeURIComponent(list.name)}`, list.title))}</ul></nav>`;
}

/** One list of the plan that was given out, read from the server: {list} or {wrong}, nothing at first. */
export function useList(name) {
  const [state, setState] = useState({});
  useEffect(() => {
    api('GET', `/api/lists/${encodeURIComponent(name)}`).then((list) => setState({ list }), (refused) => setState({ wrong: refused.words }));
  }, [name]);
  return state;
}

/** What a list belongs to, under the heading of its page. */
export function PlanLine({ plan }) {
  if (!plan || !plan.number) return '';
  return html`<p class="identity">plan ${plan.number}${plan.replaces ? `, which replaces ${plan.replaces}` : ''}</p>
    ${plan.draft && html`<p class="notice"><b>A draft:</b> no plan is given out to the floor yet, so this can still change.</p>`}`;
}

/** One list with its heading, its caution and its table. */
export function ListSection({ name, who, clock }) {
  const { list, wrong } = useList(name);
  if (wrong) return html`<${Wrong} words=${wrong} />`;
  if (!list) return html`<p role="status">Reading the list.</p>`;
  return html`<${PrintLine} who=${who} title=${list.title} plan=${list.plan?.number} />
    <h1>${list.title}</h1><${PlanLine} plan=${list.plan} />
    ${list.caution && html`<p class="muted">${list.caution}</p>`}
    ${list.paper && html`<p class="screen-only"><a href=${`/papers/${list.paper}`} target="_blank" rel="noopener">This list as a paper to sign and hang up</a></p>`}
    <${Table} list=${list} clock=${clock} empty=${list.whenEmpty} />`;
}

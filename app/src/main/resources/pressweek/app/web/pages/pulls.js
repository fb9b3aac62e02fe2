import { html, render, useEffect, useRef, useState } from '/assets/preact.js';
import { PrintLine, Wrong, api, clock as clockOf, number, page } from '/assets/shell.js';
import { kept } from '/assets/pulls-kept.js';
import { LOGIN } from '/assets/pulls-send.js';
import { meant, scanner, toBring } from '/assets/pulls-scan.js';
import { useNow, usePresses, usePulls } from '/assets/pulls-state.js';
import { Done, Open } from '/assets/pulls-row.js';
import { Short } from '/assets/pulls-short.js';

const AT_FIRST = 30;
const FEW_PRESSES = 16;
const KEPT = 'Kept on this tablet and sent as soon as it can be.';
const LOST = 'This browser keeps nothing: leave this page open until it is sent.';
// A square label types several lines; once one of them was understood, the others say nothing new.
const SAME_LABEL_MS = 700;

function Presses({ all, chosen, onChosen }) {
  const mine = new Set(chosen);
  const turn = (press) => onChosen(all.filter((one) => (one === press ? !mine.has(one) : mine.has(one))));
  const buttons = html`<div class="presses" role="group" aria-label="My presses">
    <button type="button" class="big" aria-pressed=${String(chosen.length === 0)} onClick=${() => onChosen([])}>All</button>
    ${all.map((press) => html`<button type="button" class="big" key=${press} aria-pressed=${String(mine.has(press))} onClick=${() => turn(press)}>${press}</button>`)}
  </div>`;
  if (all.length <= FEW_PRESSES) return buttons;
  return html`<details class="donelist"><summary>My presses: ${chosen.length === 0 ? 'all' : chosen.join(', ')}</summary>${buttons}</details>`;
}

function Unsent({ pulls, clock, store }) {
  const count = pulls.waiting.length;
  const lines = [];
  if (count > 0) lines.push(`${count === 1 ? '1 tick is' : `${number(count)} ticks are`} not sent yet. ${store.keeps ? KEPT : LOST}`);
  if (count > 0 && pulls.why && pulls.why !== pulls.wrong) {
    lines.push(pulls.why === LOGIN ? html`<a class="button big" href="/login?next=/pulls">${LOGIN}</a>` : pulls.why);
  }
  if (pulls.at !== null && pulls.list) lines.push(`No fresh list: this one was read ${clock.full(pulls.at)}.${pulls.wrong ? ` ${pulls.wrong}` : ''}`);
  return html`<div role="status">${lines.length > 0 && html`<div class="notice wrong unsent">${lines.map((line) => html`<p>${line}</p>`)}</div>`}</div>`;
}

function Refused({ pulls }) {
  return pulls.refused.map((one) => html`<div class="notice wrong" role="alert" key=${one.id}>
    <p><b>A tick was not taken</b> (${one.key}${one.short ? `, ${number(one.short)} short` : ''}): ${one.words}</p>
    <button type="button" class="big" onClick=${() => pulls.dismiss(one.id)}>I have seen it</button></div>`);
}

/** What a scanned label comes to: the row to show, or why none. */
async function scanned(text, { mine, all, plan }) {
  const open = (rows) => meant(rows, text, plan).filter(toBring);
  const here = open(mine);
  if (here.length > 0) {
    const more = here.length > 1 ? ` ${here.length - 1} more with this label after it.` : '';
    return { key: here[0].key, words: `${text}: ${number(here[0].pieces)} ${here[0].insert} for ${here[0].press}.${more}` };
  }
  const done = meant(mine, text, plan)[0];
  if (done) return { key: '', words: `${text}: brought already (${done.insert} for ${done.press}).` };
  const elsewhere = open(all)[0];
  if (elsewhere) return { key: '', words: `${text} is for ${elsewhere.press}, which is not among your presses.` };
  try {
    return await api('POST', '/api/scan', { text });
  } catch (refused) {
    return { key: '', words: `${text}: no pull on this list has this label. ${refused.words}` };
  }
}

function useScan({ mine, all, plan }, { bring, say }) {
  const [scan, setScan] = useState({ key: '', text: '' });
  const current = useRef(null);
  const hit = useRef(0);
  current.current = { mine, all, plan, scan, bring, say };
  useEffect(() => scanner(async (text) => {
    const { mine: rows, scan: last } = current.current;
    if (document.querySelector('dialog[open]') || performance.now() - hit.current < SAME_LABEL_MS) return;
    const again = last.text === text && rows.find((row) => row.key === last.key && toBring(row));
    if (again) {
      hit.current = performance.now();
      setScan({ key: '', text: '' });
      current.current.bring(again);
      return;
    }
    const found = await scanned(text, current.current);
    if (found.key) hit.current = performance.now();
    const open = found.key && rows.some((row) => row.key === found.key && toBring(row));
    setScan({ key: found.key, text });
    current.current.say(open ? `${found.words} Scan it again or press Brought to tick it off.` : found.words);
  }), []);
  useEffect(() => {
    const row = scan.key && document.querySelector(`[data-key="${CSS.escape(scan.key)}"]`);
    if (!row) return;
    row.scrollIntoView({ block: 'center' });
    row.querySelector('[data-brought]')?.focus({ preventScroll: true });
  }, [scan.key]);
  return scan;
}

function useActs(pulls) {
  const [said, setSaid] = useState({ words: '', row: null });
  const bring = async (row) => {
    await pulls.act(row, { pieces: row.pieces });
    setSaid({ words: `Brought ${number(row.pieces)} ${row.insert} to ${row.press}.`, row });
  };
  const short = async (row, what) => {
    await pulls.act(row, what);
    setSaid({ words: `${number(what.short)} ${row.insert} short for ${row.press}; the scheduler is told.`, row });
  };
  const undo = async (row) => {
    await pulls.act(row, { undo: true });
    setSaid({ words: `${row.insert} for ${row.press} is to bring again.`, row: null });
  };
  return { said, bring, short, undo, say: (words) => setSaid({ words, row: null }) };
}

function OpenList({ rows, ...rest }) {
  const [shown, setShown] = useState(AT_FIRST);
  const marked = rows.findIndex((row) => row.key === rest.mark);
  const until = Math.max(shown, marked + 1);
  return html`<ol class="pulls">${rows.slice(0, until).map((row) => html`<${Open} key=${row.key} row=${row} marked=${row.key === rest.mark} ...${rest} />`)}</ol>
    ${rows.length > until && html`<p><button type="button" class="big" onClick=${() => setShown(until + AT_FIRST)}>Show more (${rows.length - until} later ones)</button></p>`}`;
}

function Page({ who, store }) {
  const clock = clockOf(who.zone);
  const now = useNow(who);
  const pulls = usePulls(store, who);
  const [chosen, choose] = usePresses();
  const [asked, ask] = useState(null);
  const acts = useActs(pulls);
  const { said, bring, short, undo } = acts;
  const may = who.may.includes('tick');
  const mine = pulls.rows.filter((row) => chosen.length === 0 || chosen.includes(row.press));
  const open = mine.filter(toBring).sort((one, other) => one.needBy - other.needBy);
  const done = mine.filter((row) => !toBring(row)).sort((one, other) => other.ticked.at - one.ticked.at);
  const scan = useScan({ mine, all: pulls.rows, plan: pulls.list?.plan.number || '' }, acts);
  if (!pulls.list) return html`<h1>Pulls</h1>${pulls.wrong ? html`<${Wrong} words=${pulls.wrong} />` : html`<p role="status">Reading the list.</p>`}`;
  if (!pulls.list.plan.number) return html`<h1>Pulls</h1><${Unsent} pulls=${pulls} clock=${clock} store=${store} /><p>There is no plan yet, so there is nothing to bring.</p>`;
  return html`<${PrintLine} who=${who} title="Pulls" plan=${pulls.list.plan.number} />
    <h1><span class="screen-only">${sentence(open, now, clock)}</span><span class="paper-only">Pulls</span></h1>
    <p class="identity">${chosen.length === 0 ? 'all presses' : `for ${chosen.join(', ')}`}; plan ${pulls.list.plan.number}</p>
    ${pulls.list.plan.draft && html`<p class="notice"><b>A draft:</b> no plan is given out to the floor yet, so this can still change.</p>`}
    <${Unsent} pulls=${pulls} clock=${clock} store=${store} /><${Refused} pulls=${pulls} />
    <${Presses} all=${pulls.list.presses} chosen=${chosen} onChosen=${choose} />
    <${OpenList} rows=${open} mark=${scan.key} now=${now} clock=${clock} may=${may} onBrought=${bring} onShort=${ask} />
    <details class="donelist screen-only"><summary>Brought: ${done.length}</summary>
      <ul>${done.map((row) => html`<${Done} key=${row.key} row=${row} clock=${clock} may=${may} onUndo=${undo} />`)}</ul></details>
    ${asked && html`<${Short} row=${asked} onTold=${(what) => { ask(null); short(asked, what); }} onLeft=${() => ask(null)} />`}
    <div class="foot screen-only"><p role="status">${said.words || 'Scan a label, or press Brought.'}</p>
      ${said.row && html`<button type="button" class="big" aria-label=${`Undo: ${said.words}`} onClick=${() => undo(said.row)}>Undo</button>`}</div>`;
}

function sentence(open, now, clock) {
  if (open.length === 0) return 'Everything is brought.';
  const past = open.filter((row) => row.needBy < now).length;
  const next = `${open.length} to bring, the next to ${open[0].press} by ${clock.moment(open[0].needBy)}`;
  return past > 0 ? `${next}; ${past} past their time.` : `${next}.`;
}

page('Pulls', async (main, who) => {
  const store = await kept();
  // Only so that the page opens again without a connection; it works without it.
  navigator.serviceWorker?.register('/pulls-worker.js', { scope: '/pulls' }).catch(() => {});
  render(html`<${Page} who=${who} store=${store} />`, main);
}, { offline: true });

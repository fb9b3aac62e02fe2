import { html, useState } from '/assets/preact.js';
import { api, minutes, money, number, span } from '/assets/shell.js';
import { price, useAsked } from '/assets/wall-asked.js';
import { choose, desk, edit, mayEdit, move } from '/assets/wall-desk.js';
import { lateness } from '/assets/wall-week.js';

/** A line by its number; it chooses the line. */
export function LineButton({ line }) {
  return html`<button type="button" class="plain line" onClick=${() => choose({ line })}>${line}</button>`;
}

function Charges({ why }) {
  const { week } = desk;
  if (!why.charges.length) return html`<p>It costs nothing that a plan could avoid.</p>`;
  return html`<h3>What it costs${week.money ? `: ${money(why.cost, week.currency)}` : ''}</h3>
    <ul class="reasons">${why.charges.map((c) => html`<li>${week.money && html`<b>${money(c.amount, week.currency)}</b>`} ${c.words || c.rule}${c.because ? ` (${c.because})` : ''}</li>`)}</ul>`;
}

function Time({ why }) {
  const { clock } = desk;
  if (!why.time.length) return '';
  return html`<h3>Why this press and time</h3>
    <table class="lines time"><thead><tr><th scope="col">from</th><th scope="col">for</th><th scope="col">what</th></tr></thead>
    <tbody>${why.time.map((t) => html`<tr><td>${clock.moment(minutes(t.from))}</td><td>${span(t.minutes)}</td><td>${t.words || t.what}${t.because ? `: ${t.because}` : ''}</td></tr>`)}</tbody></table>`;
}

function Why({ line }) {
  const got = useAsked(`/api/why?line=${encodeURIComponent(line)}`, desk.week.version);
  if (got.wait) return html`<p class="muted">The reasons are looked up …</p>`;
  if (got.wrong) return html`<p class="stress">${got.wrong}</p>`;
  return html`<${Charges} why=${got.is} /><${Time} why=${got.is} />`;
}

function Places({ line, stays, unplaced }) {
  const { week, clock } = desk;
  const got = useAsked(`/api/week/places?line=${encodeURIComponent(line)}`, week.version);
  const [all, showAll] = useState(false);
  const rows = got.is ? got.is.places.slice(0, all ? 40 : 3) : [];
  return html`<h3>${unplaced ? 'Where it could go' : 'Where else it could go'}</h3>
    ${got.wait && html`<p class="muted">Each place is tried …</p>`}
    ${got.wrong && html`<p class="stress">${got.wrong}</p>`}
    ${got.is && !rows.length && html`<p>Nowhere${stays ? ': it stays where it is' : ''}.</p>`}
    <ol class="places">${rows.map((p) => html`<li key=${`${p.press} ${p.place}`}>
      <div><b>${p.press}</b> ${p.after ? `after ${p.after}` : 'first'}, from ${clock.moment(p.start)}, mold ${p.mold}: ${lateness(p.lateMin)}${price(p.costsMore)}${p.words && html`<br /><span class="muted">${p.words}</span>`}</div>
      ${mayEdit() && html`<button type="button" disabled=${Boolean(desk.busy || got.old)} onClick=${() => move(line, p.press, p.place, p.after)}>${unplaced ? 'Put here' : 'Move here'}<span class="unseen">, ${p.press} ${p.after ? `after ${p.after}` : 'first'}</span></button>`}</li>`)}</ol>
    ${got.is && got.is.places.length > 3 && html`<button type="button" class="plain" aria-expanded=${all} onClick=${() => showAll(!all)}>${all ? 'The best three only' : `All ${got.is.places.length} places`}</button>`}`;
}

function Cures({ line }) {
  const [got, put] = useState(null);
  const ask = () => {
    put({ wait: true });
    api('GET', `/api/why/cures?line=${encodeURIComponent(line)}`).then((is) => put({ is }), (problem) => put({ wrong: problem.words || String(problem) }));
  };
  const best = got && got.is ? [...got.is.cures].sort((a, b) => a.costs_more - b.costs_more) : [];
  return html`<h3>What would cure it</h3>
    ${!got && html`<p><button type="button" onClick=${ask}>Find the cheapest cure</button> <span class="muted">plans the week again with each; some seconds</span></p>`}
    <div aria-live="polite">${got && got.wait && html`<p class="muted">Cures are tried, one after another …</p>`}
    ${got && got.wrong && html`<p class="stress">${got.wrong}</p>`}
    ${got && got.is && !best.length && html`<p>None of what was tried helps.</p>`}
    <ol class="reasons">${best.map((c) => html`<li>${c.words || c.what}: ${c.placed === false ? 'still unplaced' : lateness(c.late_min)}${price(c.costs_more)}</li>`)}</ol></div>
    ${best.length > 0 && html`<p class="muted">The cure's own price is not counted.</p>`}`;
}

function Split({ run, done }) {
  const [pieces, put] = useState(Math.floor(run.quantity / 2));
  const go = async (event) => {
    event.preventDefault();
    if (await edit('split', run.line, { pieces: Number(pieces) })) done();
  };
  return html`<form class="row" onSubmit=${go}><label>pieces in the first part, of ${number(run.quantity)}
    <input type="number" min="1" max=${run.quantity - 1} required value=${pieces} onInput=${(e) => put(e.target.value)} /></label>
    <button class="first">Split</button><button type="button" onClick=${done}>Leave it whole</button></form>`;
}

function LeaveOut({ run, done }) {
  const [why, put] = useState('');
  const go = async (event) => {
    event.preventDefault();
    await edit('leave-out', run.line, { why });
  };
  return html`<form class="row" onSubmit=${go}><label>why (it goes into the lists)<input value=${why} maxlength="200" onInput=${(e) => put(e.target.value)} /></label>
    <button class="first">Leave out</button><button type="button" onClick=${done}>Keep it</button></form>`;
}

function Actions({ run, hands }) {
  const [form, open] = useState('');
  const { line } = run;
  const busy = Boolean(desk.busy);
  const close = () => open('');
  const Do = ({ kind, words, keys }) => html`<button type="button" disabled=${busy} aria-keyshortcuts=${keys} onClick=${() => edit(kind, line)}>${words}</button>`;
  const free = !run.running && !run.promised;
  const part = line.split('/').length > 2;
  return html`<div class="actions" role="group" aria-label=${`What to do with ${line}`}>
    ${free && html`<button type="button" class="first" disabled=${busy} aria-keyshortcuts="M" onClick=${() => hands.pickUp(line)}>Move …</button>`}
    ${!run.running && html`<${Do} kind=${run.promised ? 'let-go' : 'promise'} words=${run.promised ? 'Let go' : 'Promise'} keys="P" />
      <${Do} kind=${run.held ? 'release' : 'hold'} words=${run.held ? 'Release' : 'Hold here'} keys="H" />`}
    ${free && html`<button type="button" disabled=${busy} aria-expanded=${form === 'split'} onClick=${() => open('split')}>Split …</button>
      ${part && html`<${Do} kind="join" words="Join its parts" />`}
      <button type="button" disabled=${busy} aria-expanded=${form === 'out'} onClick=${() => open('out')}>Leave out …</button>`}
  </div>
  ${form === 'split' && html`<${Split} run=${run} done=${close} />`}${form === 'out' && html`<${LeaveOut} run=${run} done=${close} />`}`;
}

function About({ run }) {
  const { clock } = desk;
  const facts = [
    ['on', `${run.press}, mold ${run.mold}, run ${run.run}`],
    ['runs', `${clock.moment(run.from)} to ${clock.moment(run.to)}`],
    ['change', run.changeMin ? `${run.changeMin} min from ${clock.moment(run.changeFrom)}: ${run.changeWords}` : 'none before it'],
    ['ready', `${clock.moment(run.ready)}, due ${clock.moment(run.due)}: ${lateness(run.lateMin)}`],
    ['made of', `${`${run.resin} ${run.colour}`.trim()}${run.insert ? `, insert ${run.insert}` : ''}${run.food ? ', food-grade' : ''}`],
    ['waits', run.waits.map((w) => `${w.words}, ${span(w.to - w.from)} from ${clock.moment(w.from)}`).join('; ')],
    ['stays', [run.running && 'running', run.promised && 'promised to the floor', run.held && 'held here'].filter(Boolean).join(', ')],
    ['inserts', run.inserts],
  ];
  return html`<p><b>${number(run.quantity)} pieces</b> of <span class="code">${run.item}</span>${run.words ? `, ${run.words}` : ''}${run.customer ? `, for ${run.customer}` : ''}</p>
    <dl class="about">${facts.filter(([, words]) => words).map(([name, words]) => html`<dt>${name}</dt><dd>${words}</dd>`)}</dl>`;
}

/** The run that is chosen: what it is, what may be done with it, what it costs and why, and where else it could go. */
export function Chosen({ run, hands }) {
  const proposed = desk.shown === 'proposed';
  return html`<section aria-labelledby="chosenname"><h2 id="chosenname" tabindex="-1">Line ${run.line}</h2>
    <${About} run=${run} />
    ${mayEdit() && html`<${Actions} run=${run} hands=${hands} />`}
    ${proposed ? html`<p class="muted">The reasons below are those of the old week.</p>` : ''}
    <${Why} line=${run.line} />
    ${!run.running && !run.promised && html`<${Places} line=${run.line} stays=${run.held} />`}
    ${run.lateMin > 0 && html`<${Cures} line=${run.line} />`}
  </section>`;
}

/** A line that has no place: why, what would help, and where it could go. */
export function Unplaced({ row, hands }) {
  const busy = Boolean(desk.busy);
  return html`<section aria-labelledby="chosenname"><h2 id="chosenname" tabindex="-1">Line ${row.line}: not in the plan</h2>
    <p><b>${number(row.pieces)} pieces</b> of <span class="code">${row.item}</span>${row.words ? `, ${row.words}` : ''}</p>
    <p>${row.reason}</p>${row.cure && html`<p>What would help: ${row.cure}</p>`}
    ${mayEdit() && html`<div class="actions">
      ${row.leftOut && html`<button type="button" class="first" disabled=${busy} onClick=${() => edit('take-in', row.line)}>Take in again</button>`}
      ${row.canPlace && html`<button type="button" disabled=${busy} onClick=${() => hands.pickUp(row.line)}>Place by hand …</button>`}</div>`}
    ${row.canPlace && html`<${Places} line=${row.line} unplaced=${true} /><${Cures} line=${row.line} />`}
  </section>`;
}

import { html, useState } from '/assets/preact.js';
import { money, number } from '/assets/shell.js';
import { ask, choose, desk, mayEdit, redo, set, solve, undo } from '/assets/wall-desk.js';
import { Dialog } from '/assets/wall-dialog.js';
import { Find } from '/assets/wall-find.js';
import { Floor } from '/assets/wall-floor.js';
import { Help } from '/assets/wall-help.js';

const KEPT = 'pressweek.wall.seconds';

function kept() {
  try {
    return Number(localStorage.getItem(KEPT)) || 30;
  } catch {
    return 30;
  }
}

function keep(seconds) {
  try {
    localStorage.setItem(KEPT, seconds);
  } catch {
    // It is asked for again next time.
  }
}

function Solve() {
  const [seconds, put] = useState(kept());
  const { progress } = desk;
  if (progress) return html`<button type="button" class="first" onClick=${() => ask('/api/week/solve/stop')}>Stop</button>`;
  const go = (event) => {
    event.preventDefault();
    keep(seconds);
    solve(Number(seconds));
  };
  return html`<form class="solve" onSubmit=${go}><button class="first" disabled=${Boolean(desk.busy || desk.proposal)}>Solve</button>
    <input type="number" aria-label="seconds to search" min="1" max="86400" required value=${seconds} onInput=${(e) => put(e.target.value)} /><span aria-hidden="true">s</span></form>`;
}

function progressWords({ millis, cost, late, unplaced, seconds, by }) {
  const { week } = desk;
  const time = `${Math.round((millis || 0) / 1000)} s${seconds ? ` of ${seconds}` : ''}`;
  if (cost === undefined) return `${by ? `${by} is searching` : 'Searching'}: ${time}`;
  return `Searching, ${time}: ${late} late${unplaced ? `, ${unplaced} unplaced` : ''}${week.money ? `, avoidable cost ${money(cost, week.currency)}` : ''}`;
}

function GiveOut({ close }) {
  const [why, put] = useState('');
  const go = async (event) => {
    event.preventDefault();
    if (await ask('/api/week/give-out', { why })) close();
  };
  return html`<${Dialog} title="Give this plan out to the floor" close=${close}>
    <form onSubmit=${go}><p>The pages of the floor (pulls, changes, crew) then show plan ${desk.week.plan.number} as it is now, version ${desk.week.version}.</p>
    <div class="row"><label>what has changed, for the record<input value=${why} maxlength="200" onInput=${(e) => put(e.target.value)} /></label>
    <button class="first" disabled=${Boolean(desk.busy)}>Give out</button></div></form></${Dialog}>`;
}

function Tools({ hands, open }) {
  const { week, busy } = desk;
  const edits = desk.who.may.includes('edit');
  const doing = Boolean(busy) || !mayEdit();
  return html`<div class="tools" role="group" aria-label="The week">
    ${edits && html`<button type="button" class="step" disabled=${doing || !week.undo} aria-keyshortcuts="Z" onClick=${undo}>${week.undo ? html`Undo <span class="step-what">${week.undo}</span>` : 'Undo'}</button>
      <button type="button" class="step" disabled=${doing || !week.redo} aria-keyshortcuts="Shift+Z" onClick=${redo}>${week.redo ? html`Redo <span class="step-what">${week.redo}</span>` : 'Redo'}</button>
      <${Solve} />
      <button type="button" disabled=${doing} onClick=${() => open('floor')}>What happened …</button>
      <button type="button" disabled=${doing} onClick=${() => open('give')}>Give out …</button>`}
    <${Find} hands=${hands} />
    <button type="button" aria-label="Keys" aria-keyshortcuts="?" onClick=${() => open('help')}>?</button>
  </div>`;
}

function identity(week) {
  const { plan } = week;
  const given = plan.givenOut ? 'given out to the floor' : 'not given out';
  return `Plan ${plan.number}, version ${week.version}, ${given}`;
}

function Files() {
  const { week } = desk;
  if (!week.filesChanged.length) return '';
  return html`<div class="notice files"><p>The folder has changed: ${week.filesChanged.join('; ')}.</p>
    ${mayEdit() && html`<button type="button" disabled=${Boolean(desk.busy)} onClick=${() => ask('/api/week/read-files')}>Take the changed files</button>`}</div>`;
}

function shortWords(row) {
  return `${row.press}: ${number(row.short)} of ${number(row.needed)} ${row.unit} ${row.insert} missing for `;
}

/** What the material handlers found short, the first that is needed first. */
function Shorts() {
  const { shorts, clock } = desk;
  if (!shorts.length) return '';
  return html`<details class="notice shorts" open=${shorts.length < 3}><summary>${shorts.length === 1 ? 'One pull is short' : `${shorts.length} pulls are short`}</summary>
    <ul>${shorts.map((row) => html`<li key=${`${row.line} ${row.insert} ${row.at}`}>${shortWords(row)}<button type="button" class="plain" onClick=${() => choose({ line: row.line })}>${row.line}</button>,
      to be there ${clock.moment(row.needBy)}: ${row.reason} <span class="muted">(${row.by}, ${clock.moment(row.at)})</span></li>`)}</ul></details>`;
}

/** Beneath the wall, at its right: how much of it is seen. */
export function ZoomBar({ hands }) {
  const { zoom } = hands;
  return html`<div class="zoom" role="group" aria-label="How much the wall shows">
    <button type="button" aria-label="Zoom out" aria-keyshortcuts="-" onClick=${() => zoom.out()}>−</button>
    <button type="button" aria-label="Zoom in" aria-keyshortcuts="+" onClick=${() => zoom.in()}>+</button>
    ${[['Week', 0], ['Day', 18], ['Shift', 8], ['Hour', 1]].map(([words, hours]) => html`<button type="button" onClick=${() => zoom.hours(hours)}>${words}</button>`)}</div>`;
}

/** Above the wall: the plan in a sentence, what may be done with the week, and what has to be said. */
export function Head({ hands }) {
  const { week, dialog, progress } = desk;
  const open = (name) => set({ dialog: name });
  const close = () => open('');
  return html`<h1 class="unseen">Week wall</h1>
    <p class="sentence">${week.sentence} <span class="muted">${identity(week)}</span></p>
    <${Tools} hands=${hands} open=${open} />
    ${progress && html`<p class="progress"><span class="turning" aria-hidden="true"></span>${progressWords(progress)}</p>`}
    <${Files} />
    <${Shorts} />
    ${dialog === 'help' && html`<${Help} close=${close} />`}
    ${dialog === 'give' && html`<${GiveOut} close=${close} />`}
    ${dialog === 'floor' && html`<${Floor} close=${close} />`}`;
}

import { html, useState } from '/assets/preact.js';
import { minutes, span } from '/assets/shell.js';
import { price, useAsked } from '/assets/wall-asked.js';
import { choose, desk, mayEdit, move } from '/assets/wall-desk.js';
import { Chosen, LineButton, Unplaced } from '/assets/wall-chosen.js';
import { lateness } from '/assets/wall-week.js';

function Room({ press, at }) {
  const { week, clock } = desk;
  const got = useAsked(`/api/week/room?press=${encodeURIComponent(press)}&at=${at}`, week.version);
  return html`<section aria-labelledby="chosenname"><h2 id="chosenname" tabindex="-1">${press}, ${clock.full(at)}: what could run here</h2>
    ${got.wait && html`<p class="muted">Lines are tried here …</p>`}
    ${got.wrong && html`<p class="stress">${got.wrong}</p>`}
    ${got.is && !got.is.lines.length && html`<p>No line could run here: none that this press may run is free to move.</p>`}
    ${got.is && html`<ol class="places">${got.is.lines.map((l) => html`<li key=${l.line}>
      <div><${LineButton} line=${l.line} /> ${l.item}<br />from ${clock.moment(l.start)}, ${lateness(l.lateMin)}${price(l.costsMore)}${l.words && html`<br /><span class="muted">${l.words}</span>`}</div>
      ${mayEdit() && html`<button type="button" disabled=${Boolean(desk.busy)} onClick=${() => move(l.line, l.press, l.place)}>Put here<span class="unseen"> ${l.line}</span></button>`}</li>`)}</ol>`}
  </section>`;
}

function Late() {
  const { arranged, clock } = desk;
  const [most, more] = useState(12);
  const rows = desk.printing ? arranged.late : arranged.late.slice(0, most);
  return html`<section><h2>Late: ${arranged.late.length || 'none'}</h2>
    ${rows.length > 0 && html`<table class="lines late"><thead><tr><th scope="col">line</th><th scope="col">due</th><th scope="col">ready</th><th scope="col">late by</th></tr></thead>
    <tbody>${rows.map((r) => html`<tr key=${r.line}><td><${LineButton} line=${r.line} /></td><td>${clock.moment(r.due)}</td><td>${clock.moment(r.ready)}</td><td>${span(r.lateMin)}</td></tr>`)}</tbody></table>`}
    ${arranged.late.length > most && html`<button type="button" class="plain" onClick=${() => more(1e6)}>All ${arranged.late.length} late lines</button>`}
  </section>`;
}

function NotPlaced() {
  const { week } = desk;
  return html`<section><h2>Unplaced: ${week.unplaced.length || 'none'}</h2>
    ${week.unplaced.map((u) => html`<div class="unplaced" key=${u.line}>
      <p><${LineButton} line=${u.line} /> ${u.item}, ${u.pieces} pieces${u.leftOut ? ', left out' : ''}</p>
      <p>${u.reason}</p>${u.cure && html`<p class="muted">What would help: ${u.cure}</p>`}</div>`)}
  </section>`;
}

function NotChecked() {
  const { week } = desk;
  return html`${week.notChecked.length > 0 && html`<details><summary>Not checked this week: ${week.notChecked.length}</summary>
      <ul>${week.notChecked.map((n) => html`<li>${n.what} (${n.lines} lines); ${n.add} would tell</li>`)}</ul></details>`}
    ${week.findings.length > 0 && html`<details><summary>Found in the files: ${week.findings.length}</summary>
      <ul>${week.findings.map((f) => html`<li>${f}</li>`)}</ul></details>`}`;
}

function Lists() {
  const { plan } = desk.week;
  return html`${plan.by && html`<p class="muted">Last: ${plan.what}, by ${plan.by}${plan.made ? `, ${desk.clock.moment(minutes(plan.made))}` : ''}${plan.replaces ? `; it replaces ${plan.replaces}` : ''}.</p>`}
    <${Late} /><${NotPlaced} /><${NotChecked} />`;
}

/** Beside the wall: what is chosen, or the lists of the week. */
export function Panel({ hands }) {
  const { chosen, arranged } = desk;
  const line = chosen && chosen.line;
  const found = line && arranged.byLine.get(line);
  const unplaced = line && arranged.unplaced.get(line);
  const back = () => {
    choose(null);
    if (found) hands.walk.toLine(line);
  };
  return html`${chosen && html`<p class="back"><button type="button" onClick=${back}>Back to the lists</button></p>`}
    ${found && html`<${Chosen} key=${line} run=${found.run} hands=${hands} />`}
    ${unplaced && html`<${Unplaced} key=${line} row=${unplaced} hands=${hands} />`}
    ${chosen && chosen.press && html`<${Room} key=${`${chosen.press} ${chosen.at}`} press=${chosen.press} at=${chosen.at} />`}
    ${!chosen && html`<${Lists} />`}`;
}


import { html } from '/assets/preact.js';
import { money } from '/assets/shell.js';
import { ask, choose, desk, set } from '/assets/wall-desk.js';

const WHAT = { moved: 'moved', added: 'added', ended: 'ended', dropped: 'left out' };

function both(proposal) {
  const { week } = desk;
  const rows = [['late lines', proposal.lateBefore, proposal.lateAfter]];
  if (week.money) rows.push(['avoidable cost', money(proposal.costBefore, week.currency), money(proposal.costAfter, week.currency)]);
  return rows;
}

function Moves({ proposal, hands }) {
  const { week } = desk;
  const go = (line) => {
    choose({ line });
    hands.walk.toLine(line);
  };
  return html`<table class="lines moves"><caption>Moves: ${proposal.moves.length}</caption>
    <thead><tr><th scope="col">line</th><th scope="col">what, and why</th>${week.money && html`<th scope="col" class="figure">costs more</th>`}</tr></thead>
    <tbody>${proposal.moves.map((m) => html`<tr key=${m.line}><td><button type="button" class="plain line" onClick=${() => go(m.line)}>${m.line}</button></td>
      <td>${WHAT[m.what] || m.what}: ${m.words}${m.reason && html`<br /><span class="muted">${m.reason}</span>`}</td>
      ${week.money && html`<td class="figure">${m.costsMore === undefined ? '' : money(m.costsMore)}</td>`}</tr>`)}</tbody></table>`;
}

/** What a search or a repair proposes: all its moves, both weeks, and the choice between them. */
export function Proposal({ hands }) {
  const { proposal, shown, busy, who } = desk;
  const show = (which) => set({ shown: which });
  const decides = who.may.includes('edit');
  const answer = (path) => ask(path, { version: proposal.version });
  return html`<section class="proposal" aria-labelledby="proposalname"><h2 id="proposalname">${proposal.from === 'floor' ? 'A repair is proposed' : 'Another week is proposed'}</h2>
    <p>${proposal.sentence}</p>
    <table class="lines"><thead><tr><th scope="col"><span class="unseen">figure</span></th><th scope="col" class="figure">old</th><th scope="col" class="figure">proposed</th></tr></thead>
      <tbody>${both(proposal).map(([name, before, after]) => html`<tr><th scope="row">${name}</th><td class="figure">${before}</td><td class="figure">${after}</td></tr>`)}</tbody></table>
    <div class="actions" role="group" aria-label="The wall shows">
      <button type="button" aria-pressed=${shown === 'week'} onClick=${() => show('week')}>Old week</button>
      <button type="button" aria-pressed=${shown === 'proposed'} onClick=${() => show('proposed')}>Proposed week</button></div>
    <p class="muted">What moves is outlined in both.</p>
    ${decides && html`<div class="actions"><button type="button" class="first" disabled=${Boolean(busy)} onClick=${() => answer('/api/week/proposal/take')}>Take these moves</button>
      <button type="button" disabled=${Boolean(busy)} onClick=${() => answer('/api/week/proposal/leave')}>Keep the old week</button></div>`}
    ${(proposal.notes || []).length > 0 && html`<ul>${proposal.notes.map((n) => html`<li>${n}</li>`)}</ul>`}
    <${Moves} proposal=${proposal} hands=${hands} />
  </section>`;
}

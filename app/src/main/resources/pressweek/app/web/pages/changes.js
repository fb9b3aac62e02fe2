import { html, render, useMemo, useState } from '/assets/preact.js';
import { PrintLine, Wrong, clock as clockOf, number, page, span } from '/assets/shell.js';
import { ListLinks, ListSection, PlanLine, chosenList, useList } from '/assets/lists.js';
import { grouped, records, shiftWords } from '/assets/records.js';
import { Shifts, current, useShift } from '/assets/shifts.js';

const SETUP = [['tooling', 'tooling'], ['resin', 'resin'], ['colour', 'colour']];

/** What the change exchanges, as words: "resin PP becomes ABS". */
function exchanged(row) {
  return SETUP.flatMap(([name, words]) => {
    const [from, to] = [row[`${name}_out`] || '', row[`${name}_in`] || ''];
    if (from === to) return [];
    if (!from) return [`${words} ${to} goes in`];
    return to ? [`${words} ${from} becomes ${to}`] : [`${words} ${from} comes out`];
  });
}

function Molds({ row }) {
  const weight = (kg) => (kg ? `, ${number(kg)} kg` : '');
  const places = (all) => (all.length > 0 ? ` (${all.join('; ')})` : '');
  if (!row.mold_out && !row.mold_in) return '';
  return html`<p class="molds">
    ${row.mold_out && html`<span><b>${row.mold_out}</b> off${weight(row.mold_out_kg)}<span class="muted">${places(row.mold_out_to || [])}</span></span>`}
    ${row.mold_in && html`<span><b>${row.mold_in}</b> on${weight(row.mold_in_kg)}<span class="muted">${places(row.mold_in_from || [])}</span></span>`}</p>`;
}

function Steps({ title, steps }) {
  if (!steps || steps.length === 0) return html`<div></div>`;
  return html`<div><h3>${title}</h3><ul class="steps">${steps.map((step) => html`<li key=${step}>${step}</li>`)}</ul></div>`;
}

function cautions(row) {
  const said = [];
  if (Number(row.purge_kg) > 0) said.push(`purge ${number(row.purge_kg)} kg: hot melt burns`);
  if (row.temperature) said.push(`barrel ${row.temperature}`);
  if ((row.kind || []).includes('food clearance')) said.push('food clearance: by the checklist, before the first shot');
  if ((row.at_once_with || []).length > 0) said.push(`at the same time as ${row.at_once_with.join(', ')}`);
  return said;
}

function Change({ row, next, clock }) {
  const changes = exchanged(row);
  const stays = (row.stays || []).join(', ');
  return html`<li class="change" id=${next ? 'next' : undefined}>
    <div class="when"><p><b>${clock.time(row.start)}</b> to ${clock.time(row.end)}</p>
      <p class="muted">${clock.day(row.start)}, ${span(row.minutes)}</p>${next && html`<p class="next">next</p>`}</div>
    <p class="where"><b>${row.press}</b><span class="muted">${row.run || 'for another press'}</span></p>
    <div class="what">
      <${Molds} row=${row} />
      ${changes.length > 0 && html`<p>${changes.join('; ')}</p>`}
      ${stays && html`<p><span class="muted">stays:</span> ${stays}</p>`}
      <p class="care">${cautions(row).join('; ')}</p>
      <div class="work"><${Steps} title="while the press still runs" steps=${row.before} /><${Steps} title="with the press stopped" steps=${row.stopped} /></div>
      ${(row.not_computed || []).length > 0 && html`<p class="muted small">not worked out: ${row.not_computed.join('; ')}</p>`}
    </div></li>`;
}

function Agenda({ list, who, clock }) {
  const all = useMemo(() => records(list).sort((one, other) => one.start - other.start), [list]);
  const groups = useMemo(() => grouped(all, (row) => row.setter_shift), [all]);
  const [shift, choose] = useShift(current(groups, who.now, (row) => row.end));
  const [press, choosePress] = useState('');
  const presses = [...new Set(all.map((row) => row.press))].sort((one, other) => one.localeCompare(other, 'en', { numeric: true }));
  const next = all.find((row) => row.start >= who.now);
  const shown = groups.filter(([id]) => !shift || id === shift)
    .map(([id, rows]) => [id, rows.filter((row) => !press || row.press === press)]).filter(([, rows]) => rows.length > 0);
  const seen = next && shown.some(([, rows]) => rows.includes(next));
  return html`<${PrintLine} who=${who} title="Changes" plan=${list.plan?.number} />
    <h1><span class="screen-only">${sentence(next, clock)}</span><span class="paper-only">Changes</span>
      ${seen && html` <a class="screen-only toit" href="#next">show it</a>`}</h1><${PlanLine} plan=${list.plan} />
    ${list.caution && html`<p class="notice">${list.caution}</p>`}
    ${list.paper && html`<p class="screen-only"><a href=${`/papers/${list.paper}`} target="_blank" rel="noopener">The change list as a paper to hang up</a></p>`}
    <div class="row screen-only"><${Shifts} groups=${groups} chosen=${shift} onChosen=${choose} label="Shift" />
      <label>Press <select value=${press} onChange=${(e) => choosePress(e.target.value)}><option value="">all</option>
        ${presses.map((one) => html`<option key=${one} value=${one}>${one}</option>`)}</select></label>
      <button type="button" onClick=${() => print()}>Print</button></div>
    <div role="status" class="unseen">${shown.reduce((sum, [, rows]) => sum + rows.length, 0)} changes shown</div>
    ${shown.length === 0 && html`<p>Nothing has to be changed here.</p>`}
    ${shown.map(([id, rows]) => html`<section key=${id} aria-label=${shiftWords(id)}>
      <h2>${shiftWords(id)}: ${work(rows)}</h2>
      <ol class="changes">${rows.map((row) => html`<${Change} key=${`${row.press}${row.start}`} row=${row} next=${row === next} clock=${clock} />`)}</ol></section>`)}`;
}

function work(rows) {
  const minutes = rows.reduce((sum, row) => sum + Number(row.minutes || 0), 0);
  return `${rows.length === 1 ? '1 change' : `${rows.length} changes`}, ${span(minutes)} of work`;
}

function sentence(next, clock) {
  if (!next) return 'Nothing is left to change.';
  const what = next.mold_in ? `${next.mold_in} on` : next.mold_out ? `${next.mold_out} off` : (next.kind || []).join(', ');
  return `Next change: ${next.press} at ${clock.moment(next.start)}, ${what}.`;
}

function Own({ who, clock }) {
  const { list, wrong } = useList('changes');
  if (wrong) return html`<h1>Changes</h1><${Wrong} words=${wrong} />`;
  return list ? html`<${Agenda} list=${list} who=${who} clock=${clock} />` : html`<p role="status">Reading the list.</p>`;
}

page('Changes', (main, who) => {
  const clock = clockOf(who.zone);
  const name = chosenList('changes');
  render(html`<${ListLinks} own="changes" words="Changes in order of time" />
    ${name === 'changes' ? html`<${Own} who=${who} clock=${clock} />` : html`<${ListSection} name=${name} who=${who} clock=${clock} />`}`, main);
});

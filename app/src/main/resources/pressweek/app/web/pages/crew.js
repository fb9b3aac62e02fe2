import { html, render, useMemo } from '/assets/preact.js';
import { PrintLine, Wrong, clock as clockOf, number, page, span } from '/assets/shell.js';
import { ListLinks, ListSection, PlanLine, chosenList, useList } from '/assets/lists.js';
import { grouped, records, shiftWords } from '/assets/records.js';
import { Shifts, current, useShift } from '/assets/shifts.js';

const known = (value) => value !== '' && value !== null && value !== undefined;

function operators(row) {
  const there = known(row.operators_there) ? ` of ${number(row.operators_there)}` : '';
  return `${number(row.people)}${there}`;
}

function setters(row) {
  if (!Number(row.setter_min)) return 'none needed';
  const there = known(row.setter_min_there) ? ` of ${span(row.setter_min_there)}` : '';
  const heads = known(row.setters_there) ? `, ${number(row.setters_there)} there` : '';
  return `${span(row.setter_min)}${there}${heads}`;
}

function Lines({ all }) {
  return (all || []).length > 0 && html`<ul class="within">${all.map((one) => html`<li key=${one}>${one}</li>`)}</ul>`;
}

function Cell({ row, clock }) {
  return html`<tr><th scope="row">${row.cell}</th>
    <td class="figure">${operators(row)}</td>
    <td>${row.most_at ? clock.time(row.most_at) : ''}</td>
    <td>${(row.presses || []).join(', ')}${(row.sharing || []).length > 0 && html`<br /><span class="muted">shared: ${row.sharing.join(', ')}</span>`}</td>
    <td>${setters(row)}</td>
    <td><${Lines} all=${row.may_run} />${(row.nobody_for || []).length > 0 && html`<p class="stress">nobody may run ${row.nobody_for.join(', ')}</p>`}</td></tr>`;
}

function Shift({ id, rows, clock }) {
  const few = rows.flatMap((row) => row.too_few || []);
  const open = rows.flatMap((row) => row.not_computed || []);
  const first = rows[0];
  return html`<section class="crew" aria-label=${shiftWords(id)}>
    <h2>${shiftWords(id, true)}, ${clock.time(first.from)} to ${clock.time(first.to)}</h2>
    ${few.length > 0 && html`<div class="notice wrong"><p><b>Too few:</b></p><${Lines} all=${few} /></div>`}
    <table><thead><tr><th scope="col">cell</th><th scope="col" class="figure">operators at most</th><th scope="col">at</th>
      <th scope="col">presses then, people each</th><th scope="col">setters</th><th scope="col">who may run what</th></tr></thead>
      <tbody>${rows.map((row) => html`<${Cell} key=${row.cell} row=${row} clock=${clock} />`)}</tbody></table>
    ${open.length > 0 && html`<p class="muted">not worked out: ${open.join('; ')}</p>`}</section>`;
}

function sentence(groups) {
  const few = groups.filter(([, rows]) => rows.some((row) => (row.too_few || []).length > 0)).map(([id]) => shiftWords(id));
  return few.length === 0 ? 'The crew is large enough in every shift, as far as it is recorded.' : `Too few people: ${few.join(', ')}.`;
}

function Crew({ list, who, clock }) {
  const groups = useMemo(() => grouped(records(list), (row) => row.shift), [list]);
  const [shift, choose] = useShift(current(groups, who.now, (row) => row.to));
  return html`<${PrintLine} who=${who} title="Crew" plan=${list.plan?.number} />
    <h1>${sentence(groups)}</h1><${PlanLine} plan=${list.plan} />
    ${list.caution && html`<p class="muted">${list.caution}</p>`}
    ${list.paper && html`<p class="screen-only"><a href=${`/papers/${list.paper}`} target="_blank" rel="noopener">The crew list as a paper to hang up</a></p>`}
    <div class="row screen-only"><${Shifts} groups=${groups} chosen=${shift} onChosen=${choose} label="Shift" />
      <button type="button" onClick=${() => print()}>Print</button></div>
    ${groups.filter(([id]) => !shift || id === shift).map(([id, rows]) => html`<${Shift} key=${id} id=${id} rows=${rows} clock=${clock} />`)}
    ${groups.length === 0 && html`<p>Nobody is needed.</p>`}`;
}

function Own({ who, clock }) {
  const { list, wrong } = useList('crew');
  if (wrong) return html`<h1>Crew</h1><${Wrong} words=${wrong} />`;
  return list ? html`<${Crew} list=${list} who=${who} clock=${clock} />` : html`<p role="status">Reading the list.</p>`;
}

page('Crew', (main, who) => {
  const clock = clockOf(who.zone);
  const name = chosenList('crew');
  render(html`<${ListLinks} own="crew" words="Crew by shift" />
    ${name === 'crew' ? html`<${Own} who=${who} clock=${clock} />` : html`<${ListSection} name=${name} who=${who} clock=${clock} />`}`, main);
});

import { html, render, useEffect, useState } from '/assets/preact.js';
import { PrintLine, Wrong, api, clock as clockOf, money, number, page, span } from '/assets/shell.js';
import { ListLinks, ListSection, PlanLine, chosenList } from '/assets/lists.js';
import { CostBars, LoadBars } from '/assets/figures-bars.js';

function valued(row, currency) {
  if (typeof row.value !== 'number') return row.value;
  if (row.unit === 'money') return money(row.value, currency);
  if (row.unit === 'min') return span(row.value);
  return `${number(row.value)}${row.unit ? ` ${row.unit}` : ''}`;
}

function Rows({ found }) {
  const rows = found.rows.filter((row) => found.money || row.unit !== 'money');
  return html`<table class="plainrows"><caption>In figures</caption>
    <thead class="unseen"><tr><th scope="col">what</th><th scope="col">figure</th></tr></thead>
    <tbody>${rows.map((row) => html`<tr key=${row.name}><th scope="row">${row.words}</th><td class="figure">${valued(row, found.currency)}</td></tr>`)}</tbody></table>`;
}

function Plans({ found, clock }) {
  const first = found.plans[0];
  const against = (plan) => (plan === first ? '' : money(plan.cost - first.cost, ''));
  return html`<table class="plans"><caption>Plans, the newest first</caption>
    <thead><tr><th scope="col">plan</th><th scope="col">made</th><th scope="col">by</th>
      ${found.money && html`<th scope="col" class="figure">avoidable cost, ${found.currency}</th><th scope="col" class="figure">against the newest</th>`}
      <th scope="col" class="figure">lines late</th><th scope="col">on the floor</th></tr></thead>
    <tbody>${found.plans.map((plan) => html`<tr key=${plan.number}><th scope="row">${plan.number}</th><td>${clock.full(plan.at)}</td><td>${plan.by}</td>
      ${found.money && html`<td class="figure">${money(plan.cost)}</td><td class="figure">${against(plan)}</td>`}
      <td class="figure">${number(plan.late)}</td><td>${plan.givenOut ? 'given out' : ''}</td></tr>`)}</tbody></table>`;
}

function Figures({ found, who, clock }) {
  const plan = found.plan;
  return html`<${PrintLine} who=${who} title="Figures" plan=${plan} />
    <h1>The week in figures</h1>
    <${PlanLine} plan=${{ number: found.plan, draft: false }} />
    ${found.draft && html`<p class="notice"><b>A draft:</b> plan ${found.plan} is not given out to the floor.</p>`}
    <p class="lead">${found.sentence}</p>
    <p class="screen-only"><button type="button" onClick=${() => print()}>Print</button></p>
    <div class="side">${found.rows.length > 0 && html`<${Rows} found=${found} />`}${found.money && found.costs.length > 0 && html`<${CostBars} costs=${found.costs} currency=${found.currency} />`}</div>
    <${LoadBars} presses=${found.byPress} />
    ${found.plans.length > 0 && html`<${Plans} found=${found} clock=${clock} />`}`;
}

function Own({ who, clock }) {
  const [state, setState] = useState({});
  useEffect(() => {
    api('GET', '/api/figures').then((found) => setState({ found }), (refused) => setState({ wrong: refused.words }));
  }, []);
  if (state.wrong) return html`<h1>Figures</h1><${Wrong} words=${state.wrong} />`;
  return state.found ? html`<${Figures} found=${state.found} who=${who} clock=${clock} />` : html`<p role="status">Reading the figures.</p>`;
}

page('Figures', (main, who) => {
  const clock = clockOf(who.zone);
  const name = chosenList('');
  render(html`<${ListLinks} own="" words="In figures" />
    ${name ? html`<${ListSection} name=${name} who=${who} clock=${clock} />` : html`<${Own} who=${who} clock=${clock} />`}`, main);
});

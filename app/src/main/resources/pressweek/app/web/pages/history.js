import { html, render, useEffect, useState } from '/assets/preact.js';
import { PrintLine, Wrong, api, clock as clockOf, page } from '/assets/shell.js';
import { Table } from '/assets/table.js';

const DAY = 24 * 60;
const BACK = [[1, 'a day'], [7, 'a week'], [31, 'a month'], [366, 'a year']];
const COLUMNS = [
  { name: 'at', heading: 'when', kind: 'time' },
  { name: 'by', heading: 'who', kind: 'text' },
  { name: 'what', heading: 'what', kind: 'text' },
  { name: 'why', heading: 'why', kind: 'text' },
  { name: 'about', heading: 'about', kind: 'text' },
];

function asList(found) {
  const rows = [...found].sort((one, other) => other.at - one.at).map((one) => COLUMNS.map((column) => one[column.name] ?? ''));
  return { title: 'Who changed what', columns: COLUMNS, rows };
}

function History({ who, clock }) {
  const [days, setDays] = useState(7);
  const [state, setState] = useState({});
  useEffect(() => {
    api('GET', `/api/history?from=${who.now - days * DAY}`).then((found) => setState({ list: asList(found) }), (refused) => setState({ wrong: refused.words }));
  }, [days]);
  return html`<${PrintLine} who=${who} title="Who changed what" />
    <h1>Who changed what, when and why</h1>
    <div class="row screen-only" role="group" aria-label="How far back">${BACK.map(([count, words]) => html`
      <button type="button" key=${count} aria-pressed=${String(days === count)} onClick=${() => setDays(count)}>back ${words}</button>`)}</div>
    ${state.wrong && html`<${Wrong} words=${state.wrong} />`}
    ${state.list && html`<${Table} list=${state.list} clock=${clock} empty="Nothing was changed in this time." />`}`;
}

page('History', (main, who) => render(html`<${History} who=${who} clock=${clockOf(who.zone)} />`, main));

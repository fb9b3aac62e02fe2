import { html, useEffect, useMemo, useRef, useState } from '/assets/preact.js';
import { Shown, compare, isEmpty, kindOf, textOf } from '/assets/cells.js';

const heading = (column) => column.heading || column.name.replaceAll('_', ' ');

/** Columns that paper leaves out, or in which no row has anything, are not shown until they are asked for. */
function usual(columns, rows) {
  return new Set(columns
    .filter((column, at) => column.heading !== '' && (rows.length === 0 || rows.some((row) => !isEmpty(row[at]))))
    .map((column) => column.name));
}

function useShown(columns, rows) {
  const [chosen, choose] = useState(null);
  const shown = chosen || usual(columns, rows);
  const turn = (name) => {
    const next = new Set(shown);
    if (!next.delete(name)) next.add(name);
    if (next.size > 0) choose(next);
  };
  return [shown, turn];
}

function Heading({ column, order, onOrder }) {
  const mine = order.name === column.name;
  const kind = kindOf(column);
  const sort = mine ? (order.down ? 'descending' : 'ascending') : undefined;
  return html`<th scope="col" class=${kind === 'number' ? 'figure' : ''} aria-sort=${sort}>
    <button type="button" class="sort" onClick=${() => onOrder(column.name)}>${heading(column)}<span
      aria-hidden="true" class="way">${mine ? (order.down ? '▼' : '▲') : ''}</span></button></th>`;
}

// Short words stay on their line, sentences get room to be read.
function width(value) {
  const most = [].concat(value ?? '').reduce((longest, one) => Math.max(longest, String(one).length), 0);
  return most <= 24 ? 'whole' : most <= 70 ? 'long' : 'longest';
}

function Row({ row, columns, clock }) {
  return html`<tr>${columns.map(({ column, at }, place) => {
    const shown = html`<${Shown} value=${row[at]} column=${column} clock=${clock} />`;
    const kind = kindOf(column);
    const name = kind === 'number' ? 'figure' : kind === 'time' ? '' : width(row[at]);
    return place === 0 ? html`<th scope="row">${shown}</th>` : html`<td class=${name}>${shown}</td>`;
  })}</tr>`;
}

function Columns({ columns, shown, onTurn }) {
  return html`<details class="columns screen-only"><summary>Columns (${shown.size} of ${columns.length})</summary>
    <div class="row">${columns.map((column) => html`<label class="beside" key=${column.name}>
      <input type="checkbox" checked=${shown.has(column.name)} onChange=${() => onTurn(column.name)} />${heading(column)}</label>`)}
    </div></details>`;
}

// "/" goes to the filter from wherever no text is being written.
function useSlash(box) {
  useEffect(() => {
    const go = (event) => {
      if (event.key !== '/' || event.target.closest('input, select, textarea')) return;
      event.preventDefault();
      box.current?.focus();
    };
    document.addEventListener('keydown', go);
    return () => document.removeEventListener('keydown', go);
  }, []);
}

function wanted(rows, columns, clock, text) {
  const words = text.toLowerCase().split(/\s+/).filter(Boolean);
  if (words.length === 0) return rows;
  return rows.filter((row) => {
    const all = columns.map((column, at) => textOf(row[at], column, clock)).join(' ').toLowerCase();
    return words.every((word) => all.includes(word));
  });
}

function ordered(rows, columns, order) {
  const at = columns.findIndex((column) => column.name === order.name);
  return at < 0 ? rows : [...rows].sort((one, other) => compare(one[at], other[at], columns[at], order.down));
}

/**
 * A list as a table: headings that stay in sight and sort, a filter (key /), columns to choose, made for paper, too.
 * `list` is {title, columns: [{name, heading, kind}], rows: [[...]]}; `empty` is said when it has no rows.
 */
export function Table({ list, clock, empty = 'There is nothing in this list.' }) {
  const { columns, rows, title } = list;
  const [text, setText] = useState('');
  const [order, setOrder] = useState({ name: '', down: false });
  const [shown, turn] = useShown(columns, rows);
  const box = useRef(null);
  useSlash(box);
  const found = useMemo(() => ordered(wanted(rows, columns, clock, text), columns, order), [list, text, order]);
  const visible = columns.map((column, at) => ({ column, at })).filter(({ column }) => shown.has(column.name));
  // A third press on a heading gives back the list's own order.
  const onOrder = (name) => setOrder(order.name !== name ? { name, down: false } : order.down ? { name: '', down: false } : { name, down: true });
  if (rows.length === 0) return html`<p>${empty}</p>`;
  return html`
    <div class="row tools screen-only">
      <label>Only rows with <input type="search" ref=${box} value=${text} onInput=${(e) => setText(e.target.value)}
        aria-keyshortcuts="/" /></label>
      <p role="status" class="muted count">${found.length === rows.length ? `${rows.length} rows` : `${found.length} of ${rows.length} rows`}</p>
      <button type="button" onClick=${() => print()}>Print</button>
    </div>
    <${Columns} columns=${columns} shown=${shown} onTurn=${turn} />
    <div class="sheetframe" role="region" aria-label=${title} tabindex="0">
      <table class="list"><caption class="unseen">${title}</caption>
        <thead><tr>${visible.map(({ column }) => html`<${Heading} key=${column.name} column=${column} order=${order} onOrder=${onOrder} />`)}</tr></thead>
        <tbody>${found.map((row) => html`<${Row} row=${row} columns=${visible} clock=${clock} />`)}</tbody>
      </table>
    </div>`;
}

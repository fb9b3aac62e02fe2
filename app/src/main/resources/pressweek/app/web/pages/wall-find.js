import { html, useState } from '/assets/preact.js';
import { choose, inView } from '/assets/wall-desk.js';

const MOST = 8;

function found(text) {
  const parts = text.toLowerCase().split(/\s+/).filter(Boolean);
  if (!parts.length) return [];
  const { week } = inView();
  const hits = [];
  for (const row of [...week.runs, ...week.unplaced]) {
    const all = `${row.line} ${row.item} ${row.words} ${row.customer || ''} ${row.press || 'unplaced'} ${row.mold || ''} ${row.run || ''}`.toLowerCase();
    if (parts.every((p) => all.includes(p))) hits.push(row);
  }
  // Lines whose number begins so come first.
  const begins = (row) => row.line.startsWith(parts[0]);
  return [...hits.filter(begins), ...hits.filter((row) => !begins(row))].slice(0, MOST + 1);
}

/** Finds a line by any of its words, and goes there. */
export function Find({ hands }) {
  const [text, type] = useState('');
  const [open, show] = useState(false);
  const hits = open ? found(text) : [];
  const go = (row) => {
    show(false);
    choose({ line: row.line });
    if (row.press) hands.walk.toLine(row.line);
  };
  const entered = (event) => {
    event.preventDefault();
    const hit = found(text)[0];
    if (hit) go(hit);
  };
  const keyed = (event) => {
    const buttons = [...event.currentTarget.querySelectorAll('.hits button')];
    const at = buttons.indexOf(document.activeElement);
    if (event.key === 'Escape') show(false);
    else if (event.key === 'ArrowDown' && buttons.length) buttons[Math.min(at + 1, buttons.length - 1)].focus();
    else if (event.key === 'ArrowUp' && at > 0) buttons[at - 1].focus();
    else return;
    event.preventDefault();
    event.stopPropagation();
  };
  const left = (event) => {
    if (!event.currentTarget.contains(event.relatedTarget)) show(false);
  };
  return html`<form class="find" role="search" onSubmit=${entered} onKeyDown=${keyed} onFocusOut=${left}>
    <input id="find" type="search" placeholder="Find a line" aria-label="Find a line, by its number, item, customer, mold or press" autocomplete="off"
      value=${text} onFocus=${() => show(true)} onInput=${(e) => { type(e.target.value); show(true); }} />
    <div class="hits" hidden=${!open || !text.trim()}>
      ${hits.slice(0, MOST).map((r) => html`<button type="button" key=${r.line} onClick=${() => go(r)}><b>${r.line}</b> ${r.item} <span class="muted">${r.press || 'unplaced'}${r.customer ? `, ${r.customer}` : ''}</span></button>`)}
      <p class="muted" role="status">${open && text.trim() ? (hits.length ? (hits.length > MOST ? 'and more; type on' : '') : 'No line has these words.') : ''}</p>
    </div></form>`;
}

import { html, useState } from '/assets/preact.js';
import { shiftWords } from '/assets/records.js';

/** The shift to begin with: the first that ends after now, or all when none does. `groups` is [[shift, rows]], `end` a row's end. */
export function current(groups, now, end) {
  const found = groups.find(([, rows]) => rows.some((row) => end(row) > now));
  return found ? found[0] : '';
}

/** The chosen shift ('' for all) and what chooses it. */
export function useShift(first) {
  const [chosen, choose] = useState(null);
  return [chosen === null ? first : chosen, choose];
}

/** Buttons for the shifts of the week, each with how many rows it has. */
export function Shifts({ groups, chosen, onChosen, label }) {
  const button = (id, words, count) => html`<button type="button" key=${id} aria-pressed=${String(chosen === id)} onClick=${() => onChosen(id)}>
    ${words} <span class="muted">${count}</span></button>`;
  // A second week brings the same names again; then each bears its date.
  const dated = new Set(groups.map(([id]) => shiftWords(id))).size < groups.length;
  const all = groups.reduce((sum, [, rows]) => sum + rows.length, 0);
  return html`<div class="shifts screen-only" role="group" aria-label=${label}>
    ${groups.map(([id, rows]) => button(id, shiftWords(id, dated), rows.length))}${button('', 'All', all)}</div>`;
}

import { html } from '/assets/preact.js';
import { minutes, number } from '/assets/clock.js';

/** The kind of a column in small letters: text, list, number, time, money. */
export function kindOf(column) {
  return String(column.kind || 'text').toLowerCase();
}

/** The texts of a cell that holds several. */
export function listOf(value) {
  if (Array.isArray(value)) return value;
  return value ? String(value).split('|') : [];
}

/** True when a cell holds nothing. */
export function isEmpty(value) {
  return value === null || value === undefined || value === '' || (Array.isArray(value) && value.length === 0);
}

/** A cell as one text, as it is searched and sorted by name. */
export function textOf(value, column, clock) {
  if (isEmpty(value)) return '';
  const kind = kindOf(column);
  if (kind === 'time') return clock.full(minutes(value));
  if (kind === 'list') return listOf(value).join(', ');
  if (kind === 'number') return number(value);
  return String(value);
}

/** A cell as it is shown. */
export function Shown({ value, column, clock }) {
  if (isEmpty(value)) return '';
  const kind = kindOf(column);
  if (kind === 'time') {
    const at = minutes(value);
    return html`<time class="whole" datetime=${new Date(at * 60000).toISOString()}>${clock.full(at)}</time>`;
  }
  if (kind === 'list') {
    const all = listOf(value);
    return all.length === 1 ? all[0] : html`<ul class="within">${all.map((one) => html`<li>${one}</li>`)}</ul>`;
  }
  return textOf(value, column, clock);
}

/** Which of two cells comes first; empty ones come last whichever way it goes. */
export function compare(one, other, column, down) {
  if (isEmpty(one) || isEmpty(other)) return Number(isEmpty(one)) - Number(isEmpty(other));
  const kind = kindOf(column);
  const sign = down ? -1 : 1;
  if (kind === 'number' || kind === 'money') return sign * (Number(one) - Number(other));
  if (kind === 'time') return sign * (minutes(one) - minutes(other));
  return sign * String(one).localeCompare(String(other), 'en', { numeric: true, sensitivity: 'base' });
}

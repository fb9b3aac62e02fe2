import { listOf } from '/assets/cells.js';
import { minutes } from '/assets/clock.js';

const isTime = (column) => String(column.kind).toLowerCase() === 'time';
const isList = (column) => String(column.kind).toLowerCase() === 'list';

function cell(value, column) {
  if (isList(column)) return listOf(value);
  if (isTime(column)) return value === null || value === '' ? null : minutes(value);
  return value ?? '';
}

/** The rows of a list as objects by the names of its columns; times in minutes since 1970 UTC, null without one. */
export function records(list) {
  return list.rows.map((row) => Object.fromEntries(list.columns.map((column, at) => [column.name, cell(row[at], column)])));
}

/** Rows by what `key` says of them, in the order in which it first comes up: [[key, rows], ...]. */
export function grouped(rows, key) {
  const groups = new Map();
  for (const row of rows) {
    const name = key(row);
    if (!groups.has(name)) groups.set(name, []);
    groups.get(name).push(row);
  }
  return [...groups];
}

const DAYS = ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'];

/** A shift's id as people say it: "2026-12-01 early" is "Tue early", with `dated` "Tue 1 early". */
export function shiftWords(id, dated = false) {
  const [, date, name] = /^(\d{4}-\d{2}-\d{2}) (.*)$/.exec(id) || [];
  if (!date) return id || 'outside the shifts';
  const day = new Date(`${date}T00:00Z`);
  return `${DAYS[day.getUTCDay()]} ${dated ? `${day.getUTCDate()} ` : ''}${name}`;
}

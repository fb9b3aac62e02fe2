const BETWEEN_MS = 300;
const SHORTEST = 3;
const FIELDS = 'input:not([type=checkbox]):not([type=radio]):not([type=button]), textarea, select, [contenteditable]';

/**
 * Listens for a scanner that types: characters in quick order, ended by Enter, wherever the focus is except in a text field. The keys
 * of a label press no button. Answers with what stops it.
 */
export function scanner(read) {
  let text = '';
  let last = 0;
  const key = (event) => {
    if (event.ctrlKey || event.metaKey || event.altKey || event.target.closest(FIELDS)) return;
    const now = event.timeStamp;
    if (now - last > BETWEEN_MS) text = '';
    if (event.key === 'Enter' && text.trim().length >= SHORTEST) {
      event.preventDefault();
      event.stopPropagation();
      read(text.trim());
      text = '';
    } else if (event.key.length === 1) {
      if (event.key === ' ' && !text) return;
      event.preventDefault();
      text += event.key;
      last = now;
    }
  };
  document.addEventListener('keydown', key, true);
  return () => document.removeEventListener('keydown', key, true);
}

const norm = (text) => String(text || '').trim().toUpperCase();

const week = (plan) => norm(plan).split('/')[0];

function names(row, label, plan) {
  if (norm(row.key) === label || norm(row.bin) === label || norm(row.lot) === label || norm(row.run) === label) return true;
  // The bars of a kit label are the plan's number and the run; runs keep their numbers within a week, not beyond it.
  const [number, run] = label.split(' ');
  return Boolean(row.run) && run === norm(row.run) && week(number) === week(plan);
}

/** True while pieces of a pull are to be brought: a plan that replaces another can want more than was brought for that one. */
export function toBring(row) {
  return !row.ticked || row.ticked.pieces + row.ticked.short < row.pieces;
}

/** What a label can mean among rows, the soonest first, what is still to bring before what is done. */
export function meant(rows, text, plan) {
  const label = norm(text);
  return rows
    .filter((row) => names(row, label, plan))
    .sort((one, other) => Number(toBring(other)) - Number(toBring(one)) || one.needBy - other.needBy);
}

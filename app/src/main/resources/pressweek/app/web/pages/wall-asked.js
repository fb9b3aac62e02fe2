import { useEffect, useState } from '/assets/preact.js';
import { api, money } from '/assets/shell.js';
import { desk } from '/assets/wall-desk.js';

/** What is read from the server, and read anew when its key changes: `{wait}`, `{wrong}` or `{is}`. */
export function useAsked(path, key) {
  const [got, put] = useState({ wait: true });
  useEffect(() => {
    let here = true;
    put((before) => (before.is ? { ...before, old: true } : { wait: true }));
    api('GET', path).then((is) => here && put({ is }), (problem) => here && put({ wrong: problem.words || String(problem) }));
    return () => { here = false; };
  }, [path, key]);
  return got;
}

/** ", costs EUR 12.00 more"; nothing when the plant has told no rates. */
export function price(more) {
  const { week } = desk;
  if (!week.money) return '';
  return more ? `, costs ${money(Math.abs(more), week.currency)} ${more > 0 ? 'more' : 'less'}` : ', costs as much';
}

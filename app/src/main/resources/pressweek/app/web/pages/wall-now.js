import { desk } from '/assets/wall-desk.js';

let read = { week: null, at: 0 };

/** The plant's present minute: as the server told it with the week, and what has passed since. */
export function nowMin() {
  if (read.week !== desk.week) read = { week: desk.week, at: performance.now() };
  return desk.week.now + Math.floor((performance.now() - read.at) / 60000);
}

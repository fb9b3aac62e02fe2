import { api } from '/assets/api.js';

/** The week, asked for before anything else of the page is here. */
export const asked = api('GET', '/api/week');
asked.catch(() => {});

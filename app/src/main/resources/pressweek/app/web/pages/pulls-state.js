import { useEffect, useMemo, useRef, useState } from '/assets/preact.js';
import { api, live } from '/assets/shell.js';
import { send, tick, withWaiting } from '/assets/pulls-send.js';

const TRY_AGAIN_MS = 10000;

async function read(store) {
  try {
    const list = await api('GET', '/api/pulls');
    await store.remember('pulls', { list, at: Math.floor(Date.now() / 60000) });
    return { list, at: null, wrong: '' };
  } catch (refused) {
    const last = await store.remembered('pulls');
    // Without a connection the list read last stands in; what is ticked on it is kept.
    return last ? { ...last, wrong: refused.words } : { list: null, at: null, wrong: refused.words };
  }
}

/** The pulls of the plan given out, what waits to be sent, and the acts on them. */
export function usePulls(store, who) {
  const [state, setState] = useState({ list: null, at: null, wrong: '', waiting: [], refused: [], why: '' });
  const busy = useRef(Promise.resolve());

  const look = async () => ({ waiting: await store.waiting(), refused: await store.refused() });
  // One after the other, so that an older answer never replaces a newer one.
  const inTurn = (work) => {
    busy.current = busy.current.then(work, work);
    return busy.current;
  };
  const renew = () => inTurn(async () => {
    const why = await send(store);
    const found = await read(store);
    const mine = await look();
    setState({ ...found, ...mine, why });
  });
  const act = async (row, what) => {
    await store.add(tick(row, what, who));
    const mine = await look();
    setState((old) => ({ ...old, ...mine }));
    renew();
  };
  const dismiss = async (id) => {
    await store.dismiss(id);
    const mine = await look();
    setState((old) => ({ ...old, ...mine }));
  };

  useEffect(() => {
    renew();
    const stop = live({ ticks: renew, week: renew, again: renew });
    window.addEventListener('online', renew);
    return () => {
      stop();
      window.removeEventListener('online', renew);
    };
  }, []);
  const owed = state.waiting.length > 0 || state.wrong !== '';
  useEffect(() => {
    if (!owed) return undefined;
    const timer = setInterval(renew, TRY_AGAIN_MS);
    return () => clearInterval(timer);
  }, [owed]);

  const rows = useMemo(() => withWaiting(state.list?.rows || [], state.waiting), [state.list, state.waiting]);
  return { ...state, rows, act, dismiss, renew };
}

/** The minute that it is, by the server's clock as far as it is known; moves on by itself. */
export function useNow(who) {
  const ahead = useRef(who.offline ? 0 : who.now - Math.floor(Date.now() / 60000));
  const minute = () => Math.floor(Date.now() / 60000) + ahead.current;
  const [now, setNow] = useState(minute());
  useEffect(() => {
    const timer = setInterval(() => setNow(minute()), 15000);
    return () => clearInterval(timer);
  }, []);
  return now;
}

const CHOSEN = 'pressweek.presses';

/** The presses chosen on this tablet; none chosen means all. */
export function usePresses() {
  const [chosen, setChosen] = useState(() => {
    try {
      return JSON.parse(localStorage.getItem(CHOSEN)) || [];
    } catch {
      return [];
    }
  });
  const choose = (presses) => {
    setChosen(presses);
    try {
      localStorage.setItem(CHOSEN, JSON.stringify(presses));
    } catch {
      // Chosen for this visit only, then.
    }
  };
  return [chosen, choose];
}

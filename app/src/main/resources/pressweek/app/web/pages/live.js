const EVENTS = ['progress', 'proposal', 'week', 'ticks', 'files', 'compared', 'beat'];
const NAME = 'pressweek-live';
const AGAIN_MS = 5000;

function listen(tell) {
  let source = null;
  let lost = false;
  let timer = 0;
  const open = () => {
    source = connected(tell);
    source.onerror = () => {
      if (!lost) tell({ name: 'lost', data: {} });
      lost = true;
      // Refused rather than cut off: the browser does not try again by itself.
      if (source.readyState === EventSource.CLOSED) timer = setTimeout(open, AGAIN_MS);
    };
    source.onopen = () => {
      if (lost) tell({ name: 'again', data: {} });
      lost = false;
    };
  };
  open();
  return () => {
    clearTimeout(timer);
    source.close();
  };
}

function connected(tell) {
  const source = new EventSource('/api/live');
  for (const name of EVENTS) {
    source.addEventListener(name, (event) => tell({ name, data: event.data ? JSON.parse(event.data) : {} }));
  }
  return source;
}

/**
 * What happens elsewhere, as it happens: `handlers` by event (progress, proposal, week, ticks, files, compared, beat; `lost` and `again` when the
 * connection goes and comes back, after which a page reads anew). One connection serves all tabs. Answers with what ends it.
 */
export function live(handlers) {
  const here = ({ name, data }) => handlers[name] && handlers[name](data);
  if (!navigator.locks || !window.BroadcastChannel) return listen(here);
  const channel = new BroadcastChannel(NAME);
  channel.onmessage = (message) => here(message.data);
  const ending = new AbortController();
  let end = () => {};
  const asked = Date.now();
  navigator.locks.request(NAME, { signal: ending.signal }, () => new Promise((done) => {
    const stop = listen((event) => {
      channel.postMessage(event);
      here(event);
    });
    end = () => {
      stop();
      done();
    };
    // The tab that listened before has gone; what happened between the two is in no event.
    if (Date.now() - asked > 1000) here({ name: 'again', data: {} });
  })).catch(() => {});
  return () => {
    end();
    ending.abort();
    channel.close();
  };
}

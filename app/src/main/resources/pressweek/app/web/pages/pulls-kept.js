const NAME = 'pressweek-pulls';
const QUEUE = 'ticks';
const ASIDE = 'refused';
const LAST = 'last';

function promised(request) {
  return new Promise((done, failed) => {
    request.onsuccess = () => done(request.result);
    request.onerror = () => failed(request.error);
  });
}

function finished(work) {
  return new Promise((done, failed) => {
    work.oncomplete = () => done();
    work.onerror = () => failed(work.error);
    work.onabort = () => failed(work.error);
  });
}

function opened() {
  const request = indexedDB.open(NAME, 1);
  request.onupgradeneeded = () => {
    // Ticks are told in the order in which they were made, which the key keeps.
    request.result.createObjectStore(QUEUE, { keyPath: 'place', autoIncrement: true });
    request.result.createObjectStore(ASIDE, { keyPath: 'id' });
    request.result.createObjectStore(LAST);
  };
  return promised(request);
}

function inBrowser(db) {
  const write = async (stores, act) => {
    const work = db.transaction(stores, 'readwrite', { durability: 'strict' });
    act(...[].concat(stores).map((name) => work.objectStore(name)));
    await finished(work);
  };
  const read = (store, act) => promised(act(db.transaction(store).objectStore(store)));
  return {
    keeps: true,
    add: (tick) => write(QUEUE, (queue) => queue.add(tick)),
    waiting: () => read(QUEUE, (queue) => queue.getAll()),
    remove: (places) => write(QUEUE, (queue) => places.forEach((place) => queue.delete(place))),
    setAside: (tick, words) => write([QUEUE, ASIDE], (queue, aside) => {
      queue.delete(tick.place);
      aside.put({ ...tick, words });
    }),
    refused: () => read(ASIDE, (aside) => aside.getAll()),
    dismiss: (id) => write(ASIDE, (aside) => aside.delete(id)),
    remember: (what, value) => write(LAST, (last) => last.put(value, what)),
    remembered: (what) => read(LAST, (last) => last.get(what)),
  };
}

function inMemory() {
  const queue = [];
  const aside = new Map();
  const last = new Map();
  let place = 0;
  return {
    keeps: false,
    add: async (tick) => void queue.push({ ...tick, place: ++place }),
    waiting: async () => [...queue],
    remove: async (places) => {
      for (const one of places) queue.splice(queue.findIndex((tick) => tick.place === one), 1);
    },
    setAside: async (tick, words) => {
      queue.splice(queue.findIndex((one) => one.place === tick.place), 1);
      aside.set(tick.id, { ...tick, words });
    },
    refused: async () => [...aside.values()],
    dismiss: async (id) => void aside.delete(id),
    remember: async (what, value) => void last.set(what, value),
    remembered: async (what) => last.get(what),
  };
}

/**
 * What this tablet keeps: ticks not sent yet (`add`, `waiting` in order, `remove`), those that were refused, the last list read.
 * A tick that `add` has taken outlives the tab and the browser; `keeps` is false where the browser keeps nothing.
 */
export async function kept() {
  try {
    return inBrowser(await opened());
  } catch {
    return inMemory();
  }
}

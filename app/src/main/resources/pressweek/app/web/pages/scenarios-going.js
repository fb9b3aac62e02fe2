import { html, useEffect, useState } from '/assets/preact.js';

/** Seconds in words, as one waits for them: "40 s", "4 min". */
export function wait(seconds) {
  if (seconds < 90) return `${Math.max(0, Math.round(seconds))} s`;
  const min = Math.round(seconds / 60);
  return min < 90 ? `${min} min` : `${Math.floor(min / 60)} h${min % 60 ? ` ${min % 60} min` : ''}`;
}

// Between two plans nothing is told; the time left goes on all the same.
function useLeft(going) {
  const [left, setLeft] = useState(going.left);
  useEffect(() => {
    const end = performance.now() + going.left * 1000;
    const tick = () => setLeft(Math.max(0, (end - performance.now()) / 1000));
    tick();
    const timer = setInterval(tick, 1000);
    return () => clearInterval(timer);
  }, [going]);
  return left;
}

function On({ going, may, onStop }) {
  const left = useLeft(going);
  const almost = left < 1 ? 'almost done' : `about ${wait(left)} left`;
  return html`<div class="notice going"><p role="status"><b>${going.by} is comparing:</b> ${going.done} of ${going.of} plans are made.</p>
    <div class="row tight"><progress value=${going.done} max=${going.of} aria-label="Plans that are made"></progress><span>${almost}</span>
    ${may && html`<button type="button" onClick=${onStop}>Stop</button>`}</div>
    <p class="muted">It goes on when this page is left. Stopped, what there is by then is compared.</p></div>`;
}

/** The comparison that goes on, or what stands in its way, or why the last one came to nothing. */
export function Going({ going, may, onStop }) {
  if (going.on) return html`<${On} going=${going} may=${may} onStop=${onStop} />`;
  return html`${going.trouble && html`<p class="notice wrong">${going.trouble}</p>`}
    ${going.busy && may && html`<p class="notice">${going.busy}. Nothing can be compared until then.</p>`}`;
}

import { html } from '/assets/preact.js';

const means = (found) => Object.entries(found).map(([name, value]) => `${name.replaceAll('_', ' ')} ${value}`).join(', ');

function Told({ label, texts }) {
  if (!texts || texts.length === 0) return '';
  return html`<dt>${label}</dt>${texts.map((text) => html`<dd key=${text}>${text}</dd>`)}`;
}

function Reading({ reading, rank, onCode }) {
  return html`<li class="reading"><h2><span class="muted">${rank}.</span> <span class="code">${reading.code || 'no code'}</span>
      ${reading.complete ? '' : html` <span class="muted">not whole yet</span>`}</h2>
    ${reading.family && html`<p class="muted">${reading.family}</p>`}
    <dl>
      <${Told} label="ask" texts=${reading.questions} />
      <${Told} label="against it" texts=${reading.conflicts} />
      <${Told} label="not read" texts=${reading.not_understood} />
      <${Told} label="understood" texts=${reading.understood.map((one) => `${one.text}: ${means(one.means)}`)} />
      <${Told} label="assumed" texts=${reading.assumed.map((one) => `${means(one.means)}: ${one.because}`)} />
    </dl>
    ${reading.complete && html`<button type="button" aria-label=${`Decode ${reading.code}`} onClick=${() => onCode(reading.code)}>Decode it</button>`}</li>`;
}

/** The readings of a customer's words, the likeliest first, with what was understood, assumed and left to ask. */
export function Readings({ found, onCode }) {
  const count = found.readings.length;
  if (count === 0) return html`<p>Nothing of this could be read.</p>`;
  return html`<p role="status">${count === 1 ? 'One reading' : `${count} readings, the likeliest first`}.</p>
    <ol class="readings">${found.readings.map((reading, at) => html`<${Reading} key=${at} reading=${reading} rank=${at + 1} onCode=${onCode} />`)}</ol>`;
}

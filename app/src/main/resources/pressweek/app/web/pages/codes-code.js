import { html } from '/assets/preact.js';

// Without gaps the parts of a code read as one; each is underlined and numbered where it stands.
function marked(code, parts) {
  const pieces = [];
  let at = 0;
  parts.forEach((part, place) => {
    const from = part.position - 1;
    if (from > at) pieces.push(html`<span>${code.slice(at, from)}</span>`);
    pieces.push(html`<span class="part"><span>${part.text}</span><span class="place">${place + 1}</span></span>`);
    at = from + part.text.length;
  });
  if (at < code.length) pieces.push(html`<span>${code.slice(at)}</span>`);
  return pieces;
}

function Fault({ code, fault, onCode }) {
  const from = fault.position - 1;
  const to = from + Math.max(1, fault.length);
  const other = (symbol) => code.slice(0, from) + symbol + code.slice(to);
  return html`
    <p class="bigcode code">${code.slice(0, from)}<mark>${code.slice(from, to) || '\u00a0'}</mark>${code.slice(to)}</p>
    <p role="alert"><b class="stress">Cannot be read:</b> ${fault.message}</p>
    ${(fault.nearest || []).length > 0 && html`<div class="row"><span class="muted">instead of "${fault.seen}":</span>
      ${fault.nearest.map((symbol) => html`<button type="button" class="code" key=${symbol}
        aria-label=${`Decode ${other(symbol)}`} onClick=${() => onCode(other(symbol))}>${symbol}</button>`)}</div>`}`;
}

function origin({ origin: from, because }) {
  const quote = from === 'code' ? because.indexOf(' "') : -1;
  return `${from}: ${quote < 0 ? because : because.slice(0, quote)}`;
}

function Molds({ molds }) {
  if (!molds || molds.length === 0) return '';
  return html`<h2>Who can make it</h2><ul>${molds.map((mold) => html`<li key=${mold.mold}><b>${mold.mold}</b>
    ${mold.presses.length > 0 ? ` on ${mold.presses.join(', ')}` : `: no press${mold.objections ? `: ${mold.objections.join('; ')}` : ''}`}</li>`)}</ul>`;
}

/** What a code means: its parts marked, each attribute with where it came from, who can make it; or where its fault is. */
export function Code({ found, onCode }) {
  if (found.fault) return html`<${Fault} code=${found.code} fault=${found.fault} onCode=${onCode} />`;
  return html`
    <p class="bigcode code">${marked(found.code, found.parts || [])}</p>
    ${found.canonical !== found.code && html`<p>The guide writes it <b class="code">${found.canonical}</b>.</p>`}
    <p class="muted">${found.family}</p>
    <ol class="parts">${(found.parts || []).map((part) => html`<li key=${part.position}><b class="code">${part.text}</b> ${part.part}${part.words && `: ${part.words}`}</li>`)}</ol>
    ${!found.good && html`<div class="notice wrong"><p><b>No order of it could be planned:</b> ${found.trouble}</p><p>Cure: ${found.cure}</p></div>`}
    <${Molds} molds=${found.molds} />
    <table><caption>Everything that is known of it</caption>
      <thead><tr><th scope="col">attribute</th><th scope="col">value</th><th scope="col">where it comes from</th></tr></thead>
      <tbody>${(found.attributes || []).map((one) => html`<tr key=${one.name}>
        <th scope="row">${one.name.replaceAll('_', ' ')}</th><td>${one.value}</td><td>${origin(one)}</td></tr>`)}</tbody></table>`;
}

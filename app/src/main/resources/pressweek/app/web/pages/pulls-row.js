import { html } from '/assets/preact.js';
import { number, span } from '/assets/shell.js';

function when(row, now, clock) {
  const left = row.needBy - now;
  const near = clock.date(row.needBy) === clock.date(now);
  const words = left < 0 ? `${span(-left)} past` : left < 12 * 60 ? `in ${span(left)}` : '';
  return html`<p class="by"><span class="muted">by</span> <b>${near ? clock.time(row.needBy) : clock.moment(row.needBy)}</b>
    <span class=${left < 0 ? 'words stress' : 'words muted'}>${words}</span></p>`;
}

function where(row) {
  if (!row.bin) return html`<p class="bin"><b>${row.receipt || 'no bin named'}</b></p>`;
  return html`<p class="bin">bin <b>${row.bin}</b>${row.lot && html` <span class="lot">lot ${row.lot}</span>`}</p>`;
}

function Cautions({ text }) {
  const all = (text || '').split('; ').filter(Boolean);
  return all.length > 0 && html`<ul class="cautions">${all.map((one) => html`<li key=${one}>${one}</li>`)}</ul>`;
}

/** A pull that is still to bring, with its buttons. */
export function Open({ row, now, clock, marked, may, onBrought, onShort }) {
  const name = `${number(row.pieces)} ${row.insert} for ${row.press}`;
  return html`<li class=${marked ? 'pull marked' : 'pull'} data-key=${row.key}>
    <div class="goal">${when(row, now, clock)}<p class="press"><span class="muted">to</span> <b>${row.press}</b></p></div>
    <div class="what">
      <p class="insert"><b>${row.insert}</b> <span>${row.words}</span></p>
      ${row.ticked && html`<p class="stress">The plan wants more than before: ${number(row.ticked.pieces)} were brought, ${number(row.pieces - row.ticked.pieces)} more are wanted.</p>`}
      <${Cautions} text=${row.caution} />
      <p class="muted small">${row.run}, order ${row.order}${row.line ? `/${row.line}` : ''}</p>
    </div>
    <div class="from">${where(row)}<p class="pieces"><b>${number(row.pieces)}</b> ${row.unit || 'pcs'}</p></div>
    ${may && html`<div class="acts">
      <button type="button" class="first big" data-brought aria-label=${`Brought ${name}`} onClick=${() => onBrought(row)}>Brought</button>
      <button type="button" class="big" aria-label=${`Short: ${name}`} onClick=${() => onShort(row)}>Short ...</button></div>`}
  </li>`;
}

/** A pull that is ticked off, and by whom. */
export function Done({ row, clock, may, onUndo }) {
  const { pieces, short, reason, by, at } = row.ticked;
  const said = short > 0 ? `${number(pieces)} brought, ${number(short)} short: ${reason}` : `${number(pieces)} brought`;
  return html`<li class="done">
    <p><b>${row.press}</b> <b>${row.insert}</b> ${said}, ${clock.moment(at)}${by ? `, ${by}` : ''}
      ${row.unsent && html` <span class="stress">not sent yet</span>`}</p>
    ${may && html`<button type="button" class="big" aria-label=${`Undo ${row.insert} for ${row.press}`} onClick=${() => onUndo(row)}>Undo</button>`}
  </li>`;
}

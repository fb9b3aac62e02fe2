import { html, useEffect, useRef, useState } from '/assets/preact.js';
import { number } from '/assets/shell.js';

const REASONS = ['The bin is empty', 'Fewer than the record says', 'The lot is held', 'Damaged or wrong parts', 'Not delivered yet'];
const KEYS = ['1', '2', '3', '4', '5', '6', '7', '8', '9', 'clear', '0', 'back'];
const SAID = { clear: 'Clear', back: 'Last one away' };

function Keys({ onKey }) {
  return html`<div class="keys" role="group" aria-label="Number keys">${KEYS.map((key) => html`
    <button type="button" key=${key} onClick=${() => onKey(key)} aria-label=${SAID[key]}>${key === 'back' ? '←' : key === 'clear' ? 'C' : key}</button>`)}</div>`;
}

function typed(found, key) {
  if (key === 'clear') return '';
  if (key === 'back') return found.slice(0, -1);
  return (found + key).slice(0, 8).replace(/^0+(?=\d)/, '');
}

/** Asks how many pieces there were and why not all; `onTold({pieces, short, reason})` or `onLeft()`. */
export function Short({ row, onTold, onLeft }) {
  const box = useRef(null);
  const [found, setFound] = useState('');
  const [reason, setReason] = useState('');
  useEffect(() => box.current.showModal(), []);
  const pieces = Math.min(Number(found || 0), row.pieces);
  const short = row.pieces - pieces;
  const ready = found !== '' && short > 0 && reason !== '';
  const tell = (event) => {
    event.preventDefault();
    if (ready) onTold({ pieces, short, reason });
  };
  return html`<dialog ref=${box} class="short" aria-labelledby="short-title" onClose=${onLeft}>
    <form onSubmit=${tell}>
      <h2 id="short-title">${row.insert} for ${row.press}: how many are there?</h2>
      <div class="shortbody">
        <div>
          <label>Pieces that you bring, of ${number(row.pieces)}
            <input inputmode="none" pattern="[0-9]*" autocomplete="off" value=${found} onInput=${(e) => setFound(e.target.value.replace(/\D/g, ''))} /></label>
          <${Keys} onKey=${(key) => setFound((old) => typed(old, key))} />
        </div>
        <fieldset><legend>Why</legend>${REASONS.map((one) => html`
          <label class="beside big" key=${one}><input type="radio" name="reason" value=${one} checked=${reason === one} onChange=${() => setReason(one)} />${one}</label>`)}
        </fieldset>
      </div>
      <p role="status">${found === '' ? 'Say how many.' : short > 0 ? `${number(short)} are short.` : 'That is all of them; press Leave and tick it off.'}</p>
      <div class="row"><button type="submit" class="first big" disabled=${!ready}>Tell the scheduler</button>
        <button type="button" class="big" onClick=${() => box.current.close()}>Leave</button></div>
    </form></dialog>`;
}

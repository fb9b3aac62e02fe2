import { html, useState } from '/assets/preact.js';
import { Dialog } from '/assets/wall-dialog.js';

const KEPT = 'pressweek.wall.letters';

const KEYS = [
  ['On the wall', [
    ['← →', 'the run before, the run after; left of the first stands the press'],
    ['↑ ↓', 'the strip above, the strip below, at about the same time'],
    ['Home, End', 'the press, its last run'],
    ['Enter', 'choose the run; on a press: what could run there now'],
    ['W', 'why: the same, and go to the reasons'],
    ['E', 'what could run in the place after this run'],
    ['+ − 0', 'zoom in, out, the whole week (also Ctrl and the wheel)'],
  ]],
  ['A run', [
    ['M', 'take it up; then ← → go through its places, ↑ ↓ to other presses, Enter puts it down, Esc leaves it'],
    ['P', 'promise it to the floor, or let it go'],
    ['H', 'hold it here, or release it'],
  ]],
  ['Anywhere on the page', [
    ['Z, Shift Z', 'undo, redo'],
    ['/', 'find a line'],
    ['Esc', 'leave what is in the hand; back to the lists'],
    ['?', 'this page'],
  ]],
];

/** True while single letters act; who speaks to the computer may want them not to. */
export function lettersOn() {
  try {
    return localStorage.getItem(KEPT) !== 'off';
  } catch {
    return true;
  }
}

function keep(on) {
  try {
    localStorage.setItem(KEPT, on ? 'on' : 'off');
  } catch {
    // Where nothing can be kept, letters act again on the next visit.
  }
}

/** All keys of the page. */
export function Help({ close }) {
  const [on, turn] = useState(lettersOn());
  const changed = (event) => {
    keep(event.target.checked);
    turn(event.target.checked);
  };
  return html`<${Dialog} title="Keys" close=${close}>
    ${KEYS.map(([name, rows]) => html`<h3>${name}</h3><dl class="keys">${rows.map(([key, words]) => html`<dt><kbd>${key}</kbd></dt><dd>${words}</dd>`)}</dl>`)}
    <p>With a mouse or pen drag a run; with a finger hold it a moment, then drag. Near an edge the wall scrolls.</p>
    <label class="beside"><input type="checkbox" checked=${on} onChange=${changed} /> Letters and signs act as keys</label>
  </${Dialog}>`;
}

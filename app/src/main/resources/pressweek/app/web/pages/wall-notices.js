import { html } from '/assets/preact.js';
import { desk, unsay } from '/assets/wall-desk.js';

function Notice(notice) {
  return html`<div class=${`notice${notice.kind === 'wrong' ? ' wrong' : ''}`} key=${notice.id}><p>${notice.words}</p>
    <button type="button" aria-label="Put this away" onClick=${() => unsay(notice.id)}>✕</button></div>`;
}

/** Over the foot of the wall: what is in the hand and, for who hears the page, what would come of it. */
export function InHand({ hands }) {
  const { carry, done } = desk;
  return html`<p class="unseen" role="status">${carry ? `${carry.line}: ${carry.words || 'in the hand'}` : done}</p>
    ${carry && carry.by === 'keys' && html`<div class="carrybar"><p><b>${carry.line}</b> is in the hand: arrow keys or a tap move it.</p>
      <button type="button" class="first" onClick=${() => hands.carry.putDown()}>Put down</button>
      <button type="button" onClick=${() => hands.carry.leave()}>Leave it</button></div>`}`;
}

/** What has to be said, until it is put away. */
export function Notices() {
  const { notices } = desk;
  return html`<div role="status">${notices.filter((n) => n.kind !== 'wrong').map(Notice)}</div>
    <div role="alert">${notices.filter((n) => n.kind === 'wrong').map(Notice)}</div>`;
}

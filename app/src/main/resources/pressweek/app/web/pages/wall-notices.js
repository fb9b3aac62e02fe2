import { html } from '/assets/preact.js';
import { desk, unsay } from '/assets/wall-desk.js';

function Notice(notice) {
  return html`<div class=${`notice${notice.kind === 'wrong' ? ' wrong' : ''}`} key=${notice.id}><p>${notice.words}</p>
    <button type="button" aria-label="Put this away" onClick=${() => unsay(notice.id)}>✕</button></div>`;
}

function InHand({ hands }) {
  const { carry } = desk;
  if (!carry || carry.by !== 'keys') return '';
  return html`<div class="carrybar"><p><b>${carry.line}</b> is in the hand: arrow keys or a tap move it.</p>
    <button type="button" class="first" onClick=${() => hands.carry.putDown()}>Put down</button>
    <button type="button" onClick=${() => hands.carry.leave()}>Leave it</button></div>`;
}

/** Over the foot of the wall: what is in the hand and what would come of it, and what has to be said. */
export function Notices({ hands }) {
  const { carry, done, notices } = desk;
  return html`<p class="unseen" role="status">${carry ? `${carry.line}: ${carry.words || 'in the hand'}` : done}</p>
    <div role="status">${notices.filter((n) => n.kind !== 'wrong').map(Notice)}</div>
    <div role="alert">${notices.filter((n) => n.kind === 'wrong').map(Notice)}</div>
    <${InHand} hands=${hands} />`;
}

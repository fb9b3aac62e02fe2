import { html } from '/assets/preact.js';
import { money, number } from '/assets/shell.js';

const WIDE = 400;
const HIGH = 18;
const PARTS = [
  ['runMin', 'run', 'runs'],
  ['changeMin', 'change', 'changes'],
  ['awayMin', 'away', 'away'],
];

const hours = (min) => (min / 60).toLocaleString('en-US', { minimumFractionDigits: 1, maximumFractionDigits: 1 });

// Told apart by ink, slanted lines and dots, so that they are read as well on black and white paper.
function Patterns() {
  return html`<svg class="patterns" aria-hidden="true"><defs>
    <pattern id="slanted" width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><rect class="ground" width="5" height="5" /><path class="line" d="M0 0V5" /></pattern>
    <pattern id="dotted" width="5" height="5" patternUnits="userSpaceOnUse"><rect class="ground" width="5" height="5" /><circle class="dot" cx="2.5" cy="2.5" r="1" /></pattern>
  </defs></svg>`;
}

function Strip({ press, most }) {
  const scale = WIDE / most;
  let at = 0;
  return html`<svg class="strip" viewBox=${`-1 -1 ${WIDE + 2} ${HIGH + 2}`} width=${WIDE + 2} height=${HIGH + 2} aria-hidden="true">
    ${PARTS.map(([name, mark]) => {
      const from = at;
      at += (press[name] || 0) * scale;
      return html`<rect class=${mark} x=${from} y="0" width=${Math.max(0, at - from)} height=${HIGH} />`;
    })}
    <rect class="hours" x="0" y="0" width=${press.openMin * scale} height=${HIGH} /></svg>`;
}

function Key({ mark, words }) {
  return html`<li><svg width="26" height="14" aria-hidden="true">
    <rect class=${mark} x="1" y="1" width="24" height="12" /><rect class="hours" x="1" y="1" width="24" height="12" /></svg>${words}</li>`;
}

/** What each press has of hours and what they are used for, as strips of one scale with their figures. */
export function LoadBars({ presses }) {
  if (presses.length === 0) return '';
  const most = Math.max(...presses.map((press) => press.openMin), 1);
  const free = (press) => press.openMin - PARTS.reduce((sum, [name]) => sum + (press[name] || 0), 0);
  return html`<${Patterns} /><table class="load"><caption>Hours by press</caption>
    <thead><tr><th scope="col">press</th>
      <th scope="col"><ul class="marks">${PARTS.map(([, mark, words]) => html`<${Key} key=${mark} mark=${mark} words=${words} />`)}<${Key} mark="free" words="free" /></ul></th>
      <th scope="col" class="figure">runs, h</th><th scope="col" class="figure">changes, h</th><th scope="col" class="figure">away, h</th><th scope="col" class="figure">free, h</th>
      <th scope="col" class="figure">of, h</th><th scope="col" class="figure">lines late</th></tr></thead>
    <tbody>${presses.map((press) => html`<tr key=${press.press}><th scope="row">${press.press}</th><td><${Strip} press=${press} most=${most} /></td>
      ${PARTS.map(([name]) => html`<td class="figure" key=${name}>${hours(press[name] || 0)}</td>`)}
      <td class="figure">${hours(free(press))}</td><td class="figure">${hours(press.openMin)}</td><td class="figure">${number(press.lateLines || 0)}</td></tr>`)}</tbody></table>`;
}

/** What the plan costs, by rule, the dearest first, with a bar each. */
export function CostBars({ costs, currency }) {
  const all = [...costs].sort((one, other) => other.amount - one.amount);
  const most = Math.max(...all.map((cost) => cost.amount), 1);
  const sum = all.reduce((total, cost) => total + cost.amount, 0);
  return html`<table class="costs"><caption>Avoidable cost by rule, ${currency}</caption>
    <thead class="unseen"><tr><th scope="col">rule</th><th scope="col">bar</th><th scope="col">amount</th></tr></thead>
    <tbody>${all.map((cost) => html`<tr key=${cost.rule}><th scope="row">${cost.words}</th>
      <td><svg width="150" height="14" aria-hidden="true"><rect class="run" x="0" y="0" width=${Math.max(cost.amount > 0 ? 1 : 0, (150 * cost.amount) / most)} height="14" /></svg></td>
      <td class="figure">${money(cost.amount)}</td></tr>`)}</tbody>
    <tfoot><tr><th scope="row">together</th><td></td><td class="figure key">${money(sum)}</td></tr></tfoot></table>`;
}

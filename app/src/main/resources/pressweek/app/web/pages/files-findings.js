import { html } from '/assets/preact.js';
import { grouped } from '/assets/records.js';

const SEVERITIES = {
  ERROR: 'no plan until it is mended',
  ORDER_LINE: 'this order line is left out',
  WARNING: 'to know',
};

const severity = (one) => String(one.severity || 'WARNING').toUpperCase();

function whole(text, cell) {
  const between = (char) => char === undefined || /[,;\t"]/.test(char);
  for (let at = text.indexOf(cell); at >= 0; at = text.indexOf(cell, at + 1)) {
    if (between(text[at - 1]) && between(text[at + cell.length])) return at;
  }
  return -1;
}

// What the message quotes is marked where it stands in the line, so that it is found at a glance.
function marked(text, message) {
  const [, seen] = /"([^"]+)"/.exec(message) || [];
  const parts = [seen, ...(/unknown [^"]*"([^"]+)" at/.exec(message) || []).slice(1)].filter(Boolean);
  // A whole cell before a piece of one: "3" is not the 3 of an id.
  const cell = parts.map((part) => [part, whole(text, part)]).find(([, at]) => at >= 0);
  const piece = parts.reverse().filter((part) => part.length > 1).map((part) => [part, text.indexOf(part)]).find(([, at]) => at >= 0);
  const [wanted, at] = (parts.length > 1 ? piece || cell : cell || piece) || [];
  if (!wanted) return text;
  return [text.slice(0, at), html`<mark>${wanted}</mark>`, text.slice(at + wanted.length)];
}

function Finding({ one }) {
  return html`<li class="finding">
    <p class="at">${one.line > 0 ? `line ${one.line}` : 'the file'}${one.column ? html`<br /><span class="muted">${one.column}</span>` : ''}</p>
    <div><p><b class=${severity(one) === 'ERROR' ? 'stress' : ''}>${SEVERITIES[severity(one)] || 'to know'}:</b> ${one.message}</p>
      ${one.text && html`<pre class="code line" tabindex="0" aria-label=${`Line ${one.line} of ${one.file}`}>${marked(one.text, one.message)}</pre>`}</div></li>`;
}

function summary(findings) {
  const count = (name) => findings.filter((one) => severity(one) === name).length;
  const [errors, lines, warnings] = Object.keys(SEVERITIES).map(count);
  const said = [];
  if (errors > 0) said.push(`${errors} that ${errors === 1 ? 'stops' : 'stop'} the plan`);
  if (lines > 0) said.push(`${lines} ${lines === 1 ? 'order line' : 'order lines'} left out`);
  if (warnings > 0) said.push(`${warnings} to know`);
  return `${said.join(', ')}.`;
}

/** The findings of a folder by file, each beside the line that it is about. */
export function Findings({ findings }) {
  if (!findings || findings.length === 0) return html`<p>Nothing is wrong.</p>`;
  const order = Object.keys(SEVERITIES);
  const sorted = [...findings].sort((one, other) => order.indexOf(severity(one)) - order.indexOf(severity(other)));
  return html`<p>${summary(findings)}</p>${grouped(sorted, (one) => one.file).map(([file, all]) => html`<section key=${file}>
    <h3>${file}</h3><ol class="findings">${all.map((one, at) => html`<${Finding} key=${at} one=${one} />`)}</ol></section>`)}`;
}

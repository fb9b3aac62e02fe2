import { html, useState } from '/assets/preact.js';
import { wait } from '/assets/scenarios-going.js';

function origin(one, clock) {
  if (!one.kept) return html`<span class="code">scenarios/${one.file}</span>`;
  return html`written by ${one.kept.by}, ${clock.full(one.kept.at)}${one.kept.version > 1 ? `, version ${one.kept.version}` : ''}`;
}

function Faults({ one }) {
  if (one.findings.length === 0) return '';
  return html`<ul>${one.findings.map((found, at) => html`<li key=${at} class=${found.severity === 'WARNING' ? '' : 'stress'}>
    ${one.file}${found.line > 0 ? `:${found.line}` : ''}: ${found.message}</li>`)}</ul>`;
}

function Row({ one, chosen, may, clock, onTurn, onOpen }) {
  const box = html`<label class="beside"><input type="checkbox" checked=${chosen} disabled=${!one.sound} onChange=${() => onTurn(one.id)} />${one.name}</label>`;
  return html`<tr><th scope="row">${may ? box : one.name}</th>
    <td>${one.words}${!one.sound && html`<p><b>Cannot be compared until it is mended:</b></p>`}<${Faults} one=${one} /></td>
    <td>${origin(one, clock)}</td>
    ${may && html`<td class="act"><button type="button" class="plain" aria-label=${`${one.kept ? 'Edit' : 'Write another from'} ${one.name}`} onClick=${() => onOpen(one)}>
      ${one.kept ? 'Edit' : 'Write another from it'}</button></td>`}</tr>`;
}

const whole = (value, most) => Number.isInteger(value) && value >= 1 && value <= most;

// What is wrong with a wish, in a sentence; the server says the same.
function objection({ count, seeds, seconds }, most) {
  if (count === 0) return 'Choose at least one scenario.';
  if (count > most.scenarios) return `Choose at most ${most.scenarios} scenarios at once.`;
  if (!whole(seeds, most.seeds)) return `Seeds must be 1 to ${most.seeds}.`;
  if (!whole(seconds, most.seconds)) return `Seconds must be 1 to ${most.seconds}.`;
  const total = (count + 1) * seeds * seconds;
  return total > most.total ? `That would take ${wait(total)}; at most ${wait(most.total)} can be asked for.` : '';
}

function duration({ count, seeds, seconds }) {
  const plans = (count + 1) * seeds;
  const sure = seeds < 3 ? ' With fewer than 3 seeds nobody can say what is chance.' : '';
  return `The folder as it stands and ${count === 1 ? 'one scenario' : `${count} scenarios`}, ${seeds} ${seeds === 1 ? 'plan' : 'plans'} each: ${plans} plans of ${seconds} s take
    ${wait(plans * seconds)}, and a few seconds each to be checked.${sure} Meanwhile nobody can solve the week anew.`;
}

function Effort({ usual, most, count, stopped, onBegin }) {
  const [effort, set] = useState(usual);
  const wish = { ...effort, count };
  const wrong = objection(wish, most);
  const field = (name, words, up) => html`<label>${words} <input type="number" name=${name} min="1" max=${up} required value=${effort[name]}
    onInput=${(e) => set({ ...effort, [name]: Number(e.target.value) })} /></label>`;
  const begin = (event) => {
    event.preventDefault();
    onBegin(effort);
  };
  return html`<form class="row effort" onSubmit=${begin}>${field('seeds', 'Seeds, plans of each', most.seeds)}${field('seconds', 'Seconds a plan', most.seconds)}
    <button type="submit" class="first" disabled=${Boolean(wrong) || stopped}>Compare</button>
    <p role="status">${wrong || duration(wish)}</p></form>`;
}

/** The scenarios that there are, to be chosen, and how much effort a comparison of them is worth. */
export function Shelf({ shelf, going, may, clock, onBegin, onOpen, onNew }) {
  const [chosen, choose] = useState([]);
  const there = chosen.filter((id) => shelf.scenarios.some((one) => one.id === id && one.sound));
  const turn = (id) => choose(there.includes(id) ? there.filter((one) => one !== id) : [...there, id]);
  const stopped = Boolean(going && (going.on || going.busy));
  const rows = shelf.scenarios.map((one) => html`<${Row} key=${one.id} one=${one} chosen=${there.includes(one.id)} may=${may} clock=${clock} onTurn=${turn} onOpen=${onOpen} />`);
  return html`<section><h2>Scenarios</h2>
    ${rows.length === 0 ? html`<p>There is none yet: files in the plant's folder under scenarios, and what is written here, are listed.</p>`
      : html`<table class="shelf"><caption class="unseen">Scenarios</caption>
        <thead><tr><th scope="col">name</th><th scope="col">what it is</th><th scope="col">where it is</th>${may && html`<th scope="col"><span class="unseen">change</span></th>`}</tr></thead>
        <tbody>${rows}</tbody></table>`}
    ${may && html`<p><button type="button" onClick=${onNew}>Write a scenario</button></p>`}
    ${may && rows.length > 0 && html`<${Effort} usual=${shelf.usual} most=${shelf.most} count=${there.length} stopped=${stopped}
      onBegin=${(effort) => onBegin({ ...effort, scenarios: there })} />`}</section>`;
}

import { html, useEffect, useRef, useState } from '/assets/preact.js';
import { Wrong, api } from '/assets/shell.js';

/** What is proposed at first: sure ones are taken, the others wait for a click. */
function proposed(found) {
  return Object.fromEntries(found.proposals.map((one) => [one.heading, one.choices.length > 0 ? null : one.column]));
}

/** The column that a name stands for, be it in another unit. */
const same = (found, name) => (found.same && found.same[name]) || name;

function Heading({ one, column, active, onActive }) {
  const doubt = column === null;
  return html`<tr class=${active ? 'active' : ''}><th scope="row">
      <button type="button" aria-pressed=${String(active)} onClick=${onActive}>${one.heading}</button></th>
    <td class="code muted">${(one.samples || []).slice(0, 3).join(', ')}</td>
    <td>${doubt ? html`<b class="stress">which?</b>` : column === '' ? html`<span class="muted">left out</span>` : html`<b>${column}</b>`}</td>
    <td class="muted">${one.because}${doubt && one.choices.length > 0 ? ` ${one.choices.join(' or ')}` : ''}</td></tr>`;
}

function Columns({ found, mapping, active, onColumn }) {
  const one = found.proposals.find((proposal) => proposal.heading === active);
  const used = new Map(Object.entries(mapping).filter(([, column]) => column).map(([heading, column]) => [same(found, column), heading]));
  const names = [...new Set([...(one ? one.choices : []), ...found.columns])];
  return html`<div class="columnset" role="group" aria-label=${`Column for ${active}`}>
    <p><b>${active}</b> is ...</p>
    ${names.map((column) => {
      const by = used.get(same(found, column));
      const needed = found.required.includes(column);
      const mine = mapping[active] === column;
      return html`<button type="button" key=${column} aria-pressed=${String(mine)} disabled=${Boolean(by) && by !== active} onClick=${() => onColumn(column)}>
        ${column}${needed ? ' (needed)' : ''}${by && by !== active ? html`<span class="unseen">, taken by ${by}</span>` : ''}</button>`;
    })}
    <button type="button" aria-pressed=${String(mapping[active] === '')} onClick=${() => onColumn('')}>leave it out</button></div>`;
}

function useMapping(file, onKept) {
  const [state, setState] = useState({ found: null, mapping: {}, active: '', wrong: '' });
  useEffect(() => {
    api('GET', `/api/headings?file=${encodeURIComponent(file)}`).then((found) => {
      const mapping = proposed(found);
      const open = found.proposals.find((one) => !one.sure) || found.proposals[0];
      setState({ found, mapping, active: open ? open.heading : '', wrong: '' });
    }, (refused) => setState((old) => ({ ...old, wrong: refused.words })));
  }, [file]);
  const choose = (active) => setState((old) => ({ ...old, active }));
  const set = (column) => setState((old) => {
    const mapping = { ...old.mapping, [old.active]: column };
    const next = old.found.proposals.find((one) => mapping[one.heading] === null);
    return { ...old, mapping, active: next ? next.heading : old.active };
  });
  const keep = async () => {
    try {
      await api('POST', '/api/headings', { file, mapping: state.mapping });
      onKept();
    } catch (refused) {
      setState((old) => ({ ...old, wrong: refused.words }));
    }
  };
  return { ...state, choose, set, keep };
}

/** Which heading of a file is which column: choose a heading, then its column. Kept in the folder. */
export function Headings({ file, onKept, onLeft }) {
  const { found, mapping, active, wrong, choose, set, keep } = useMapping(file, onKept);
  const box = useRef(null);
  useEffect(() => box.current.focus(), [file]);
  const open = Object.values(mapping).filter((column) => column === null).length;
  const lacking = found ? found.required.filter((column) => !Object.values(mapping).some((one) => one && same(found, one) === column)) : [];
  return html`<section class="mapping" ref=${box} tabindex="-1" aria-label=${`Headings of ${file}`}><h2>Which column is which in ${file}?</h2>
    ${wrong && html`<${Wrong} words=${wrong} />`}
    ${found && html`<p>Choose a heading on the left, then what it is on the right.</p>
      <div class="matched"><table><thead><tr><th scope="col">your heading</th><th scope="col">its cells</th><th scope="col">is</th><th scope="col">why</th></tr></thead>
        <tbody>${found.proposals.map((one) => html`<${Heading} key=${one.heading} one=${one}
          column=${mapping[one.heading]} active=${one.heading === active} onActive=${() => choose(one.heading)} />`)}</tbody></table>
        <${Columns} found=${found} mapping=${mapping} active=${active} onColumn=${set} /></div>
      <p role="status">${[open > 0 ? `${open} to answer.` : '',
        lacking.length > 0 ? `Nothing stands for ${lacking.join(', ')}.` : ''].filter(Boolean).join(' ') || 'Every heading has its answer.'}</p>`}
    <div class="row"><button type="button" class="first" disabled=${!found || open > 0 || lacking.length > 0} onClick=${keep}>Keep this in the folder</button>
      <button type="button" onClick=${onLeft}>Leave</button></div></section>`;
}

import { html } from '/assets/preact.js';
import { PrintLine } from '/assets/shell.js';

function Cell({ cell }) {
  return html`<td class="figure"><div>${cell.value}</div>${cell.difference && html`<div class="muted">${cell.difference}</div>`}</td>`;
}

function Sides({ table }) {
  if (table.sides.length === 0) return '';
  return html`<div class="sides" role="region" aria-label="Figures side by side" tabindex="0"><table><caption>Figures side by side</caption>
    <thead><tr><th scope="col">figure</th>${table.sides.map((name) => html`<th scope="col" class="figure" key=${name}>${name}</th>`)}</tr></thead>
    ${table.groups.map((group) => html`<tbody key=${group.name}><tr><th scope="rowgroup" colspan=${table.sides.length + 1}>${group.name}</th></tr>
      ${group.rows.map((row) => html`<tr key=${row.figure}><th scope="row">${row.words}</th>${row.cells.map((cell) => html`<${Cell} cell=${cell} />`)}</tr>`)}</tbody>`)}
  </table></div>`;
}

function Sentence({ one }) {
  const more = [one.words, ...one.notes].filter(Boolean).join(' ');
  return html`<li>${one.sentence}${more && html`<div class="muted">${more}</div>`}</li>`;
}

function Since({ words }) {
  if (words.length === 0) return '';
  return html`<p class="notice since"><b>Not as it was any more:</b> since then ${words.join(', ')}.</p>`;
}

function Broken({ broken }) {
  return broken.map((one) => html`<p class="notice wrong" key=${one.name}>${one.name}: the audit rejected ${one.plans} ${one.plans === 1 ? 'plan' : 'plans'} for breaking hard rules.
    No figure here comes from them.</p>`);
}

function Papers({ papers }) {
  const way = (name) => (name.endsWith('.html') ? { target: '_blank', rel: 'noopener' } : { download: name });
  return html`<ul class="links screen-only">${papers.map((paper) => html`<li key=${paper.name}><a href=${`/compared/${paper.name}`} ...${way(paper.name)}>${paper.title}</a></li>`)}</ul>`;
}

/** What came of the last comparison: a sentence a scenario and the figures. */
export function Compared({ last, who, clock }) {
  if (!last.there) return html`<section class="compared"><h2>The last comparison</h2><p>Nothing was compared yet.</p></section>`;
  const { about } = last;
  return html`<${PrintLine} who=${who} title="Scenarios side by side" plan="" />
    <section class="compared"><h2>The last comparison</h2>
    <p class="identity">made ${clock.full(about.at)} for ${about.by}${about.stopped ? ', stopped early' : ''}${last.kept ? '' : '; it is gone when Pressweek ends'}</p>
    <${Since} words=${last.since} />
    <p class="lead">${about.base}</p>
    <ul class="sentences">${about.sentences.map((one, at) => html`<${Sentence} key=${at} one=${one} />`)}</ul>
    <${Broken} broken=${about.broken} />
    <${Papers} papers=${last.papers} />
    <${Sides} table=${about.table} />
    <p class="muted">${about.effort} ${about.method} Each figure is of the cheapest plan of a scenario; in brackets the least and the most over its seeds.</p></section>`;
}

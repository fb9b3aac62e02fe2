import { html, render, useEffect, useState } from '/assets/preact.js';
import { PrintLine, Wrong, api, number, page } from '/assets/shell.js';
import { Drop } from '/assets/files-drop.js';
import { Findings } from '/assets/files-findings.js';
import { Headings } from '/assets/files-headings.js';

const TABLE = /\.(csv|xlsx|tsv|txt)$/i;

function Folder({ found, may, onMap }) {
  const changed = found.files.filter((file) => file.changed);
  return html`<section><h2>What lies in the folder</h2>
    <p>${!found.planned ? 'No week is planned from these files yet.' : changed.length === 0 ? 'No file has changed since the week on the wall was read.'
      : `Changed since the week on the wall was read: ${changed.map((file) => file.name).join(', ')}. The week wall asks before it takes them.`}</p>
    <table class="folder"><thead><tr><th scope="col">file</th>
        <th scope="col" class="figure">rows</th><th scope="col">since it was read</th><th scope="col">headings</th></tr></thead>
      <tbody>${found.files.map((file) => html`<tr key=${file.name}><th scope="row">${file.name}</th>
        <td class="figure">${typeof file.rows === 'number' ? number(file.rows) : ''}</td><td>${file.changed ? 'changed' : 'the same'}</td>
        <td>${may && TABLE.test(file.name) && html`
          <button type="button" class="plain" aria-label=${`Headings of ${file.name}`} onClick=${() => onMap(file.name)}>Which column is which</button>`}</td></tr>`)}</tbody></table></section>`;
}

function Unplaced({ rows }) {
  if (!rows || rows.length === 0) return '';
  return html`<section><h2>Order lines that cannot be planned</h2><table>
    <thead><tr><th scope="col">order line</th><th scope="col">item</th><th scope="col">why</th><th scope="col">what helps</th></tr></thead>
    <tbody>${rows.map((row) => html`<tr key=${`${row.order}/${row.line}`}>
      <th scope="row">${row.order}/${row.line}</th><td class="code">${row.item}</td><td>${row.reason}</td><td>${row.cure}</td></tr>`)}</tbody></table></section>`;
}

const size = (bytes) => (bytes < 100000 ? `${Math.max(1, Math.round(bytes / 1000))} kB` : `${(bytes / 1e6).toFixed(1)} MB`);

function Papers() {
  const [papers, setPapers] = useState([]);
  useEffect(() => {
    api('GET', '/api/papers').then(setPapers, () => setPapers([]));
  }, []);
  if (papers.length === 0) return '';
  const goal = (name) => `/papers/${name.split('/').map(encodeURIComponent).join('/')}`;
  // What a browser shows is opened, all else is kept.
  const way = (name) => (name.endsWith('.html') ? { target: '_blank', rel: 'noopener' } : { download: name.split('/').pop() });
  return html`<section><h2>Papers of the plan</h2><ul class="papers">${papers.map((paper) => html`<li key=${paper.name}>
    <a href=${goal(paper.name)} ...${way(paper.name)}>${paper.title || paper.name}</a>${' '}
    <span class="muted">${paper.name}${paper.bytes ? `, ${size(paper.bytes)}` : ''}</span></li>`)}</ul></section>`;
}

function Staged({ staged, onTake, onLeave, onMap }) {
  const errors = staged.findings.filter((one) => String(one.severity).toUpperCase() === 'ERROR').length;
  return html`<section class="staged" aria-label="Files not taken yet"><h2>Laid beside the folder, not taken yet</h2>
    <ul>${staged.stored.map((file) => html`<li key=${file.name}><b>${file.name}</b>${typeof file.rows === 'number' ? `, ${number(file.rows)} ${file.rows === 1 ? 'row' : 'rows'}` : ''}
      ${file.changed === false ? ', the same as in the folder' : ''}${TABLE.test(file.name) ? html` <button type="button" class="plain"
        aria-label=${`Headings of ${file.name}`} onClick=${() => onMap(file.name)}>Which column is which</button>` : ''}</li>`)}</ul>
    ${(staged.left || []).length > 0 && html`<p>Left out:</p><ul>${staged.left.map((one) => html`<li key=${one.name}><b>${one.name}</b>: ${one.words}</li>`)}</ul>`}
    <h3>What check would say of the folder with them</h3>
    <${Findings} findings=${staged.findings} />
    ${errors > 0 && html`<p><b>With ${errors === 1 ? 'this error' : 'these errors'} there would be no plan.</b></p>`}
    <div class="row"><button type="button" class="first" onClick=${onTake}>Take these files into the folder</button>
      <button type="button" onClick=${onLeave}>Leave the folder as it is</button></div>
    <p class="muted">The files that they replace are kept in the folder under replaced.</p></section>`;
}

// The server refuses more; a browser that is cut off while it sends cannot hear why.
function tooLarge(files) {
  const big = files.find(({ file }) => file.size > 20e6);
  if (big) return `${big.name} has ${size(big.file.size)}; at most 20 MB a file can be taken.`;
  if (files.length > 60) return `${files.length} files are too many; at most 60 can be taken at once.`;
  return files.reduce((sum, { file }) => sum + file.size, 0) > 50e6 ? 'The files are too large together; at most 50 MB can be taken at once.' : '';
}

function useFiles() {
  const [state, setState] = useState({ found: null, staged: null, wrong: '', said: '' });
  const put = (part) => setState((old) => ({ ...old, wrong: '', said: '', ...part }));
  const tried = async (work) => {
    try {
      put(await work());
    } catch (refused) {
      put({ wrong: refused.words || String(refused) });
    }
  };
  const read = () => tried(async () => {
    const found = await api('GET', '/api/files');
    return { found, staged: found.staged };
  });
  const leave = () => tried(async () => {
    await api('POST', '/api/files/discard', {});
    return { staged: null, said: 'The folder is as it was.' };
  });
  const send = (files) => tried(async () => {
    const large = tooLarge(files);
    if (large) return { wrong: large };
    const form = new FormData();
    for (const { file, name } of files) form.append('files', file, name);
    const staged = await api('POST', '/api/files', form);
    return { staged, said: `${staged.stored.length === 1 ? 'One file was' : `${staged.stored.length} files were`} read.` };
  });
  const take = () => tried(async () => {
    await api('POST', '/api/files/take', {});
    return { staged: null, found: await api('GET', '/api/files'), said: 'The files are in the folder now.' };
  });
  useEffect(() => void read(), []);
  return { ...state, read, send, take, leave };
}

function Files({ who }) {
  const files = useFiles();
  const [mapped, map] = useState('');
  const { found, staged } = files;
  const may = who.may.includes('take-files');
  const kept = () => {
    map('');
    files.read();
  };
  return html`<${PrintLine} who=${who} title="Files" />
    <h1>Files of ${found ? found.folder : 'the folder'}</h1>
    <div role="status">${files.said && html`<p class="notice">${files.said}</p>`}</div>${files.wrong && html`<${Wrong} words=${files.wrong} />`}
    ${mapped && html`<${Headings} key=${mapped} file=${mapped} onKept=${kept} onLeft=${() => map('')} />`}
    ${may && html`<${Drop} onFiles=${files.send} />`}
    ${staged && html`<${Staged} staged=${staged} onTake=${files.take} onLeave=${files.leave} onMap=${map} />`}
    ${found && !staged && html`<section><h2>What check says</h2><${Findings} findings=${found.findings} /></section>
      <${Unplaced} rows=${found.unplaced} />`}
    ${found && html`<${Folder} found=${found} may=${may} onMap=${map} />`}
    <${Papers} />`;
}

page('Files', (main, who) => render(html`<${Files} who=${who} />`, main));

import { html, useEffect, useRef, useState } from '/assets/preact.js';
import { Wrong, api } from '/assets/shell.js';
import { Findings } from '/assets/files-findings.js';

const CHECK_MS = 500;

/** What somebody begins with who writes a scenario. */
export const FIRST = {
  id: '',
  name: '',
  text: `{
  "schema": "pressweek-scenario/1",
  "name": "A tenth more of everything",
  "words": "Every order line asks for a tenth more pieces.",
  "scale": [
    {"file": "orders.csv", "scale": {"quantity": 1.1}}
  ]
}
`,
};

// Checked once nothing was written for a moment; an answer to an older text is not shown.
function useChecked(text) {
  const [found, setFound] = useState(null);
  useEffect(() => {
    let mine = true;
    const timer = setTimeout(() => {
      api('POST', '/api/scenarios/check', { text }).then(
        (answer) => mine && setFound({ ...answer, of: text }),
        (refused) => mine && setFound({ of: text, sound: false, findings: [], refused: refused.words || String(refused) }),
      );
    }, CHECK_MS);
    return () => {
      mine = false;
      clearTimeout(timer);
    };
  }, [text]);
  return found && found.of === text ? found : null;
}

function Numbered({ text, onText, box }) {
  const lines = text.split('\n').length;
  const numbers = Array.from({ length: lines }, (_, at) => at + 1).join('\n');
  return html`<div class="numbered"><pre class="code" aria-hidden="true">${numbers}</pre>
    <textarea ref=${box} class="code" id="scenario-text" rows=${lines} wrap="off" spellcheck=${false} autocomplete="off" aria-label="The scenario, JSON"
      aria-describedby="scenario-found" value=${text} onInput=${(e) => onText(e.target.value)}></textarea></div>`;
}

function useGuard(dirty) {
  useEffect(() => {
    if (!dirty) return undefined;
    const ask = (event) => event.preventDefault();
    addEventListener('beforeunload', ask);
    return () => removeEventListener('beforeunload', ask);
  }, [dirty]);
}

function title(first) {
  if (first.kept) return `Edit ${first.name}, version ${first.kept.version}`;
  return first.id ? `Write a scenario from ${first.name}` : 'Write a scenario';
}

function Found({ found, wrong }) {
  const words = !found ? 'Checking ...' : found.refused;
  return html`<div id="scenario-found"><h3>What is found</h3>${wrong && html`<${Wrong} words=${wrong} />`}
    <div role="status">${words && html`<p>${words}</p>`}${found && !found.refused && html`<${Findings} findings=${found.findings} />`}</div>
    <p class="muted">A change names a file of the folder, the rows that it is about, and new values: set, scale, add, drop. All that is possible is described in docs/scenario-files.md.</p></div>`;
}

/** A scenario as text, beside what is found in it; kept under the name that it says itself. */
export function Editor({ first, onKept, onLeft }) {
  const [text, setText] = useState(first.text);
  const [why, setWhy] = useState('');
  const [wrong, setWrong] = useState('');
  const box = useRef(null);
  const found = useChecked(text);
  useGuard(text !== first.text);
  useEffect(() => box.current.focus(), []);
  const own = first.kept ? { name: first.name, version: first.kept.version } : { name: '', version: 0 };
  const done = async (work, said) => {
    setWrong('');
    try {
      onKept(said(await work));
    } catch (refused) {
      setWrong(refused.words || String(refused));
    }
  };
  const keep = (event) => {
    event.preventDefault();
    done(api('POST', '/api/scenarios/keep', { ...own, text, why }), (kept) => `${kept.name} is kept.`);
  };
  const drop = () => done(api('POST', '/api/scenarios/drop', { ...own, why }), () => `${own.name} is dropped.`);
  const other = first.kept && found && found.sound && found.name !== first.name;
  return html`<form class="editor" aria-label=${title(first)} onSubmit=${keep}><h2>${title(first)}</h2>
    <div class="beside-text"><${Numbered} text=${text} onText=${setText} box=${box} /><${Found} found=${found} wrong=${wrong} /></div>
    ${other && html`<p>Under the name ${found.name} it is another scenario; ${first.name} stays as it is.</p>`}
    <div class="row"><label>Why (may stay empty) <input maxlength="300" autocomplete="off" value=${why} onInput=${(e) => setWhy(e.target.value)} /></label>
      <button type="submit" class="first" disabled=${!(found && found.sound)}>Keep it</button>
      <button type="button" onClick=${onLeft}>Leave</button>
      ${first.kept && html`<button type="button" onClick=${drop}>Drop ${first.name}</button>`}</div></form>`;
}

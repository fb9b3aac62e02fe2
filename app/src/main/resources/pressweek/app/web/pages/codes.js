import { html, render, useState } from '/assets/preact.js';
import { PrintLine, Wrong, api, page } from '/assets/shell.js';
import { Code } from '/assets/codes-code.js';
import { Readings } from '/assets/codes-words.js';

/** One question and its answer: {asked, answer, wrong}, and what asks. */
function useQuestion(path) {
  const [state, setState] = useState({ asked: '', answer: null, wrong: '' });
  const ask = async (text) => {
    const asked = text.trim();
    if (!asked) return;
    try {
      setState({ asked, answer: await api('GET', path + encodeURIComponent(asked)), wrong: '' });
    } catch (refused) {
      setState({ asked, answer: null, wrong: refused.words });
    }
  };
  return [state, ask];
}

function Question({ id, label, hint, text, onText, onAsk, button }) {
  const ask = (event) => {
    event.preventDefault();
    onAsk(text);
  };
  return html`<form class="question" onSubmit=${ask}>
    <label for=${id}>${label}</label>
    <div class="asked"><input id=${id} class="code" autocomplete="off" autocapitalize="off" spellcheck=${false} maxlength="2000"
      value=${text} onInput=${(e) => onText(e.target.value)} aria-describedby=${`${id}-hint`} />
      <button class="first" type="submit">${button}</button></div>
    <p id=${`${id}-hint`} class="muted">${hint}</p></form>`;
}

function Learning() {
  const [seed, setSeed] = useState(1);
  return html`<section class="screen-only"><h2>The guide on paper, and practice</h2>
    <p><a href="/api/codes/sheet" target="_blank" rel="noopener">The code sheet</a>: every symbol with its meaning, two sheets to print.</p>
    <div class="row"><label>Practice sheet number <input type="number" min="1" max="999999" value=${seed} onInput=${(e) => setSeed(e.target.value)} /></label>
      <a class="button" href=${`/api/codes/practice?seed=${encodeURIComponent(seed || 1)}`} target="_blank" rel="noopener">Open it</a>
      <button type="button" onClick=${() => setSeed(1 + Math.floor(Math.random() * 9999))}>Another number</button></div>
    <p class="muted">The same number gives the same questions; the answers stand on sheets of their own.</p></section>`;
}

function Codes({ who }) {
  const [code, setCode] = useState('');
  const [words, setWords] = useState('');
  const [decoded, decode] = useQuestion('/api/decode?code=');
  const [read, ask] = useQuestion('/api/words?text=');
  const show = (found) => {
    setCode(found);
    decode(found);
    document.getElementById('code').focus();
    window.scrollTo(0, 0);
  };
  return html`<${PrintLine} who=${who} title="Codes" />
    <h1>What does this code mean, and what is the code for this?</h1>
    <div class="both">
      <section aria-label="A code"><${Question} id="code" label="Item code" hint="As it stands on the order." text=${code} onText=${setCode} onAsk=${decode} button="Decode" />
        <div aria-live="polite">${decoded.wrong && html`<${Wrong} words=${decoded.wrong} />`}
          ${decoded.answer && html`<${Code} found=${decoded.answer} onCode=${show} />`}</div></section>
      <section aria-label="A customer's words"><${Question} id="words" label="In the customer's words" text=${words} onText=${setWords} onAsk=${ask} button="Read"
        hint="Sizes in mm or inches, threads, colours, abbreviations: as they wrote it." />
        <div aria-live="polite">${read.wrong && html`<${Wrong} words=${read.wrong} />`}
          ${read.answer && html`<${Readings} found=${read.answer} onCode=${show} />`}</div></section>
    </div>
    <${Learning} />`;
}

page('Codes', (main, who) => {
  render(html`<${Codes} who=${who} />`, main);
  document.getElementById('code').focus();
});

import { html, render, useEffect, useRef, useState } from '/assets/preact.js';
import { Wrong, api, clock as clockOf, live, page } from '/assets/shell.js';
import { Shelf } from '/assets/scenarios-shelf.js';
import { Editor, FIRST } from '/assets/scenarios-editor.js';
import { Compared } from '/assets/scenarios-compared.js';
import { Going } from '/assets/scenarios-going.js';

const none = { shelf: null, going: null, last: null, wrong: '', said: '' };

// What was chosen stays chosen while what there is is read anew.
function useScenarios() {
  const [state, setState] = useState(none);
  const put = (part) => setState((old) => ({ ...old, ...part }));
  // Answers may come in another order than they were asked for; an older one is not shown.
  const asked = useRef({});
  const read = async (name, path) => {
    const turn = (asked.current[name] || 0) + 1;
    asked.current[name] = turn;
    try {
      const found = await api('GET', path);
      if (asked.current[name] === turn) put({ [name]: found });
      return found;
    } catch (refused) {
      put({ wrong: refused.words || String(refused) });
      return null;
    }
  };
  const going = () => read('going', '/api/compared/going');
  const last = () => read('last', '/api/compared');
  const shelf = () => read('shelf', '/api/scenarios');
  const all = () => Promise.all([going(), last(), shelf()]);
  const tried = async (work) => {
    put({ wrong: '', said: '' });
    try {
      put({ said: await work() });
    } catch (refused) {
      put({ wrong: refused.words || String(refused) });
    }
  };
  return { ...state, put, tried, read: { going, last, shelf, all } };
}

function useNews(read) {
  useEffect(() => {
    read.all();
    return live({
      compared: async () => {
        const now = await read.going();
        if (now && !now.on) read.last();
      },
      proposal: read.going,
      files: read.all,
      again: read.all,
    });
  }, []);
}

function Scenarios({ who, clock }) {
  const state = useScenarios();
  const { shelf, going, last, read, tried } = state;
  const [edited, edit] = useState(null);
  const may = who.may.includes('compare');
  useNews(read);
  const begin = (wanted) => tried(async () => {
    await api('POST', '/api/compared', wanted);
    await read.going();
    return '';
  });
  const stop = () => tried(async () => {
    await api('POST', '/api/compared/stop', {});
    return 'What there is so far is compared.';
  });
  const open = (one) => tried(async () => {
    edit(await api('GET', `/api/scenarios/text?id=${encodeURIComponent(one.id)}`));
    return '';
  });
  const kept = async (said) => {
    edit(null);
    state.put({ said });
    await read.shelf();
    await read.last();
  };
  return html`<div class="screen-only"><h1>What if?</h1>
      <p>A scenario is a few changes on top of the plant's folder, such as one more shift. It is planned beside the folder as it stands, and says what it would bring.
        The folder and the week on the wall stay as they are.</p>
      <div role="status">${state.said && html`<p class="notice">${state.said}</p>`}</div>${state.wrong && html`<${Wrong} words=${state.wrong} />`}
      ${edited && html`<${Editor} key=${edited.id} first=${edited} onKept=${kept} onLeft=${() => edit(null)} />`}
      ${!shelf && !state.wrong && html`<p role="status">Reading the scenarios ...</p>`}
      ${shelf && html`<${Shelf} shelf=${shelf} going=${going} may=${may} clock=${clock} onBegin=${begin} onOpen=${open} onNew=${() => edit(FIRST)} />`}
      ${going && html`<${Going} going=${going} may=${may} onStop=${stop} />`}</div>
    ${last && html`<${Compared} last=${last} who=${who} clock=${clock} />`}`;
}

page('Scenarios', (main, who) => render(html`<${Scenarios} who=${who} clock=${clockOf(who.zone)} />`, main));

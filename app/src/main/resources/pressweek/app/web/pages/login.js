import { html, render, useEffect, useRef, useState } from '/assets/preact.js';
import { api } from '/assets/api.js';

// Only ever to a page of this server, whatever the address says.
function goal() {
  const next = new URLSearchParams(location.search).get('next') || '/';
  const to = new URL(next, location.origin);
  return to.origin === location.origin && to.pathname !== '/login' ? to.pathname + to.search : '/';
}

function Login() {
  const [name, setName] = useState('');
  const [password, setPassword] = useState('');
  const [wrong, setWrong] = useState('');
  const [busy, setBusy] = useState(false);
  const box = useRef(null);
  useEffect(() => box.current.focus(), []);
  const enter = async (event) => {
    event.preventDefault();
    setBusy(true);
    setWrong('');
    try {
      await api('POST', '/api/login', { name: name.trim(), password });
      location.assign(goal());
    } catch (refused) {
      setWrong(refused.words);
      setPassword('');
      setBusy(false);
    }
  };
  return html`<h1>Pressweek</h1><p class="muted">Log in with the name that the scheduler gave you.</p>
    <form onSubmit=${enter}>
      <label>Name <input ref=${box} name="name" autocomplete="username" autocapitalize="off" required value=${name} onInput=${(e) => setName(e.target.value)} /></label>
      <label>Password <input name="password" type="password" autocomplete="current-password" required value=${password} onInput=${(e) => setPassword(e.target.value)} /></label>
      <div role="alert">${wrong && html`<p class="notice wrong">${wrong}</p>`}</div>
      <button class="first" type="submit" disabled=${busy}>Log in</button>
    </form>`;
}

const main = document.createElement('main');
main.id = 'main';
document.body.append(main);
render(html`<${Login} />`, main);

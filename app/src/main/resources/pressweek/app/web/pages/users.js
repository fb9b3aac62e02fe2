import { html, render, useEffect, useRef, useState } from '/assets/preact.js';
import { Wrong, api, clock as clockOf, page } from '/assets/shell.js';

const ROLES = [
  ['ORDER_DESK', 'order desk'],
  ['SCHEDULER', 'scheduler'],
  ['HANDLER', 'material handler'],
  ['SETTER', 'setter'],
  ['VIEWER', 'reads only'],
];
const SHORTEST = 10;

function Roles({ value, label, onChosen }) {
  return html`<select value=${value} aria-label=${label} required onChange=${(e) => onChosen(e.target.value)}>
    ${ROLES.map(([role, words]) => html`<option key=${role} value=${role}>${words}</option>`)}</select>`;
}

function Password({ name, onSet, onLeft }) {
  const box = useRef(null);
  const [text, setText] = useState('');
  useEffect(() => box.current.showModal(), []);
  const set = (event) => {
    event.preventDefault();
    onSet(text);
  };
  return html`<dialog ref=${box} aria-labelledby="password-title" onClose=${onLeft}><form onSubmit=${set}>
    <h2 id="password-title">New password for ${name}</h2>
    <label>Password, ${SHORTEST} characters or more <input type="password" autocomplete="new-password" minlength=${SHORTEST} required
      value=${text} onInput=${(e) => setText(e.target.value)} /></label>
    <div class="row"><button class="first" type="submit">Set it</button><button type="button" onClick=${() => box.current.close()}>Leave</button></div></form></dialog>`;
}

function Add({ onAdd }) {
  const [user, setUser] = useState({ name: '', role: 'HANDLER', password: '' });
  const set = (part) => setUser({ ...user, ...part });
  const add = async (event) => {
    event.preventDefault();
    if (await onAdd({ ...user, name: user.name.trim() })) setUser({ name: '', role: user.role, password: '' });
  };
  return html`<form onSubmit=${add}><fieldset><legend>Somebody new</legend><div class="row">
    <label>Name <input required maxlength="60" autocomplete="off" value=${user.name} onInput=${(e) => set({ name: e.target.value })} /></label>
    <label>Work <${Roles} value=${user.role} label="Work" onChosen=${(role) => set({ role })} /></label>
    <label>Password, ${SHORTEST} characters or more <input type="password" required minlength=${SHORTEST}
      autocomplete="new-password" value=${user.password} onInput=${(e) => set({ password: e.target.value })} /></label>
    <button class="first" type="submit">Add</button></div></fieldset></form>`;
}

function User({ user, clock, onChange, onPassword }) {
  return html`<tr><th scope="row">${user.name}</th>
    <td><${Roles} value=${user.role} label=${`Work of ${user.name}`} onChosen=${(role) => onChange(user, { role }, 'has other work now')} /></td>
    <td>${user.seen ? clock.full(user.seen) : 'never'}</td>
    <td>${user.away ? 'cannot log in' : 'may log in'}</td>
    <td><div class="row tight"><button type="button" aria-label=${`Password of ${user.name}`} onClick=${() => onPassword(user)}>Password ...</button>
      <button type="button" aria-label=${user.away ? `Let ${user.name} in again` : `Shut ${user.name} out`}
        onClick=${() => onChange(user, { away: !user.away }, user.away ? 'may log in again' : 'cannot log in any more')}>${user.away ? 'Let in again' : 'Shut out'}</button></div></td></tr>`;
}

function Users({ clock }) {
  const [users, setUsers] = useState([]);
  const [said, say] = useState({ words: '', wrong: '' });
  const [asked, ask] = useState(null);
  const read = () => api('GET', '/api/users').then(setUsers, (refused) => say({ words: '', wrong: refused.words }));
  useEffect(() => void read(), []);
  const done = async (work, words) => {
    try {
      await work;
      say({ words, wrong: '' });
      return true;
    } catch (refused) {
      say({ words: '', wrong: refused.words });
      return false;
    } finally {
      await read();
    }
  };
  const change = (user, part, words) => done(api('POST', `/api/users/${encodeURIComponent(user.name)}`, part), `${user.name} ${words}.`);
  return html`<h1>Who may do what</h1>
    <div role="status">${said.words && html`<p class="notice">${said.words}</p>`}</div>${said.wrong && html`<${Wrong} words=${said.wrong} />`}
    ${users.length === 0 ? html`<p>Nobody is named yet; on this machine no login is needed.</p>` : html`<table class="wide"><caption class="unseen">Users</caption>
      <thead><tr><th scope="col">name</th><th scope="col">work</th><th scope="col">last here</th><th scope="col">login</th><th scope="col">change</th></tr></thead>
      <tbody>${users.map((user) => html`<${User} key=${user.name} user=${user} clock=${clock} onChange=${change} onPassword=${ask} />`)}</tbody></table>`}
    <${Add} onAdd=${(user) => done(api('POST', '/api/users', user), `${user.name} may log in now.`)} />
    ${asked && html`<${Password} name=${asked.name} onLeft=${() => ask(null)} onSet=${(password) => { ask(null); change(asked, { password }, 'has a new password'); }} />`}`;
}

page('Users', (main, who) => render(html`<${Users} clock=${clockOf(who.zone)} />`, main));

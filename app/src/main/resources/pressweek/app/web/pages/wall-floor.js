import { html, useState } from '/assets/preact.js';
import { api, minutes } from '/assets/shell.js';
import { useAsked } from '/assets/wall-asked.js';
import { desk, refused, set } from '/assets/wall-desk.js';
import { Dialog } from '/assets/wall-dialog.js';
import { nowMin } from '/assets/wall-now.js';

const two = (n) => String(n).padStart(2, '0');

/** A minute as a field for date and time holds it, in the plant's zone. */
function local(min) {
  const p = desk.clock.parts(min);
  return `${p.year}-${two(p.month)}-${two(p.day)}T${two(p.hour)}:${two(p.minute)}`;
}

/** The minute of such a field's value; of an hour that comes twice, the first. */
function minuteOf(value) {
  const wanted = minutes(`${value}Z`);
  let at = wanted;
  for (let tries = 0; tries < 3; tries++) at += wanted - minutes(`${local(at)}Z`);
  return minutes(`${local(at - 60)}Z`) === wanted ? at - 60 : at;
}

const pair = (choice) => (typeof choice === 'string' ? [choice, choice] : [choice.value, choice.words]);

function Choices({ field, value, put, id }) {
  const options = field.choices.map(pair);
  if (options.length <= 40) {
    return html`<select required=${field.required} value=${value} onChange=${(e) => put(e.target.value)}><option value="">choose …</option>
      ${options.map(([v, words]) => html`<option value=${v} selected=${v === value}>${words}</option>`)}</select>`;
  }
  return html`<input required=${field.required} list=${id} value=${value} autocomplete="off" onInput=${(e) => put(e.target.value)} />
    <datalist id=${id}>${options.map(([v, words]) => html`<option value=${v}>${words === v ? '' : words}</option>`)}</datalist>`;
}

function Field({ field, value, put }) {
  const id = `choices-${field.name}`;
  const kinds = { time: 'datetime-local', number: 'number' };
  const input = field.choices && field.choices.length
    ? html`<${Choices} field=${field} value=${value} put=${put} id=${id} />`
    : html`<input type=${kinds[field.kind] || 'text'} min=${field.kind === 'number' ? 0 : undefined} required=${field.required} value=${value} onInput=${(e) => put(e.target.value)} />`;
  return html`<label>${field.words}${field.required ? '' : ' (may stay empty)'}${input}</label>`;
}

function first(field) {
  const { chosen, arranged } = desk;
  const found = chosen && chosen.line && arranged.byLine.get(chosen.line);
  if (field.kind === 'time') return field.required ? local(nowMin()) : '';
  if (field.kind === 'press') return found ? found.run.press : (chosen && chosen.press) || '';
  if (field.kind === 'line' || field.kind === 'run') return found ? found.run[field.kind] : '';
  if (field.kind === 'mold') return found ? found.run.mold : '';
  return '';
}

function said(field, value) {
  if (field.kind === 'time') return minuteOf(value);
  return field.kind === 'number' ? Number(value) : value;
}

function EventForm({ event, close }) {
  const [values, put] = useState(() => Object.fromEntries(event.fields.map((f) => [f.name, first(f)])));
  const [now, setNow] = useState(local(nowMin()));
  const [wrong, setWrong] = useState('');
  const [busy, setBusy] = useState(false);
  const send = async (submitted) => {
    submitted.preventDefault();
    setBusy(true);
    setWrong('');
    const told = { event: event.event };
    for (const field of event.fields) if (values[field.name] !== '') told[field.name] = said(field, values[field.name]);
    try {
      await api('POST', '/api/floor', { version: desk.week.version, now: minuteOf(now), events: [told] });
      set({ progress: { millis: 0 } });
      close();
    } catch (problem) {
      setBusy(false);
      if (problem.status === 409) {
        close();
        refused(problem);
      } else setWrong(problem.words || String(problem));
    }
  };
  return html`<form onSubmit=${send}><div class="row">${event.fields.map((f) => html`<${Field} key=${f.name} field=${f} value=${values[f.name]} put=${(v) => put({ ...values, [f.name]: v })} />`)}
    <label>the floor as it stands at<input type="datetime-local" required value=${now} onInput=${(e) => setNow(e.target.value)} /></label></div>
    ${wrong && html`<p class="stress" role="alert">${wrong}</p>`}
    <p class="muted">What is left of the week is then planned again and as little moved as can be; you see all moves before any is taken.</p>
    <button class="first" disabled=${busy}>Repair the week</button></form>`;
}

/** What happened on the floor: one form for each kind of event. */
export function Floor({ close }) {
  const got = useAsked('/api/floor/choices', '');
  const [name, pick] = useState('');
  const events = got.is ? got.is.events : [];
  const event = events.find((e) => e.event === name);
  return html`<${Dialog} title="What happened on the floor" close=${close}>
    ${got.wait && html`<p class="muted">One moment …</p>`}${got.wrong && html`<p class="stress">${got.wrong}</p>`}
    <div class="events" role="group" aria-label="What happened">${events.map((e) => html`<button type="button" key=${e.event} aria-pressed=${e.event === name} onClick=${() => pick(e.event)}>${e.words}</button>`)}</div>
    ${event && html`<${EventForm} key=${name} event=${event} close=${close} />`}
  </${Dialog}>`;
}

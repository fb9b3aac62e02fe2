import { api, money, span } from '/assets/shell.js';
import { desk, edit, mayEdit, refused, say, set, tell } from '/assets/wall-desk.js';
import { STRIP } from '/assets/wall-marks.js';
import { lateness, places } from '/assets/wall-week.js';

const REST_MS = 80;

/** What putting it down would come to, in two lines: the price, and why. */
export function told(answer, week) {
  if (!answer.possible) return { head: 'Not here', why: [answer.words, ...(answer.broken || []).filter((b) => b !== answer.words)].filter(Boolean).join('; ') };
  const sum = Math.abs(answer.costMore);
  const price = !answer.costMore ? 'costs as much' : `${answer.costMore > 0 ? 'costs' : 'saves'} ${money(sum, week.currency)}${answer.costMore > 0 ? ' more' : ''}`;
  const later = answer.lateMore ? `${span(Math.abs(answer.lateMore))} ${answer.lateMore > 0 ? 'later' : 'less late'} in all` : 'no later in all';
  const own = `${desk.clock.moment(answer.line.from)}, ${lateness(answer.line.lateMin)}`;
  const worse = answer.lines.filter((l) => l.lateMin > (l.was ? l.was.lateMin : 0)).slice(0, 2).map((l) => `${l.line} then ${lateness(l.lateMin)}`);
  return { head: week.money ? price : later, why: [own, answer.words, ...(week.money && answer.lateMore ? [later] : []), ...worse].filter(Boolean).join('; ') };
}

/**
 * A line in the hand, by pointer or by keys: over which strip, between which bars, and what the server says to it. Frames move the
 * ghost and the caret by transform only; words and outlines change when an answer comes.
 */
export class Carry {
  constructor(wall) {
    this.wall = wall;
    this.answers = new Map();
    this.ghost = document.createElement('div');
    this.ghost.className = 'ghost screen-only';
    this.ghost.hidden = true;
    this.ghost.innerHTML = '<b class="what"></b><span class="head"></span><span class="why"></span>';
    document.body.append(this.ghost);
    [this.what, this.head, this.why] = this.ghost.children;
    wall.el.addEventListener('scroll', () => { if (this.line && this.by === 'keys') this.ghostAtCaret(); }, { passive: true });
  }

  /** Takes a line up. Answers whether it may be moved. */
  pickUp(line, by) {
    const found = desk.arranged.byLine.get(line);
    const unplaced = desk.arranged.unplaced.get(line);
    if (!mayEdit() || (!found && !(unplaced && unplaced.canPlace))) return false;
    if (found && (found.run.running || found.run.promised)) {
      say(found.run.running ? `${line} is running and stays where it is.` : `${line} is promised to the floor; let it go first (P).`);
      return false;
    }
    if (this.line) this.leave();
    Object.assign(this, { line, by, spot: null, answer: null, was: found || null });
    this.answers.clear();
    this.what.textContent = found ? `${line} ${found.run.item}` : `${line} ${unplaced.item}`;
    this.words('', by === 'keys' ? 'arrow keys move it; Enter puts it down, Esc leaves it' : 'Esc leaves it');
    this.wall.mark('carried', line);
    this.ghost.hidden = false;
    this.wall.caret.hidden = false;
    set({ carry: { line, by } });
    if (by === 'keys') this.start(found);
    return true;
  }

  start(found) {
    const at = found ? found.strip.at : this.wall.stop.press;
    const others = this.at(at);
    const before = found && found.place > 0 ? found.strip.runs[found.place - 1].line : '';
    this.to(at, Math.max(0, others.findIndex((p) => p.before === before)));
  }

  at(strip) {
    return places(desk.arranged.strips[strip], this.line, desk.week.start);
  }

  /** Holds it over a place of a strip. */
  to(strip, place) {
    if (this.spot && this.spot.strip === strip && this.spot.place === place) return;
    const all = this.at(strip);
    const spot = { strip, ...all[Math.min(Math.max(0, place), all.length - 1)] };
    if (this.spot && this.spot.strip === strip && this.spot.place === spot.place) return;
    this.spot = spot;
    const { caret, scale, outlines } = this.wall;
    caret.style.transform = `translate(${Math.round(scale.x(spot.minute))}px,${strip * STRIP.height}px)`;
    this.answer = null;
    if (outlines && outlines.length) this.wall.outline([]);
    if (this.by === 'keys') {
      this.wall.reveal(strip, spot.minute, spot.minute + 30);
      this.ghostAtCaret();
    }
    clearTimeout(this.timer);
    const known = this.answers.get(`${strip} ${spot.place}`);
    if (known) this.show(known);
    else {
      this.ghost.classList.add('asking');
      this.timer = setTimeout(() => this.ask(spot), REST_MS);
    }
  }

  stays() {
    return Boolean(this.was && this.spot.strip === this.was.strip.at && this.spot.before === (this.was.place ? this.was.strip.runs[this.was.place - 1].line : ''));
  }

  async ask(spot) {
    if (this.stays()) {
      this.show({ here: true });
      return;
    }
    const { line } = this;
    const press = desk.arranged.strips[spot.strip].press.id;
    try {
      const answer = await api('POST', '/api/week/trial', { version: desk.week.version, line, press, place: spot.place, after: spot.before });
      if (this.line !== line) return;
      this.answers.set(`${spot.strip} ${spot.place}`, answer);
      if (this.spot === spot) this.show(answer);
    } catch (problem) {
      if (this.line !== line) return;
      if (problem.status === 409) this.leave();
      if (problem.status === 409) refused(problem);
      else if (this.spot === spot) this.words('Not known', problem.words);
    }
  }

  words(head, why) {
    this.head.textContent = head;
    this.why.textContent = why;
    this.ghost.classList.remove('asking');
  }

  show(answer) {
    this.answer = answer;
    const { spot } = this;
    const press = desk.arranged.strips[spot.strip].press.id;
    const said = answer.here ? { head: 'where it is', why: '' } : told(answer, desk.week);
    this.ghost.classList.toggle('no', answer.possible === false);
    this.wall.caret.classList.toggle('no', answer.possible === false);
    this.words(said.head, said.why);
    if (answer.possible) this.wall.outline(this.outlines(answer));
    const where = spot.before ? `after ${spot.before}` : 'first';
    set({ carry: { line: this.line, by: this.by, words: `${press}, ${where}: ${said.head}. ${said.why}` } });
  }

  outlines(answer) {
    const strips = new Map(desk.arranged.strips.map((s) => [s.press.id, s.at]));
    const shifted = answer.lines.filter((l) => strips.has(l.press)).map((l) => ({
      at: strips.get(l.press), from: l.from, to: l.to, later: l.lateMin > (l.was ? l.was.lateMin : 0),
    }));
    return [...shifted, { at: this.spot.strip, from: answer.line.from, to: answer.line.to, own: true }];
  }

  ghostAtCaret() {
    const box = this.wall.caret.getBoundingClientRect();
    this.ghostAt(box.left + 6, box.bottom - 2);
  }

  /** Puts the ghost beside a point of the window, within it. */
  ghostAt(x, y) {
    const left = Math.min(Math.max(4, x + 12), window.innerWidth - 316);
    const top = y + 130 > window.innerHeight ? y - 150 : y + 14;
    this.ghost.style.transform = `translate3d(${Math.round(left)}px,${Math.round(top)}px,0)`;
  }

  /** An arrow key while a line is in the hand. Answers whether it was one. */
  key(key) {
    const { strip: at, place } = this.spot;
    const last = desk.arranged.strips.length - 1;
    if (key === 'ArrowLeft') this.to(at, place - 1);
    else if (key === 'ArrowRight') this.to(at, place + 1);
    else if (key === 'Home') this.to(at, 0);
    else if (key === 'End') this.to(at, 1e6);
    else if (key === 'ArrowUp' && at > 0) this.across(at - 1);
    else if (key === 'ArrowDown' && at < last) this.across(at + 1);
    else return key.startsWith('Arrow');
    return true;
  }

  across(at) {
    const { minute } = this.spot;
    const best = this.at(at).reduce((near, p) => (Math.abs(p.minute - minute) < Math.abs(near.minute - minute) ? p : near));
    this.to(at, best.place);
  }

  /** Puts it down where it is held. What is known not to be possible stays in the hand. */
  async putDown() {
    const { line, spot, answer } = this;
    if (!spot || this.stays()) {
      this.leave();
      return;
    }
    if (answer && answer.possible === false) {
      if (this.by === 'keys') return;
      const { head, why } = told(answer, desk.week);
      this.leave();
      say(`${line} stays where it was. ${head}: ${why}`, 'wrong');
      return;
    }
    const press = desk.arranged.strips[spot.strip].press.id;
    this.leave();
    if (await edit('move', line, { press, place: spot.place, after: spot.before })) tell(`${line} is on ${press}${answer ? `: ${told(answer, desk.week).head}` : ''}`);
  }

  leave() {
    clearTimeout(this.timer);
    const { line } = this;
    this.line = '';
    this.ghost.hidden = true;
    this.ghost.classList.remove('no', 'asking');
    this.wall.caret.hidden = true;
    this.wall.caret.classList.remove('no');
    this.wall.outline([]);
    this.wall.mark('carried', '');
    set({ carry: null });
    if (this.onLeft) this.onLeft(line);
  }
}

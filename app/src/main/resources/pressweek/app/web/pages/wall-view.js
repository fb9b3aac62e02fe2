import { FIELD, STRIP, px } from '/assets/wall-marks.js';
import { axisHeight, axisMarkup, fitting, scale } from '/assets/wall-axis.js';
import { nameMarkup, outlineMarkup, stripMarkup } from '/assets/wall-strip.js';

export const NAMES = 92;
const NEAR = 2;
const KEEP = 14;
const WHOLE = 3200;
const REST_MS = 110;
const SVG = 'http://www.w3.org/2000/svg';

/**
 * The wall: a field that scrolls both ways beneath a sticky axis and beside sticky names. Only strips near the reader's window are
 * drawn, each in one go, and when zoomed in only so much of each.
 */
export class Wall {
  constructor(place, clock) {
    place.innerHTML = FIELD;
    this.place = place;
    this.clock = clock;
    this.el = place.querySelector('.wall');
    for (const name of ['field', 'axis', 'axispicture', 'names', 'cells', 'overlay', 'now', 'caret', 'corner']) this[name] = place.querySelector(`.${name}`);
    this.pictures = new Map();
    this.moved = new Set();
    this.marked = { chosen: '', carried: '' };
    this.stop = { line: '', press: 0 };
    this.perHour = 0;
    this.asked = 0;
    this.at = { left: 0, top: 0, wide: 0, tall: 0 };
    this.el.addEventListener('scroll', () => this.scrolled(), { passive: true });
    new ResizeObserver(() => this.resized()).observe(this.el);
  }

  /** Shows a week; where the reader is and what has the focus stays. */
  show(arranged, moved = new Set()) {
    this.measure();
    this.arranged = arranged;
    this.moved = moved;
    if (!arranged.byLine.has(this.stop.line)) this.stop = { line: '', press: Math.min(this.stop.press, arranged.strips.length - 1) };
    if (!this.perHour || this.whole) {
      this.perHour = this.fit();
      this.whole = true;
    }
    this.height = axisHeight(arranged.week.shifts);
    this.scale = scale(arranged.extent, arranged.open, this.perHour);
    this.nameAll();
    this.lay();
    this.draw(true);
  }

  // Where the reader is, kept so that drawing need not ask the page, which would lay it out first.
  measure() {
    const { scrollLeft, scrollTop, clientWidth, clientHeight } = this.el;
    this.at = { left: scrollLeft, top: scrollTop, wide: clientWidth, tall: clientHeight };
  }

  room() {
    return Math.max(300, this.at.wide - NAMES);
  }

  /** Pixels an hour by which the whole week fits. */
  fit() {
    return fitting(this.arranged.extent, this.arranged.open, this.room() - 1);
  }

  nameAll() {
    const held = document.activeElement && document.activeElement.dataset.press;
    this.names.innerHTML = this.arranged.strips.map((strip) => nameMarkup(strip, !this.stop.line && this.stop.press === strip.at)).join('');
    if (held !== undefined && this.names.children[held]) this.names.children[held].focus({ preventScroll: true });
  }

  lay() {
    const { field, axis, cells } = this;
    field.style.gridTemplateColumns = `${NAMES}px ${px(this.scale.width)}px`;
    field.style.gridTemplateRows = `${this.height}px ${this.arranged.strips.length * STRIP.height}px`;
    field.style.width = `${px(NAMES + this.scale.width)}px`;
    axis.style.height = `${this.height}px`;
    cells.style.height = `${this.arranged.strips.length * STRIP.height}px`;
    this.nowAt(this.nowMin || this.arranged.week.now);
  }

  /** Puts the line of the present hour. */
  nowAt(min) {
    this.nowMin = min;
    const [from, to] = this.arranged.extent;
    this.now.hidden = min < from || min > to;
    this.now.style.transform = `translateX(${px(this.scale.x(min))}px)`;
  }

  scrolled() {
    this.measure();
    if (!this.asked) this.asked = requestAnimationFrame(() => { this.asked = 0; this.draw(false); });
    clearTimeout(this.resting);
    // Words stand where the reader can see them; they follow when the scrolling has come to rest.
    this.resting = setTimeout(() => { if (this.scale.width > this.room() + 2) this.draw(true); }, REST_MS);
  }

  resized() {
    const { wide } = this.at;
    this.measure();
    if (!this.arranged || !this.at.wide) return;
    const fits = this.fit();
    if (this.perHour < fits || (this.whole && wide !== this.at.wide)) this.zoom(fits);
    else this.scrolled();
  }

  /** Changes the scale; the minute under `clientX` (the middle, when none is given) stays where it is. */
  zoom(perHour, clientX) {
    const left = this.el.getBoundingClientRect().left + NAMES;
    const at = clientX === undefined ? this.room() / 2 : Math.max(0, clientX - left);
    const minute = this.scale.at(this.at.left + at);
    this.perHour = Math.min(this.room(), Math.max(this.fit(), perHour));
    this.whole = this.perHour <= this.fit() + 0.01;
    this.scale = scale(this.arranged.extent, this.arranged.open, this.perHour);
    this.lay();
    this.at.left = Math.max(0, Math.min(this.scale.width - this.room(), this.scale.x(minute) - at));
    this.draw(true);
    this.el.scrollLeft = this.at.left;
  }

  window() {
    const seen = this.at.left;
    const room = this.room();
    if (this.scale.width <= WHOLE) return { left: 0, right: this.scale.width, seen, seenTo: seen + room };
    return { left: Math.max(0, Math.floor(seen - room)), right: Math.min(this.scale.width, seen + 2 * room), seen, seenTo: seen + room };
  }

  inside(win) {
    const had = this.view;
    const slack = this.room() / 4;
    return had && (had.left === 0 || win.seen - had.left > slack) && (had.right >= this.scale.width || had.right - win.seenTo > slack);
  }

  /** Draws what is near the window and not yet drawn, or all of it `anew`. */
  draw(anew) {
    const win = this.window();
    const all = anew || !this.inside(win);
    if (all) this.prepare(win);
    const first = Math.floor(this.at.top / STRIP.height);
    const last = Math.ceil((this.at.top + this.at.tall - this.height) / STRIP.height);
    const pinned = this.pinned();
    const reach = all ? NEAR : KEEP;
    for (const [at, picture] of this.pictures) {
      if ((at < first - reach || at >= last + reach) && at !== pinned) {
        picture.remove();
        this.pictures.delete(at);
      }
    }
    const held = document.activeElement;
    const heldLine = held && this.cells.contains(held) ? held.dataset.line : '';
    for (let at = Math.max(0, first - NEAR); at < Math.min(this.arranged.strips.length, last + NEAR); at++) {
      if (all || !this.pictures.has(at)) this.drawStrip(at);
    }
    if (all && pinned >= 0 && (pinned < first - NEAR || pinned >= last + NEAR)) this.drawStrip(pinned);
    if (heldLine) this.refocus(heldLine);
  }

  prepare(win) {
    const { week, extent } = this.arranged;
    this.view = {
      ...win, scale: this.scale, clock: this.clock, shifts: week.shifts, extent, height: this.height, moved: this.moved,
      fromMin: this.scale.at(win.left), toMin: this.scale.at(win.right),
    };
    this.place_(this.axispicture, this.height);
    this.axispicture.innerHTML = axisMarkup(this.view);
    this.place_(this.overlay, this.arranged.strips.length * STRIP.height);
    if (this.outlines) this.outline(this.outlines);
  }

  place_(svg, height) {
    svg.setAttribute('width', px(this.view.right - this.view.left));
    svg.setAttribute('height', height);
    svg.style.left = `${px(this.view.left)}px`;
  }

  drawStrip(at) {
    let picture = this.pictures.get(at);
    if (!picture) {
      picture = document.createElementNS(SVG, 'svg');
      picture.classList.add('strip');
      picture.setAttribute('role', 'group');
      picture.dataset.strip = at;
      picture.style.top = `${at * STRIP.height}px`;
      this.pictures.set(at, picture);
      this.cells.insertBefore(picture, this.after(at));
    }
    const strip = this.arranged.strips[at];
    picture.setAttribute('aria-label', `press ${strip.press.id}, ${strip.runs.length} runs`);
    this.place_(picture, STRIP.height);
    picture.innerHTML = stripMarkup({ ...this.view, ...this.marked, stop: this.stop.line }, strip);
  }

  // Strips stand in the page in the order of the presses, whatever was drawn first.
  after(at) {
    let next = null;
    for (const [other, picture] of this.pictures) if (other > at && picture.isConnected && (!next || other < Number(next.dataset.strip))) next = picture;
    return next || this.overlay;
  }

  pinned() {
    const found = this.arranged.byLine.get(this.stop.line);
    return found ? found.strip.at : -1;
  }

  /** Marks a line as `chosen` or `carried`; only the strips it touches are drawn anew. */
  mark(what, line) {
    if (this.marked[what] === line) return;
    const touched = [this.marked[what], line];
    this.marked = { ...this.marked, [what]: line };
    this.redraw(touched);
  }

  redraw(lines) {
    const held = document.activeElement && document.activeElement.dataset.line;
    for (const at of new Set(lines.map((l) => this.arranged.byLine.get(l)).filter(Boolean).map((f) => f.strip.at))) {
      if (this.pictures.has(at)) this.drawStrip(at);
    }
    if (held && lines.includes(held)) this.refocus(held);
  }

  bar(line) {
    return this.cells.querySelector(`[data-line="${CSS.escape(line)}"]`);
  }

  refocus(line) {
    const bar = this.bar(line);
    if (bar && document.activeElement !== bar) bar.focus({ preventScroll: true });
  }

  /** Scrolls so that a stretch of a strip is in sight. */
  reveal(at, from, to) {
    const top = at * STRIP.height;
    const { el } = this;
    const tall = el.clientHeight - this.height;
    if (top < el.scrollTop) el.scrollTop = top;
    else if (top + STRIP.height > el.scrollTop + tall) el.scrollTop = top + STRIP.height - tall;
    const a = this.scale.x(from);
    const b = Math.min(this.scale.x(to), a + this.room() - 60);
    if (a < el.scrollLeft + 10) el.scrollLeft = a - 40;
    else if (b > el.scrollLeft + this.room() - 10) el.scrollLeft = b - this.room() + 40;
    this.measure();
  }

  /** Shows where runs would be: `outlines` of {at, from, to, own, later}. */
  outline(outlines) {
    this.outlines = outlines;
    this.overlay.innerHTML = outlines.map((o) => outlineMarkup(o, this.scale, this.view.left)).join('');
  }
}

import { desk } from '/assets/wall-desk.js';

/**
 * Walks along a strip and between strips by keys. One bar or press name is the only stop of the Tab key within the wall; the arrow
 * keys go from it to its neighbours.
 */
export class Walk {
  constructor(wall) {
    this.wall = wall;
    wall.place.addEventListener('focusin', (event) => this.entered(event.target));
  }

  entered(target) {
    const mark = target.closest('[data-line],[data-press]');
    if (!mark) return;
    const { wall } = this;
    const before = this.element();
    if (before && before !== mark) before.setAttribute('tabindex', -1);
    mark.setAttribute('tabindex', 0);
    const found = wall.arranged.byLine.get(mark.dataset.line);
    wall.stop = found ? { line: mark.dataset.line, press: found.strip.at } : { line: '', press: Number(mark.dataset.press) };
  }

  element() {
    const { stop } = this.wall;
    return stop.line ? this.wall.bar(stop.line) : this.wall.names.children[stop.press];
  }

  /** Goes to a run: it is scrolled into sight, drawn, and has the focus. */
  toLine(line, focus = true) {
    const { wall } = this;
    const found = wall.arranged.byLine.get(line);
    if (!found) return false;
    const before = this.element();
    if (before) before.setAttribute('tabindex', -1);
    wall.stop = { line, press: found.strip.at };
    wall.reveal(found.strip.at, found.run.changeFrom, found.run.to);
    wall.draw(false);
    const bar = wall.bar(line);
    if (bar) bar.setAttribute('tabindex', 0);
    else wall.draw(true);
    if (focus && wall.bar(line)) wall.bar(line).focus({ preventScroll: true });
    return true;
  }

  toPress(at) {
    const { wall } = this;
    const name = wall.names.children[at];
    wall.reveal(at, wall.scale.at(wall.el.scrollLeft + 20), wall.scale.at(wall.el.scrollLeft + 20));
    if (name) name.focus({ preventScroll: true });
  }

  /** What an arrow key does from where the focus is. Answers whether it was one. */
  key(key) {
    const { line, press } = this.wall.stop;
    const strips = this.wall.arranged.strips;
    const found = this.wall.arranged.byLine.get(line);
    const runs = strips[press].runs;
    const place = found ? found.place : -1;
    if (key === 'ArrowRight') {
      if (place + 1 < runs.length) this.toLine(runs[place + 1].line);
    } else if (key === 'ArrowLeft') {
      if (place > 0) this.toLine(runs[place - 1].line);
      else this.toPress(press);
    } else if (key === 'Home') this.toPress(press);
    else if (key === 'End') {
      if (runs.length) this.toLine(runs[runs.length - 1].line);
    } else if (key === 'ArrowDown' || key === 'ArrowUp') {
      this.across(press + (key === 'ArrowDown' ? 1 : -1), found);
    } else return false;
    return true;
  }

  across(press, found) {
    const strips = this.wall.arranged.strips;
    if (press < 0 || press >= strips.length) return;
    const runs = strips[press].runs;
    if (!found || !runs.length) {
      this.toPress(press);
      return;
    }
    const middle = (found.run.from + found.run.to) / 2;
    const away = (r) => Math.max(0, r.from - middle, middle - r.to);
    this.toLine(runs.reduce((best, r) => (away(r) < away(best) ? r : best)).line);
  }

  /** The line that has the focus, or the one that is chosen. */
  line() {
    const held = document.activeElement;
    if (held && held.dataset && held.dataset.line && this.wall.place.contains(held)) return held.dataset.line;
    return desk.chosen && desk.chosen.line ? desk.chosen.line : '';
  }
}

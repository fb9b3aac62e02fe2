import { desk, mayEdit } from '/assets/wall-desk.js';
import { STRIP } from '/assets/wall-marks.js';
import { NAMES } from '/assets/wall-view.js';
import { placeAt } from '/assets/wall-week.js';

const AWAY = 5;
const HOLD_MS = 380;
const EDGE = 46;

/**
 * Drags a run with a pointer: at once with a mouse or pen, after a short hold with a finger, so that a finger still pans. A frame
 * sets two transforms; nothing is laid out anew.
 */
export class Drag {
  constructor(wall, carry, tapped) {
    this.wall = wall;
    this.carry = carry;
    this.tapped = tapped;
    wall.cells.addEventListener('pointerdown', (event) => this.down(event));
    wall.el.addEventListener('pointermove', (event) => this.moved(event));
    wall.el.addEventListener('pointerup', (event) => this.up(event));
    wall.el.addEventListener('pointercancel', () => this.end(true));
    wall.el.addEventListener('contextmenu', (event) => { if (this.held && this.held.finger) event.preventDefault(); });
    this.still = (event) => { if (this.on && event.cancelable) event.preventDefault(); };
  }

  down(event) {
    if (event.button !== 0) return;
    const bar = event.target.closest('[data-line]');
    const finger = event.pointerType === 'touch';
    this.held = { line: bar ? bar.dataset.line : '', id: event.pointerId, x: event.clientX, y: event.clientY, finger, target: event.target };
    if (!finger || !this.free()) return;
    // A finger's events go to the element it came down on, even when that is drawn anew meanwhile.
    event.target.addEventListener('touchmove', this.still, { passive: false });
    this.timer = setTimeout(() => this.begin(), HOLD_MS);
  }

  /** True while what is held may be taken up. */
  free() {
    return Boolean(this.held && this.held.line && mayEdit() && !desk.carry);
  }

  begin() {
    const { held, wall } = this;
    if (!this.free() || !this.carry.pickUp(held.line, 'pointer')) {
      this.held = null;
      return;
    }
    wall.el.setPointerCapture(held.id);
    this.box = wall.el.getBoundingClientRect();
    this.on = true;
    this.dirty = true;
    this.loop();
  }

  moved(event) {
    const { held } = this;
    if (!held || event.pointerId !== held.id) return;
    if (!event.buttons) {
      this.end(true);
      return;
    }
    const far = Math.hypot(event.clientX - held.x, event.clientY - held.y) > AWAY;
    if (!this.on && far) {
      if (held.finger) this.end(true);
      else this.begin();
    }
    if (!this.on) return;
    held.x = event.clientX;
    held.y = event.clientY;
    this.dirty = true;
  }

  loop() {
    if (!this.on) return;
    if (!this.carry.line) {
      this.end(true);
      return;
    }
    const scrolled = this.pan();
    if (this.dirty || scrolled) {
      this.dirty = false;
      this.place();
    }
    requestAnimationFrame(() => this.loop());
  }

  /** Near an edge the wall scrolls by itself. */
  pan() {
    const { x, y } = this.held;
    const { el, height } = this.wall;
    const pull = (at, low, high) => (at < low + EDGE ? Math.max(-1, (at - low - EDGE) / EDGE) : at > high - EDGE ? Math.min(1, (at - high + EDGE) / EDGE) : 0);
    const dx = Math.round(14 * pull(x, this.box.left + NAMES, this.box.right));
    const dy = Math.round(10 * pull(y, this.box.top + height, this.box.bottom));
    if (!dx && !dy) return false;
    el.scrollBy(dx, dy);
    return true;
  }

  place() {
    const { x, y } = this.held;
    const { el, height, scale } = this.wall;
    const strips = desk.arranged.strips;
    this.carry.ghostAt(x, y);
    const at = Math.min(strips.length - 1, Math.max(0, Math.floor((y - this.box.top - height + el.scrollTop) / STRIP.height)));
    const minute = scale.at(x - this.box.left - NAMES + el.scrollLeft);
    this.carry.to(at, placeAt(strips[at], this.carry.line, minute));
  }

  up(event) {
    if (!this.held || event.pointerId !== this.held.id) return;
    const { on: dropped, held } = this;
    if (dropped) this.place();
    this.end(false);
    if (!dropped) this.tapped(held);
    else if (this.carry.line) this.carry.putDown();
  }

  end(leave) {
    clearTimeout(this.timer);
    if (this.held) this.held.target.removeEventListener('touchmove', this.still);
    const was = this.on;
    this.on = false;
    this.held = null;
    if (was && leave && this.carry.line) this.carry.leave();
  }
}

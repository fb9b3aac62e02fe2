const STEP = 1.4;

/** Zooms the wall by steps, by the wheel with Ctrl and by two fingers; many turns of a wheel are one drawing a frame. */
export class Zoom {
  constructor(wall) {
    this.wall = wall;
    this.factor = 1;
    this.fingers = new Map();
    wall.el.addEventListener('wheel', (event) => this.wheel(event), { passive: false });
    wall.el.addEventListener('touchmove', (event) => this.pinch(event), { passive: false });
    for (const end of ['touchend', 'touchcancel']) wall.el.addEventListener(end, () => { this.apart = 0; });
  }

  in() { this.wall.zoom(this.wall.perHour * STEP); }

  out() { this.wall.zoom(this.wall.perHour / STEP); }

  /** So that about so many hours fill the window; none for the whole week. */
  hours(count) {
    this.wall.zoom(count ? this.wall.room() / count : this.wall.fit());
  }

  wheel(event) {
    if (!event.ctrlKey) return;
    event.preventDefault();
    this.by(Math.exp(-event.deltaY * (event.deltaMode ? 0.06 : 0.003)), event.clientX);
  }

  pinch(event) {
    if (event.touches.length !== 2) return;
    event.preventDefault();
    const [a, b] = event.touches;
    const apart = Math.hypot(a.clientX - b.clientX, a.clientY - b.clientY);
    if (this.apart) this.by(apart / this.apart, (a.clientX + b.clientX) / 2);
    this.apart = apart;
  }

  by(factor, clientX) {
    this.factor *= factor;
    if (this.asked) return;
    this.asked = requestAnimationFrame(() => {
      this.asked = 0;
      this.wall.zoom(this.wall.perHour * this.factor, clientX);
      this.factor = 1;
    });
  }
}

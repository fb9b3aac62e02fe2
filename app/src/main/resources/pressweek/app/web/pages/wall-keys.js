import { choose, desk, edit, mayEdit, redo, set, undo } from '/assets/wall-desk.js';
import { lettersOn } from '/assets/wall-help.js';
import { nowMin } from '/assets/wall-now.js';

function typing(target) {
  return target.closest('input,select,textarea,dialog,[contenteditable]');
}

/** What keys do; only those of a mark act while another control has the focus. */
export class Keys {
  constructor(hands) {
    this.hands = hands;
    document.addEventListener('keydown', (event) => this.down(event));
  }

  down(event) {
    if (event.defaultPrevented || event.ctrlKey || event.metaKey || event.altKey || typing(event.target)) return;
    if (this.carried(event) || this.walked(event) || this.letter(event)) event.preventDefault();
  }

  carried(event) {
    const { carry } = this.hands;
    if (!carry.line) return false;
    if (event.key === 'Escape') carry.leave();
    else if (carry.by !== 'keys' || event.target.closest('.carrybar')) return false;
    else if (event.key === 'Enter') carry.putDown();
    else return carry.key(event.key) || event.key === ' ';
    return true;
  }

  walked(event) {
    const { wall, walk } = this.hands;
    const mark = event.target.closest('[data-line],[data-press]');
    if (!mark || !wall.place.contains(mark)) return false;
    if (event.key === 'Enter' || event.key === ' ') {
      if (mark.dataset.line) choose({ line: mark.dataset.line });
      else choose({ press: desk.arranged.strips[mark.dataset.press].press.id, at: nowMin() });
      return true;
    }
    return walk.key(event.key);
  }

  letter(event) {
    if (event.key === 'Escape') {
      if (desk.chosen) choose(null);
      return Boolean(desk.chosen);
    }
    if (!lettersOn()) return false;
    const act = this.acts()[event.key.length === 1 ? event.key.toLowerCase() : ''];
    if (!act || event.repeat && !'+-='.includes(event.key)) return false;
    act(event);
    return true;
  }

  acts() {
    const { zoom } = this.hands;
    return {
      '+': () => zoom.in(),
      '=': () => zoom.in(),
      '-': () => zoom.out(),
      0: () => zoom.hours(0),
      '/': () => {
        const find = document.getElementById('find');
        find.focus();
        find.select();
      },
      '?': () => set({ dialog: 'help' }),
      z: (event) => mayEdit() && (event.shiftKey ? redo() : undo()),
      m: () => this.withLine((line) => this.hands.pickUp(line)),
      p: () => this.withRun((run) => mayEdit() && !run.running && edit(run.promised ? 'let-go' : 'promise', run.line)),
      h: () => this.withRun((run) => mayEdit() && !run.running && edit(run.held ? 'release' : 'hold', run.line)),
      w: () => this.withLine((line) => this.why(line)),
      e: () => this.withRun((run) => choose({ press: run.press, at: run.to })),
    };
  }

  withLine(act) {
    const line = this.hands.walk.line();
    if (line) act(line);
  }

  withRun(act) {
    const found = desk.arranged.byLine.get(this.hands.walk.line());
    if (found) act(found.run);
  }

  why(line) {
    choose({ line });
    requestAnimationFrame(() => {
      const name = document.getElementById('chosenname');
      if (name) name.focus();
    });
  }
}

import { html, render } from '/assets/preact.js';
import { PrintLine, clock, live, page } from '/assets/shell.js';
import { Carry } from '/assets/wall-carry.js';
import { choose, desk, heard, inView, readShorts, take, watch } from '/assets/wall-desk.js';
import { Drag } from '/assets/wall-drag.js';
import { asked } from '/assets/wall-first.js';
import { Head, ZoomBar } from '/assets/wall-head.js';
import { Keys } from '/assets/wall-keys.js';
import { LEGEND, PATTERNS, STRIP } from '/assets/wall-marks.js';
import { InHand, Notices } from '/assets/wall-notices.js';
import { nowMin } from '/assets/wall-now.js';
import { Panel } from '/assets/wall-panel.js';
import { printing } from '/assets/wall-print.js';
import { Proposal } from '/assets/wall-proposal.js';
import { NAMES, Wall } from '/assets/wall-view.js';
import { Walk } from '/assets/wall-walk.js';
import { placeAt, sentence } from '/assets/wall-week.js';
import { Zoom } from '/assets/wall-zoom.js';

const FRAME = `${PATTERNS}<div class="paperhead"></div><div class="wallhead"></div><div class="wallbody"><div class="wallside"><div class="wallplace"></div>
  <div class="over screen-only"></div><div class="wallfoot screen-only"><p class="detail" aria-hidden="true"></p><div class="zoomplace"></div></div>
  <details class="legendbox"><summary>What the marks mean</summary>${LEGEND}</details></div>
  <div class="sheets paper-only"></div><div class="rightside"><div class="notices screen-only"></div><aside class="wallpanel" aria-label="Lines of the week"></aside></div></div>`;

function SidePanel({ hands }) {
  return html`${desk.proposal && html`<${Proposal} hands=${hands} />`}<${Panel} hands=${hands} />`;
}

/** What acts on the wall, made once. */
function makeHands(main) {
  const wall = new Wall(main.querySelector('.wallplace'), desk.clock);
  const hands = { wall, walk: new Walk(wall), zoom: new Zoom(wall), carry: new Carry(wall) };
  hands.drag = new Drag(wall, hands.carry, (held) => tapped(held, hands));
  hands.pickUp = (line) => {
    hands.walk.toLine(line);
    if (hands.carry.pickUp(line, 'keys') && document.activeElement !== document.body && !wall.place.contains(document.activeElement)) document.activeElement.blur();
  };
  hands.carry.onLeft = (line) => {
    if (hands.carry.by === 'keys') hands.walk.toLine(line);
  };
  hands.keys = new Keys(hands);
  return hands;
}

// A tap on a bar chooses it, one beside the bars asks what could run there; with a line in the hand it says where it shall go.
function tapped({ line, x, y }, { wall, carry }) {
  const box = wall.el.getBoundingClientRect();
  const at = Math.floor((y - box.top - wall.height + wall.el.scrollTop) / STRIP.height);
  const minute = wall.scale.at(x - box.left - NAMES + wall.el.scrollLeft);
  const strip = inView().strips[at];
  if (desk.carry) carry.to(at, placeAt(desk.arranged.strips[at], carry.line, minute));
  else if (line) choose({ line });
  else if (strip && desk.shown === 'week') choose({ press: strip.press.id, at: minute });
}

// Bars are chosen when the pointer goes up; a click without one comes from what reads the page aloud.
function clicked(event) {
  const name = event.target.closest('[data-press]');
  const bar = event.target.closest('[data-line]');
  if (name) choose({ press: desk.arranged.strips[name.dataset.press].press.id, at: nowMin() });
  else if (bar && event.detail === 0) choose({ line: bar.dataset.line });
}

// The line beneath the wall says what the pointer or the focus is on.
function tellDetail(main, wall) {
  const detail = main.querySelector('.detail');
  const tell = (event) => {
    // Bars drawn anew beneath a pointer that rests are no news.
    if (desk.carry || (event.type === 'pointerover' && !event.movementX && !event.movementY)) return;
    const mark = event.target.closest && event.target.closest('[data-line],[data-say]');
    const found = mark && mark.dataset.line && inView().byLine.get(mark.dataset.line);
    const words = found ? sentence(found.run, desk.clock) : mark ? mark.dataset.say : '';
    if (words && detail.textContent !== words) detail.textContent = words;
  };
  wall.place.addEventListener('pointerover', tell);
  wall.place.addEventListener('focusin', tell);
  watch((changes) => { if (changes.done) detail.textContent = changes.done; });
  detail.textContent = 'Point at a mark, or walk along the strips with the arrow keys, to read it here.';
}

function redrawn(hands, changes) {
  const { wall, carry } = hands;
  if ('week' in changes || 'shown' in changes || 'proposal' in changes) {
    if (carry.line && 'week' in changes) carry.leave();
    wall.marked.chosen = (desk.chosen && desk.chosen.line) || '';
    wall.show(inView(), new Set(desk.proposal ? desk.proposal.moves.map((m) => m.line) : []));
    wall.nowAt(nowMin());
  }
  if ('chosen' in changes) wall.mark('chosen', (desk.chosen && desk.chosen.line) || '');
}

function mount(main, who, coming) {
  main.innerHTML = FRAME;
  desk.who = who;
  return coming.then((week) => {
    desk.clock = clock(week.zone);
    take(week);
    const hands = makeHands(main);
    const places = ['.wallhead', '.wallpanel', '.over', '.paperhead', '.notices'].map((name) => main.querySelector(name));
    const drawHand = () => render(html`<${InHand} hands=${hands} />`, places[2]);
    const draw = () => {
      render(html`<${Head} hands=${hands} />`, places[0]);
      render(html`<${SidePanel} hands=${hands} />`, places[1]);
      drawHand();
      render(html`<${Notices} />`, places[4]);
      render(html`<${PrintLine} who=${who} title="week wall" plan=${desk.week.plan.number} />`, places[3]);
    };
    draw();
    redrawn(hands, { week });
    watch((changes) => redrawn(hands, changes));
    watch((changes) => { if (Object.keys(changes).length > 1 || !('carry' in changes)) draw(); else drawHand(); });
    render(html`<${ZoomBar} hands=${hands} />`, main.querySelector('.zoomplace'));
    hands.wall.place.addEventListener('click', clicked);
    tellDetail(main, hands.wall);
    printing(main.querySelector('.sheets'), main.querySelector('.legendbox'));
    setInterval(() => hands.wall.nowAt(nowMin()), 30000);
    live(heard);
    readShorts();
    performance.mark('wall-drawn');
  });
}

page('Week wall', (main, who) => mount(main, who, asked));

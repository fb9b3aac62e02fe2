import { axisHeight, axisMarkup, fitting, scale } from '/assets/wall-axis.js';
import { desk, inView, set } from '/assets/wall-desk.js';
import { STRIP, plain } from '/assets/wall-marks.js';
import { FOOD, stripMarkup } from '/assets/wall-strip.js';

const WIDE = 1230;
const STRIPS_A_SHEET = 15;

function view(arranged) {
  const { extent, open, week } = arranged;
  const on = scale(extent, open, fitting(extent, open, WIDE));
  return {
    scale: on, left: 0, right: on.width, seen: 0, seenTo: on.width, fromMin: extent[0], toMin: extent[1], clock: desk.clock, shifts: week.shifts, extent,
    height: axisHeight(week.shifts), moved: new Set(), chosen: '', carried: '', stop: '',
  };
}

function row(name, on, height, markup) {
  return `<div class="printrow"><div class="printname">${name}</div><svg width="${Math.ceil(on.scale.width)}" height="${height}">${markup}</svg></div>`;
}

function sheet(on, strips) {
  return `<div class="printsheet">${row('', on, on.height, axisMarkup(on))}${strips.map((strip) =>
    row(`<b>${plain(strip.press.id)}</b><span>${plain(strip.press.words || strip.press.orientation)}</span><br><span>${FOOD[strip.press.food] || ''}</span>`, on, STRIP.height, stripMarkup(on, strip))).join('')}</div>`;
}

/** The whole wall as sheets of paper: as many strips as fit beneath an axis of their own. */
function sheets() {
  const arranged = inView();
  const on = view(arranged);
  const count = Math.ceil(arranged.strips.length / STRIPS_A_SHEET);
  const all = [];
  for (let i = 0; i < count; i++) {
    const part = (n) => Math.round(n * arranged.strips.length / count);
    all.push(sheet(on, arranged.strips.slice(part(i), part(i + 1))));
  }
  return all.join('');
}

/** Draws the sheets when somebody prints, with what the marks mean, and takes them away after. */
export function printing(place, legend) {
  let open = false;
  window.addEventListener('beforeprint', () => {
    place.innerHTML = sheets();
    set({ printing: true });
    open = legend.open;
    legend.open = true;
  });
  window.addEventListener('afterprint', () => {
    place.replaceChildren();
    set({ printing: false });
    legend.open = open;
  });
}

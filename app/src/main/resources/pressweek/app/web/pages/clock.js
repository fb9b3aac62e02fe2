const DAYS = ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'];
const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

function reader(zone) {
  const format = new Intl.DateTimeFormat('en-GB', {
    timeZone: zone, hourCycle: 'h23', year: 'numeric', month: 'numeric', day: 'numeric', hour: 'numeric', minute: 'numeric',
  });
  const known = new Map();
  return (min) => {
    let at = known.get(min);
    if (!at) {
      const parts = Object.fromEntries(format.formatToParts(min * 60000).map((p) => [p.type, Number(p.value)]));
      const weekday = new Date(Date.UTC(parts.year, parts.month - 1, parts.day)).getUTCDay();
      at = { ...parts, weekday };
      if (known.size > 20000) known.clear();
      known.set(min, at);
    }
    return at;
  };
}

const two = (n) => String(n).padStart(2, '0');

/**
 * The plant's clock: minutes since 1970 UTC as the plant writes them. `time` "10:00", `day` "Tue 1 Dec", `moment` "Tue 10:00",
 * `full` "Tue 1 Dec 10:00", `date` "2026-12-01", `parts` {year, month, day, hour, minute, weekday}.
 */
export function clock(zone) {
  const parts = reader(zone || 'UTC');
  const time = (min) => `${two(parts(min).hour)}:${two(parts(min).minute)}`;
  const day = (min) => {
    const at = parts(min);
    return `${DAYS[at.weekday]} ${at.day} ${MONTHS[at.month - 1]}`;
  };
  return {
    parts,
    time,
    day,
    moment: (min) => `${DAYS[parts(min).weekday]} ${time(min)}`,
    full: (min) => `${day(min)} ${time(min)}`,
    date: (min) => `${parts(min).year}-${two(parts(min).month)}-${two(parts(min).day)}`,
  };
}

/** Minutes since 1970 UTC from such a number, or from a time by ISO 8601 with its offset; NaN when it is neither. */
export function minutes(value) {
  return typeof value === 'number' ? value : Math.floor(Date.parse(value) / 60000);
}

/** A stretch of minutes in words: "45 min", "3 h 10 min", "2 d 4 h". */
export function span(min) {
  const all = Math.round(Math.abs(min));
  const sign = min < 0 ? '-' : '';
  if (all < 60) return `${sign}${all} min`;
  if (all < 48 * 60) return `${sign}${Math.floor(all / 60)} h${all % 60 ? ` ${all % 60} min` : ''}`;
  const hours = Math.round(all / 60);
  return `${sign}${Math.floor(hours / 24)} d${hours % 24 ? ` ${hours % 24} h` : ''}`;
}

/** A number with its thousands apart: "12,400". */
export function number(value) {
  return Number(value).toLocaleString('en-US', { maximumFractionDigits: 3 });
}

/** An amount in thousandths of a cent: "EUR 1,234.50". */
export function money(amount, currency = '') {
  const cents = Math.floor((amount + 500) / 1000);
  const figure = (Math.abs(cents) / 100).toLocaleString('en-US', { minimumFractionDigits: 2, maximumFractionDigits: 2 });
  return `${currency}${currency ? ' ' : ''}${cents < 0 ? '-' : ''}${figure}`;
}

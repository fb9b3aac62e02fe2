package pressweek.reports.crew;

import pressweek.reports.hours.Span;

/**
 * A part of somebody's time that is needed or there.
 *
 * @param span when
 * @param thousandths thousandths of a person
 * @param press press that needs it; empty for what is there
 * @param what run or change that needs it; empty likewise
 */
record Claim(Span span, int thousandths, String press, String what) {}

package pressweek.reports.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.property.Uid;
import net.fortuna.ical4j.validate.ValidationResult;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.ChangeKind;
import pressweek.data.plan.Dismount;
import pressweek.data.problem.Setup;
import pressweek.reports.sample.Hostile;
import pressweek.reports.sample.SamplePlan;
import pressweek.reports.sample.SampleWeek;
import pressweek.reports.sample.SmallPlan;
import pressweek.reports.schedule.PlanBook;

class PlanCalendarTest {
  private static final String MONDAY = "2026-11-30T";

  private static SmallPlan plan(String run, String press, String from) {
    Setup black = new Setup("M2", "", "PP", "BLK");
    Setup red = new Setup("M1", "", "PP", "SGR");
    return new SmallPlan()
        .job("4711", press, MONDAY + "10:00")
        .run(
            run,
            "4711/1",
            press,
            SmallPlan.change(
                List.of(ChangeKind.MOLD, ChangeKind.COLOUR),
                black,
                red,
                MONDAY + "08:00",
                MONDAY + "08:40"),
            List.of(SampleWeek.at(MONDAY + from), SampleWeek.at(MONDAY + "12:00")));
  }

  private static PlanBook book(SmallPlan plan) {
    return PlanBook.of(plan.plan());
  }

  private static List<VEvent> read(String text) throws IOException, ParserException {
    Calendar calendar = new CalendarBuilder().build(new StringReader(text));
    ValidationResult result = calendar.validate(true);
    assertThat(result.hasErrors()).as(result.toString()).isFalse();
    return calendar.getComponents(Component.VEVENT);
  }

  private static String value(VEvent event, String property) {
    return event.getRequiredProperty(property).getValue();
  }

  @Test
  void runIsAnEntryInUniversalTime() throws Exception {
    VEvent event = read(PlanCalendar.presses(book(plan("R1", "V1", "08:40")))).get(0);
    assertThat(value(event, "DTSTART")).isEqualTo("20261130T074000Z");
    assertThat(value(event, "DTEND")).isEqualTo("20261130T110000Z");
    assertThat(value(event, "DTSTAMP")).isEqualTo("20261130T044000Z");
    assertThat(Instant.from(event.getDateTimeStart().getDate()))
        .isEqualTo(Instant.parse("2026-11-30T07:40:00Z"));
    assertThat(value(event, "SUMMARY")).isEqualTo("V1: LV90/S0825/PP-BLK, 500 pieces");
    assertThat(value(event, "LOCATION")).isEqualTo("V1");
    assertThat(value(event, "DESCRIPTION"))
        .startsWith("Run R1, line 4711/1\nMold M1, PP BLK\nDue Mon 30 Nov 10:00\n2 h late\n")
        .endsWith("\nPlan 2026-W49/3");
  }

  @Test
  void changesAndDismountsAreEntriesOfTheSetters() throws Exception {
    SmallPlan plan = plan("R1", "V1", "08:40");
    int at = SampleWeek.at(MONDAY + "13:00");
    plan.dismounts.add(new Dismount("V2", "M7", at, at + 20, 20, 0));
    List<VEvent> events = read(PlanCalendar.setters(book(plan)));
    assertThat(events)
        .extracting(e -> value(e, "SUMMARY"))
        .containsExactly("V1: mold, colour", "V2: dismount");
    assertThat(value(events.get(0), "DESCRIPTION"))
        .startsWith("Mold out M2 in M1\nMaterial out PP, BLK in PP, SGR\nStays: resin PP\n40 min");
  }

  @Test
  void uidStaysWhenTheRunMovesAndIsUsedOnce() throws Exception {
    Uid before = read(PlanCalendar.presses(book(plan("R1", "V1", "08:40")))).get(0).getUid().get();
    Uid now = read(PlanCalendar.presses(book(plan("R9", "V2", "10:00")))).get(0).getUid().get();
    assertThat(now).isEqualTo(before);
    PlanBook week = PlanBook.of(SamplePlan.of(14, 150));
    List<VEvent> all = read(PlanCalendar.presses(week));
    all.addAll(read(PlanCalendar.setters(week)));
    assertThat(all).hasSizeGreaterThan(150);
    assertThat(all).extracting(e -> e.getUid().orElseThrow().getValue()).doesNotHaveDuplicates();
  }

  @Test
  void longForeignAndEscapedTextIsReadBack() throws Exception {
    String odd =
        "M\u00FCller; K\u00F6nig, \\ \u96F7\u96F7\u96F7 \uD83D\uDD29\uD83D\uDD29 ".repeat(5);
    SmallPlan plan = plan("R1", "V1", "08:40");
    String text = PlanCalendar.presses(PlanBook.of(Hostile.of(plan.plan(), odd)));
    for (String line : text.split("\r\n", -1)) {
      assertThat(line.getBytes(StandardCharsets.UTF_8).length).isLessThanOrEqualTo(75);
      assertThat(line).doesNotContain("\n").doesNotContain("\r");
    }
    assertThat(value(read(text).get(0), "LOCATION")).isEqualTo(odd + "V1");
    assertThat(value(read(text).get(0), "DESCRIPTION")).startsWith("Run " + odd + "R1, line ");
  }

  @Test
  void lineBreaksAndControlCharactersCannotEndAProperty() throws Exception {
    SmallPlan plan = plan("R1", "V1", "08:40");
    String text =
        PlanCalendar.presses(
            PlanBook.of(Hostile.of(plan.plan(), "a\r\nEND:VEVENT\r\nBEGIN:VALARM\u0000\r")));
    List<VEvent> events = read(text);
    assertThat(events).hasSize(1);
    assertThat(value(events.get(0), "LOCATION")).isEqualTo("a\nEND:VEVENT\nBEGIN:VALARM\uFFFD\nV1");
  }

  /** RFC 5545, section 3.1: a line of 75 octets is whole, one more is folded. */
  @Test
  void foldingBeginsAfterSeventyFiveOctets() {
    String whole = new CalendarText().text("X", "a".repeat(73)).toString();
    String folded = new CalendarText().text("X", "a".repeat(74)).toString();
    assertThat(whole).isEqualTo("X:" + "a".repeat(73) + "\r\n");
    assertThat(folded).isEqualTo("X:" + "a".repeat(73) + "\r\n a\r\n");
  }

  @Test
  void emptyPlanIsACalendarWithoutEntries() {
    assertThat(PlanCalendar.presses(PlanBook.of(SamplePlan.empty())))
        .startsWith("BEGIN:VCALENDAR\r\nVERSION:2.0\r\n")
        .doesNotContain("VEVENT")
        .endsWith("END:VCALENDAR\r\n");
  }
}

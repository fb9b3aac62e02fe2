package pressweek.reports.write;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.Plan;
import pressweek.reports.handover.Handover;
import pressweek.reports.listing.Column;
import pressweek.reports.listing.Listing;
import pressweek.reports.sample.Hostile;
import pressweek.reports.sample.SamplePlan;
import pressweek.reports.sample.SmallPlan;
import pressweek.reports.schedule.PlanBook;

class PlanFilesTest {
  private static final String MONDAY = "2026-11-30T";

  private static Plan plan(String press) {
    SmallPlan plan =
        new SmallPlan()
            .job("4711", press, MONDAY + "10:00")
            .run("R1", "4711", press, MONDAY + "08:00", MONDAY + "13:00")
            .pull("R1", press, MONDAY + "07:30", "S0825");
    plan.replaces = "2026-W49/2";
    return plan.plan();
  }

  private static Edition edition(Plan plan, Handover handover) {
    return new Edition(PlanBook.of(plan), handover, List.of(), plan.head().madeMin());
  }

  private static String text(Map<String, byte[]> files, String name) {
    return new String(files.getOrDefault(name, new byte[0]), StandardCharsets.UTF_8);
  }

  @Test
  void everyListIsAFileAndAPaper() {
    Edition edition = Edition.first(plan("V1"), List.of());
    Map<String, byte[]> files = PlanFiles.of(edition);
    assertThat(files.keySet())
        .contains("index.html", "plan.xlsx", "calendar-presses.ics", "calendar-setters.ics")
        .contains("papers/labels.html");
    for (Listing list : PlanLists.of(edition)) {
      assertThat(files).containsKeys(list.name() + ".csv", "papers/" + list.name() + ".html");
      assertThat(list.columns()).extracting(Column::name).doesNotHaveDuplicates();
    }
  }

  @Test
  void everyPaperBearsThePlanNumberThePlanItReplacesTheTimeOfPrintAndACaution() {
    Edition edition = Edition.first(plan("V1"), List.of());
    Map<String, byte[]> files = PlanFiles.of(edition);
    for (String name : files.keySet()) {
      if (name.startsWith("papers/")) {
        assertThat(text(files, name))
            .as(name)
            .contains("<strong>Plan 2026-W49/3</strong><span>replaces 2026-W49/2</span>")
            .contains("<span class=\"printed\">printed ____________</span>")
            .contains("<div class=\"printcaution\">");
      }
    }
  }

  @Test
  void brokenPlanIsSaidOnEveryPaper() {
    Map<String, byte[]> files =
        PlanFiles.of(Edition.first(plan("V1"), List.of("PRESS_ONCE: V1 runs two at once")));
    for (String name : files.keySet()) {
      if (name.endsWith(".html")) {
        assertThat(text(files, name))
            .as(name)
            .contains("BREAKS HARD RULES, do not run")
            .contains("This plan breaks hard rules. Do not run it.")
            .contains("<title>Breaks hard rules: ");
      }
    }
  }

  @Test
  void pageHasTheHandoverOnlyWhenThereIsAnEarlierPlan() {
    Plan earlier = plan("V2");
    String first = text(PlanFiles.of(edition(plan("V1"), Handover.none())), "index.html");
    assertThat(first).doesNotContain("id=\"handover\"");
    Map<String, byte[]> next =
        PlanFiles.of(edition(plan("V1"), Handover.between(earlier, plan("V1"))));
    assertThat(text(next, "index.html"))
        .contains("<a href=\"#handover\">Handover from plan 2026-W49/3</a>")
        .contains("<td data-name=\"press\"><div>was V2</div><div>V1</div></td>");
    assertThat(text(next, "handover.csv"))
        .isEqualTo(
            "what,order,line,item,run,press_before,press_now,start_before,start_now,mold_before,"
                + "mold_now,quantity_before,quantity_now,inserts_before,inserts_now,"
                + "late_min_before,late_min_now,reason\r\n"
                + "press,4711,1,LV90/S0825/PP-BLK,R1,V2,V1,2026-11-30T08:00+01:00,"
                + "2026-11-30T08:00+01:00,M1,M1,500,500,\"S0825 540 from C1-2, lot L1\","
                + "\"S0825 540 from C1-2, lot L1\",180,180,\r\n");
  }

  @Test
  void labelSaysWhatItIsForAndHasBothCodes() {
    assertThat(text(PlanFiles.of(edition(plan("V1"), Handover.none())), "papers/labels.html"))
        .contains("<b>V1</b><span>R1</span><span>need by Mon 07:30</span>")
        .contains("<div>LV90/S0825/PP-BLK</div><div>line 4711/1, mold M1</div>")
        .contains("<b>S0825</b> 540 pieces, bin C1-2, lot L1")
        .contains("<div>plan 2026-W49/3 R1</div>")
        .containsPattern("(?s)<svg class=\"bars\".*<svg class=\"bars\"");
  }

  @Test
  void labelWithoutRoomForItsCodesSaysSo() {
    Plan foreign = Hostile.of(plan("V1"), "\u96F7".repeat(90));
    assertThat(text(PlanFiles.of(edition(foreign, Handover.none())), "papers/labels.html"))
        .contains("too much for a code")
        .contains("no bars: the run&#39;s number is too long or not in plain ASCII");
  }

  @Test
  void samePlanGivesTheSameBytesButForTheWorkbook() {
    Function<Integer, Map<String, byte[]>> made =
        i -> PlanFiles.of(Edition.first(SamplePlan.of(6, 30), List.of()));
    Map<String, byte[]> again = made.apply(2);
    made.apply(1)
        .forEach(
            (name, bytes) -> {
              if (!name.equals("plan.xlsx")) {
                assertThat(bytes).as(name).isEqualTo(again.get(name));
              }
            });
  }
}

package pressweek.reports.write;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import pressweek.data.plan.Plan;
import pressweek.data.problem.Uncertainty;
import pressweek.data.stress.Chance;
import pressweek.data.stress.Estimate;
import pressweek.data.stress.Gain;
import pressweek.data.stress.LineChance;
import pressweek.data.stress.Rival;
import pressweek.data.stress.SlackGain;
import pressweek.data.stress.Stressed;
import pressweek.data.stress.Totals;
import pressweek.reports.sample.SmallPlan;
import pressweek.reports.stress.StressReport;
import pressweek.reports.stress.StressText;

class StressFilesTest {
  private static final String MONDAY = "2026-11-30T";

  private static final Totals TOTALS =
      new Totals(
          new Estimate(0.8, 0.7, 0.9),
          new Estimate(12.34, 11, 13),
          new Estimate(150_000, 100_000, 200_000),
          Chance.of(80, 100));

  private static StressReport report(String line, Optional<Rival> rival) {
    Plan plan =
        new SmallPlan()
            .job("4711", "V1", MONDAY + "15:00")
            .run("R1", "4711", "V1", MONDAY + "08:00", MONDAY + "13:00")
            .plan();
    int due = plan.problem().jobs().get(0).deadline().dueMin();
    LineChance chance =
        new LineChance(
            line,
            "R1",
            "V1",
            due,
            new LineChance.Ready(due - 30, due + 90, due + 91),
            Chance.of(80, 100),
            0.25);
    SlackGain slack =
        new SlackGain(15, new Estimate(0.12, 0.06, 0.18), new Estimate(0.2, 0.1, 0.3), 0, 1);
    Uncertainty luck = Uncertainty.NONE.withAim(new Uncertainty.Aim(92.5, List.of(15)));
    Gain gain =
        new Gain(
            Gain.Kind.PRESS,
            "V1",
            new Estimate(0.15, 0.05, 0.25),
            new Estimate(-0.04, -0.2, 0.12),
            new Estimate(123_456, 0, 0));
    return new StressReport(
        plan,
        new Stressed(
            new Stressed.Luck(100, 50, 7, luck, List.of("cycles <as planned>")),
            List.of(chance),
            TOTALS,
            new Stressed.AsPlanned(1, 0, 100_000, 0, 0),
            List.of(gain),
            List.of(slack),
            rival),
        "out/plan.json",
        rival.isPresent() ? "other/plan.json" : "");
  }

  private static String text(Map<String, byte[]> files, String name) {
    return new String(files.getOrDefault(name, new byte[0]), StandardCharsets.UTF_8);
  }

  @Test
  void listsHaveARowALineAndARowAGain() {
    Map<String, byte[]> files = StressFiles.of(report("4711/1", Optional.empty()));
    assertThat(files)
        .containsOnlyKeys("stress.csv", "stress_gains.csv", "stress_slack.csv", "stress.html");
    assertThat(text(files, "stress.csv").lines().toList())
        .hasSize(2)
        .last()
        .asString()
        .startsWith("4711/1,R1,V1,2026-11-30T15:00")
        .endsWith(",80.0,71.1,86.7,0.3,1.6");
    assertThat(text(files, "stress_gains.csv").lines().toList())
        .last()
        .isEqualTo("no breakdowns of press,V1,0.2,0.1,0.3,0.0,-0.2,0.1,1.23");
    assertThat(text(files, "stress_slack.csv"))
        .isEqualTo(
            "slack_h,more_on_time,more_on_time_low,more_on_time_high,fewer_late_h,"
                + "fewer_late_low_h,fewer_late_high_h,sure_lines,planned_lines\r\n"
                + "0.25,0.1,0.1,0.2,0.2,0.1,0.3,0,1\r\n");
  }

  @Test
  void thePageIsWholeAndFetchesNothing()
      throws IOException, SAXException, ParserConfigurationException {
    String html = text(StressFiles.of(report("<4711>/1", Optional.empty())), "stress.html");
    String xml = html.substring(html.indexOf("<html"));
    Document page =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new InputSource(new StringReader(xml)));
    assertThat(page.getElementsByTagName("h1").item(0).getTextContent())
        .isEqualTo("How sure is the plan?");
    assertThat(page.getElementsByTagName("table").getLength()).isEqualTo(4);
    assertThat(page.getElementsByTagName("img").getLength()).isZero();
    assertThat(
            page.getElementsByTagName("meta")
                .item(1)
                .getAttributes()
                .getNamedItem("content")
                .getTextContent())
        .startsWith("default-src 'none'");
    assertThat(html).contains("Estimates: as good as the figures").doesNotContain("<4711>");
  }

  @Test
  void theTextSaysWhatIsNotSureAndWhoHoldsBetter() {
    Rival rival =
        new Rival(
            "2026-W49/2",
            TOTALS,
            new Estimate(-1.5, -1.8, -1.2),
            new Estimate(3, 2, 4),
            new Estimate(500_000, 400_000, 600_000),
            Chance.of(10, 100));
    String text =
        StressText.of(
            report("a-very-long-order-number-of-a-customer/1", Optional.of(rival)),
            List.of("out/stress.csv"));
    assertThat(text)
        .contains("Plan 2026-W49/3 replayed 100 times with other luck each time (seed 7).")
        .contains("less than 92.5 % of the replays: 1 line")
        .contains("ready, 92.5 %")
        .contains(
            "  a-very-l… V1    Mon 15:00       Mon 16:31       80.0 (71.1-86.7)    0.3    1.6\n")
        .contains(
            "  0.25 h    +0.1 (+0.1 to +0.2)                 0.2             0            1\n")
        .contains("As it is: 0 and 1 of 1")
        .contains("This plan is out/plan.json (2026-W49/3), the other one other/plan.json")
        .contains("  The other plan holds better.\n")
        .contains("This plan holds worse by lines on time: 1.5 fewer (95 % sure: -1.8 to -1.2).")
        .contains("This plan holds worse by late hours: 3.0 more (95 % sure: +2.0 to +4.0).")
        .contains("This plan holds worse by avoidable cost: EUR 5.00 dearer (95 % sure: +4.00 to")
        .contains("no breakdowns of press V1")
        .contains("What could go otherwise is tried in the first 50 replays.")
        .contains("+0.2 (+0.1 to +0.3)")
        .contains("out/stress.csv");
    assertThat(text.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
  }

  @Test
  void whereLinesAndHoursDisagreeBothAreSaid() {
    Rival rival =
        new Rival(
            "2026-W49/3",
            TOTALS,
            new Estimate(6.1, 5, 7.2),
            new Estimate(73.8, 60, 87.6),
            new Estimate(-500, -900, 200),
            Chance.of(90, 100));
    String text = StressText.of(report("4711/1", Optional.of(rival)), List.of());
    assertThat(text)
        .contains("Which plan holds better depends on what counts:")
        .contains("This plan holds better by lines on time: 6.1 more (95 % sure: +5.0 to +7.2).")
        .contains("This plan holds worse by late hours: 73.8 more (95 % sure: +60.0 to +87.6).")
        .contains("Neither plan surely holds better by avoidable cost: EUR 0.01 cheaper (95 %");
  }

  @Test
  void whatBringsNothingToSeeIsNoWeakLink() {
    Gain tiny =
        new Gain(
            Gain.Kind.PRESS,
            "V1",
            new Estimate(0.02, 0.01, 0.03),
            new Estimate(0.03, 0.02, 0.04),
            new Estimate(0, 0, 0));
    StressReport of = report("4711/1", Optional.empty());
    Stressed was = of.stressed();
    Stressed with =
        new Stressed(
            was.luck(),
            was.lines(),
            was.totals(),
            was.asPlanned(),
            List.of(tiny),
            List.of(),
            Optional.empty());
    assertThat(StressText.of(new StressReport(of.plan(), with, "out/plan.json", ""), List.of()))
        .doesNotContain("Weakest links")
        .contains("1 more was tried and brings nothing for sure");
  }
}

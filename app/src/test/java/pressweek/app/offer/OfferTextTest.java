package pressweek.app.offer;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import pressweek.data.files.FolderReader;
import pressweek.data.files.When;
import pressweek.data.plan.Figures;
import pressweek.data.plan.Head;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Rule;
import pressweek.data.plan.Settings;
import pressweek.data.problem.Problem;
import pressweek.data.week.Week;
import pressweek.solver.Planner;
import pressweek.solver.Watcher;
import pressweek.solver.offer.Basis;
import pressweek.solver.offer.Cures;
import pressweek.solver.offer.Help;
import pressweek.solver.offer.Later;
import pressweek.solver.offer.Offer;
import pressweek.solver.offer.Offers;
import pressweek.solver.offer.Price;

/** What is said of prices, given ones that are made up. */
final class OfferTextTest {
  private static final Path SMALL = Path.of("../examples/quillback-small");

  /** Monday 30 November 2026, 06:00 in Berlin. */
  private static final int START = 29_933_580;

  private static final long CENTS_634 = 634_000;
  private static Plan plan;

  @BeforeAll
  static void plan() throws IOException {
    Problem problem = Week.build(FolderReader.read(SMALL), START).problem().orElseThrow();
    Head head =
        new Head("2026-W49/1", "", START, Map.of(), new Settings(0, 5, 1), List.of(), false);
    plan = new Planner(problem).plan(head, Optional.empty(), Watcher.NONE);
  }

  private static String text(Price price, Plan cheapest) {
    Offer offer = new Offer(plan, plan.runs().subList(0, 1), START, START, price, List.of());
    Offers offers =
        new Offers(
            Optional.of(offer),
            Optional.of(offer),
            Optional.of(offer),
            Optional.empty(),
            1,
            0,
            false);
    Answered.Row row = Answered.Row.offered(20, 0, offers);
    Inquiry inquiry =
        new Inquiry("LV90", List.of(20), new When.Day(LocalDate.of(2026, 12, 4)), List.of());
    Basis basis = new Basis(plan, cheapest, List.of());
    String text =
        OfferText.of(new Answered(inquiry, basis, START + 60, List.of(row), List.of(), false, 0));
    assertThat(text.lines()).allMatch(line -> line.length() <= 80);
    return text.replaceAll("\\s+", " ");
  }

  @Test
  void aCostBelowNothingIsSaidInWords() {
    Price price = new Price(List.of(), List.of("7/1"), Map.of(Rule.UNPLACED, -CENTS_634), 2);
    assertThat(text(price, plan))
        .contains("06:00, EUR 6.34 cheaper yes, nobody late, EUR 6.34 cheaper")
        .contains("finds a place, which the plan has none for, late or not: 7/1")
        .contains("avoidable cost EUR 6.34 cheaper, since other runs move too, by rule: EUR -6.34")
        .doesNotContain("Costs are against");
  }

  @Test
  void whatDoesNotMoveIsNotTheCause() {
    Price price = new Price(List.of(), List.of(), Map.of(Rule.LATE, -CENTS_634), 0);
    assertThat(text(price, plan))
        .contains("avoidable cost EUR 6.34 cheaper, by rule:")
        .doesNotContain("other runs move too");
  }

  @Test
  void whatCouldBeSavedWithoutTheLineIsSaid() {
    Price price = new Price(List.of(), List.of(), Map.of(), 0);
    assertThat(text(price, cheaper()))
        .contains(
            "Costs are against the plan as it stands. A search found it EUR 6.34 cheaper without the new line.");
  }

  private static Offers offers(boolean cutShort, Offer... found) {
    Optional<Offer> one = Stream.of(found).findFirst();
    return new Offers(Optional.empty(), one, one, Optional.empty(), 4, 1, cutShort);
  }

  private static Offer paidBy(int lines) {
    List<Later> later = new ArrayList<>();
    for (int i = 0; i < lines; i++) {
      later.add(new Later("7/" + i, START, START, OptionalInt.of(START + 5)));
    }
    Price price = new Price(later, List.of(), Map.of(Rule.LATE, CENTS_634), 0);
    return new Offer(plan, plan.runs().subList(0, 1), START, START, price, List.of());
  }

  private static String said(boolean stopped, Answered.Row... rows) {
    Inquiry inquiry =
        new Inquiry("LV90", List.of(20), new When.Day(LocalDate.of(2026, 12, 4)), List.of());
    Basis basis = new Basis(plan, plan, List.of());
    Answered answered =
        new Answered(inquiry, basis, START + 60, List.of(rows), List.of(), stopped, 0);
    String text = OfferText.of(answered.within(7));
    assertThat(text.lines()).allMatch(line -> line.length() <= 80);
    return text.replaceAll("\\s+", " ");
  }

  @Test
  void whatWasStoppedSaysWhatIsMissing() {
    String text =
        said(
            true,
            Answered.Row.offered(20, 0, offers(false, paidBy(1))),
            Answered.Row.offered(30, 0, offers(true)),
            Answered.Row.untried(40));
    assertThat(text)
        .contains("20 not within this plan yes, 1 line pays, EUR +6.34")
        .contains("30 not found so far not so far")
        .contains("40 not tried not tried")
        .contains("30 pieces, nobody made late: no way was found so far")
        .contains("Stopped after 7 s: answers may be later or dearer than need be.")
        .contains("cut short: 30 pieces not tried: 40 pieces");
  }

  @Test
  void whatWasStoppedBeforeAnythingWasTriedSaysSo() {
    assertThat(said(true, Answered.Row.untried(20), Answered.Row.untried(40)))
        .contains("Stopped after 7 s: nothing was tried yet.")
        .contains("not tried: 20 pieces, 40 pieces");
  }

  @Test
  void whatIsAnsweredToTheEndIsNotCalledStopped() {
    assertThat(said(true, Answered.Row.offered(20, 0, offers(false, paidBy(1)))))
        .doesNotContain("Stopped");
    Cures cut = new Cures(3, List.of("a"), 2, List.of());
    assertThat(said(true, Answered.Row.offered(20, 0, offers(false, paidBy(1))).with(cut)))
        .contains("Stopped after 7 s: not all that might help was tried.")
        .contains("what would help: none of these: a 1 of 3 changes tried in 2 places");
    assertThat(said(false, Answered.Row.offered(20, 0, offers(false, paidBy(1))).with(cut)))
        .doesNotContain("Stopped");
  }

  @Test
  void whatHelpsIsNamedByItsGain() {
    Answered.Row row = Answered.Row.offered(20, 0, offers(false, paidBy(3)));
    Help fewer = new Help("a shift", Help.Gain.FEWER_PAY, paidBy(2));
    Help inTime = new Help("a mold", Help.Gain.IN_TIME, paidBy(0));
    List<String> tried = List.of("a mold", "a shift");
    assertThat(said(false, row.with(new Cures(2, tried, 9, List.of(fewer)))))
        .contains("what would help, its own price not counted:")
        .contains("a shift: ready Mon 30 Nov 06:00, 2 lines pay instead of 3, EUR +6.34")
        .contains("2 changes tried in 9 places, none searched further");
    assertThat(said(false, row.with(new Cures(2, tried, 9, List.of(inTime, fewer)))))
        .contains("a mold: ready Mon 30 Nov 06:00, nobody late, EUR +6.34")
        .doesNotContain("a shift:")
        .contains("none searched further; 1 more helps");
    assertThat(said(false, row.with(new Cures(0, List.of(), 0, List.of()))))
        .contains("what would help: nothing that it waits for could be tried");
  }

  private static Plan cheaper() {
    Figures f = plan.figures();
    Map<Rule, Long> costs = new HashMap<>(f.costByRule());
    costs.merge(Rule.LATE, -CENTS_634, Long::sum);
    Figures less =
        new Figures(
            f.placedLines(),
            f.unplacedLines(),
            f.lateLines(),
            f.lateMin(),
            f.changes(),
            f.changeMin(),
            f.purgeG(),
            costs);
    return new Plan(
        plan.head(),
        plan.problem(),
        plan.runs(),
        plan.dismounts(),
        plan.pulls(),
        plan.unplaced(),
        plan.unplacedCharges(),
        less);
  }
}

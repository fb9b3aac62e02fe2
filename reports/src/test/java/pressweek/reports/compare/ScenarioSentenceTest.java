package pressweek.reports.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static pressweek.reports.compare.SampleTried.beside;
import static pressweek.reports.compare.SampleTried.plan;
import static pressweek.reports.compare.SampleTried.planned;
import static pressweek.reports.compare.SampleTried.tried;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.Run;
import pressweek.reports.sample.SmallPlan;

class ScenarioSentenceTest {
  private static String of(Tried tried) {
    return ScenarioSentence.of(beside(tried), tried);
  }

  @Test
  void theFolderAsItStandsIsSaidFirst() {
    assertThat(ScenarioSentence.all(SampleTried.sample()).get(0))
        .isEqualTo("As it stands: 2 of 4 order lines on time, avoidable cost EUR 118.");
  }

  @Test
  void whatIsSureIsSaidToBe() {
    assertThat(of(tried("A Saturday shift", false, 1_000_000, 2_000_000, 1_500_000)))
        .isEqualTo("A Saturday shift: 1 more line on time, EUR 40 cheaper, sure over all 3 seeds.");
  }

  @Test
  void whatTheSearchVariesByIsSaidToo() {
    assertThat(of(tried("Another way", true, 5_100_000, 7_000_000, 5_200_000)))
        .isEqualTo(
            "Another way: no difference beyond what the search itself varies (EUR 1.00 dearer, as"
                + " many lines on time).");
    assertThat(of(tried("Another way", false, 5_100_000, 7_000_000, 5_200_000)))
        .isEqualTo(
            "Another way: 1 more line on time, sure over all 3 seeds; EUR 1.00 dearer, which is"
                + " within what the search itself varies.");
  }

  @Test
  void sameEverywhereIsNoDifference() {
    Tried same = tried("The same", true, 5_000_000, 5_000_000, 5_000_000);
    SideBySide all = SampleTried.of(same, same);
    assertThat(ScenarioSentence.of(all, same))
        .isEqualTo("The same: no difference over all 3 seeds.");
  }

  @Test
  void whereALineIsDroppedOnlyThoseThatBothHaveAreCompared() {
    List<Tried.Planned> plans = new ArrayList<>();
    for (long seed = 1; seed <= 2_001; seed += 1_000) {
      SmallPlan fewer = plan(5_000_000, true);
      Run dropped = fewer.runs.remove(0);
      fewer.jobs.removeIf(job -> job.id().equals(dropped.job()));
      plans.add(planned(seed, fewer.plan()));
    }
    Tried base = tried("As it stands", true, 5_000_000, 5_000_000, 5_000_000);
    Tried fewer = tried("Dropped", plans);

    assertThat(base.best().orElseThrow().figures().delivery().onTime()).isEqualTo(2);
    assertThat(fewer.best().orElseThrow().figures().delivery().onTime()).isEqualTo(1);
    assertThat(ScenarioSentence.of(SampleTried.of(base, fewer), fewer))
        .isEqualTo("Dropped: 1 line fewer to make; no difference over all 3 seeds.");
    assertThat(of(fewer))
        .startsWith("Dropped: 1 line fewer to make; ")
        .contains("of the lines that both have as many on time")
        .doesNotContain("fewer line");
  }

  @Test
  void fewSeedsTellNothing() {
    assertThat(of(tried("Cut short", false, 1_000_000)))
        .isEqualTo(
            "Cut short: 1 more line on time, EUR 40 cheaper; with 1 seed nobody can say whether"
                + " that is chance.");
    assertThat(of(tried("Cut short", List.of()))).isEqualTo("Cut short: not planned.");
  }

  @Test
  void aPlanThatTheAuditRejectsIsNeverShown() {
    Tried.Planned rejected = planned(1, plan(0, false).plan(), "a mold in two places");
    Tried.Planned sound = planned(1_001, plan(5_000_000, true).plan());
    Tried both = tried("Half", List.of(rejected, sound));

    assertThat(both.best()).contains(sound);
    assertThat(both.broken()).isEqualTo(1);
    assertThat(both.values(Figure.COST, both)).containsExactly(11_750_000.0);
    assertThat(of(tried("Bad", List.of(rejected))))
        .isEqualTo("Bad: no plan that keeps every hard rule was found: a mold in two places.");
  }

  @Test
  void withoutRatesDaysStandForMoney() {
    SideBySide all = SampleTried.withoutMoney();

    assertThat(all.money()).isEmpty();
    assertThat(ScenarioSentence.all(all))
        .containsExactly(
            "As it stands: 2 of 4 order lines on time, 6 h 8 min late in all.",
            "A Saturday shift: 1 more line on time, 6 h 8 min less late in all, sure over all 3"
                + " seeds.");
    assertThat(all.figures()).noneMatch(f -> f.unit() == Figure.Unit.MONEY);
  }

  @Test
  void onlySeedsOfBothSidesAreCompared() {
    Tried base = tried("As it stands", true, 5_000_000, 6_000_000, 5_500_000);
    Tried other =
        tried(
            "Other seeds",
            List.of(
                planned(1, plan(1_000_000, false).plan()),
                planned(7, plan(9_000_000, false).plan())));

    assertThat(other.pairs(base)).isEqualTo(1);
    assertThat(other.values(Figure.COST, base)).containsExactly(7_750_000.0);
  }
}

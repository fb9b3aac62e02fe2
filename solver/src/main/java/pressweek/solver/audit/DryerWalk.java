package pressweek.solver.audit;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pressweek.data.plan.PlantWide;
import pressweek.data.plan.Rule;
import pressweek.data.problem.Drying;
import pressweek.data.problem.Setup;

/** DRYER, one dryer: what is in it, run by run, and the time to clean it and to dry. */
final class DryerWalk {
  private final Drying.Feed feed;

  /** What it feeds, by start. */
  private final List<Fed> runs;

  private final Week week;
  private final Findings findings;

  DryerWalk(Drying.Feed feed, List<Fed> runs, Week week, Findings findings) {
    this.feed = feed;
    this.runs = runs.stream().sorted(Comparator.comparingLong(Fed::startMin)).toList();
    this.week = week;
    this.findings = findings;
  }

  void check() {
    String atStart = atStart();
    for (int i = 0; i < runs.size(); i++) {
      Fed run = runs.get(i);
      List<Fed> earlier = runs.stream().filter(run::comesAfter).toList();
      String before =
          earlier.isEmpty() ? atStart : earlier.get(earlier.size() - 1).dried().content();
      boolean dries = !run.stay().running() && !before.equals(run.dried().content());
      Optional<Fed> clash = runs.subList(0, i).stream().filter(run::clashesWith).findFirst();
      if (clash.isPresent()) {
        clash(run, clash.get());
      } else if (dries) {
        time(run, earlier, before.isEmpty() ? 0 : week.problem().arranged().drying().cleanMin());
      }
      said(run, dries);
      boolean first = earlier.stream().allMatch(e -> e.dried().content().equals(atStart));
      if (first && !run.stay().running() && before.equals(run.dried().content())) {
        feed.holds().ifPresent(held -> dry(run, held));
      }
    }
  }

  /** What the dryer holds at the start of the plan may not be dry yet. */
  private void dry(Fed run, Drying.Held held) {
    if (run.startMin() < held.dryFromMin()) {
      findings.add(
          Rule.DRYER,
          run.stay().run(),
          "starts %s; %s in dryer %s is dry from %s"
              .formatted(
                  week.clock().text(run.startMin()),
                  held.content(),
                  feed.dryer(),
                  week.clock().text(held.dryFromMin(), run.startMin())));
    }
  }

  /** What is in the dryer when the plan starts; empty when nothing is known to be. */
  private String atStart() {
    if (feed.holds().isPresent()) {
      return feed.holds().get().content();
    }
    Drying drying = week.problem().arranged().drying();
    return feed.presses().stream()
        .filter(press -> feed.equals(first(drying, press)))
        .map(press -> week.ids().state(press).setup())
        .flatMap(setup -> dried(drying, setup))
        .map(Drying.Dried::content)
        .findFirst()
        .orElse("");
  }

  private static Stream<Drying.Dried> dried(Drying drying, Setup setup) {
    return DryerCheck.dried(drying, setup.resin(), setup.colour()).stream();
  }

  private Drying.Feed first(Drying drying, String press) {
    return drying.dryers().stream()
        .filter(row -> row.presses().contains(press))
        .findFirst()
        .orElse(feed);
  }

  private void clash(Fed run, Fed other) {
    findings.add(
        Rule.DRYER,
        run.stay().run(),
        "has %s out of dryer %s from %s, %s has %s out of it until %s"
            .formatted(
                run.dried().content(),
                feed.dryer(),
                week.clock().text(run.startMin()),
                Words.of(other.stay().run()),
                other.dried().content(),
                week.clock().text(other.endMin(), run.startMin())));
  }

  private void time(Fed run, List<Fed> earlier, int cleanMin) {
    long free = week.problem().plant().hours().startMin();
    for (Fed other : earlier) {
      free = Math.max(free, other.endMin());
    }
    if (run.dryFromMin() - cleanMin < free) {
      findings.add(
          Rule.DRYER,
          run.stay().run(),
          "starts %s; dryer %s is free from %s and takes %d min to clean and %d min to dry %s"
              .formatted(
                  week.clock().text(run.startMin()),
                  feed.dryer(),
                  week.clock().text(free, run.startMin()),
                  cleanMin,
                  run.dried().minutes(),
                  run.dried().content()));
    }
  }

  /** What the plan says of the content and its times. */
  private void said(Fed run, boolean dries) {
    PlantWide.DryerUse use = run.use();
    boolean shared =
        runs.stream()
            .filter(other -> other != run && other.startMin() == run.startMin())
            .anyMatch(other -> other.use().dryFromMin() == other.dryFromMin());
    long from = dries ? run.dryFromMin() : run.startMin();
    boolean begins = use.dryFromMin() == from || shared && use.dryFromMin() == run.startMin();
    if (!begins || use.toMin() != run.endMin() || !use.content().equals(run.dried().content())) {
      findings.add(
          Rule.FIGURES,
          run.stay().run(),
          "has dryer %s with %s from %s to %s; expected %s from %s to %s"
              .formatted(
                  feed.dryer(),
                  use.content(),
                  week.clock().text(use.dryFromMin()),
                  week.clock().text(use.toMin(), use.dryFromMin()),
                  run.dried().content(),
                  week.clock().text(from, use.dryFromMin()),
                  week.clock().text(run.endMin(), use.dryFromMin())));
    }
  }
}

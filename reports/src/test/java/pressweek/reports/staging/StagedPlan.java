package pressweek.reports.staging;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pressweek.data.plan.ChangeKind;
import pressweek.data.problem.Dryer;
import pressweek.data.problem.Granules;
import pressweek.data.problem.Masterbatch;
import pressweek.data.problem.Materials;
import pressweek.data.problem.Preparation;
import pressweek.data.problem.Setup;
import pressweek.reports.sample.SampleJobs;
import pressweek.reports.sample.SampleWeek;
import pressweek.reports.sample.SmallPlan;
import pressweek.reports.schedule.PlanBook;

/** A plan of which the tests of this package say how its plastic is got ready. */
abstract class StagedPlan {
  static final String MONDAY = "2026-11-30T";
  static final String TUESDAY = "2026-12-01T";

  final List<Granules> granules =
      new ArrayList<>(
          List.of(granules("PP", 0, 0), granules("PA66-GF30", 4, 12), granules("POM", 3, 0)));
  final List<Masterbatch> masterbatches =
      new ArrayList<>(List.of(new Masterbatch("", "BLK", "MB-BLK", OptionalDouble.of(100.0 / 26))));
  final List<Dryer> dryers =
      new ArrayList<>(List.of(new Dryer("D2", OptionalDouble.of(60), List.of("V1", "V2"))));
  final SmallPlan plan = new SmallPlan();

  StagedPlan() {
    plan.molds.set(0, SampleJobs.mold("M1", OptionalDouble.of(20), OptionalDouble.empty(), ""));
  }

  static Granules granules(String resin, double dryH, double mostH) {
    return new Granules(
        resin,
        OptionalDouble.of(dryH),
        OptionalDouble.of(80),
        mostH == 0 ? OptionalDouble.empty() : OptionalDouble.of(mostH),
        OptionalDouble.of(0.66));
  }

  void run(String id, String press, String resin, String from, String to) {
    int due = SampleWeek.at(to);
    plan.job(id, new SampleJobs.Choice(press, "M1", resin, "BLK", "S0825", 500, due));
    Setup before = new Setup("M1", "", "PP", "SGR");
    Setup after = new Setup("M1", "", resin, "BLK");
    int start = SampleWeek.at(from);
    String change = java.time.LocalDateTime.parse(from).minusMinutes(40).toString();
    plan.run(
        id,
        id + "/1",
        press,
        SmallPlan.change(List.of(ChangeKind.COLOUR), before, after, change, from),
        List.of(start, SampleWeek.at(to)));
  }

  void keep(Optional<Preparation> kept) {
    Materials known = plan.materials;
    plan.materials =
        new Materials(known.resins(), known.colours(), known.inserts(), known.stock(), kept);
  }

  List<StagingRow> rows() {
    keep(Optional.of(new Preparation(granules, masterbatches, dryers, 1)));
    return StagingReport.rows(PlanBook.of(plan.plan()));
  }
}

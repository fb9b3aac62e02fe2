package pressweek.solver.audit;

import static pressweek.solver.audit.Broken.set;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import pressweek.data.plan.Rule;
import pressweek.data.problem.CountedThing;
import pressweek.data.problem.DeviceNeed;
import pressweek.data.problem.Drying;
import pressweek.data.problem.Link;
import pressweek.data.problem.MoldService;

/**
 * What the plant arranges beside presses, molds and shifts, where the good plan does not keep it.
 */
final class BrokenArrangements {
  private BrokenArrangements() {}

  private static final List<DeviceNeed> HEATERS =
      List.of(new DeviceNeed("M2", "heater"), new DeviceNeed("M3", "heater"));

  private static final Drying DRYING =
      new Drying(
          List.of(new Drying.Feed("D1", List.of("P2"))),
          List.of(new Drying.Dried("POM", "BK", "POM BK", 60)),
          30);

  static final List<Broken> ARRANGED =
      List.of(
          set(
              "problem.plant.hours.shifts[early].inspectors",
              OptionalInt.of(1),
              Rule.INSPECTORS,
              "the first-article check before run R3 (B/1) on P1 begins Mon 2026-11-30 16:08; at"
                  + " 16:08 it is one of 1 that take an inspector, there are 0"),
          set(
                  "problem.arrangements",
                  Optional.of(
                      Edited.set(
                          Arranged.only("devices", HEATERS),
                          "things",
                          List.of(new CountedThing("heater", 1)))),
                  Rule.COUNTED,
                  "run R3 (B/1) on P1 begins Mon 2026-11-30 13:27; at 13:27 it is one of 2 that use"
                      + " device heater, there are 1")
              .times(2),
          arranged(
              "services",
              List.of(new MoldService("M1", 3029, 10_000, 60)),
              Rule.SERVICE,
              "run R9 (F/1) on P3 makes 1010 shots, mold M1 has 9 left"),
          arranged(
              "links",
              List.of(new Link("B/1", "A/2", 179)),
              Rule.LINKED,
              "run R3 (B/1) on P1 starts Mon 2026-11-30 16:18; it builds on run R2 (A/2) on P1 and may"
                  + " start 16:19, 179 min after that ends"),
          arranged(
              "settled.drying",
              DRYING,
              Rule.DRYER,
              "run R5 (C/1) on P2 needs one dryer of its press (D1), the plan names none"));

  private static Broken arranged(String path, Object value, Rule rule, String telling) {
    return set("problem.arrangements", Optional.of(Arranged.only(path, value)), rule, telling);
  }
}

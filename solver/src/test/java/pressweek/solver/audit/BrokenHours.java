package pressweek.solver.audit;

import static pressweek.solver.audit.Broken.edit;
import static pressweek.solver.audit.Broken.set;
import static pressweek.solver.audit.Parts.at;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalInt;
import pressweek.data.plan.Rule;
import pressweek.data.problem.Downtime;

/** Work at the wrong time or of the wrong length, and molds in two places. */
final class BrokenHours {
  private BrokenHours() {}

  static final List<Broken> HOURS =
      List.of(
          set("runs[R2].seq", 3, Rule.PRESS_ONCE, "has place 3; by time it has place 2"),
          set(
                  "runs[R7].change.startMin",
                  at("Mon 16:55"),
                  Rule.PRESS_ONCE,
                  "starts Mon 2026-11-30 16:55, run R6 (C/2) on P2 ends only 16:59")
              .also(Rule.PRESS_HOURS, Rule.SETTERS, Rule.FIGURES),
          set(
                  "runs[R9].endMin",
                  at("Thu 14:30"),
                  Rule.PRESS_HOURS,
                  "ends Thu 2026-12-03 14:30, when the press does not work")
              .also(Rule.RUN_TIME, Rule.FIGURES),
          set(
                  "runs[R7].endMin",
                  at("Mon 17:31"),
                  Rule.PRESS_HOURS,
                  "does not end after that but Mon 2026-11-30 17:31")
              .also(Rule.FIGURES),
          set(
              "dismounts[0].endMin",
              at("Mon 10:02"),
              Rule.PRESS_HOURS,
              "the dismount of mold M3 on P3 ends Mon 2026-11-30 10:02, when the press does not work"),
          set(
                  "dismounts[0].endMin",
                  at("Mon 10:33"),
                  Rule.PRESS_HOURS,
                  "has 18 min, from Mon 2026-11-30 09:44 to 10:33 the press works 19 min")
              .also(Rule.SETTERS),
          set(
                  "runs[R8].change.startMin",
                  at("Mon 13:54"),
                  Rule.PRESS_HOURS,
                  "is left half done while the press does not work")
              .and("runs[R8].change.endMin", at("Tue 06:50"))
              .also(Rule.SETTERS, Rule.FIGURES),
          set(
                  "runs[R9].change.startMin",
                  at("Tue 10:35"),
                  Rule.PRESS_HOURS,
                  "ends Tue 2026-12-01 11:25, the run starts Thu 2026-12-03 06:50; the press works 205 min between them")
              .and("runs[R9].change.endMin", at("Tue 11:25"))
              .also(Rule.FIGURES),
          set(
                  "runs[R4].change.startMin",
                  at("Mon 21:29"),
                  Rule.PRESS_HOURS,
                  "has no minutes but is from Mon 2026-11-30 21:29 to 21:30")
              .also(Rule.PRESS_ONCE),
          set(
              "problem.floor.downtime[0].fromMin",
              at("Mon 09:50"),
              Rule.PRESS_HOURS,
              "ends Mon 2026-11-30 10:32, when the press does not work"),
          set(
                  "problem.floor.downtime[0].fromMin",
                  at("Mon 10:05"),
                  Rule.PRESS_HOURS,
                  "from Mon 2026-11-30 09:44 to 10:32 is left half done")
              .and("problem.floor.downtime[0].toMin", at("Mon 10:25")),
          set(
                  "runs[R7].endMin",
                  at("Tue 08:12"),
                  Rule.RUN_TIME,
                  "has 401 working min; expected 400 for 1000 shots")
              .and("runs[R7].readyMin", at("Tue 08:12")),
          set(
                  "problem.plant.hours.closed",
                  List.of(LocalDate.of(2026, 12, 2), LocalDate.of(2026, 12, 3)),
                  Rule.PRESS_HOURS,
                  "run R9 (F/1) on P3 starts Thu 2026-12-03 06:50, when the press does not work")
              .also(Rule.RUN_TIME, Rule.SETTERS),
          set(
              "problem.jobs[A/2].deadline.earliestMin",
              at("Mon 08:01"),
              Rule.EARLIEST,
              "begins Mon 2026-11-30 08:00, its earliest time is 08:01"),
          set(
                  "problem.plant.hours.startMin",
                  at("Mon 06:11"),
                  Rule.EARLIEST,
                  "run R5 (C/1) on P2 begins Mon 2026-11-30 06:10, the plan starts 06:11")
              .also(Rule.RUNNING, Rule.FIGURES));

  static final List<Broken> MOLDS =
      List.of(
          edit(
                  "dismounts",
                  Edited.without(0),
                  Rule.MOLD_ONCE,
                  "run R6 (C/2) on P2 begins Mon 2026-11-30 10:37, mold M3 is still on P3 until Tue 2026-12-01 06:18")
              .also(Rule.CHANGE_TIME, Rule.FIGURES),
          set("dismounts[0].startMin", at("Mon 10:31"), Rule.MOLD_ONCE, "until 10:49")
              .and("dismounts[0].endMin", at("Mon 10:49"))
              .also(Rule.SETTERS),
          set(
                  "dismounts[0].mold",
                  "M4",
                  Rule.MOLD_ONCE,
                  "the dismount of mold M4 on P3 starts Mon 2026-11-30 09:44, the press does not hold that mold then")
              .also(Rule.CHANGE_TIME, Rule.FIGURES),
          set(
              "problem.floor.downtime[1].toMin",
              at("Thu 06:51"),
              Rule.MOLD_AWAY,
              "is from Thu 2026-12-03 06:50 to 08:34, mold M1 is away until 06:51 (polish)"),
          set(
              "problem.floor.molds[M2].change.availableFromMin",
              OptionalInt.of(at("Mon 13:28")),
              Rule.MOLD_AWAY,
              "is from Mon 2026-11-30 13:27 to 21:30, mold M2 is away until 13:28"),
          edit(
              "problem.floor.downtime",
              Edited.with(
                  0,
                  new Downtime(
                      Downtime.Kind.MOLD, "M3", at("Tue 08:10"), at("Tue 09:00"), "service")),
              Rule.MOLD_AWAY,
              "run R7 (D/1) on P2 is from Mon 2026-11-30 17:31 to Tue 2026-12-01 08:11"));
}

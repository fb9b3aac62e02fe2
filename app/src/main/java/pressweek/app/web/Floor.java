package pressweek.app.web;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pressweek.app.desk.Desk;
import pressweek.app.store.StoreTrouble;
import pressweek.data.plan.Plan;
import pressweek.reports.handover.Handover;
import pressweek.reports.schedule.PlanBook;
import pressweek.reports.write.Edition;
import pressweek.reports.write.PlanFiles;

/** The plan that the floor has; while it has none, the week on the desk as a draft. */
final class Floor {
  private final Desk desk;
  private final Map<String, byte[]> files = new LinkedHashMap<>();
  private String filesOf = "";

  Floor(Desk desk) {
    this.desk = desk;
  }

  /**
   * A plan to show on the floor.
   *
   * @param plan the plan
   * @param draft whether nobody has given it out
   */
  record Shown(Plan plan, boolean draft) {
    Edition edition(int nowMin) {
      return new Edition(PlanBook.of(plan), Handover.none(), draft ? List.of() : List.of(), nowMin);
    }
  }

  Optional<Shown> shown() throws StoreTrouble {
    Optional<Shown> given = desk.lastGivenOut().map(p -> new Shown(p, false));
    return given.isPresent() ? given : desk.standing().map(s -> new Shown(s.week().plan(), true));
  }

  /** Everything that the plan is written as, by its path. */
  synchronized Map<String, byte[]> files() throws StoreTrouble {
    Optional<Shown> shown = shown();
    if (shown.isEmpty()) {
      return Map.of();
    }
    String key = shown.get().plan().head().number() + " " + shown.get().plan().hashCode();
    if (!key.equals(filesOf)) {
      files.clear();
      files.putAll(PlanFiles.of(shown.get().edition(desk.nowMin())));
      filesOf = key;
    }
    return Map.copyOf(files);
  }

  /** Names of the files. */
  List<String> names() throws StoreTrouble {
    return files().keySet().stream().sorted().toList();
  }
}

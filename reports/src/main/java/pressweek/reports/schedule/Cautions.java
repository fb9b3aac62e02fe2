package pressweek.reports.schedule;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import pressweek.data.declared.Needs;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Pull;
import pressweek.data.problem.Insert;
import pressweek.data.problem.Job;
import pressweek.data.problem.Orientation;
import pressweek.data.problem.Resin;

/**
 * Where the week's work can hurt someone: a line each, and who rules. Clamp and lockout by OSHA 29
 * CFR 1910.147; hot melt, purge and the neighbours that must not meet by the resin makers' sheets;
 * hexavalent chromium by OSHA 29 CFR 1910.1026.
 */
public final class Cautions {
  private Cautions() {}

  /** The cautions that the plan's presses, resins, inserts and orders call for. */
  public static List<String> of(PlanBook book) {
    Plan plan = book.plan();
    List<String> lines = new ArrayList<>();
    lines.add(clamp(book));
    lines.add(
        "Hot melt and purge burn and splatter: shield, face cover and gloves as the resin sheet"
            + " and the site procedure say.");
    lines.addAll(neighbours(plan.problem().materials().resins()));
    if (plan.pulls().stream().anyMatch(p -> isHexavalent(book, p))) {
      lines.add(
          "Hexavalent chromium (OSHA 29 CFR 1910.1026): some inserts of this week have a hexavalent finish. Handle them by"
              + " the site procedure; do not grind or heat them.");
    }
    lines.addAll(claims(plan.problem().jobs()));
    lines.add(
        "Clamp force, cooling and drying that were computed are estimates: the resin sheet, the"
            + " machine manual, local codes, the site procedure and licensed people rule.");
    return List.copyOf(lines);
  }

  /** True when the insert of a pull is recorded with a hexavalent finish. */
  public static boolean isHexavalent(PlanBook book, Pull pull) {
    return book.insert(pull.insert())
        .map(Insert::passivation)
        .filter("hexavalent"::equals)
        .isPresent();
  }

  private static String clamp(PlanBook book) {
    boolean vertical =
        book.presses().stream().anyMatch(p -> p.build().orientation() == Orientation.VERTICAL);
    return "A clamp crushes"
        + (vertical ? ", and a vertical one can drop" : "")
        + ": guards stay on, and nobody reaches in before lockout. The machine manual, the site"
        + " procedure and local codes rule.";
  }

  private static List<String> neighbours(List<Resin> resins) {
    TreeSet<String> pairs = new TreeSet<>();
    for (Resin resin : resins) {
      for (String other : resin.neverNextTo()) {
        boolean first = resin.id().compareTo(other) <= 0;
        pairs.add(first ? resin.id() + " and " + other : other + " and " + resin.id());
      }
    }
    return pairs.isEmpty()
        ? List.of()
        : List.of(
            "Never together in a barrel, dryer, grinder or purge: "
                + String.join("; ", pairs)
                + ". Hot, they can break down violently; the resin sheets rule.");
  }

  private static List<String> claims(List<Job> jobs) {
    List<String> lines = new ArrayList<>();
    if (jobs.stream().anyMatch(Job::foodGrade)) {
      lines.add(
          "Food contact: the plan keeps food-grade work on its presses and names its lots (EC"
              + " 1935/2004, Art. 17); it never certifies that a part is fit for food. Suppliers'"
              + " declarations and whoever releases the lot do.");
    }
    if (jobs.stream().anyMatch(j -> Needs.of(j).contains(Needs.ROHS))) {
      lines.add(
          "Restricted substances (RoHS, Directive 2011/65/EU, Annex II): the plan looks for a record"
              + " and certifies nothing; the colour of a finish proves nothing; suppliers'"
              + " declarations and whoever releases the lot do.");
    }
    return lines;
  }
}

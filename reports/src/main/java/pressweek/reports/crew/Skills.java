package pressweek.reports.crew;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import pressweek.data.problem.Person;
import pressweek.data.problem.Person.Role;
import pressweek.reports.hours.ShiftSpan;

/**
 * Who of the people that the plant lists may serve what a shift needs. Operators serve runs,
 * setters make changes; neither stands in for the other.
 */
final class Skills {
  private final List<Person> people;
  private final List<String> order;

  /**
   * What is asked of people.
   *
   * @param shift shift
   * @param runs operators that runs need in it
   * @param changes changes in it
   */
  record Asked(ShiftSpan shift, List<Claim> runs, List<Claim> changes) {
    /** Runs that need no operator, and what is outside the shift, are left out. */
    Asked {
      runs =
          runs.stream()
              .filter(c -> c.thousandths() > 0)
              .filter(c -> c.span().within(shift.span()).minutes() > 0)
              .toList();
      changes = List.copyOf(changes);
    }
  }

  /**
   * What people may do.
   *
   * @param people people in the order of the plant's list
   * @param order presses in the plant's order
   */
  Skills(List<Person> people, List<String> order) {
    this.people = people;
    this.order = order;
  }

  /** Who may run what, in the order of the plant's list. */
  CrewRow.Qualified qualified(Asked asked) {
    List<String> runs = presses(asked.runs());
    List<String> changes = presses(asked.changes());
    List<String> mayRun = new ArrayList<>();
    for (Person person : people) {
      boolean setter = person.role() == Role.SETTER;
      List<String> needed = setter ? changes : runs;
      List<String> may = needed.stream().filter(p -> person.may(name(asked), p)).toList();
      if (!may.isEmpty()) {
        String what = may.size() == needed.size() ? "all" : String.join(", ", may);
        mayRun.add(person.name() + (setter ? " (setter): " : ": ") + what);
      }
    }
    return new CrewRow.Qualified(
        mayRun,
        runs.stream().filter(p -> who(Role.OPERATOR, asked, List.of(p)).isEmpty()).toList());
  }

  /** Where too few of them are qualified, in words. */
  List<String> shortages(Asked asked) {
    List<String> shortages = new ArrayList<>();
    tooFew(asked).ifPresent(shortages::add);
    Predicate<Claim> nobody = c -> who(Role.SETTER, asked, List.of(c.press())).isEmpty();
    List<Claim> open = asked.changes().stream().filter(nobody).toList();
    if (!open.isEmpty()) {
      shortages.add("setters who may make the change: none there: " + Claim.what(open));
    }
    return shortages;
  }

  /**
   * One person serves several presses when their shares add up to no more than one. That they are
   * enough in number does not prove that they can be shared out.
   */
  private Optional<String> tooFew(Asked asked) {
    Load load = new Load(asked.runs());
    List<Claim> peak = load.peak(asked.shift().span()).map(load::at).orElse(List.of());
    int needed = Load.people(Load.sum(peak));
    int there = who(Role.OPERATOR, asked, presses(peak)).size();
    return there >= needed
        ? Optional.empty()
        : Optional.of(
            "operators who may run the presses: %d needed at once, %s there"
                .formatted(needed, there == 0 ? "none" : there));
  }

  /** Those of a role who may serve one of these presses at least. */
  private List<String> who(Role role, Asked asked, List<String> presses) {
    return people.stream()
        .filter(p -> p.role() == role)
        .filter(p -> presses.stream().anyMatch(press -> p.may(name(asked), press)))
        .map(Person::name)
        .toList();
  }

  private static String name(Asked asked) {
    return asked.shift().shift();
  }

  /** Their presses in the plant's order, each once. */
  private List<String> presses(List<Claim> claims) {
    Set<String> needed = claims.stream().map(Claim::press).collect(Collectors.toSet());
    return order.stream().filter(needed::contains).toList();
  }
}

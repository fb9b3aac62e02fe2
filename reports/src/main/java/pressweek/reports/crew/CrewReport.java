package pressweek.reports.crew;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pressweek.data.problem.Crew;
import pressweek.data.problem.Press;
import pressweek.reports.crew.CrewRow.OperatorNeed;
import pressweek.reports.crew.CrewRow.SetterNeed;
import pressweek.reports.hours.ShiftSpan;
import pressweek.reports.hours.Span;
import pressweek.reports.schedule.PlanBook;

/**
 * How many people a shift needs: a row for the whole plant, then one a cell, for every shift in
 * which something runs or is changed.
 */
public final class CrewReport {
  private static final int PERSON = 1000;

  private final PlanBook book;
  private final Crew crew;
  private final Setters setters;
  private final List<Claim> operatorsThere;
  private final List<Claim> operators;
  private final Skills skills;

  private CrewReport(PlanBook book) {
    this.book = book;
    this.crew = book.plan().problem().plant().crew();
    this.setters = new Setters(book);
    this.operatorsThere = Operators.there(book);
    this.operators = Operators.of(book, book.presses());
    this.skills =
        new Skills(
            crew.people().orElse(List.of()), book.presses().stream().map(Press::id).toList());
  }

  /** The rows of the crew list, in order of time. */
  public static List<CrewRow> rows(PlanBook book) {
    return book.once(CrewReport.class, () -> new CrewReport(book).all());
  }

  private List<CrewRow> all() {
    List<CrewRow> rows = new ArrayList<>();
    book.shifts().all().forEach(s -> rows.addAll(rows(s)));
    return List.copyOf(rows);
  }

  private List<CrewRow> rows(ShiftSpan shift) {
    List<Press> presses =
        book.presses().stream()
            .filter(p -> book.shifts().belongs(shift.shift(), p.calendar()))
            .toList();
    List<String> cells = presses.stream().map(Press::cell).distinct().toList();
    List<CrewRow> rows = new ArrayList<>();
    whole(shift, presses).ifPresent(rows::add);
    if (cells.size() > 1) {
      for (String cell : cells) {
        List<Press> its = presses.stream().filter(p -> p.cell().equals(cell)).toList();
        cell(shift, cell.isEmpty() ? "no cell" : cell, its).ifPresent(rows::add);
      }
    }
    return rows;
  }

  private Optional<CrewRow> cell(ShiftSpan shift, String cell, List<Press> presses) {
    List<String> ids = presses.stream().map(Press::id).toList();
    OperatorNeed need = operators(shift, ids, Optional.empty());
    List<Claim> changes = setters.in(shift, ids);
    if (need.atMin().isEmpty() && changes.isEmpty()) {
      return Optional.empty();
    }
    SetterNeed changing = new SetterNeed(minutes(changes), Optional.empty(), Optional.empty());
    Skills.Asked asked = asked(shift, ids, changes);
    return Optional.of(
        new CrewRow(shift, cell, need, changing, qualified(asked), unqualified(asked), List.of()));
  }

  /** Setters of a shift change molds on presses of other shifts, too. */
  private Optional<CrewRow> whole(ShiftSpan shift, List<Press> presses) {
    List<String> ids = presses.stream().map(Press::id).toList();
    List<String> all = book.presses().stream().map(Press::id).toList();
    List<Claim> changes = setters.in(shift, all);
    Optional<Integer> there =
        crew.operatorsChecked() ? Optional.of(thereThousandths(shift)) : Optional.empty();
    OperatorNeed need = operators(shift, ids, there);
    if (need.atMin().isEmpty() && changes.isEmpty()) {
      return Optional.empty();
    }
    List<String> shortages = new ArrayList<>();
    List<String> notComputed = new ArrayList<>();
    if (crew.operatorsChecked()) {
      tooFewOperators(shift).ifPresent(shortages::add);
    } else {
      notComputed.add("whether operators are enough: plant.json shifts operators");
    }
    SetterNeed changing;
    if (crew.settersChecked()) {
      tooFewSetters(shift, changes, shortages);
      changing =
          new SetterNeed(
              minutes(changes),
              Optional.of(setters.availableMin(shift)),
              Optional.of(setters.there(shift)));
    } else {
      notComputed.add("whether setters are enough: plant.json shifts setters");
      changing = new SetterNeed(minutes(changes), Optional.empty(), Optional.empty());
    }
    Skills.Asked asked = asked(shift, ids, changes);
    shortages.addAll(unqualified(asked));
    if (crew.people().isEmpty()) {
      notComputed.add("who may run what: people.csv");
    }
    return Optional.of(
        new CrewRow(
            shift, CrewRow.WHOLE, need, changing, qualified(asked), shortages, notComputed));
  }

  private Skills.Asked asked(ShiftSpan shift, List<String> presses, List<Claim> changes) {
    return new Skills.Asked(shift, operators(presses), changes);
  }

  private CrewRow.Qualified qualified(Skills.Asked asked) {
    return crew.people().isPresent()
        ? skills.qualified(asked)
        : new CrewRow.Qualified(List.of(), List.of());
  }

  private List<String> unqualified(Skills.Asked asked) {
    return crew.people().isPresent() ? skills.shortages(asked) : List.of();
  }

  private List<Claim> operators(List<String> presses) {
    return operators.stream().filter(c -> presses.contains(c.press())).toList();
  }

  private int thereThousandths(ShiftSpan shift) {
    return operatorsThere.stream()
        .filter(c -> c.span().equals(shift.span()))
        .mapToInt(Claim::thousandths)
        .findFirst()
        .orElse(0);
  }

  private OperatorNeed operators(ShiftSpan shift, List<String> presses, Optional<Integer> there) {
    Load load = new Load(operators(presses));
    Optional<Integer> peak = load.peak(shift.span());
    List<Claim> claims = peak.map(load::at).orElse(List.of());
    List<Claim> needed = claims.stream().filter(c -> c.thousandths() > 0).toList();
    List<Claim> parts = needed.stream().filter(c -> c.thousandths() % PERSON != 0).toList();
    return new OperatorNeed(
        Load.sum(claims),
        peak,
        shares(needed),
        parts.size() > 1 ? shares(parts) : List.of(),
        there);
  }

  private static List<String> shares(List<Claim> claims) {
    return claims.stream().map(c -> c.press() + " " + people(c.thousandths())).toList();
  }

  private static String people(int thousandths) {
    BigDecimal value = BigDecimal.valueOf(thousandths, 3).stripTrailingZeros();
    return (value.scale() < 0 ? value.setScale(0) : value).toPlainString();
  }

  private Optional<String> tooFewOperators(ShiftSpan shift) {
    return new Load(operators)
        .over(List.of(shift.span()), operatorsThere)
        .map(
            o ->
                "operators: up to %s needed, %s there, for %d min: %s"
                    .formatted(
                        people(o.needed()),
                        people(o.there()),
                        o.minutes(),
                        Claim.what(o.claims())));
  }

  private void tooFewSetters(ShiftSpan shift, List<Claim> changes, List<String> shortages) {
    int available = setters.availableMin(shift);
    if (setters.alone(shift) && minutes(changes) > available) {
      shortages.add(
          "setters: %d min of changes, %d min can be planned: %s"
              .formatted(minutes(changes), available, Claim.what(changes)));
    }
    new Load(setters.all())
        .over(List.of(shift.span()), setters.there())
        .ifPresent(
            o ->
                shortages.add(
                    "setters: %s changes at once, %s there, for %d min: %s"
                        .formatted(
                            people(o.needed()),
                            people(o.there()),
                            o.minutes(),
                            Claim.what(o.claims()))));
  }

  private static int minutes(List<Claim> claims) {
    return claims.stream().map(Claim::span).mapToInt(Span::minutes).sum();
  }
}

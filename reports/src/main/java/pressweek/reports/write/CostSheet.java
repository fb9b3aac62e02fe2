package pressweek.reports.write;

import java.util.ArrayList;
import java.util.List;
import pressweek.data.plan.Bound;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Reference;
import pressweek.data.plan.Rule;
import pressweek.data.problem.Rates;
import pressweek.reports.hours.Minutes;
import pressweek.reports.markup.Element;
import pressweek.reports.schedule.BestPossible;
import pressweek.reports.schedule.Comparison;
import pressweek.reports.schedule.Money;

/** What the plan costs and what simple ways of planning would. Without rates no money is shown. */
final class CostSheet {
  private final Plan plan;
  private final Rates rates;

  CostSheet(Plan plan) {
    this.plan = plan;
    this.rates = plan.problem().plant().rates();
  }

  /** The tables; none when there is nothing to compare and no money to show. */
  List<Element> content() {
    List<Element> parts = new ArrayList<>();
    if (!plan.head().references().isEmpty()) {
      parts.add(comparison());
    }
    if (rates.shown() && !plan.figures().costByRule().isEmpty()) {
      parts.add(costs());
    }
    if (rates.shown() && !BestPossible.parts(plan).isEmpty()) {
      parts.add(bound());
    }
    return parts;
  }

  private Element bound() {
    return new PageTable<Bound.Part>("narrow")
        .caption("What no plan of this week can avoid, as far as it is proved")
        .text("for", Bound.Part::what)
        .figure(rates.currency(), part -> Money.figure(part.amount()))
        .rows(BestPossible.parts(plan))
        .element();
  }

  private Element comparison() {
    List<Reference> ways = new ArrayList<>();
    ways.add(
        new Reference(
            "this plan",
            plan.figures().avoidableCost(),
            Comparison.lateOrLeftOut(plan),
            plan.figures().changeMin()));
    ways.addAll(plan.head().references());
    PageTable<Reference> table =
        new PageTable<Reference>("narrow")
            .caption("Beside simple ways of planning")
            .text("way of planning", Reference::name)
            .figure("lines late or left out", r -> Integer.toString(r.lateLines()))
            .figure("change time", r -> Minutes.hours(r.changeMin()));
    if (rates.shown()) {
      table.figure("avoidable cost, " + rates.currency(), r -> Money.figure(r.avoidableCost()));
    }
    return table.rows(ways).element();
  }

  private Element costs() {
    List<Rule> rules = plan.figures().costByRule().keySet().stream().sorted().toList();
    return new PageTable<Rule>("narrow")
        .caption("What the avoidable cost is made of")
        .text("charged for", Rule::sentence)
        .figure(
            rates.currency(), r -> Money.figure(plan.figures().costByRule().getOrDefault(r, 0L)))
        .rows(rules)
        .element();
  }
}

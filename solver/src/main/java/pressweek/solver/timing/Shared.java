package pressweek.solver.timing;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pressweek.data.problem.Crew;
import pressweek.solver.rules.ChangeRules;

/**
 * What presses share: people, components, molds, things, dryers; and the shifts that are worked.
 */
final class Shared {
  final ComponentStock stock;
  final MoldAway away;
  final Things things;
  final Services services;
  final Dryers dryers;
  final Campaigns campaigns;
  final ChangeRules changes;
  final Breakdowns breakdowns;

  private final WeekTables week;
  private final Crew crew;
  private final Map<Long, People> known = new HashMap<>();
  private People people;

  Shared(WeekTables week, Crew crew, PressStates states, List<MoldAway.Kept> kept) {
    this.week = week;
    this.crew = crew;
    stock = new ComponentStock(week);
    away = new MoldAway(week.problem, week.names, kept);
    things = new Things(week.problem, week.names, states);
    services = new Services(week.problem, week.names);
    dryers = week.dryers();
    campaigns = new Campaigns(week.problem.arranged().terms(), week.presses);
    changes = week.changeRules();
    breakdowns = new Breakdowns(week.presses);
    people = people(0);
  }

  /** Working times and the people in them. */
  record People(
      WorkTimes times, SetterPool setters, OperatorLoad operators, Inspectors inspectors) {}

  private People people(long open) {
    return known.computeIfAbsent(
        open,
        bits -> {
          WorkTimes times = week.times(bits);
          return new People(
              times,
              new SetterPool(times, crew),
              new OperatorLoad(times, crew.operatorsChecked()),
              new Inspectors(week.problem, times));
        });
  }

  /** Begins anew with these overtime shifts open. */
  void reset(long open) {
    work(open);
    people.setters().reset();
    people.operators().reset();
    people.inspectors().reset();
    stock.reset();
    things.reset();
    services.reset();
    dryers.reset();
    campaigns.reset();
    breakdowns.reset();
  }

  /** Works the shifts that are worked with these overtime shifts open. */
  void work(long open) {
    people = people(open);
  }

  void name(Snapshot.Changing all) {
    people.setters().name(all);
    people.operators().name(all);
    people.inspectors().name(all);
    stock.name(all);
    things.name(all);
    services.name(all);
    dryers.name(all);
    campaigns.name(all);
  }

  SetterPool setters() {
    return people.setters();
  }

  OperatorLoad operators() {
    return people.operators();
  }

  Inspectors inspectors() {
    return people.inspectors();
  }

  /** Working time of a press with people in the house. */
  Spans hours(int press) {
    return people.times().hours[press];
  }

  /** Working time of a press for a run with or without hand loading. */
  Spans running(int press, boolean handLoad) {
    return handLoad ? people.times().hours[press] : people.times().running[press];
  }
}

package pressweek.data.problem;

import java.util.List;

/**
 * What a plant has arranged beside presses, molds and ordinary shifts. Every list may be empty.
 *
 * @param things things that exist a counted number of times; a tooling set that is not among them
 *     is always there
 * @param devices devices that molds need
 * @param services molds that are serviced after so many shots
 * @param trials mold trials
 * @param links runs that build on others
 * @param surplus what family molds make beside
 * @param opening overtime and shifts without people
 * @param settled drying and further terms
 */
public record Arrangements(
    List<CountedThing> things,
    List<DeviceNeed> devices,
    List<MoldService> services,
    List<Trial> trials,
    List<Link> links,
    List<Surplus> surplus,
    Opening opening,
    Settled settled) {
  /** Nothing arranged. */
  public static final Arrangements NONE =
      new Arrangements(
          List.of(),
          List.of(),
          List.of(),
          List.of(),
          List.of(),
          List.of(),
          Opening.NONE,
          new Settled(Drying.NONE, Terms.NONE));

  public Arrangements {
    things = List.copyOf(things);
    devices = List.copyOf(devices);
    services = List.copyOf(services);
    trials = List.copyOf(trials);
    links = List.copyOf(links);
    surplus = List.copyOf(surplus);
  }

  /** Drying and the further terms of a plan. */
  public record Settled(Drying drying, Terms terms) {}

  /** The same with other overtime and shifts without people. */
  public Arrangements with(Opening other) {
    return new Arrangements(things, devices, services, trials, links, surplus, other, settled);
  }

  /** The same with other drying. */
  public Arrangements with(Drying other) {
    Settled with = new Settled(other, terms());
    return new Arrangements(things, devices, services, trials, links, surplus, opening, with);
  }

  /** The same with other terms. */
  public Arrangements with(Terms other) {
    Settled with = new Settled(drying(), other);
    return new Arrangements(things, devices, services, trials, links, surplus, opening, with);
  }

  /** Drying as far as it is planned. */
  public Drying drying() {
    return settled.drying();
  }

  /** Further terms. */
  public Terms terms() {
    return settled.terms();
  }
}

package pressweek.reports.sample;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import pressweek.data.problem.Attribute;
import pressweek.data.problem.Deadline;
import pressweek.data.problem.Item;
import pressweek.data.problem.Job;
import pressweek.data.problem.Making;
import pressweek.data.problem.Mold;
import pressweek.data.problem.Option;
import pressweek.data.problem.OrderLine;
import pressweek.data.problem.Origin;
import pressweek.data.problem.Pace;
import pressweek.data.problem.Quantity;
import pressweek.data.problem.Standing;
import pressweek.data.problem.Take;

/** Jobs and molds of the tests. */
public final class SampleJobs {
  private SampleJobs() {}

  /** What a job is made of and on what. */
  public record Choice(
      String press, String mold, String resin, String colour, String insert, int pieces, int due) {}

  public static Job job(String order, String line, Choice choice) {
    String item = "LV90/" + choice.insert() + "/" + choice.resin() + "-" + choice.colour();
    return new Job(
        new OrderLine(
            order, line, "Harbour Fittings", item, choice.pieces(), choice.due(), List.of(), ""),
        new Item(
            item, List.of(new Attribute(Item.RESIN, choice.resin(), Origin.CODE, "part 3 \"PP\""))),
        new Quantity(choice.pieces(), 0, 0, choice.pieces()),
        new Deadline(SampleWeek.START, choice.due(), 0, 100),
        choice.resin(),
        choice.colour(),
        choice.press().equals("V2"),
        List.of(option(choice)));
  }

  /** The same job for an order that asks these of its material. */
  static Job asking(Job job, List<String> needs) {
    OrderLine line = job.line();
    return new Job(
        new OrderLine(
            line.order(),
            line.line(),
            line.customer(),
            line.item(),
            line.quantity(),
            line.requestedMin(),
            needs,
            line.note()),
        job.item(),
        job.quantity(),
        job.deadline(),
        job.resin(),
        job.colour(),
        job.foodGrade(),
        job.options());
  }

  /** The same job that takes these, too, wherever it is made. */
  static Job taking(Job job, List<Take> takes) {
    return new Job(
        job.line(),
        job.item(),
        job.quantity(),
        job.deadline(),
        job.resin(),
        job.colour(),
        job.foodGrade(),
        job.options().stream().map(option -> taking(option, takes)).toList());
  }

  private static Option taking(Option option, List<Take> takes) {
    Making old = option.making();
    List<Take> all = Stream.concat(old.takes().stream(), takes.stream()).toList();
    return new Option(
        option.press(),
        option.mold(),
        option.tooling(),
        new Making(old.shots(), old.liveCavities(), old.startupShots(), old.startupGrams(), all),
        option.pace(),
        option.standing(),
        option.notes());
  }

  private static Option option(Choice choice) {
    int shots = (choice.pieces() + 3) / 4;
    return new Option(
        choice.press(),
        choice.mold(),
        "",
        new Making(shots, 4, 10, 800, List.of(new Take(choice.insert(), choice.pieces(), 40, 0))),
        new Pace(38_000, Math.max(1, shots * 38 / 51), 8, 250, "standards.csv:12"),
        Standing.PROVEN,
        List.of());
  }

  public static Mold mold(String id) {
    return mold(id, OptionalDouble.empty(), OptionalDouble.empty());
  }

  /** A mold whose parts and runner weigh this, grams. */
  static Mold mold(String id, OptionalDouble partG, OptionalDouble runnerG) {
    OptionalDouble none = OptionalDouble.empty();
    return mold(id, new Mold.Cavities(4, 4, partG, runnerG, none, none, none), none, "");
  }

  /** A mold of four cavities with so many grams a part and no runner, its weight and its place. */
  public static Mold mold(String id, OptionalDouble partG, OptionalDouble weightKg, String place) {
    OptionalDouble none = OptionalDouble.empty();
    return mold(id, new Mold.Cavities(4, 4, partG, none, none, none, none), weightKg, place);
  }

  private static Mold mold(
      String id, Mold.Cavities cavities, OptionalDouble weightKg, String place) {
    OptionalDouble none = OptionalDouble.empty();
    return new Mold(
        id,
        new Mold.Use(List.of("LV90"), Optional.empty(), List.of(), List.of(), Map.of()),
        cavities,
        new Mold.Body(Optional.empty(), none, none, none, none, weightKg, place),
        new Mold.RunsOn(List.of(), List.of(), List.of(), Optional.empty()),
        new Mold.MoldChange(OptionalInt.empty(), false, OptionalInt.empty()),
        OptionalDouble.of(38),
        true);
  }
}

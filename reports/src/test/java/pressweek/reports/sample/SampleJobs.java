package pressweek.reports.sample;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
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
    return mold(id, OptionalDouble.empty(), OptionalDouble.empty(), "");
  }

  /** A mold of four cavities with so many grams a part and no runner, its weight and its place. */
  public static Mold mold(String id, OptionalDouble partG, OptionalDouble weightKg, String place) {
    OptionalDouble none = OptionalDouble.empty();
    return new Mold(
        id,
        new Mold.Use(List.of("LV90"), Optional.empty(), List.of(), List.of(), Map.of()),
        new Mold.Cavities(4, 4, partG, none, none, none, none),
        new Mold.Body(Optional.empty(), none, none, none, none, weightKg, place),
        new Mold.RunsOn(List.of(), List.of(), List.of(), Optional.empty()),
        new Mold.MoldChange(OptionalInt.empty(), false, OptionalInt.empty()),
        OptionalDouble.of(38),
        true);
  }
}

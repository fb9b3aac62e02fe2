package pressweek.data.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static pressweek.data.problem.JobBuilder.job;
import static pressweek.data.problem.SmallPlant.START;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pressweek.data.files.EventKind;
import pressweek.data.files.EventsFile;
import pressweek.data.files.Folder;
import pressweek.data.files.FolderReader;
import pressweek.data.files.InputError;
import pressweek.data.files.InputError.Severity;
import pressweek.data.plan.Figures;
import pressweek.data.plan.Head;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Settings;
import pressweek.data.problem.Lot;
import pressweek.data.problem.LotStatus;
import pressweek.data.problem.Problem;
import pressweek.data.problem.SmallPlant;
import pressweek.data.problem.Unplaced;

/** Events against a plan of lines 1/1 and 2/1, one that is unplaced, presses P1 and P2, lot L1. */
final class EventReadingTest {
  private static final String HEAD =
      "event,what,line,at,until,count,note,item,quantity,due,needs\n";
  private static final int NOW = START + 600;

  @TempDir private Path path;

  private static Plan plan() {
    Lot lot = new Lot("I1", "L1", "B1", 500, START, OptionalInt.empty(), LotStatus.USABLE, "");
    Problem problem =
        new SmallPlant()
            .stock(List.of(lot), List.of())
            .job(job("1").on("P1", "M1", 100))
            .job(job("2").on("P2", "M2", 100))
            .unplaced(new Unplaced("3", "1", "ITEM", 5, "on hold: x", "lift it"))
            .build();
    return new Plan(
        new Head("1", "", 0, Map.of(), new Settings(0, 1, 1), List.of(), false),
        problem,
        List.of(),
        List.of(),
        List.of(),
        problem.unplaced(),
        List.of(),
        new Figures(0, 1, 0, 0, 0, 0, 0, Map.of()));
  }

  private EventReading.Result read(String... rows) {
    try {
      Files.writeString(path.resolve("orders.csv"), "order,item,quantity,due\n1,A,1,2026-12-01\n");
      Files.writeString(path.resolve("presses.csv"), "press,orientation\nP1,vertical\n");
      Files.writeString(path.resolve("molds.csv"), "mold,makes,live_cavities\nM1,A,1\n");
      Path file = path.resolve("events.csv");
      Files.writeString(file, HEAD + String.join("\n", rows) + "\n");
      Folder folder = FolderReader.read(path);
      assertThat(folder.findings()).noneMatch(f -> f.file().equals("events.csv"));
      EventsFile.Reading reading = EventsFile.read(file, folder);
      EventReading.Result result = EventReading.of(reading.rows(), plan(), NOW);
      List<InputError> all = new ArrayList<>(reading.findings());
      all.addAll(result.findings());
      return new EventReading.Result(result.events(), result.rush(), all);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static FloorEvent only(EventReading.Result result) {
    assertThat(result.findings()).isEmpty();
    assertThat(result.events()).hasSize(1);
    return result.events().get(0);
  }

  @Test
  void aPressIsAwayFromATimeToATime() {
    FloorEvent event = only(read("press-away,P1,,2026-11-30T08:00,2026-11-30T12:00,,oil,,,,"));
    assertThat(event.kind()).isEqualTo(EventKind.PRESS_AWAY);
    assertThat(event.fromMin()).isEqualTo(START + 480);
    assertThat(event.toMin()).isEqualTo(START + 720);
    assertThat(event.words()).isEqualTo("press-away P1 (oil)");
    assertThat(event.source()).hasToString("events.csv:2");
  }

  @Test
  void withoutUntilAMoldIsAwayToTheHorizon() {
    FloorEvent event = only(read("mold-away,M1,,2026-11-30T08:00,,,,,,,"));
    assertThat(event.toMin()).isEqualTo(plan().problem().plant().hours().endMin());
  }

  @Test
  void onePersonIsAwayUnlessTheRowSaysHowMany() {
    assertThat(only(read("person-away,setter,,2026-11-30T12:00,,,,,,,")).count()).isEqualTo(1);
    assertThat(only(read("person-away,operator,,2026-11-30T12:00,,3,,,,,")).count()).isEqualTo(3);
  }

  @Test
  void theOnlyLineOfAnOrderNeedsNotBeNamed() {
    assertThat(only(read("count-short,1,,,,40,,,,,")))
        .isEqualTo(
            new FloorEvent(
                new pressweek.data.files.At("events.csv", 2),
                EventKind.COUNT_SHORT,
                "1/1",
                NOW,
                NOW,
                40,
                ""));
    assertThat(only(read("dropped,3,,,,,,,,,")).what()).isEqualTo("3/1");
  }

  @Test
  void aRushOrderIsARowOfOrders() {
    EventReading.Result result = read("rush,9,,,,,quick,KNOB,250,2026-12-02,food|RoHS");
    assertThat(result.findings()).isEmpty();
    assertThat(result.rush())
        .singleElement()
        .satisfies(
            row -> {
              assertThat(row.id()).isEqualTo("9/1");
              assertThat(row.quantity()).isEqualTo(250);
              assertThat(row.needs()).containsExactly("food", "rohs");
              assertThat(row.note()).isEqualTo("quick");
            });
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "fire,P1,,2026-11-30T08:00,,,,,,,;event \"fire\" is not known; expected press-away",
        "press-away,,,2026-11-30T08:00,,,,,,,;what is empty; expected a value",
        "press-away,P1,,,,,,,,,;at is empty; expected a value",
        "press-away,P1,,gestern,,,,,,,;at \"gestern\" is not a date; expected yyyy-MM-dd",
        "press-away,P7,,2026-11-30T08:00,,,,,,,;press \"P7\" is not in the plan; expected one such as P1",
        "mold-away,M7,,2026-11-30T08:00,,,,,,,;mold \"M7\" is not in the plan",
        "person-away,Ada,,2026-11-30T08:00,,,,,,,;person \"Ada\" is not in the plan; expected one such as",
        "lot-held,L7,,,,,,,,,;lot \"L7\" is not in the plan; expected one such as L1",
        "dropped,7,,,,,,,,,;order \"7\" is not in the plan",
        "dropped,1,4,,,,,,,,;line 1/4 is not in the plan; expected 1/1",
        "press-away,P1,,2026-11-29T08:00,,,,,,,;at 2026-11-29 08:00 is outside the plan; expected a time from 2026-11-30 00:00",
        "press-away,P1,,2027-01-29T08:00,,,,,,,;at 2027-01-29 08:00 is outside the plan",
        "press-away,P1,,2026-11-30T08:00,2026-11-30T08:00,,,,,,;until 2026-11-30 08:00 is not after at 2026-11-30 08:00; expected a later time",
        "finished,1,,2026-11-30T18:00,,,,,,,;at 2026-11-30 18:00 is still to come; expected no later than 2026-11-30 10:00",
        "count-short,1,,,,100,,,,,;count 100 of line 1/1; expected fewer than the 100 pieces to make, or the event finished",
        "count-short,1,,,,,,,,,;count is empty; expected a value",
        "person-away,setter,,2026-11-30T08:00,,0,,,,,;count is 0; expected at least 1 person away",
        "rush,9,,,,,,KNOB,,2026-12-02,;quantity is empty; expected a value",
        "rush,1,,,,,,KNOB,5,2026-12-02,;line 1/1 is there already; expected an order line that is new"
      })
  void aBadRowIsSaid(String row, String said) {
    EventReading.Result result = read(row);
    assertThat(result.findings())
        .filteredOn(f -> f.severity() == Severity.ERROR)
        .singleElement()
        .satisfies(f -> assertThat(f.toString()).startsWith("events.csv:2: " + said));
    assertThat(result.events()).isEmpty();
    assertThat(result.rush()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "finished,1,,2026-11-30T08:00,,,,,,,;dropped,1,,,,,,,,,;1/1 is said to be dropped, but line 2 says finished",
        "finished,1,,2026-11-30T08:00,,,,,,,;finished,1,1,2026-11-30T09:00,,,,,,,;1/1 is said to be finished, but line 2 says finished",
        "on-hold,1,,,,,,,,,;count-short,1,,,,4,,,,,;1/1 is said to be count-short, but line 2 says on-hold"
      })
  void contradictionsAreSaid(String first, String second, String said) {
    EventReading.Result result = read(first, second);
    assertThat(result.sound()).isFalse();
    assertThat(result.findings().get(0).toString())
        .isEqualTo("events.csv:3: line " + said + "; expected one of the two");
  }

  @Test
  void allThatIsWrongIsSaidInOneGo() {
    EventReading.Result result =
        read("fire,P1,,,,,,,,,", "press-away,P7,,2026-11-30T08:00,,,,,,,", "dropped,7,,,,,,,,,");
    assertThat(result.findings()).hasSize(3);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "mold-away,M1,,2026-11-30T08:00,2026-11-30T09:00,,,,,,;mold M1 is back already",
        "lot-held,L1,,,,7,,,,,;count is not used for lot-held",
        "dropped,1,,,2026-12-01,,,,,,;until is not used for dropped",
        "dropped,1,,,,,,KNOB,5,,;item, quantity, due and needs are for rush only",
        "lot-held,L1,2,,,,,,,,;line is not used for lot-held"
      })
  void whatMakesNoDifferenceIsAWarning(String row, String said) {
    EventReading.Result result = read(row);
    assertThat(result.sound()).isTrue();
    assertThat(result.events()).hasSize(1);
    assertThat(result.findings())
        .singleElement()
        .satisfies(f -> assertThat(f.message()).startsWith(said));
  }

  @Test
  void anOrderOfSeveralLinesIsDroppedAsAWholeAndFinishedByTheLine() {
    Plan two = with(new Unplaced("1", "2", "ITEM", 5, "x", "y"));
    assertThat(new PlanThings(two).lines("1")).containsExactly("1/1", "1/2");
  }

  private static Plan with(Unplaced line) {
    Plan p = plan();
    return new Plan(
        p.head(),
        p.problem(),
        p.runs(),
        p.dismounts(),
        p.pulls(),
        List.of(line),
        p.unplacedCharges(),
        p.figures());
  }

  @Test
  void peopleAreThoseOfThePlan() {
    assertThat(new PlanThings(plan()).people()).containsExactly("setter", "operator");
    assertThat(Optional.of(plan().problem().plant().crew()).flatMap(c -> c.people())).isEmpty();
  }
}

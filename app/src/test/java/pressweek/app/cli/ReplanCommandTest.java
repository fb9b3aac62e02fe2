package pressweek.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pressweek.data.files.PlanFile;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;
import pressweek.data.problem.Unplaced;

/**
 * {@code replan} on the small plant: V1 runs 704/1 on Tuesday from 06:50 to 11:00, V2 waits for its
 * insert until 10:00, H1 runs 703/1 from 06:20 to 10:30.
 */
final class ReplanCommandTest {
  private static final Path SMALL = Path.of("../examples/quillback-small");
  private static final String HEAD = "event,what,line,at,until,count,note,item,quantity,due\n";
  private static final String TUESDAY = "2026-12-01T09:30+01:00";

  @TempDir private Path before;
  @TempDir private Path out;

  @BeforeEach
  void plan() {
    Ran ran = Ran.pressweek("plan", SMALL.toString(), "--out", before.toString(), "--steps", "100");
    assertThat(ran.exitCode()).isEqualTo(ExitCode.UNPLACED);
  }

  private Ran replan(String now, String... rows) throws IOException {
    Path events = out.resolve("events.csv");
    Files.writeString(events, HEAD + String.join("\n", rows) + "\n");
    return run("--now", now, "--events", events.toString());
  }

  private Ran run(String... more) {
    List<String> args =
        new ArrayList<>(
            List.of(
                "replan",
                SMALL.toString(),
                before.resolve("plan.json").toString(),
                "--out",
                out.resolve("new").toString(),
                "--steps",
                "100"));
    args.addAll(Arrays.asList(more));
    return Ran.pressweek(args.toArray(String[]::new));
  }

  private static Plan read(Path folder) throws IOException {
    return PlanFile.read(folder.resolve("plan.json")).plan().orElseThrow();
  }

  private Plan fresh() throws IOException {
    return read(out.resolve("new"));
  }

  private List<String> moves() throws IOException {
    return Files.readAllLines(out.resolve("new/moves.csv"));
  }

  @Test
  void withoutEventsAtItsOwnStartAPlanIsReplannedToItself() throws IOException {
    Ran ran = run("--now", "2026-11-30T06:00+01:00");
    assertThat(ran.exitCode()).isEqualTo(ExitCode.UNPLACED);
    assertThat(fresh().runs()).isEqualTo(read(before).runs());
    assertThat(moves()).hasSize(1);
    assertThat(ran.out()).contains("8 runs: 8 stay, 0 moved, 0 new");
    assertThat(fresh().head().replaces()).isEqualTo("2026-W49/1");
    assertThat(fresh().head().number()).isEqualTo("2026-W49/2");
  }

  @Test
  void aPressThatBreaksMovesItsRunAndNothingElse() throws IOException {
    Ran ran = replan(TUESDAY, "press-away,V1,,2026-12-01T08:00,2026-12-02T06:00,,hydraulics,,,");
    assertThat(ran.exitCode()).isEqualTo(ExitCode.UNPLACED);
    assertThat(ran.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
    assertThat(moves()).hasSize(2);
    assertThat(moves().get(1))
        .startsWith("moved,704,1,ST50/M8-T/PP-BLK/ZN,R004,V1,2026-12-01T06:50+01:00,V1,")
        .contains("press-away V1 (hydraulics), events.csv:2");
    assertThat(ran.out()).contains("moved 704/1").contains("Avoidable cost from now on");
    assertThat(ran.err()).doesNotContain("note:");
  }

  @Test
  void everyLineOfThePlanIsInTheNewOneOrNamed() throws IOException {
    Ran ran =
        replan(
            TUESDAY,
            "dropped,706,,,,,cancelled,,,",
            "finished,703,,2026-12-01T09:00,,,,,,",
            "on-hold,704,,,,,print is wrong,,,");
    assertThat(ran.exitCode()).isEqualTo(ExitCode.UNPLACED);
    Set<String> lines = new HashSet<>(read(before).runs().stream().map(Run::job).toList());
    lines.addAll(read(before).unplaced().stream().map(Unplaced::id).toList());
    fresh().runs().stream().map(Run::job).forEach(lines::remove);
    fresh().unplaced().stream().map(Unplaced::id).forEach(lines::remove);
    assertThat(lines)
        .containsExactlyInAnyOrder("701/1", "702/1", "705/1", "707/1", "708/1", "703/1", "706/1");
    assertThat(moves())
        .anyMatch(m -> m.startsWith("dropped,706,1,"))
        .anyMatch(m -> m.startsWith("finished,703,1,"))
        .anyMatch(m -> m.startsWith("unplaced,704,1,") && m.contains("on hold: print is wrong"));
    assertThat(ran.out()).contains("5 done");
  }

  @Test
  void aRushOrderIsDecodedByTheFolder() throws IOException {
    replan(
        TUESDAY,
        "rush,790,,,,,,KB32/U516-B/PP-BLK/ZN,200,2026-12-02",
        "rush,791,,,,,,KB32/XX/PP-BLK/ZN,200,2026-12-02");
    assertThat(moves()).anyMatch(m -> m.startsWith("new,790,1,") && m.contains("events.csv:2"));
    assertThat(fresh().runs()).anyMatch(r -> r.job().equals("790/1") && r.press().equals("H1"));
    assertThat(fresh().unplaced())
        .anySatisfy(
            u -> {
              assertThat(u.id()).isEqualTo("791/1");
              assertThat(u.reason()).contains("XX");
            });
  }

  @Test
  void theSameStepsGiveTheSamePlan() throws IOException {
    String row = "press-away,H1,,2026-12-01T08:00,2026-12-01T12:00,,,,,";
    replan(TUESDAY, row);
    List<Run> first = fresh().runs();
    replan(TUESDAY, row);
    assertThat(fresh().runs()).isEqualTo(first);
  }

  @Test
  void aRepairedPlanIsAuditedAndRepairedAgain() throws IOException {
    replan(TUESDAY, "lot-held,L-103,,,,,rust,,,");
    Path plan = out.resolve("new/plan.json");
    Ran audit = Ran.pressweek("audit", SMALL.toString(), plan.toString());
    assertThat(audit.exitCode()).isEqualTo(ExitCode.DONE);
    assertThat(audit.err()).contains("made by replan");
    Ran again =
        Ran.pressweek(
            "replan",
            SMALL.toString(),
            plan.toString(),
            "--now",
            "2026-12-01T12:00+01:00",
            "--out",
            out.resolve("third").toString(),
            "--steps",
            "50");
    assertThat(again.exitCode()).isEqualTo(ExitCode.UNPLACED);
    assertThat(read(out.resolve("third")).head().replaces()).isEqualTo("2026-W49/2");
  }

  @Test
  void aPromiseThatCannotBeKeptIsGivenUp() throws IOException {
    Ran ran =
        replan("2026-11-30T06:00+01:00", "press-away,V2,,2026-11-30T06:00,2026-11-30T12:00,,,,,");
    assertThat(ran.exitCode()).isEqualTo(ExitCode.UNPLACED);
    assertThat(ran.out()).contains("708/1").contains("it is given up");
    assertThat(fresh().problem().floor().promises()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "fire,V1,,2026-12-01T08:00,,,,,,",
        "press-away,V9,,2026-12-01T08:00,,,,,,",
        "press-away,V1,,2026-11-01T08:00,,,,,,",
        "press-away,V1,,2026-12-01T08:00,2026-12-01T07:00,,,,,",
        "finished,703,,2026-12-01T10:00,,,,,,",
        "dropped,999,,,,,,,,",
        "count-short,703,,,,960,,,,",
        "rush,701,,,,,,KB32/M8-B/PP-BLK/ZN,5,2026-12-02",
        "rush,790,,,,,,KB32/M8-B/PP-BLK/ZN,many,2026-12-02",
        "press-away,V1"
      })
  void aBadEventIsSaidAndNothingIsWritten(String row) throws IOException {
    Ran ran = replan(TUESDAY, row);
    assertThat(ran.exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(ran.err())
        .contains("events.csv:2: ")
        .contains("expected")
        .contains("no plan: 1 error")
        .doesNotContain("Exception");
    assertThat(out.resolve("new")).doesNotExist();
  }

  @Test
  void badArgumentsAreSaid() throws IOException {
    assertThat(run("--now", "2026-12-11T09:30+01:00").err())
        .contains("is outside plan 2026-W49/1; expected a time from 2026-11-30T06:00:00+01:00");
    assertThat(run("--now", "noon").exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(run("--now", TUESDAY, "--events", "nowhere.csv").err())
        .contains("nowhere.csv is not a file");
    assertThat(run("--now", TUESDAY, "--steps", "-1").exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    Ran ran = Ran.pressweek("replan", SMALL.toString(), out.resolve("none.json").toString());
    assertThat(ran.exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(ran.err()).contains("no such file; expected a plan.json");
  }
}

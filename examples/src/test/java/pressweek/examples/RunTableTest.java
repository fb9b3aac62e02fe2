package pressweek.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RunTableTest {
  @TempDir private Path folder;

  private RunTable open() throws IOException {
    return RunTable.open(
        folder.resolve("new").resolve("runs.csv"), List.of("case", "seed"), List.of("value"));
  }

  @Test
  void aFinishedRunIsKnownWhenTheTableIsOpenedAgain() throws IOException {
    open().add("A", 1, 2.5);
    RunTable again = open();
    assertThat(again.isDone("A", 1)).isTrue();
    assertThat(again.isDone("A", 2)).isFalse();
    assertThat(again.isDone("B", 1)).isFalse();
    assertThat(again.rows()).hasSize(1);
    assertThat(again.rows().get(0).number("value")).isEqualTo(2.5);
  }

  @Test
  void aRowThatWasBrokenOffIsMadeAgain() throws IOException {
    open().add("A", 1, 2.5);
    Path file = folder.resolve("new").resolve("runs.csv");
    Files.writeString(file, "B,1,12", StandardOpenOption.APPEND);
    RunTable again = open();
    assertThat(again.isDone("B", 1)).isFalse();
    again.add("B", 1, 125);
    assertThat(open().rows().get(1).number("value")).isEqualTo(125);
  }

  @Test
  void everyRowSaysOnWhatMachineAndIsNoWiderForIt() throws IOException {
    RunTable table = open();
    table.add("A", 1, 2);
    table.add("B", 1, 3);
    assertThat(table.machines(RunTableTest.class))
        .hasSizeBetween(2, 3)
        .contains(ResultsFile.machine(), "Written by `pressweek.examples.RunTableTest`.");
  }

  @Test
  void aTableOfOtherColumnsIsRefused() throws IOException {
    Path file = folder.resolve("runs.csv");
    Files.writeString(file, "case,value\nA,1\n");
    assertThatThrownBy(() -> RunTable.open(file, List.of("case"), List.of("cost")))
        .isInstanceOf(IOException.class)
        .hasMessageContaining("expected case,cost,load,machine");
  }
}

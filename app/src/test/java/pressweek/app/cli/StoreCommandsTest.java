package pressweek.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pressweek.app.store.Store;
import pressweek.app.store.StoreHold;
import pressweek.app.store.StoreTrouble;
import pressweek.app.store.row.Change;

class StoreCommandsTest {
  private static final String SMALL = "../examples/quillback-small";

  @TempDir private Path folder;

  private String store() {
    return folder.resolve("kept.db").toString();
  }

  private void fill(String what) throws StoreTrouble {
    try (Store store = Store.open(store())) {
      store.history().add(what, "week", Change.of("Bea", Instant.EPOCH));
    }
  }

  @Test
  void aBackUpComesBack() throws StoreTrouble {
    fill("before");
    String file = folder.resolve("back-up.db").toString();
    Ran written = Ran.pressweek("back-up", SMALL, file, "--store", store());
    assertThat(written.exitCode()).isZero();
    assertThat(Ran.pressweek("back-up", SMALL, file, "--store", store()).exitCode()).isEqualTo(2);
    fill("after");
    Ran restored = Ran.pressweek("restore", SMALL, file, "--store", store());
    assertThat(restored.exitCode()).as(restored.err()).isZero();
    assertThat(restored.out()).contains("what was there is");
    try (Store store = Store.open(store())) {
      assertThat(store.history().latest(10)).extracting(e -> e.what()).containsExactly("before");
    }
  }

  @Test
  void aStoreThatIsNotThereIsSaid() {
    Ran ran = Ran.pressweek("back-up", SMALL, folder.resolve("b").toString(), "--store", store());
    assertThat(ran.exitCode()).isEqualTo(2);
    assertThat(ran.err()).contains("There is no file");
    assertThat(Files.exists(Path.of(store()))).isFalse();
  }

  @Test
  void whatIsNoBackUpIsRefused() throws IOException, StoreTrouble {
    fill("before");
    Path text = Files.writeString(folder.resolve("text"), "not a database, just words");
    Ran ran = Ran.pressweek("restore", SMALL, text.toString(), "--store", store());
    assertThat(ran.exitCode()).isEqualTo(2);
    assertThat(ran.err()).isNotBlank().doesNotContain("Exception");
  }

  @Test
  void aStoreThatIsOpenIsNotOpenedAgain() throws StoreTrouble {
    try (StoreHold first = StoreHold.of(Path.of(store()), "process 4711")) {
      first.say("process 4711, with its pages at http://localhost:8086/");
      Ran ran = Ran.pressweek("open", SMALL, "--port", "0", "--store", store());
      assertThat(ran.exitCode()).isEqualTo(2);
      assertThat(ran.err()).startsWith(store() + " is open already, by this very program.");
    }
    assertThat(Files.exists(Path.of(store()))).isFalse();
  }

  @Test
  void openingRefusesWhatDoesNotFitTogether() {
    assertThat(Ran.pressweek("open", "nowhere").err()).contains("nowhere is not a folder");
    assertThat(Ran.pressweek("open", SMALL, "--port", "70000").err()).contains("--port is 70000");
    assertThat(Ran.pressweek("open", SMALL, "--seconds", "0").err()).contains("--seconds is 0");
    assertThat(Ran.pressweek("open", SMALL, "--name", "x").err()).contains("go with --listen");
    assertThat(Ran.pressweek("open", SMALL, "--listen", "0.0.0.0").err()).contains("wants --name");
    assertThat(Ran.pressweek("open", SMALL, "--listen", "0.0.0.0", "--name", "x").err())
        .contains("passwords do not go over a network unprotected");
    assertThat(
            Ran.pressweek(
                    "open", SMALL, "--listen", "0.0.0.0", "--name", "x", "--certificate", "no")
                .err())
        .contains("--certificate no is not a file");
  }
}

package pressweek.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StoreHoldTest {
  @TempDir private Path folder;

  private Path store;

  @BeforeEach
  void name() {
    store = folder.resolve("deep").resolve("plant.pressweek");
  }

  private StoreTrouble refused() {
    return catchThrowableOfType(
        StoreTrouble.class, () -> StoreHold.of(store, "the second").close());
  }

  private Process holder() throws IOException {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    return new ProcessBuilder(
            java,
            "-XX:TieredStopAtLevel=1",
            "-cp",
            System.getProperty("java.class.path"),
            StoreHolder.class.getName(),
            store.toString())
        .redirectError(ProcessBuilder.Redirect.INHERIT)
        .start();
  }

  @Test
  void whoComesSecondIsToldWhichProcessHasIt() throws IOException, InterruptedException {
    Process first = holder();
    try {
      assertThat(first.inputReader().readLine()).isEqualTo("held");
      StoreTrouble trouble = refused();
      assertThat(trouble.kind()).isEqualTo(StoreTrouble.Kind.LOCKED);
      assertThat(trouble)
          .hasMessageStartingWith(
              store.toAbsolutePath() + " is open already, by process " + first.pid() + ".");
    } finally {
      first.destroyForcibly().waitFor();
    }
  }

  @Test
  void whatCouldNotBeHeldIsNotTakenForHeld() throws IOException, StoreTrouble {
    Path inTheWay = store.resolveSibling(store.getFileName() + StoreHold.BESIDE);
    Files.createDirectories(inTheWay);
    assertThat(refused().kind()).isNotEqualTo(StoreTrouble.Kind.LOCKED);
    assertThat(refused().kind()).isNotEqualTo(StoreTrouble.Kind.LOCKED);
    Files.delete(inTheWay);
    StoreHold.of(store, "the first that could").close();
  }

  @Test
  void whatAKilledProcessHeldIsFree() throws IOException, InterruptedException, StoreTrouble {
    Process first = holder();
    try {
      assertThat(first.inputReader().readLine()).isEqualTo("held");
    } finally {
      first.destroyForcibly().waitFor();
    }
    try (StoreHold second = StoreHold.of(store, "the second")) {
      second.say("the second, with its pages open");
      assertThat(refused()).hasMessageContaining("by this very program");
    }
    StoreHold.of(store, "the third").close();
  }

  @Test
  void anotherStoreIsNotHeld() throws StoreTrouble {
    try (StoreHold one = StoreHold.of(store, "one");
        StoreHold other = StoreHold.of(folder.resolve("other.pressweek"), "other")) {
      one.say("still one");
      other.say("still the other");
      assertThat(refused()).isNotNull();
    }
  }
}

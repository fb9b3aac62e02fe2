package pressweek.app.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SqliteLibraryTest {
  @TempDir Path folder;

  @Test
  void onlyWhatAKilledProcessLeftIsSwept() throws IOException {
    Path left = Files.createFile(folder.resolve("sqlite-3.53-abc-libsqlitejdbc.so"));
    Path fresh = Files.createFile(folder.resolve("sqlite-3.53-def-libsqlitejdbc.so"));
    Path other = Files.createFile(folder.resolve("notes.txt"));
    FileTime anHourBefore =
        FileTime.from(Files.getLastModifiedTime(fresh).toInstant().minus(Duration.ofHours(1)));
    Files.setLastModifiedTime(left, anHourBefore);
    Files.setLastModifiedTime(other, anHourBefore);

    SqliteLibrary.sweep(folder);
    assertThat(folder.toFile().list())
        .containsExactlyInAnyOrder(fresh.getFileName().toString(), "notes.txt");
  }
}

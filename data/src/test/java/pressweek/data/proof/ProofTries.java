package pressweek.data.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import pressweek.data.files.Folder;
import pressweek.data.files.FolderReader;
import pressweek.data.guide.Guide;
import pressweek.data.guide.GuideReader;
import pressweek.data.week.Week;

/** Guides in a folder of their own, proved. */
abstract class ProofTries {
  @TempDir Path path;

  Folder folder(String guide) {
    try {
      Files.writeString(path.resolve("guide.json"), guide);
      return FolderReader.read(path);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static Guide guide(Folder folder) {
    GuideReader.Result result = Week.guide(folder);
    assertThat(result.findings()).isEmpty();
    return result.guide().orElseThrow();
  }

  Proof proof(String guide) {
    return GuideProof.of(guide(folder(guide)), GuideProof.SEED);
  }

  List<String> findings(String guide) {
    return proof(guide).findings().stream().map(Finding::toString).toList();
  }

  List<String> plantFindings(String guide) {
    Folder folder = folder(guide);
    return GuideProof.of(guide(folder), folder, GuideProof.SEED).findings().stream()
        .map(Finding::toString)
        .toList();
  }

  void file(String name, String... lines) throws IOException {
    Files.writeString(path.resolve(name), String.join("\n", lines) + "\n");
  }

  static Folder example(String name) {
    try {
      return FolderReader.read(Path.of("../examples/" + name));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}

package pressweek.examples.speed;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import pressweek.data.files.Folder;
import pressweek.data.files.FolderReader;
import pressweek.data.guide.CodeDraw;
import pressweek.data.guide.Drawn;
import pressweek.data.guide.Family;
import pressweek.data.guide.Guide;
import pressweek.data.guide.Wish;
import pressweek.data.week.Week;
import pressweek.data.words.WordReader;

/**
 * How fast codes and words are read by the demo plant's guide, on one core: thousands of codes
 * drawn at random, and the descriptions of {@code examples/words}.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 4)
@Measurement(iterations = 5, time = 3)
public class CodeSpeed {
  private static final int CODES = 4_000;

  private final Guide guide = guide(Path.of("quillback-week"));
  private final WordReader reader = new WordReader(guide);
  private final Supplier<String> codes = round(codes(guide));
  private final Supplier<String> words = round(Descriptions.all());

  /** The guide of a folder below {@code examples}. */
  static Guide guide(Path path) {
    try {
      Folder folder = FolderReader.read(path);
      return Week.guide(folder).guide().orElseThrow();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Good codes of all families, drawn with a fixed seed. */
  static List<String> codes(Guide guide) {
    CodeDraw draw = new CodeDraw(guide, 1);
    List<String> drawn = new ArrayList<>();
    while (drawn.size() < CODES) {
      for (Family family : guide.families()) {
        Optional<Drawn> code = draw.good(family, Wish.ANY);
        code.ifPresent(one -> drawn.add(one.code()));
      }
    }
    return drawn;
  }

  private static Supplier<String> round(List<String> texts) {
    int[] next = {0};
    return () -> texts.get(next[0] = (next[0] + 1) % texts.size());
  }

  /** A code to its attributes. */
  @Benchmark
  public Object decode() {
    return guide.decode(codes.get());
  }

  /** A code to the guide's own spelling: decoded and written anew. */
  @Benchmark
  public Object canonical() {
    return guide.encoder().canonical(codes.get());
  }

  /** A customer's description to ranked readings. */
  @Benchmark
  public Object words() {
    return reader.read(words.get());
  }
}

package pressweek.data.proof;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pressweek.data.files.InputFile;
import pressweek.data.guide.CodeDraw;
import pressweek.data.guide.CodeSpace;
import pressweek.data.guide.Drawn;
import pressweek.data.guide.Family;
import pressweek.data.guide.Guide;
import pressweek.data.guide.Quest;
import pressweek.data.guide.Wish;
import pressweek.data.proof.Finding.Severity;

/** What all trials of one guide share: its codes, a pool of them, and what was found. */
final class Bench {
  /** Random codes a family. */
  static final int CODES = 2_000;

  /** Random codes a family of which the rules need not think well. */
  private static final int LOOSE_CODES = 500;

  private final Guide guide;
  private final CodeDraw draw;
  private final Map<Family, List<Drawn>> good = new IdentityHashMap<>();
  private final Map<Family, List<Drawn>> loose = new IdentityHashMap<>();
  private final List<Finding> findings = new ArrayList<>();
  private int open;

  Bench(Guide guide, long seed) {
    this.guide = guide;
    this.draw = new CodeDraw(guide, seed);
    for (Family family : guide.families()) {
      List<Drawn> codes = new ArrayList<>();
      int misses = 0;
      while (codes.size() < CODES && misses < CODES / 20) {
        Optional<Drawn> drawn = draw.good(family, new Wish(List.of(), false, true));
        drawn.ifPresent(codes::add);
        misses += drawn.isPresent() ? 0 : 1;
      }
      good.put(family, codes);
      List<Drawn> any = new ArrayList<>();
      for (int i = 0; i < LOOSE_CODES; i++) {
        any.add(draw.any(family));
      }
      loose.put(family, any);
    }
  }

  Guide guide() {
    return guide;
  }

  CodeDraw draw() {
    return draw;
  }

  CodeSpace space(Family family) {
    return draw.space(family);
  }

  /** Good codes of a family; none when it seems to have none. */
  List<Drawn> good(Family family) {
    return good.getOrDefault(family, List.of());
  }

  /** Codes of a family which the rules may refuse. */
  List<Drawn> loose(Family family) {
    return loose.getOrDefault(family, List.of());
  }

  /**
   * What a search answers.
   *
   * @param drawn a code
   * @param certain true when there is none if none is given
   */
  record Answer(Optional<Drawn> drawn, boolean certain) {
    /** True when there certainly is no such code. */
    boolean none() {
      return drawn.isEmpty() && certain;
    }
  }

  /** Looks for a code of one of the families; a question without an answer is counted. */
  Answer find(List<Family> families, Quest quest) {
    boolean certain = true;
    for (Family family : families) {
      CodeSpace.Found found = space(family).find(quest);
      if (found.drawn().isPresent()) {
        return new Answer(found.drawn(), true);
      }
      certain &= found.settled();
    }
    open += certain ? 0 : 1;
    return new Answer(Optional.empty(), certain);
  }

  void error(int line, String message) {
    add(Severity.ERROR, InputFile.GUIDE.fileName(), line, message);
  }

  void warning(int line, String message) {
    add(Severity.WARNING, InputFile.GUIDE.fileName(), line, message);
  }

  void note(int line, String message) {
    add(Severity.NOTE, InputFile.GUIDE.fileName(), line, message);
  }

  void add(Severity severity, String file, int line, String message) {
    Finding finding = new Finding(severity, file, line, message);
    if (!findings.contains(finding)) {
      findings.add(finding);
    }
  }

  /** What was found, those of the guide first, by lines. */
  List<Finding> findings() {
    Comparator<Finding> guideFirst =
        Comparator.comparing(f -> !f.file().equals(InputFile.GUIDE.fileName()));
    return findings.stream()
        .sorted(guideFirst.thenComparing(Finding::file).thenComparingInt(Finding::line))
        .toList();
  }

  int open() {
    return open;
  }

  /** The first few of a list: {@code P1, P2, P3 and 5 more}. */
  static String few(List<String> all) {
    int most = 8;
    return all.size() <= most
        ? String.join(", ", all)
        : String.join(", ", all.subList(0, most)) + " and " + (all.size() - most) + " more";
  }
}

package pressweek.reports.sample;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import pressweek.data.problem.Bringing;
import pressweek.data.problem.Declaration;
import pressweek.data.problem.Kitting;
import pressweek.data.problem.Lot;
import pressweek.data.problem.LotPaper;
import pressweek.data.problem.LotStatus;
import pressweek.data.problem.Recipe;
import pressweek.data.problem.Tip;

/** What kits of the tests need to know. */
public final class SampleKitting {
  public final List<Declaration> declarations = new ArrayList<>();
  public final List<Tip> tips = new ArrayList<>();
  public final List<Lot> resinLots = new ArrayList<>();

  /** Adds a declaration; it expires at a local time, never when that is empty. */
  public SampleKitting declared(String what, String need, String expires) {
    OptionalInt min =
        expires.isEmpty() ? OptionalInt.empty() : OptionalInt.of(SampleWeek.at(expires));
    String source = "records.csv:" + (declarations.size() + 2);
    declarations.add(
        new Declaration(
            source, what, need, Optional.of(LocalDate.of(2026, 2, 10)), min, "6(c)", "letter"));
    return this;
  }

  /** Adds a lot of a resin or masterbatch. */
  public SampleKitting lot(String what, String id, String bin, LotStatus status) {
    resinLots.add(new Lot(what, id, bin, 100, 0, OptionalInt.empty(), status, ""));
    return this;
  }

  /** With masterbatch MB-1 at 4 % for black, and a paper for lot L1 of insert S0825. */
  public Kitting kitting() {
    return new Kitting(
        List.of(),
        declarations,
        List.of(new LotPaper("S0825", "L1", "plating 12")),
        tips,
        List.of(new Recipe("", "BLK", "MB-1", OptionalDouble.of(4))),
        resinLots,
        Map.of("V2", "D1"),
        Bringing.BY_PIECES);
  }
}

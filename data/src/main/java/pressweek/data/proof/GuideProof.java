package pressweek.data.proof;

import java.util.List;
import pressweek.data.files.Folder;
import pressweek.data.guide.Drawn;
import pressweek.data.guide.Family;
import pressweek.data.guide.Guide;

/**
 * Proves a guide: writes codes from each of its symbols, from pairs of neighbours and at random,
 * reads them back, and looks for what can be told from no code. Whatever it calls ambiguous,
 * unreadable or impossible it has seen; it never guesses.
 */
public final class GuideProof {
  /** Seed of the random codes when none is asked for. */
  public static final long SEED = 1;

  private GuideProof() {}

  /** What is wrong with a guide by itself. */
  public static Proof of(Guide guide, long seed) {
    Bench bench = new Bench(guide, seed);
    int written = prove(bench);
    return new Proof(bench.findings(), written, bench.open(), seed);
  }

  /** What is wrong with a guide, and which of its symbols have nothing behind them in a folder. */
  public static Proof of(Guide guide, Folder folder, long seed) {
    Bench bench = new Bench(guide, seed);
    int written = prove(bench);
    new PlantTrial(bench, folder).run();
    return new Proof(bench.findings(), written, bench.open(), seed);
  }

  private static int prove(Bench bench) {
    ReadBack readBack = new ReadBack(bench.guide());
    SymbolTrial symbols = new SymbolTrial(bench, readBack);
    symbols.run();
    new Neighbours(bench, readBack).run();
    for (Family family : bench.guide().families()) {
      for (Drawn drawn : bench.good(family)) {
        readBack.read(new ReadBack.Trial(drawn, List.of()));
      }
    }
    readBack.tell(bench, symbols.neverRead());
    new TableTrial(bench).run();
    new FillTrial(bench).run();
    Vocabulary vocabulary = new Vocabulary(bench.guide());
    new RuleTrial(bench, vocabulary).run();
    new WordTrial(bench, vocabulary).run();
    return readBack.written();
  }
}

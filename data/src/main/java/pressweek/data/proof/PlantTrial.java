package pressweek.data.proof;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import pressweek.data.files.BomRow;
import pressweek.data.files.Folder;
import pressweek.data.files.InputFile;
import pressweek.data.files.MoldRow;
import pressweek.data.files.OrderRow;
import pressweek.data.guide.Decoded;
import pressweek.data.guide.Guide;
import pressweek.data.problem.Item;
import pressweek.data.proof.Finding.Severity;

/** Looks for symbols behind which the plant's other files have nothing. */
final class PlantTrial {
  private final Bench bench;
  private final Guide guide;
  private final Folder folder;
  private final Map<List<String>, Lack> lacks = new LinkedHashMap<>();

  /**
   * Symbols of one field that lack the same.
   *
   * @param line line of the first of them
   * @param symbols the symbols
   * @param number true for numbers, of which a plant need not have each
   */
  private record Lack(int line, Set<String> symbols, boolean number) {}

  PlantTrial(Bench bench, Folder folder) {
    this.bench = bench;
    this.guide = bench.guide();
    this.folder = folder;
  }

  void run() {
    Set<String> heads = heads();
    Set<String> molds = new HashSet<>();
    folder.floor().molds().forEach(row -> molds.add(row.mold()));
    Set<String> resins = new HashSet<>();
    folder.materials().resins().forEach(row -> resins.add(row.resin()));
    Set<String> colours = new HashSet<>();
    folder.materials().colours().forEach(row -> colours.add(row.colour()));
    InsertRack rack = new InsertRack(folder.materials().inserts());
    for (Saying saying : Saying.all(bench)) {
      listed(saying, Item.HEAD, heads, InputFile.MOLDS);
      listed(saying, Item.MOLD, molds, InputFile.MOLDS);
      listed(saying, Item.RESIN, resins, InputFile.RESINS);
      listed(saying, Item.COLOUR, colours, InputFile.COLOURS);
      if (folder.has(InputFile.INSERTS) && !rack.has(saying.sets())) {
        lack(saying, InputFile.INSERTS, rack.asked(saying.sets()));
      }
    }
    lacks.forEach(this::tell);
    specials();
  }

  /** The heads that molds make, by themselves or in whole item codes. */
  private Set<String> heads() {
    Set<String> heads = new HashSet<>();
    for (MoldRow mold : folder.floor().molds()) {
      for (String makes : mold.use().makes()) {
        heads.add(key(makes));
        Decoded decoded = guide.decode(makes);
        if (decoded.good()) {
          decoded.item().value(Item.HEAD).ifPresent(head -> heads.add(key(head)));
        }
      }
    }
    return heads;
  }

  private String key(String text) {
    return guide.ignoreCase() ? text.toUpperCase(Locale.ROOT) : text;
  }

  private void listed(Saying saying, String attribute, Set<String> known, InputFile file) {
    String value = saying.sets().getOrDefault(attribute, "");
    boolean there = known.contains(value) || known.contains(key(value));
    if (!value.isEmpty() && folder.has(file) && !there) {
      lack(saying, file, attribute);
    }
  }

  private void lack(Saying saying, InputFile file, String what) {
    List<String> key = List.of(saying.where(), file.fileName(), what);
    lacks
        .computeIfAbsent(
            key, k -> new Lack(saying.line(), new TreeSet<>(byNumber()), saying.number()))
        .symbols()
        .add(saying.symbol());
  }

  /** Numbers by their size, which is their length first. */
  private static Comparator<String> byNumber() {
    Comparator<String> byLength =
        Comparator.comparingInt(text -> text.matches("\\d+") ? text.length() : 0);
    return byLength.thenComparing(text -> text);
  }

  private void tell(List<String> key, Lack lack) {
    String symbols = Bench.few(new ArrayList<>(lack.symbols()));
    String file = key.get(1);
    String lacking =
        file.equals(InputFile.MOLDS.fileName())
            ? "no mold in %s makes %s".formatted(file, symbols)
            : "no row of %s has the %s of %s".formatted(file, key.get(2), symbols);
    bench.add(
        lack.number() ? Severity.NOTE : Severity.WARNING,
        InputFile.GUIDE.fileName(),
        lack.line(),
        key.get(0) + ": " + lacking);
  }

  /** Orders of specials that have no record of their own. */
  private void specials() {
    Set<String> recorded = new HashSet<>();
    for (BomRow row : folder.materials().bom()) {
      recorded.add(key(row.item()));
    }
    for (OrderRow order : folder.demand().orders()) {
      Decoded decoded = guide.decode(order.item());
      if (decoded.good() && decoded.special() && !recorded.contains(key(order.item()))) {
        bench.add(
            Severity.WARNING,
            order.at().file(),
            order.at().line(),
            "special \"%s\" has no row in %s".formatted(order.item(), InputFile.BOM.fileName()));
      }
    }
  }
}

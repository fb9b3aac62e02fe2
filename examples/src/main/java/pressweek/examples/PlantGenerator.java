package pressweek.examples;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Draws whole plants, for benchmarks and for tests that want many. A drawn plant has no guide: its
 * orders name insert, resin and colour, and its molds the items that they make. It has a mold for
 * every four lines (the popular ones twice), runs and changes for about 90 % of its press hours,
 * food-grade work, inserts in lots and on the way, presses that are running, molds and presses that
 * are away, and runs promised for Monday. All figures are invented; a size and a seed give the same
 * bytes on every machine.
 *
 * <pre>
 * {@code java -cp examples/target/classes pressweek.examples.PlantGenerator --jobs 150 --presses 14 --seed 1 --out /tmp/plant}
 * </pre>
 */
public final class PlantGenerator {
  private static final System.Logger LOG = System.getLogger(PlantGenerator.class.getName());
  private static final String USAGE = "--jobs N --presses P --seed S --out DIR";

  private PlantGenerator() {}

  /** Writes a plant as told by the arguments; exit status 2 when they do not read. */
  public static void main(String[] args) throws IOException {
    try {
      Map<String, String> given = options(args);
      PlantSize size = new PlantSize(number(given, "--jobs"), number(given, "--presses"));
      write(Path.of(text(given, "--out")), size, number(given, "--seed"));
    } catch (IllegalArgumentException e) {
      LOG.log(System.Logger.Level.ERROR, "{0}; expected {1}", e.getMessage(), USAGE);
      System.exit(2);
    }
  }

  /**
   * Draws a plant and writes its folder. The folder is made; files of the same names in it are
   * overwritten.
   *
   * @param folder where to
   * @param size how large
   * @param seed which of all plants of that size
   * @throws IOException when it cannot be written
   */
  public static void write(Path folder, PlantSize size, long seed) throws IOException {
    Files.createDirectories(folder);
    for (Map.Entry<String, String> file : files(size, seed).entrySet()) {
      Files.writeString(folder.resolve(file.getKey()), file.getValue());
    }
  }

  /** The files of a drawn plant by name. */
  static Map<String, String> files(PlantSize size, long seed) {
    Draw draw = new Draw(seed);
    List<DrawnPress> presses = PressSheet.draw(size);
    List<DrawnInsert> inserts = InsertSheet.draw(draw.fork(), size);
    List<DrawnHead> heads = new MoldSheet(draw.fork(), size, presses, inserts).heads();
    OrderSheet orders = new OrderSheet(draw.fork(), size);
    List<DrawnLine> lines = orders.lines(heads);
    StockSheet stock = new StockSheet(draw.fork(), lines);
    Map<String, String> files = new LinkedHashMap<>();
    files.put("plant.json", PlantSheet.json(size, seed));
    files.put("orders.csv", orders.csv(lines));
    files.put("presses.csv", PressSheet.csv(presses));
    files.put("molds.csv", MoldSheet.csv(heads, itemsByHead(lines)));
    files.put("resins.csv", ResinSheet.resinCsv());
    files.put("colours.csv", ResinSheet.colourCsv());
    files.put("inserts.csv", InsertSheet.csv(inserts));
    if (seed % 3 == 0) {
      ComponentSheet components = new ComponentSheet(draw.fork(), lines);
      files.put("bom.csv", components.csv());
      stock.add(components);
    }
    files.putAll(stock.files(inserts));
    files.putAll(new FloorSheet(draw.fork(), lines).files(presses, heads, stock.scarce()));
    return files;
  }

  private static Map<String, List<String>> itemsByHead(List<DrawnLine> lines) {
    return lines.stream()
        .collect(
            Collectors.groupingBy(
                l -> l.head().symbol(),
                TreeMap::new,
                Collectors.collectingAndThen(
                    Collectors.mapping(DrawnLine::item, Collectors.toCollection(TreeSet::new)),
                    List::copyOf)));
  }

  private static Map<String, String> options(String[] args) {
    Map<String, String> given = new TreeMap<>();
    for (int i = 0; i < args.length; i += 2) {
      if (!List.of(USAGE.split(" ")).contains(args[i])
          || !args[i].startsWith("--")
          || i + 1 == args.length) {
        throw new IllegalArgumentException("\"" + args[i] + "\" is no option with a value");
      }
      given.put(args[i], args[i + 1]);
    }
    return given;
  }

  private static String text(Map<String, String> given, String option) {
    String value = given.get(option);
    if (value == null) {
      throw new IllegalArgumentException(option + " is missing");
    }
    return value;
  }

  private static int number(Map<String, String> given, String option) {
    String value = text(given, option);
    if (!value.matches("-?\\d{1,9}")) {
      throw new IllegalArgumentException(option + " \"" + value + "\" is not a whole number");
    }
    return Integer.parseInt(value);
  }
}

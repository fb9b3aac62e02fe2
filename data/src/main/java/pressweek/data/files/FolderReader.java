package pressweek.data.files;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import pressweek.data.files.Fields.Fault;
import pressweek.data.files.Folder.ArrangedRows;
import pressweek.data.files.Folder.Demand;
import pressweek.data.files.Folder.FloorRows;
import pressweek.data.files.Folder.MaterialRows;
import pressweek.data.files.Folder.Reading;
import pressweek.data.files.InputError.Severity;

/** Reads a plant's folder: all rows that can be read, and all findings in one go. */
public final class FolderReader {
  private final InputFiles files;
  private final Scenario scenario;
  private final Findings findings = new Findings();
  private final List<FaultyOrder> faulty = new ArrayList<>();
  private final Map<String, Map<String, At>> made = new HashMap<>();

  private FolderReader(InputFiles files, Scenario scenario) {
    this.files = files;
    this.scenario = scenario;
  }

  /**
   * Reads a folder.
   *
   * @throws IOException when the folder is none, or it or a file in it cannot be read at all;
   *     whatever its files hold is a finding
   */
  public static Folder read(Path folder) throws IOException {
    return read(folder, Scenario.none());
  }

  /**
   * Reads a folder with a scenario on top: its changes are made to the raw rows before these are
   * checked. What is wrong with the scenario stands among the findings, and the scenario's hash
   * among the inputs.
   *
   * @throws IOException when the folder is none, or it or a file in it cannot be read at all
   */
  public static Folder read(Path folder, Scenario scenario) throws IOException {
    return new FolderReader(InputFiles.in(folder), scenario).folder(folder);
  }

  private Folder folder(Path path) throws IOException {
    findings.addAll(scenario.findings());
    PlantRow plant = plant();
    Optional<JsonTree.Obj> guide = json(InputFile.GUIDE);
    Map<InputFile, Map<String, String>> headings =
        HeadingsFile.of(json(InputFile.HEADINGS), findings);
    Times times = Times.of(plant.hours().dateFormat()).orElse(Times.iso());
    TableReader tables = new TableReader(files, scenario, headings, times, findings);
    Demand demand = demand(tables);
    FloorRows floor = floor(tables);
    MaterialRows materials = materials(tables);
    ArrangedRows arranged = arranged(tables);
    files.warnOfOthers(findings);
    Folder read =
        new Folder(
            path,
            plant,
            guide,
            demand,
            floor,
            materials,
            arranged,
            new Reading(List.of(), scenario.with(files.hashes()), scenario.added(), made));
    new References(read, findings).check();
    new DryerCheck(read, findings).check();
    new PeopleCheck(read, findings).check();
    new DowntimeCheck(read, findings).check();
    new ArrangedCheck(read, findings).check();
    return read.with(findings.list().stream().map(this::severe).toList());
  }

  /** What a scenario itself makes must be possible: a fault of its own is more than a line's. */
  private InputError severe(InputError found) {
    boolean own = scenario.given() && found.file().equals(scenario.file());
    return own && found.severity() == Severity.ORDER_LINE
        ? new InputError(
            Severity.ERROR, found.file(), found.line(), found.column(), found.message())
        : found;
  }

  private PlantRow plant() throws IOException {
    Optional<JsonTree.Obj> given = json(InputFile.PLANT);
    ScenarioTree changes = new ScenarioTree(scenario, given, findings);
    Findings found = new Findings();
    PlantRow plant = PlantReader.read(changes.tree(), found);
    found.list().forEach(f -> findings.add(changes.located(f)));
    return plant;
  }

  private Optional<JsonTree.Obj> json(InputFile file) throws IOException {
    if (files.named(file).isEmpty()) {
      return Optional.empty();
    }
    String name = file.fileName();
    JsonReading reading = JsonReader.read(files.path(name), files.scan(name));
    findings.addAll(reading.findings());
    if (reading.tree().isPresent() && reading.object().isEmpty()) {
      JsonTree tree = reading.tree().get();
      findings.error(
          new At(name, tree.line()), "the file is " + tree.kind() + "; expected an object");
    }
    return reading.object();
  }

  private Demand demand(TableReader tables) throws IOException {
    List<OrderRow> orders =
        tables.read(
            orders(),
            (at, fields, faults) -> {
              tables.add(Severity.ORDER_LINE, at, fields, faults);
              faulty.add(faulty(at, fields, faults));
            });
    return new Demand(
        orders, faulty, tables.read(OrderTables.STOCK), tables.read(OrderTables.CUSTOMER_PARTS));
  }

  /** Order lines as they are read; what a scenario makes of one is kept by line and column. */
  private TableSpec<OrderRow> orders() {
    TableSpec<OrderRow> plain = OrderTables.ORDERS;
    return new TableSpec<>(
        plain.columns(),
        fields -> {
          OrderRow row = plain.row().apply(fields);
          for (Column column : plain.columns().list()) {
            At at = fields.at(column.name());
            if (scenario.given() && at.file().equals(scenario.file())) {
              made.computeIfAbsent(row.id(), id -> new HashMap<>()).put(column.name(), at);
            }
          }
          return row;
        },
        plain.id());
  }

  private static FaultyOrder faulty(At at, Optional<Fields> fields, List<Fault> faults) {
    String message = faults.stream().map(Fault::message).collect(Collectors.joining("; and "));
    if (fields.isEmpty()) {
      return new FaultyOrder(at, "", "", "", 0, message);
    }
    Fields f = fields.get();
    At cell = f.at(faults.get(0).column());
    String line = f.text("line").isEmpty() ? OrderTables.FIRST_LINE : f.text("line");
    return new FaultyOrder(
        cell, f.text("order"), line, itemOrWords(f), OrderTables.pieces(f), message);
  }

  private static String itemOrWords(Fields f) {
    return f.text("item").isEmpty() ? f.text("words") : f.text("item");
  }

  private FloorRows floor(TableReader tables) throws IOException {
    return new FloorRows(
        tables.read(PressTables.PRESSES),
        tables.read(PressTables.RUNNING),
        tables.read(MoldTables.MOLDS),
        tables.read(MoldTables.STANDARDS),
        tables.read(PressTables.DOWNTIME),
        tables.read(OrderTables.PROMISED),
        tables.read(PressTables.RECORDED_CHANGES),
        tables.read(PressTables.DRYERS));
  }

  private static ArrangedRows arranged(TableReader tables) throws IOException {
    return new ArrangedRows(
        tables.read(PressTables.PEOPLE),
        tables.read(ArrangedTables.TOOLING),
        tables.read(ArrangedTables.FAMILY),
        tables.read(ArrangedTables.STAGES));
  }

  private MaterialRows materials(TableReader tables) throws IOException {
    return new MaterialRows(
        tables.read(MaterialTables.RESINS),
        tables.read(MaterialTables.COLOURS),
        tables.read(MaterialTables.INSERTS),
        tables.read(MaterialTables.LOOK_ALIKES),
        tables.read(MaterialTables.BOM),
        tables.read(MaterialTables.RECORDS),
        tables.read(MaterialTables.LOTS),
        tables.read(MaterialTables.RECEIPTS));
  }
}

package pressweek.data.files;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A plant's folder as it was read: every good row, and every finding.
 *
 * @param path the folder
 * @param plant the plant's own figures
 * @param guide the item code; empty when there is no {@code guide.json} or it is not JSON
 * @param demand what was ordered
 * @param floor presses and molds
 * @param materials what goes into them
 * @param arranged what is arranged beside
 * @param reading what reading the files brought beside their rows
 */
public record Folder(
    Path path,
    PlantRow plant,
    Optional<JsonTree.Obj> guide,
    Demand demand,
    FloorRows floor,
    MaterialRows materials,
    ArrangedRows arranged,
    Reading reading) {

  /**
   * What reading the files brought beside their rows.
   *
   * @param findings every error and warning, in the order of the files and lines
   * @param inputs SHA-256 of every input file, hexadecimal, by its real name; a scenario's file
   *     stands there with {@link Scenario#INPUT} before its name
   * @param added files to which a scenario adds rows
   * @param made what a scenario made of order lines: by id of the line and column, where it says so
   */
  public record Reading(
      List<InputError> findings,
      SortedMap<String, String> inputs,
      Set<InputFile> added,
      Map<String, Map<String, At>> made) {
    public Reading {
      made = Map.copyOf(made);
      findings = List.copyOf(findings);
      added = Set.copyOf(added);
      inputs = Collections.unmodifiableSortedMap(new TreeMap<>(inputs));
    }

    Reading with(List<InputError> others) {
      return new Reading(others, inputs, added, made);
    }
  }

  /**
   * What was ordered.
   *
   * @param orders order lines
   * @param faulty order lines that cannot be read
   * @param stock finished goods
   * @param customerParts customers' own part numbers
   */
  public record Demand(
      List<OrderRow> orders,
      List<FaultyOrder> faulty,
      List<StockRow> stock,
      List<CustomerPartRow> customerParts) {
    public Demand {
      orders = List.copyOf(orders);
      faulty = List.copyOf(faulty);
      stock = List.copyOf(stock);
      customerParts = List.copyOf(customerParts);
    }
  }

  /**
   * Presses and molds and how they stand.
   *
   * @param presses presses
   * @param running presses as they stand
   * @param molds molds
   * @param standards recorded cycles
   * @param downtime presses and molds away
   * @param promised what has been promised to the floor
   * @param recordedChanges recorded changes
   * @param dryers dryers
   */
  public record FloorRows(
      List<PressRow> presses,
      List<RunningRow> running,
      List<MoldRow> molds,
      List<StandardRow> standards,
      List<DowntimeRow> downtime,
      List<PromisedRow> promised,
      List<RecordedChangeRow> recordedChanges,
      List<DryerRow> dryers) {
    public FloorRows {
      presses = List.copyOf(presses);
      running = List.copyOf(running);
      molds = List.copyOf(molds);
      standards = List.copyOf(standards);
      downtime = List.copyOf(downtime);
      promised = List.copyOf(promised);
      recordedChanges = List.copyOf(recordedChanges);
      dryers = List.copyOf(dryers);
    }
  }

  /**
   * What goes into the presses.
   *
   * @param resins resins
   * @param colours colours
   * @param inserts insert parts
   * @param lookAlikes pairs of them that are taken for each other
   * @param bom components of items
   * @param records declarations
   * @param lots lots in bins
   * @param receipts inbound deliveries
   */
  public record MaterialRows(
      List<ResinRow> resins,
      List<ColourRow> colours,
      List<InsertRow> inserts,
      List<LookAlikeRow> lookAlikes,
      List<BomRow> bom,
      List<RecordRow> records,
      List<LotRow> lots,
      List<ReceiptRow> receipts) {
    public MaterialRows {
      resins = List.copyOf(resins);
      colours = List.copyOf(colours);
      inserts = List.copyOf(inserts);
      lookAlikes = List.copyOf(lookAlikes);
      bom = List.copyOf(bom);
      records = List.copyOf(records);
      lots = List.copyOf(lots);
      receipts = List.copyOf(receipts);
    }
  }

  /**
   * What is arranged beside presses, molds and materials.
   *
   * @param people who may run them
   * @param tooling things that exist a counted number of times
   * @param family what family molds make
   * @param stages items that are molded over a core
   */
  public record ArrangedRows(
      List<PersonRow> people,
      List<ToolingRow> tooling,
      List<FamilyRow> family,
      List<StageRow> stages) {
    public ArrangedRows {
      people = List.copyOf(people);
      tooling = List.copyOf(tooling);
      family = List.copyOf(family);
      stages = List.copyOf(stages);
    }
  }

  /** Who may run what. */
  public List<PersonRow> people() {
    return arranged.people();
  }

  /** Every error and warning, in the order of the files and lines. */
  public List<InputError> findings() {
    return reading.findings();
  }

  /** SHA-256 of every input file, hexadecimal, by its real name. */
  public SortedMap<String, String> inputs() {
    return reading.inputs();
  }

  /** Where a scenario makes the cell of an order line; empty where it does not. */
  public Optional<At> made(String line, String column) {
    return Optional.ofNullable(reading.made().getOrDefault(line, Map.of()).get(column));
  }

  /** The folder with other findings. */
  Folder with(List<InputError> findings) {
    return new Folder(
        path, plant, guide, demand, floor, materials, arranged, reading.with(findings));
  }

  /** The folder with other order lines beside the ones that it has. */
  public Folder withOrders(List<OrderRow> more) {
    List<OrderRow> orders = new ArrayList<>(demand.orders());
    orders.addAll(more);
    return withOnly(orders);
  }

  /** The same folder with other order lines. */
  public Folder withOnly(List<OrderRow> orders) {
    Demand all = new Demand(orders, demand.faulty(), demand.stock(), demand.customerParts());
    return new Folder(path, plant, guide, all, floor, materials, arranged, reading);
  }

  /** True when the file, or an XLSX in its place, was there, or a scenario makes it. */
  public boolean has(InputFile file) {
    return reading.added().contains(file)
        || inputs().containsKey(file.fileName())
        || inputs().containsKey(file.workbookName());
  }

  /** The faults in the plant's own files; when there is one, there is no plan. */
  public List<InputError> errors() {
    return of(InputError.Severity.ERROR);
  }

  /** What was left out or assumed. */
  public List<InputError> warnings() {
    return of(InputError.Severity.WARNING);
  }

  private List<InputError> of(InputError.Severity severity) {
    return findings().stream().filter(f -> f.severity() == severity).toList();
  }
}

package pressweek.data.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is said of inputs that are wrong, word for word. */
class BadInputTest {
  @TempDir private Path path;
  private PlantFolder folder;

  @BeforeEach
  void smallestFolder() {
    folder = new PlantFolder(path);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '@',
      textBlock =
          """
          ''                                          @ the file is empty; expected a header row with order, quantity, due
          '/ /'                                       @ the file is empty; expected a header row with order, quantity, due
          order,item,due                              @ column "quantity" missing; found order, item, due
          order,item,quantity,due                     @ the file has no row below its header; expected at least one
          """)
  void aFileWithoutOrdersIsAnError(String text, String message) {
    folder.with("orders.csv", lines(text));

    assertThat(folder.findings()).containsExactly("orders.csv: " + message);
    assertThat(folder.read().errors()).hasSize(1);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '@',
      textBlock =
          """
          order,order,item,quantity,due/1,1,K,5,2026-12-01 @ orders.csv:1: columns 1 and 2 are both order; expected one
          order,item,qantity,due/1,K,5,2026-12-01          @ orders.csv:1: column "qantity" is not known and not used; did you mean quantity?
          order,item,quantity,due,,x/1,K,5,2026-12-01,,    @ orders.csv:1: column 5 has no heading and is not used; expected a name
          order,item,quantity,due/1,K,5                    @ orders.csv:2: the row has 3 cells; expected 4 as in the header
          order,item,quantity,due/1,K,5,2026-12-01,7       @ orders.csv:2: the row has 5 cells; expected 4 as in the header
          order,item,quantity,due/1,"K,5,2026-12-01        @ orders.csv:2: a quote in cell 2 is not closed; expected a closing "
          order,item,quantity,due/1,"K"x,5,2026-12-01      @ orders.csv:2: text follows the closing quote of cell 2; expected a separator, or the quote doubled
          order,item,quantity,due/,K,5,2026-12-01          @ orders.csv:2: order is empty; expected a value
          order,item,quantity,due/1,,5,2026-12-01          @ orders.csv:2: item is empty; expected an item code, words or customer_part
          order,item,quantity,due/1,K,,2026-12-01          @ orders.csv:2: quantity is empty; expected a value
          order,item,quantity,due/1,K,5,                   @ orders.csv:2: due is empty; expected a value
          order,item,quantity,due/1,K,0,2026-12-01         @ orders.csv:2: quantity "0" is out of range; expected a whole number from 1 to 10,000,000
          order,item,quantity,due/1,K,10000001,2026-12-01  @ orders.csv:2: quantity "10000001" is out of range; expected a whole number from 1 to 10,000,000
          order,item,quantity,due/1,K,1.5,2026-12-01       @ orders.csv:2: quantity "1.5" is not a whole number; expected a whole number from 1 to 10,000,000
          order,item,quantity,due/1,K,1.000,2026-12-01     @ orders.csv:2: quantity "1.000" may be 1000 or a decimal; expected it without the point, or with a decimal comma
          order,item,quantity,due/1,K,1e3,2026-12-01       @ orders.csv:2: quantity "1e3" is not a number; expected digits
          order,item,quantity,due/1,K,5,2026-13-01         @ orders.csv:2: due "2026-13-01" is not a date; expected yyyy-MM-dd
          order,item,quantity,due/1,K,5,2026-02-29         @ orders.csv:2: due "2026-02-29" is not a date; expected yyyy-MM-dd
          order,item,quantity,due/1,K,5,2026-02-29T10:00   @ orders.csv:2: due "2026-02-29T10:00" is not a date; expected yyyy-MM-dd, a time of day as HH:mm after it
          order,item,quantity,due/1,K,5,20226-12-01        @ orders.csv:2: due "20226-12-01" is not a date; expected yyyy-MM-dd
          order,item,quantity,due/1,K,5,0026-12-01         @ orders.csv:2: due "0026-12-01" is out of range; expected a year from 1990 to 2199
          order,item,quantity,due,weight/1,K,5,2026-12-01,1001 @ orders.csv:2: weight "1001" is out of range; expected 0 to 1,000
          order,item,quantity,due,insert/1,K,5,2026-12-01,B*x  @ orders.csv:2: insert "B*x" has "B*x"; expected an insert, or insert*pieces
          """)
  void aBadOrderIsNamed(String text, String message) {
    folder.with("orders.csv", lines(text));

    assertThat(folder.findings()).contains(message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '@',
      textBlock =
          """
          presses.csv @ press,orientation,clamp_ton/P1,vertical,50 @ presses.csv:1: column "clamp_ton": which ton?; expected clamp_ton_us (US ton, 8.896443 kN), clamp_ton_metric (9.80665 kN) or clamp_ton_uk (long ton, 9.964016 kN)
          presses.csv @ press,orientation,Clamp force (tons)/P1,vertical,50 @ presses.csv:1: column "Clamp force (tons)": which ton?; expected clamp_ton_us (US ton, 8.896443 kN), clamp_ton_metric (9.80665 kN) or clamp_ton_uk (long ton, 9.964016 kN)
          presses.csv @ press,orientation,clamp_kn,clamp_ton_us/P1,vertical,50,5 @ presses.csv:1: columns 3 and 4 are both clamp_kn; expected one
          presses.csv @ press,orientation,clamp_kn/P1,upright,50 @ presses.csv:2: orientation "upright" is not known; expected horizontal, vertical
          presses.csv @ press,orientation,clamp_kn/P1,vertical,-5 @ presses.csv:2: clamp_kn "-5" is out of range; expected 0.0001 to 1,000,000 kN
          presses.csv @ press,orientation,clamp_kn/P1,vertical,50/P1,vertical,60 @ presses.csv:3: press "P1" is also in line 2; expected it once
          presses.csv @ press,orientation,clamp_kn,mold_min_mm,mold_max_mm/P1,vertical,50,300,200 @ presses.csv:2: mold_max_mm "200" is less than mold_min_mm "300"; expected more
          presses.csv @ press,orientation,clamp_kn,calendar/P1,vertical,50,two-shfit @ presses.csv:2: calendar "two-shfit" is not in plant.json; did you mean "two-shift"?
          presses.csv @ press;orientation;clamp_kn/P1;vertical;1.250 @ presses.csv:2: clamp_kn "1.250" may be 1250 or a decimal; expected it without the point, or with a decimal comma
          molds.csv @ mold,makes,live_cavities,runs_on,cycle_s/M1,KNOB,2,P1:prooven,40 @ molds.csv:2: runs_on "P1:prooven" has "P1:prooven"; expected press:proven, :allowed, :never or :preferred
          molds.csv @ mold,makes,live_cavities,runs_on,cycle_s/M1,KNOB,2,P1|P1:never,40 @ molds.csv:2: runs_on "P1|P1:never" has "P1:never"; expected each press once
          molds.csv @ mold,makes,live_cavities,runs_on,cycle_s/M1,KNOB,2,P11,40 @ molds.csv:2: runs_on "P11" is not in presses.csv; did you mean "P1"?
          molds.csv @ mold,makes,cavities,live_cavities,runs_on,cycle_s/M1,KNOB,2,3,P1,40 @ molds.csv:2: live_cavities "3" is more than cavities "2"; expected no more
          molds.csv @ mold,makes,live_cavities,runs_on/M1,KNOB,2,P1 @ molds.csv:2: mold "M1" has no cycle_s and no row in standards.csv; expected one of the two
          molds.csv @ mold,makes,live_cavities,runs_on,cycle_s,hand_load/M1,KNOB,2,P1,40,maybe @ molds.csv:2: hand_load "maybe" is neither yes nor no; expected yes or no
          molds.csv @ mold,makes,live_cavities,runs_on,cycle_s,tooling/M1,KNOB,2,P1,40,M8 @ molds.csv:2: tooling "M8" has "M8"; expected thread=set, each thread once
          standards.csv @ mold,cycle_s/M2,40 @ standards.csv:2: mold "M2" is not in molds.csv; did you mean "M1"?
          standards.csv @ mold,cycle_s/M1,0 @ standards.csv:2: cycle_s "0" is out of range; expected 0.1 to 36,000
          running.csv @ press,order/P1,4711 @ running.csv:2: order "4711" is running without a mold; expected the mold in the press
          running.csv @ press,order,mold/P1,999,M1 @ running.csv:2: order "999/1" is not in orders.csv; expected one that is
          downtime.csv @ what,from,to/P9,2026-12-01,2026-12-02 @ downtime.csv:2: what "P9" is neither a press nor a mold; did you mean "P1"?
          downtime.csv @ what,from,to/P1,2026-12-01,2026-12-01 @ downtime.csv:2: the downtime ends before it begins; expected "to" after "from" (a date alone is its 00:00)
          promised.csv @ order,press,start/999,P1,2026-12-01T06:00 @ promised.csv:2: order line "999/1" is not in orders.csv and not planned; expected one that is
          colours.csv @ colour,srgb/RED,red @ colours.csv:2: srgb "red" is not a colour; expected six digits such as C1121C
          colours.csv @ colour,masterbatch,let_down_pct/RED,MB,400 @ colours.csv:2: let_down_pct "400" is more than the whole; expected percent of the total mass above 0 and up to 100, as 4, or a ratio, as 25:1
          colours.csv @ colour,masterbatch,let_down_pct/RED,MB,0 @ colours.csv:2: let_down_pct "0" is no masterbatch; expected percent of the total mass above 0 and up to 100, as 4, or a ratio, as 25:1
          colours.csv @ colour,masterbatch,let_down_pct/RED,MB,-4 @ colours.csv:2: let_down_pct "-4" is no masterbatch; expected percent of the total mass above 0 and up to 100, as 4, or a ratio, as 25:1
          colours.csv @ colour,masterbatch,let_down_pct/RED,MB,25:0 @ colours.csv:2: let_down_pct "25:0" has a part of 0; expected percent of the total mass above 0 and up to 100, as 4, or a ratio, as 25:1
          colours.csv @ colour,masterbatch,let_down_pct/RED,MB,1 in 25 @ colours.csv:2: let_down_pct "1 in 25" is not a let-down; expected percent of the total mass above 0 and up to 100, as 4, or a ratio, as 25:1
          resins.csv @ resin,density/PP,0 @ resins.csv:2: density "0" is out of range; expected 0.1 to 30
          resins.csv @ resin,melt_c,mold_c/PP,40,40 @ resins.csv:2: melt_c "40" is not above mold_c "40"; expected more
          resins.csv @ resin,melt_c,mold_c,eject_c/PP,230,40,240 @ resins.csv:2: melt_c "230" is not above eject_c "240"; expected more
          resins.csv @ resin,melt_c,mold_c,eject_c/PP,230,40,40 @ resins.csv:2: eject_c "40" is not above mold_c "40"; expected more
          resins.csv @ resin,dry_h/ABS,3 @ resins.csv:2: dry_h "3" stands without dry_c; expected both or none
          resins.csv @ resin,dry_c/ABS,85 @ resins.csv:2: dry_c "85" stands without dry_h; expected both or none
          resins.csv @ resin,dry_h,dry_c,dry_max_h/ABS,3,85,2 @ resins.csv:2: dry_max_h "2" is less than dry_h "3"; expected more
          resins.csv @ resin,bulk_density_kg_l/ABS,0 @ resins.csv:2: bulk_density_kg_l "0" is out of range; expected 0.05 to 10
          inserts.csv @ insert,kind,preheat_c,heat_max_c/B1,stud,150,120 @ inserts.csv:2: preheat_c "150" is above heat_max_c "120"; expected no more
          dryers.csv @ dryer,hopper_l/D1,0 @ dryers.csv:2: hopper_l "0" is out of range; expected 0.0001 to 1,000,000
          dryers.csv @ dryer,hopper_l,feeds/D1,60,P9 @ dryers.csv:2: feeds "P9" is not in presses.csv; did you mean "P1"?
          plant.json @ {"uncertainty": {"presses": [{"press": "P11"}]}} @ plant.json:1: uncertainty.presses "P11" is not in presses.csv; did you mean "P1"?
          people.csv @ person,role/Ada,boss @ people.csv:2: role "boss" is not known; expected operator, setter
          people.csv @ person,may_run/,P1 @ people.csv:2: person is empty; expected a value
          people.csv @ role,may_run/setter,P1 @ people.csv: column "person" missing; found role, may_run
          people.csv @ person/Ada/Ben/Ada @ people.csv:4: person "Ada" is also in line 2; expected it once
          people.csv @ person,shifts/Ada,erly @ people.csv:2: shift "erly" is not in plant.json; did you mean "early"?
          people.csv @ person,may_run/Ada,P1|P9 @ people.csv:2: may_run "P9" is neither a press nor a cell of presses.csv; did you mean "P1"?
          people.csv @ person,may_run/Ada,front row @ people.csv:2: may_run "front row" is neither a press nor a cell of presses.csv; expected one that is
          inserts.csv @ insert,kind/B1,bolt @ inserts.csv:2: kind "bolt" is not known; expected stud, through, blind, lock, tall, bushing, shaft, arm
          lots.csv @ what,lot,on_hand/B1,L1,-1 @ lots.csv:2: on_hand "-1" is out of range; expected a whole number from 0 to 10,000,000
          lots.csv @ what,lot,on_hand,weight_kg/B1,L1,, @ lots.csv:2: on_hand is empty; expected pieces, or weight_kg of a resin or masterbatch
          lots.csv @ what,lot,on_hand,weight_kg/PP,L1,5,5 @ lots.csv:2: weight_kg "5" beside on_hand "5"; expected one of the two
          lots.csv @ what,lot,on_hand,weight_kg/PP,L1,,-0.5 @ lots.csv:2: weight_kg "-0.5" is out of range; expected 0 to 1,000,000 kg
          lots.csv @ what,lot,on_hand,weight_kg/B1,L1,,5 @ lots.csv:2: "B1" is weighed, and no resin or masterbatch; expected pieces
          lots.csv @ what,lot/B1,L1 @ lots.csv: column "on_hand" missing; found what, lot
          receipts.csv @ what,quantity,expected/B1,500, @ receipts.csv:2: expected is empty; expected a value
          receipts.csv @ what,quantity/B1,500 @ receipts.csv: column "expected" missing; found what, quantity
          receipts.csv @ what,quantity,expected/B1,0,2026-12-01 @ receipts.csv:2: quantity "0" is out of range; expected a whole number from 1 to 10,000,000
          receipts.csv @ what,quantity,expected,inspect_h/B1,5,2026-12-01,-1 @ receipts.csv:2: inspect_h "-1" is out of range; expected 0 to 8,784
          receipts.csv @ what,quantity,weight_kg,expected/PP,,0.0001,2026-12-01 @ receipts.csv:2: weight_kg "0.0001" is less than a gram; expected more
          bom.csv @ item,component,pieces,per,kind/KNOB,C1,1,0,carton @ bom.csv:2: per "0" is out of range; expected a whole number from 1 to 1,000,000
          bom.csv @ item,component,pieces,per,kind/KNOB,T1,1,2,tip @ bom.csv:2: per "2" of kind tip, which every part has; expected 1
          order.csv @ x/y @ order.csv: the file is not read; did you mean orders.csv?
          headings.json @ {"orders.csv": {"A": "ordr"}} @ headings.json:1: heading "A" of orders.csv is mapped to the text "ordr"; expected "" or one of order, line, customer, customer_part, revision, note, item, words, quantity, requested, due, weight, earliest, needs, over_pct, under_pct, hold, mold, insert, resin, colour
          headings.json @ {"ordrs.csv": {}} @ headings.json:1: "ordrs.csv" is not a table of the folder; expected a name such as orders.csv
          guide.json @ {"a": 1,/ "a": 2} @ guide.json:2: key "a" is also in line 1; expected it once
          guide.json @ [] @ guide.json:1: the file is a list; expected an object
          """)
  void aFaultInThePlantsOwnFilesIsNamed(String file, String text, String message) {
    folder.with(file, lines(text));

    assertThat(folder.findings()).contains(message);
  }

  /** Slashes stand for line ends, so that a case fits in a line. */
  private static String lines(String text) {
    return text.replace('/', '\n');
  }

  @Test
  void aMissingFileIsNamedWithItsColumns() {
    folder.without("molds.csv");

    assertThat(folder.findings())
        .containsExactly(
            "molds.csv: the file is missing; expected it with mold, makes, live_cavities, runs_on");
  }

  @Test
  void allFilesAreCheckedInOneGo() {
    folder.with("orders.csv", "order\n").with("presses.csv", "press\n").without("molds.csv");

    assertThat(folder.read().errors())
        .extracting(InputError::file)
        .contains("orders.csv", "presses.csv", "molds.csv");
  }

  @Test
  void aTableAndItsWorkbookAreOneTooMany() {
    folder.with("orders.xlsx", "x");

    assertThat(folder.findings())
        .containsExactly("orders.csv: the file stands beside orders.xlsx; expected one of the two");
  }

  @Test
  void bytesThatAreNoTextAreNamed() {
    folder.with("stock.csv", new byte[] {1, 2, 3, 0, 0});
    folder.with("bom.csv", new byte[] {'P', 'K', 3, 4, 9, 9});
    folder.with("guide.json", new byte[] {1, 2, 3, 0, 0});
    folder.without("orders.csv").with("orders.xlsx", "not a workbook");

    assertThat(folder.findings())
        .contains(
            "stock.csv: the file is not text; expected CSV",
            "bom.csv: the file is an archive or workbook; expected CSV, or the name bom.xlsx",
            "guide.json: is not text; expected JSON")
        .anyMatch(f -> f.startsWith("orders.xlsx: not an XLSX workbook"));
  }

  @Test
  void aQuoteThatIsNeverClosedCostsOneRow() {
    folder.with(
        "orders.csv",
        """
        order,note,item,quantity,due
        1,"a,K,5,2026-12-01
        2,b,K,5,2026-12-01
        3,"c
        d",K,5,2026-12-01
        4,e,K,x,2026-12-01
        """);

    // The quote of line 2 is closed by that of line 4; line 2 is torn, and reading goes on with
    // line 3.
    assertThat(folder.read().demand().orders())
        .extracting(OrderRow::order)
        .containsExactly("2", "3");
    assertThat(folder.findings())
        .containsExactly(
            "orders.csv:2: text follows the closing quote of cell 2; expected a separator, or the quote doubled",
            "orders.csv:6: quantity \"x\" is not a number; expected digits");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "orders.csv",
        "presses.csv",
        "molds.csv",
        "plant.json",
        "headings.json",
        "guide.json",
        "orders.xlsx"
      })
  void noBytesThrow(String file) {
    Random random = new Random(7);
    String pieces = "order,item;quantity\tdue\"\"\n\r{}[]:0123456789.-xyäé|*=";
    for (int round = 0; round < 60; round++) {
      StringBuilder text = new StringBuilder();
      for (int i = random.nextInt(120); i > 0; i--) {
        text.append(pieces.charAt(random.nextInt(pieces.length())));
      }
      byte[] bytes =
          text.toString()
              .getBytes(round % 2 == 0 ? StandardCharsets.UTF_8 : StandardCharsets.ISO_8859_1);
      if (round % 5 == 0) {
        random.nextBytes(bytes);
      }
      folder.with(file, bytes);
      assertThat(folder.read().findings()).allSatisfy(f -> assertThat(f.message()).isNotBlank());
    }
  }
}

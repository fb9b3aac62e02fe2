package pressweek.data.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pressweek.data.files.OrderRow.InsertPieces;
import pressweek.data.problem.Barrel;
import pressweek.data.problem.FoodUse;
import pressweek.data.problem.Hub;
import pressweek.data.problem.LotStatus;
import pressweek.data.problem.Mold;
import pressweek.data.problem.Orientation;
import pressweek.data.problem.Press;
import pressweek.data.problem.Setup;
import pressweek.data.problem.Table;

class FolderReaderTest {
  @TempDir private Path path;
  private PlantFolder folder;

  @BeforeEach
  void smallestFolder() {
    folder = new PlantFolder(path);
  }

  @Test
  void threeFilesAreEnough() {
    Folder read = folder.read();

    assertThat(read.findings()).isEmpty();
    assertThat(read.demand().orders()).hasSize(1);
    assertThat(read.plant().hours().zone().getId()).isEqualTo("UTC");
    assertThat(read.plant().given()).isEmpty();
    assertThat(read.inputs()).containsOnlyKeys("orders.csv", "presses.csv", "molds.csv");
    assertThat(read.has(InputFile.ORDERS)).isTrue();
    assertThat(read.has(InputFile.LOTS)).isFalse();
  }

  @Test
  void hashesAreThoseOfTheBytes() {
    folder.with("stock.csv", "item,on_hand\n");

    // printf 'item,on_hand\n' | sha256sum
    assertThat(folder.read().inputs())
        .containsEntry(
            "stock.csv", "58f4b1a03b58341f01bd6c61b4534a50cd2308665de9c618b591121e33a58ea8");
  }

  @Test
  void everyColumnOfAnOrderIsRead() {
    folder.with(
        "orders.csv",
        """
        order,line,customer,customer_part,revision,note,item,words,quantity,requested,due,weight,earliest,needs,over_pct,under_pct,hold,mold,insert,resin,colour
        A1,2,Galley Co,G-7,B,fragile,LV90,90 mm lever,1200,2026-12-02,2026-12-01T14:00,2.5,2026-11-30T06:00+01:00,Food|rohs,5,2.5,credit,M1,B0810*2|T1,PP,RED
        """);

    assertThat(folder.read().demand().orders())
        .containsExactly(
            new OrderRow(
                new At("orders.csv", 2),
                "A1",
                "2",
                "Galley Co",
                "G-7",
                "B",
                "fragile",
                "LV90",
                "90 mm lever",
                1200,
                Optional.of(new When.Day(LocalDate.of(2026, 12, 2))),
                new When.Local(LocalDateTime.of(2026, 12, 1, 14, 0)),
                250,
                Optional.of(new When.Exact(java.time.Instant.parse("2026-11-30T05:00:00Z"))),
                List.of("food", "rohs"),
                5,
                2.5,
                "credit",
                "M1",
                List.of(new InsertPieces("B0810", 2), new InsertPieces("T1", 1)),
                "PP",
                "RED"));
  }

  @Test
  void anOrderHasDefaults() {
    OrderRow order =
        folder
            .with("orders.csv", "order,item,quantity,due\n4711,KNOB,100,2026-12-01\n")
            .read()
            .demand()
            .orders()
            .get(0);

    assertThat(order.id()).isEqualTo("4711/1");
    assertThat(order.weightHundredths()).isEqualTo(100);
    assertThat(order.requested()).isEmpty();
    assertThat(order.needs()).isEmpty();
    assertThat(order.hold()).isEmpty();
  }

  @Test
  void everyColumnOfAPressIsReadAndConverted() {
    folder.with(
        "presses.csv",
        """
        press,cell,orientation,table,lower_halves,barrel,clamp_ton_us,shot_ps_oz,tie_bar_x_in,tie_bar_y_mm,mold_min_mm,mold_max_mm,opening_mm,calendar,rate_per_h,food,dryer
        P1,C2,Vertical,ROTARY,2,wear-resistant,100,4,16.5,420,150,400,300,two-shift,12.345,kept,D1
        """);

    PressRow press = folder.read().floor().presses().get(0);

    assertThat(press.build())
        .isEqualTo(new Press.Build(Orientation.VERTICAL, Table.ROTARY, 2, Barrel.WEAR_RESISTANT));
    assertThat(press.size())
        .isEqualTo(
            new Press.Size(
                OptionalDouble.of(889.6443),
                OptionalDouble.of(113.3980925),
                OptionalDouble.of(419.1),
                OptionalDouble.of(420),
                OptionalDouble.of(150),
                OptionalDouble.of(400),
                OptionalDouble.of(300)));
    assertThat(press.calendar()).isEqualTo("two-shift");
    assertThat(press.ratePerHour()).isEqualTo(1_234_500);
    assertThat(press.food()).isEqualTo(FoodUse.KEPT);
  }

  @Test
  void everyColumnOfAMoldIsRead() {
    folder
        .with(
            "presses.csv",
            "press,orientation,clamp_kn\nP1,vertical,\nP2,vertical,\nP3,horizontal,\nP4,horizontal,\n")
        .with(
            "molds.csv",
            """
            mold,makes,hub,insert_kinds,threads,tooling,cavities,live_cavities,runs_on,orientation,length_mm,width_mm,height_mm,weight_lb,opening_mm,place,part_g,runner_g,part_area_in2,runner_area_cm2,wall_mm,cycle_s,hand_load,dummy_plugs,change_min,available_from,owner,shots_to_service
            M1,LV90|LV110,cored,Blind|stud,M8|M10,M8=T8| M10=T10,4,3,P1:preferred|P2:never|P3|P4:proven,vertical,400,300,250,100,350,R3,22.5,0,2,3,4.5,38.5,yes,x,45,2026-12-02,customer,12000
            """);

    MoldRow mold = folder.read().floor().molds().get(0);

    assertThat(mold.use())
        .isEqualTo(
            new Mold.Use(
                List.of("LV90", "LV110"),
                Optional.of(Hub.CORED),
                List.of("blind", "stud"),
                List.of("M8", "M10"),
                Map.of("M8", "T8", "M10", "T10")));
    assertThat(mold.cavities())
        .isEqualTo(
            new Mold.Cavities(
                4,
                3,
                OptionalDouble.of(22.5),
                OptionalDouble.of(0),
                OptionalDouble.of(12.9032),
                OptionalDouble.of(3),
                OptionalDouble.of(4.5)));
    assertThat(mold.runsOn())
        .isEqualTo(
            new Mold.RunsOn(List.of("P1", "P4"), List.of("P3"), List.of("P2"), Optional.of("P1")));
    assertThat(mold.body().weightKg()).hasValue(45.359237);
    assertThat(mold.handLoad()).isTrue();
    assertThat(mold.dummyPlugs()).isTrue();
    assertThat(mold.changeMin()).isEqualTo(OptionalInt.of(45));
    assertThat(mold.availableFrom()).contains(new When.Day(LocalDate.of(2026, 12, 2)));
    assertThat(mold.service().shotsToService()).hasValue(12000);
  }

  @Test
  void theFilesOfTheFloorAreRead() {
    folder
        .with("stock.csv", "item,on_hand,reserved_for\nKNOB,50,4711/1\n")
        .with(
            "running.csv",
            "press,order,mold,resin,cleared_for_food,good_made,inserts_at_press\nP1,4711,M1,PP,y,12,30\n")
        .with(
            "standards.csv",
            "mold,resin,press,cycle_s,scrap_pct,operators\nM1,PP,vertical,41.5,2,0.5\n")
        .with("downtime.csv", "what,from,to,reason\nP1,2026-12-01T06:00,2026-12-01T08:00,service\n")
        .with("promised.csv", "order,press,start\n4711,P1,2026-11-30T06:00\n")
        .with(
            "changes_recorded.csv",
            "press,from_colour,to_colour,minutes,purge_lb\nP1,BLK,RED,50,1\n");

    Folder read = folder.read();

    assertThat(read.findings()).isEmpty();
    assertThat(read.demand().stock().get(0).onHand()).isEqualTo(50);
    RunningRow running = read.floor().running().get(0);
    assertThat(running.line()).isEqualTo("1");
    assertThat(running.setup()).isEqualTo(new Setup("M1", "", "PP", ""));
    assertThat(running.clearedForFood()).isTrue();
    assertThat(running.insertsAtPress()).hasValue(30);
    assertThat(read.floor().standards().get(0).operatorThousandths()).hasValue(500);
    assertThat(read.floor().downtime().get(0).reason()).isEqualTo("service");
    assertThat(read.floor().promised().get(0).id()).isEqualTo("4711/1");
    assertThat(read.floor().recordedChanges().get(0).purgeG()).hasValue(454);
  }

  @Test
  void theFilesOfTheMaterialsAreRead() {
    folder
        .with(
            "resins.csv",
            "resin,density,melt_f,price_per_kg,never_next_to\nPP,0.905,446,1.75,ABS\nABS,,,,\n")
        .with("colours.csv", "resin,colour,srgb,rank\nPP,RED,#c1121c,\n,BLK,000000,99\n")
        .with(
            "inserts.csv",
            "insert,kind,thread,length_in,passivation\nB1,Blind,M8x1.25,0.5,Trivalent\n")
        .with("bom.csv", "item,component,pieces,kind\nKNOB,B1,2,\nKNOB,T1,,tip\n")
        .with("records.csv", "what,for,expires\nPP,FOOD,2027-01-31\n")
        .with("lots.csv", "what,lot,bin,on_hand,received,status\nB1,L1,A-1,400,2026-11-01,held\n")
        .with("receipts.csv", "what,quantity,expected,inspect_h\nB1,500,2026-12-01T08:00,1.5\n");

    Folder read = folder.read();

    assertThat(read.findings()).isEmpty();
    Folder.MaterialRows materials = read.materials();
    assertThat(materials.resins().get(0).meltC()).hasValue(230);
    assertThat(materials.resins().get(0).pricePerKg()).hasValue(175_000);
    assertThat(materials.colours()).extracting(ColourRow::srgb).containsExactly("C1121C", "000000");
    assertThat(materials.inserts().get(0).lengthMm()).hasValue(12.7);
    assertThat(materials.inserts().get(0).passivation()).isEqualTo("trivalent");
    assertThat(materials.bom())
        .extracting(BomRow::kind)
        .containsExactly(BomRow.Kind.INSERT, BomRow.Kind.TIP);
    assertThat(materials.records().get(0).need()).isEqualTo("food");
    assertThat(materials.lots().get(0).status()).isEqualTo(LotStatus.HELD);
    assertThat(materials.receipts().get(0).inspectMin()).isEqualTo(90);
  }
}

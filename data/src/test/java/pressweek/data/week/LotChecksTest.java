package pressweek.data.week;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LotChecksTest {
  @TempDir Path folder;

  private PlantFolder plant;

  @BeforeEach
  void plantWithAnInsert() {
    plant = new PlantFolder(folder);
    plant.file("inserts.csv", "insert,kind,thread", "I1,blind,M6");
    plant.file("orders.csv", "order,item,quantity,due,insert", "1,M1,100,2026-12-02,I1");
    plant.file(
        "plant.json",
        "{\"zone\": \"UTC\", \"plan_start\": \"2026-11-30T00:00Z\", \"horizon_days\": 7}");
  }

  private void lot(String received, String expires, String status, String reservedFor) {
    plant.file(
        "lots.csv",
        "what,lot,on_hand,received,expires,status,reserved_for",
        String.join(",", "I1,L1,500", received, expires, status, reservedFor));
  }

  @Test
  void reservedLotThatExpiresInTheWeekIsNamed() {
    lot("2026-11-01", "2026-12-04", "usable", "1");
    assertThat(plant.findings())
        .contains(
            "lots.csv:2: lot \"L1\" of I1 is reserved and expires on 2026-12-04, within the horizon;"
                + " it is not counted");
  }

  @Test
  void lotThatHasExpiredIsNamed() {
    lot("2026-11-01", "2026-11-30T00:00Z", "usable", "");
    assertThat(plant.findings())
        .contains("lots.csv:2: lot \"L1\" of I1 had expired on 2026-11-30; it is not used");
  }

  @Test
  void lotThatExpiresBeforeItComesIsNamed() {
    lot("2026-12-05", "2026-12-04", "usable", "");
    assertThat(plant.findings())
        .contains(
            "lots.csv:2: lot \"L1\" of I1 expires before it was received; expected a later time");
  }

  @Test
  void otherLotsAreNoMatter() {
    for (String[] row :
        new String[][] {
          {"2026-11-01", "2026-11-30T00:01Z", "usable", ""},
          {"2026-11-01", "2026-12-04", "held", "1"},
          {"2026-11-01", "2026-12-07T00:00Z", "usable", "1"},
          {"", "", "usable", "1"}
        }) {
      lot(row[0], row[1], row[2], row[3]);
      assertThat(plant.findings()).noneMatch(f -> f.contains("lot \"L1\""));
    }
  }
}

package pressweek.app.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import pressweek.app.store.StoreTrouble;

/** What happens on the floor and in the folder comes to the scheduler's wall by itself. */
@NeedsBrowser
class FloorAndWallTest {
  private static Plant plant;
  private static Browser wall;
  private static Browser pulls;

  @BeforeAll
  static void open(@TempDir Path folder) throws IOException, StoreTrouble {
    plant = Plant.local(folder);
    wall = Browser.on(plant.pages());
    pulls = Browser.on(plant.pages());
  }

  @AfterAll
  static void close() {
    wall.close();
    pulls.close();
    plant.close();
  }

  private static JsonNode row(String key) throws IOException, InterruptedException {
    for (JsonNode row : plant.get("/api/pulls").path("rows")) {
      if (row.path("key").asText().equals(key)) {
        return row;
      }
    }
    throw new AssertionError("no pull " + key);
  }

  @Test
  void aShortPullIsToldToTheScheduler() throws Exception {
    Page.WALL.openIn(wall);
    assertThat(wall.count(".shorts")).isZero();
    Page.PULLS.openIn(pulls);
    JsonNode first = row(pulls.present("li.pull").getDomAttribute("data-key"));
    pulls.press("Short");
    pulls.write("dialog.short input[autocomplete=off]", "2");
    pulls.present("dialog.short input[type=radio]").click();
    pulls.press("Tell the scheduler");
    String words = wall.says(".shorts", first.path("insert").asText());
    int missing = first.path("pieces").asInt() - 2;
    int all = first.path("pieces").asInt();
    assertThat(words).contains(String.format(Locale.ROOT, "%,d of %,d", missing, all));
    assertThat(words).contains("The bin is empty");
    wall.driver.findElement(By.cssSelector(".shorts button")).click();
    wall.present("#chosenname");
  }

  @Test
  void aFileThatChangesIsSaid() throws Exception {
    Page.WALL.openIn(wall);
    Path orders = plant.folder.resolve("orders.csv");
    Files.writeString(orders, Files.readString(orders) + "\n");
    wall.says(".files", "orders.csv changed");
    wall.press("Take the changed files");
    wall.until(d -> wall.count(".notice.files") == 0 ? true : null);
  }
}

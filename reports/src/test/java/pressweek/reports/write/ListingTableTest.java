package pressweek.reports.write;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pressweek.reports.hours.PlantClock;
import pressweek.reports.listing.Listing;
import pressweek.reports.listing.ListingColumns;
import pressweek.reports.listing.Paper;
import pressweek.reports.listing.Widths;
import pressweek.reports.sample.SampleWeek;

/** A list that has no sheet of its own, as CSV and as a table. */
class ListingTableTest {
  private record Basket(String place, List<String> parts, int grams, int atMin) {}

  private static final PlantClock CLOCK = PlantClock.of(SampleWeek.hours());

  private static Listing list(Paper paper, Basket... baskets) {
    return new ListingColumns<Basket>()
        .text("place", Basket::place)
        .list("parts", Basket::parts)
        .thousandths("weight_kg", Basket::grams)
        .headed("kg")
        .time("at", b -> CLOCK.at(b.atMin()))
        .numberIfAny("left", b -> Optional.empty())
        .offPaper()
        .listing("baskets", "Baskets", paper, List.of(baskets));
  }

  private static Basket basket(String place) {
    return new Basket(place, List.of("A", "=B"), 1_250, SampleWeek.at("2026-12-01T07:05"));
  }

  private static String table(Listing list) {
    return String.join(
        "", ListingTable.content(list, CLOCK).stream().map(Object::toString).toList());
  }

  @Test
  void cellsAreWrittenByTheirKind() {
    assertThat(ListingCsv.csv(list(new Paper("", "", false, "none"), basket("-P1"))))
        .isEqualTo("place,parts,weight_kg,at,left\r\n'-P1,A|=B,1.250,2026-12-01T07:05+01:00,\r\n");
  }

  @Test
  void tableLeavesOutWhatIsNotForPaper() {
    assertThat(table(list(new Paper("", "", false, "none"), basket("P1"))))
        .contains("<th scope=\"col\">place</th>")
        .contains("<th class=\"figure\" scope=\"col\">kg</th>")
        .contains("<td data-name=\"parts\"><div>A</div><div>=B</div></td>")
        .contains("<td data-name=\"at\"><div>Tue 07:05</div></td>")
        .doesNotContain("left");
  }

  @Test
  void rowsStandUnderTheirGroupWithABoxToTick() {
    String table =
        table(list(new Paper("", "place", true, "none"), basket("P1"), basket("P1"), basket("P2")));
    assertThat(table.split("<tbody>", -1)).hasSize(3);
    assertThat(table)
        .contains("colspan=\"4\">P1</th>")
        .contains("<td class=\"tick\"")
        .contains("<colgroup><col width=\"4%\"/>")
        .doesNotContain("data-name=\"place\"");
  }

  @Test
  void listWithoutRowsIsASentence() {
    assertThat(table(list(new Paper("", "", false, "There are no baskets."))))
        .isEqualTo("<p>There are no baskets.</p>");
  }

  @Test
  void widthIsThatOfTheContentWithinBoundsAndOfTheLongestWordAbove() {
    Listing list = list(new Paper("", "", false, ""), basket("a place with a long name"));
    assertThat(Widths.of(list, 10, List.of("place", "parts", "k", "at", "left over")))
        .containsExactly(10, 5, 5, 10, 4);
  }

  @Test
  void rowWithAnotherNumberOfCellsIsRefused() {
    assertThatThrownBy(
            () ->
                new Listing(
                    "x",
                    "X",
                    new Paper("", "", false, ""),
                    List.of(),
                    List.of(List.of(pressweek.reports.listing.Cell.EMPTY))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("0 columns and a row of 1");
  }
}

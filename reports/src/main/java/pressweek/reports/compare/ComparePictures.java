package pressweek.reports.compare;

import java.util.List;
import pressweek.reports.markup.Element;

/** The pictures of a comparison, of the best plan of each scenario. */
public final class ComparePictures {
  private ComparePictures() {}

  /** Avoidable cost by its parts; only with rates. */
  public static Element cost(List<Tried> tried) {
    return scroller("Avoidable cost by its parts").add(CostPicture.of(tried));
  }

  /** Load of each press by day. */
  public static List<Element> load(List<Tried> tried) {
    return List.of(
        BarTable.legend(tried), scroller("Load of each press by day").add(LoadPicture.of(tried)));
  }

  /** Lines that change sides in a scenario. */
  public static Element lines(List<LineMove> moves) {
    return LinesPicture.of(moves);
  }

  private static Element scroller(String label) {
    return Element.of("div", "scroller")
        .attr("tabindex", "0")
        .attr("role", "region")
        .attr("aria-label", label);
  }
}

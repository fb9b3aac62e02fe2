package pressweek.reports.listing;

import java.math.BigDecimal;
import java.time.ZonedDateTime;
import java.util.List;

/** A cell of a list. */
public sealed interface Cell {
  /** A cell without anything, in a column of any kind. */
  Cell EMPTY = new Text("");

  /** Text; may be empty. */
  record Text(String text) implements Cell {}

  /** Texts that stand beside each other; may be none. */
  record Texts(List<String> texts) implements Cell {
    public Texts {
      texts = List.copyOf(texts);
    }
  }

  /** A number with as many decimals as it is written with. */
  record Number(BigDecimal value) implements Cell {}

  /** A point in time on the plant's clock. */
  record Time(ZonedDateTime at) implements Cell {}
}

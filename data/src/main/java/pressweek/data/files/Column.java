package pressweek.data.files;

import java.util.List;

/**
 * A column of an input file.
 *
 * @param name name in the header
 * @param need whether it must be there
 * @param look what its cells look like
 * @param unit unit that ends its name
 * @param choices words that its cells may hold, for {@link Look#CHOICE}
 */
record Column(String name, Need need, Look look, Unit unit, List<String> choices) {
  /** Whether a column must be there. */
  enum Need {
    OPTIONAL,
    /** The column must be there, its cells may be empty. */
    COLUMN,
    /** The column must be there and every cell filled. */
    CELL
  }

  /** What the cells of a column look like. */
  enum Look {
    TEXT,
    WHOLE,
    DECIMAL,
    TIME,
    FLAG,
    CHOICE,
    COLOUR;

    /** True for whole numbers. */
    boolean whole() {
      return this == WHOLE;
    }
  }

  Column {
    choices = List.copyOf(choices);
  }

  /** True when the column itself must be in the header. */
  boolean required() {
    return need != Need.OPTIONAL;
  }
}

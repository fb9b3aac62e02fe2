package pressweek.data.files;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pressweek.data.files.Column.Look;
import pressweek.data.files.Column.Need;

/**
 * The columns of an input file.
 *
 * @param file the file
 * @param list its columns in the order of the documentation
 */
record Columns(InputFile file, List<Column> list) {
  Columns {
    list = List.copyOf(list);
  }

  /** A list of columns to build. */
  static Builder of(InputFile file) {
    return new Builder(file);
  }

  /** The column of that name. */
  Optional<Column> column(String name) {
    return list.stream().filter(c -> c.name().equals(name)).findFirst();
  }

  /** The column that may be called so, by its own name or in another unit. */
  Optional<Column> called(String name) {
    return list.stream()
        .filter(c -> c.name().equals(name) || c.unit().otherNames(c.name()).contains(name))
        .findFirst();
  }

  /** Every name that a heading may have. */
  List<String> names() {
    List<String> names = new ArrayList<>();
    for (Column column : list) {
      names.add(column.name());
      names.addAll(column.unit().otherNames(column.name()));
    }
    return names;
  }

  /** The words of an enum as they stand in a cell, for example {@code wear-resistant}. */
  static List<String> words(Enum<?>[] values) {
    List<String> words = new ArrayList<>();
    for (Enum<?> value : values) {
      words.add(word(value));
    }
    return words;
  }

  /** The word of one constant. */
  static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /**
   * Adds columns one after the other; an exclamation mark before a name asks for the cell, a plus
   * only for the column.
   */
  static final class Builder {
    private final InputFile file;
    private final List<Column> list = new ArrayList<>();

    private Builder(InputFile file) {
      this.file = file;
    }

    Builder text(String... names) {
      return add(Look.TEXT, names);
    }

    Builder whole(String... names) {
      return add(Look.WHOLE, names);
    }

    Builder decimal(String... names) {
      return add(Look.DECIMAL, names);
    }

    Builder time(String... names) {
      return add(Look.TIME, names);
    }

    Builder flag(String... names) {
      return add(Look.FLAG, names);
    }

    Builder colour(String... names) {
      return add(Look.COLOUR, names);
    }

    /** Columns of a figure whose names end with the unit. */
    Builder measured(Unit unit, String... names) {
      for (String name : names) {
        list.add(new Column(bare(name), need(name), Look.DECIMAL, unit, List.of()));
      }
      return this;
    }

    Builder choice(String name, List<String> words) {
      list.add(new Column(bare(name), need(name), Look.CHOICE, Unit.NONE, words));
      return this;
    }

    Columns build() {
      return new Columns(file, list);
    }

    private Builder add(Look look, String... names) {
      for (String name : names) {
        list.add(new Column(bare(name), need(name), look, Unit.NONE, List.of()));
      }
      return this;
    }

    private static String bare(String name) {
      return name.startsWith("!") || name.startsWith("+") ? name.substring(1) : name;
    }

    private static Need need(String name) {
      return name.startsWith("!") ? Need.CELL : name.startsWith("+") ? Need.COLUMN : Need.OPTIONAL;
    }
  }
}

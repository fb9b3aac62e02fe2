package pressweek.data.files.table;

import java.io.Closeable;
import java.io.IOException;
import java.util.Optional;

/** A table that is read line by line, so that no more of it is held than one row. */
public interface TableSource extends Closeable {
  /** The next row or fault, blank rows left out; empty at the end. */
  Optional<RawLine> next() throws IOException;

  /** True when numbers in it may be written with a decimal comma. */
  boolean decimalComma();

  /** True when a row may end before the last column without being torn. */
  boolean shortRows();
}

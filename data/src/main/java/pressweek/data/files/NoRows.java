package pressweek.data.files;

import java.util.Optional;
import pressweek.data.files.table.RawLine;
import pressweek.data.files.table.TableSource;

/** The table that a folder does not have. */
final class NoRows implements TableSource {
  @Override
  public Optional<RawLine> next() {
    return Optional.empty();
  }

  @Override
  public boolean decimalComma() {
    return false;
  }

  @Override
  public boolean shortRows() {
    return true;
  }

  @Override
  public void close() {
    // Nothing was opened.
  }
}

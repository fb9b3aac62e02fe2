package pressweek.data.files;

/**
 * Where something stands in the plant's folder.
 *
 * @param file file name, for example {@code orders.csv}
 * @param line line in the file, from 1; 0 for the file as a whole
 */
public record At(String file, int line) {
  @Override
  public String toString() {
    return line == 0 ? file : file + ":" + line;
  }
}

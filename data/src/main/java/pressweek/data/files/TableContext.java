package pressweek.data.files;

/**
 * What is the same for all rows of a table.
 *
 * @param file the file's real name
 * @param columns its columns
 * @param header which of them stands where
 * @param times how its dates are written
 * @param decimalComma true when its numbers may have a decimal comma
 */
record TableContext(
    String file, Columns columns, Header header, Times times, boolean decimalComma) {}

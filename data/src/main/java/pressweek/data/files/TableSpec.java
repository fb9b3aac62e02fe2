package pressweek.data.files;

import java.util.function.Function;

/**
 * How a file's rows are read.
 *
 * @param columns columns of the file
 * @param row reads one row; its faults are in the fields
 * @param id what may occur once only; empty text for nothing
 * @param <T> a row
 */
record TableSpec<T>(Columns columns, Function<Fields, T> row, Function<T, String> id) {}
